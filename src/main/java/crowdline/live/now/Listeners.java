package crowdline.live.now;

import crowdline.live.state.LiveState;
import crowdline.live.state.RemarkEntry;
import crowdline.show.Act;
import crowdline.show.Show;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * From when somebody may be listening. The program is opened long before the first act of a day, and what it would ask for
 * then nobody hears.
 */
final class Listeners {
    /** So long before the first slot of the day the microphone may be on, seconds; common practice, no source. */
    static final double BEFORE_S = 1800;

    private Listeners() {}

    /**
     * From when, on the session's scale; negative infinity once the day has begun: an act was flown or cancelled, or a key
     * said that something was said.
     */
    static double fromS(Show show, LiveState state, LiveNow now) {
        boolean hasBegun = state.runningOrder().stream()
                        .anyMatch(id -> state.hasBegun(id) || state.day().isCancelled(id))
                || state.talk().entries().stream().anyMatch(e -> e.outcome() == RemarkEntry.Outcome.SAID);
        if (hasBegun) {
            return Double.NEGATIVE_INFINITY;
        }
        LocalDateTime here = LocalDateTime.ofInstant(now.wall(), show.venue().timeZone());
        return state.runningOrder().stream()
                .map(show::act)
                .flatMap(Optional::stream)
                .flatMap(act -> slots(show, state, act))
                .min(Comparator.naturalOrder())
                .map(first -> now.nowS() + Duration.between(here, first).toMillis() / 1000.0 - BEFORE_S)
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** As it was planned and as it was moved: who came for the first waits for the second. */
    private static Stream<LocalDateTime> slots(Show show, LiveState state, Act act) {
        return Stream.of(show.slotStart(act), DayNow.slot(state, show, act));
    }
}
