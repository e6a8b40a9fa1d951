package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.measure.Must;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Element;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A figure wanted, with all that is pinned about it. What is null is free.
 *
 * @param id stable, unique within the act
 * @param name as the crowd hears it
 * @param elements what is flown; empty if it is only timed
 * @param own whether somebody gave it these elements, which are flown as they stand; else they are drawn for the aircraft
 * @param enters how fast it usually begins, or null if that is not known
 * @param end where along the display line
 * @param alongM where on the A-axis its middle is, metres to the commentator's right; it wins over {@code end}
 * @param toRight whether it begins flying to the commentator's right
 * @param heightFt feet above the datum at which it begins
 * @param kt knots at which it begins, above 0
 * @param seconds how long it takes if it is only timed, above 0
 * @param role what part it has in the act
 * @param leadsTo the figure at whose beginning it is to end, unless it is wanted somewhere itself; null if none
 */
public record Wish(
        String id,
        String name,
        List<Element> elements,
        boolean own,
        @Nullable EntrySpeed enters,
        @Nullable End end,
        @Nullable Double alongM,
        @Nullable Boolean toRight,
        @Nullable Double heightFt,
        @Nullable Double kt,
        @Nullable Double seconds,
        Role role,
        @Nullable Wish leadsTo) {
    /** Of the speed a figure dives for, what it has before; by judgement. */
    public static final double DIVES_FROM = 0.8;

    /** A level line as long as this is a pass, seconds; by judgement. */
    private static final double PASS_S = 3;

    /** What part a figure has in an act. */
    public enum Role {
        /** Flown in front of the crowd. */
        FIGURE,
        /** Begins the act on the ground. */
        TAKE_OFF,
        /** Ends it there. */
        LANDING,
        /** Only turns round, so that the next figure is flown the other way. */
        TURN_BACK
    }

    public Wish {
        Must.beSaid("id of a wish", id);
        Must.beSaid("name of a wish", name);
        elements = List.copyOf(elements);
    }

    /** The same, flown by other elements. */
    public Wish flying(List<Element> others) {
        return new Wish(id, name, others, own, enters, end, alongM, toRight, heightFt, kt, seconds, role, leadsTo);
    }

    /** The same, begun elsewhere: what is null is free. */
    public Wish beginning(@Nullable Double otherFt, @Nullable Double otherKt) {
        return new Wish(
                id, name, elements, own, enters, end, alongM, toRight, otherFt, otherKt, seconds, role, leadsTo);
    }

    /** The same, flown so that it ends where another begins. */
    public Wish leadingTo(Wish next) {
        return new Wish(id, name, elements, own, enters, end, alongM, toRight, heightFt, kt, seconds, role, next);
    }

    /** Flies it from somewhere. */
    FigureTrial.Outcome flown(FigureTrial trial, FlightState from) {
        return own ? trial.fly(elements, from) : trial.drawn(elements, from);
    }

    /** The same sooner: what it lacks does not say how much more speed would do. */
    FigureTrial.Outcome flownIfItCan(FigureTrial trial, FlightState from) {
        return own ? trial.fly(elements, from) : trial.drawnIfItCan(elements, from);
    }

    /** Whether nobody said where it is flown. */
    boolean isAnywhere() {
        return alongM == null && end == null;
    }

    /** Whether it is flown along the line to be seen from its middle, as a pass is, whichever way up. */
    boolean isPass() {
        return enters == EntrySpeed.PASS
                || (elements.stream().allMatch(e -> e instanceof Element.Line || e instanceof Element.Roll)
                        && elements.stream().anyMatch(Wish::isLongLine));
    }

    private static boolean isLongLine(Element element) {
        return element instanceof Element.Line line && line.until() == Element.Until.SECONDS && line.value() >= PASS_S;
    }

    /** Whether it is flown in the prediction, and not just given a time. */
    public boolean isFlown() {
        return !elements.isEmpty();
    }
}
