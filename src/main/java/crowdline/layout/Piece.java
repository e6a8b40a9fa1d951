package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.show.figure.Element;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One piece of an act laid out: a figure that was wanted, or a transit before it.
 *
 * @param wish what was wanted, or null for a transit
 * @param transit which transit, or null for a figure
 * @param elements what is flown, with every number; empty if it is only timed
 * @param seconds how long it takes
 * @param from where it begins
 * @param to where it leaves the aircraft
 * @param lack why it cannot be flown as it was wanted, in a sentence that follows its name; null if it can. It is only
 *     timed then
 * @param lowestM how low it comes above the datum, metres
 */
public record Piece(
        @Nullable Wish wish,
        @Nullable Transit transit,
        List<Element> elements,
        double seconds,
        FlightState from,
        FlightState to,
        @Nullable String lack,
        double lowestM) {
    public Piece {
        elements = List.copyOf(elements);
    }

    /** What only takes its time. */
    static Piece timed(Wish wish, double seconds, FlightState from, FlightState to) {
        double lowestM = Math.min(from.place().z(), to.place().z());
        return new Piece(wish, null, List.of(), seconds, from, to, null, lowestM);
    }

    static Piece figure(Wish wish, FlightState from, FigureTrial.Outcome out) {
        return new Piece(
                wish,
                null,
                out.elements(),
                out.seconds(),
                from,
                out.end(),
                null,
                out.box().lowestM());
    }

    static Piece transit(Transit transit, List<Element> elements, FlightState from, FigureTrial.Outcome out) {
        return new Piece(
                null,
                transit,
                elements,
                out.seconds(),
                from,
                out.end(),
                null,
                out.box().lowestM());
    }

    static Piece lacking(Wish wish, double seconds, FlightState at, String lack) {
        return new Piece(
                wish, null, List.of(), seconds, at, at, lack, at.place().z());
    }

    /** The same, asked for as a figure of the act. */
    public Piece as(Wish asked) {
        return new Piece(asked, null, elements, seconds, from, to, lack, lowestM);
    }

    /** Whether it is flown to come back the other way. */
    public boolean turns() {
        return transit == Transit.TURNS_BACK || transit == Transit.TURNS_UP;
    }

    public boolean isTransit() {
        return transit != null;
    }
}
