package crowdline.live.state;

import crowdline.live.event.Source;
import crowdline.measure.Must;
import org.jspecify.annotations.Nullable;

/**
 * A figure as it was flown.
 *
 * @param figureId its id; a figure flown twice is here twice
 * @param startedAtS when it began, seconds on the session's scale
 * @param heldS seconds of it during which its clock was held
 * @param endedAtS when it ended, or null while it is being flown. If this is before the next one's start, the aircraft was
 *     off the plan in between
 * @param mark how its start was marked
 */
public record Flown(
        String figureId,
        double startedAtS,
        double heldS,
        @Nullable Double endedAtS,
        Source mark) {
    public Flown {
        Must.beSaid("figure id", figureId);
        Must.beTime("flown startedAtS", startedAtS);
        Must.beTime("flown heldS", heldS);
        Must.beFiniteIfKnown("flown endedAtS", endedAtS);
    }

    Flown ended(double atS, double wholeHeldS) {
        return new Flown(figureId, startedAtS, wholeHeldS, atS, mark);
    }

    Flown goesOn() {
        return new Flown(figureId, startedAtS, heldS, null, mark);
    }
}
