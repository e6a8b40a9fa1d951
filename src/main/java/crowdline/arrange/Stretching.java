package crowdline.arrange;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Draws a figure so that it takes a time: its straight lines and its rolls are made longer or shorter, nothing else. */
final class Stretching {
    private static final double LEAST = 0.15;
    private static final double MOST = 8;
    /** Halved so often the time is right to a tenth of a second. */
    private static final int MOST_STEPS = 9;
    /** A time as near as this is the time that was asked for. */
    private static final double NEAR_S = 0.5;

    private final FigureTrial trial;

    private final double baseM;

    /** @param baseM where figures are drawn that nobody told how high they begin, and the lowest */
    Stretching(FigureTrial trial, double baseM) {
        this.trial = trial;
        this.baseM = baseM;
    }

    /**
     * The elements of a figure that takes a time, with every number.
     *
     * @param told of it: how fast it begins, and how high, as what is drawn low down cannot be flown where the air is thin
     * @param usual how fast it usually begins, or null if that is not known
     * @return null if it cannot be drawn so
     */
    @Nullable
    List<Element> of(List<Element> elements, double seconds, Asked told, @Nullable EntrySpeed usual) {
        double heightM = told.heightFt() == null ? baseM : Math.max(baseM, Units.mFromFt(told.heightFt()));
        double stallKt = Units.ktFromMps(trial.stallMps(heightM));
        Double known = told.kt() != null
                ? told.kt()
                : usual == null ? null : usual.kt(trial.airframe().usual(), stallKt);
        double begun = known == null ? trial.airframe().usual().passKt() : known;
        FlightState from = FlightState.along(new Vec(0, 0, heightM), Units.mpsFromKt(begun), true);
        FigureTrial.Outcome drawn = trial.fly(elements, from);
        if (!drawn.flown()) {
            return null;
        }
        if (Math.abs(drawn.seconds() - seconds) < NEAR_S) {
            return drawn.elements();
        }
        double low = LEAST;
        double high = MOST;
        List<Element> best = null;
        double off = NEAR_S;
        for (int i = 0; i < MOST_STEPS; i++) {
            double by = Math.sqrt(low * high);
            List<Element> stretched =
                    drawn.elements().stream().map(e -> stretched(e, by)).toList();
            // Drawn again: a longer line at full power would only be a faster one.
            FigureTrial.Outcome out = trial.drawn(stretched, from);
            if (out.flown() && Math.abs(out.seconds() - seconds) < off) {
                off = Math.abs(out.seconds() - seconds);
                best = out.elements();
            }
            if (!out.flown() || out.seconds() > seconds) {
                high = by;
            } else {
                low = by;
            }
        }
        return best;
    }

    private static Element stretched(Element element, double by) {
        if (element instanceof Element.Line line
                && (line.until() == Element.Until.SECONDS || line.until() == Element.Until.METRES)) {
            return new Element.Line(line.until(), line.value() * by, line.middle(), line.power());
        }
        if (element instanceof Element.Roll roll && roll.seconds() != null) {
            return new Element.Roll(
                    roll.style(),
                    roll.toward(),
                    roll.degrees(),
                    roll.seconds() * by,
                    roll.pointsPerTurn(),
                    roll.pauseS(),
                    roll.power());
        }
        return element;
    }
}
