package crowdline.layout;

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
 */
public record Piece(
        @Nullable Wish wish,
        @Nullable Transit transit,
        List<Element> elements,
        double seconds,
        FlightState from,
        FlightState to,
        @Nullable String lack) {
    public Piece {
        elements = List.copyOf(elements);
    }

    static Piece figure(Wish wish, List<Element> elements, double seconds, FlightState from, FlightState to) {
        return new Piece(wish, null, elements, seconds, from, to, null);
    }

    static Piece transit(Transit transit, List<Element> elements, double seconds, FlightState from, FlightState to) {
        return new Piece(null, transit, elements, seconds, from, to, null);
    }

    static Piece lacking(Wish wish, double seconds, FlightState at, String lack) {
        return new Piece(wish, null, List.of(), seconds, at, at, lack);
    }

    public boolean isTransit() {
        return transit != null;
    }
}
