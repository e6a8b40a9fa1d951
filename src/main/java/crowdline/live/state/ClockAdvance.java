package crowdline.live.state;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * When the clock moves the act on. It counts from the start of the figure being flown, so every step by hand sets it right;
 * after a long gap it yields one boundary after the other, each with its own time.
 */
public final class ClockAdvance {
    private ClockAdvance() {}

    /**
     * The boundary that has been passed by {@code nowS}, if any. Apply it and ask again.
     *
     * @param nowS seconds on the session's scale
     */
    public static Optional<FlightEvent.ClockAdvanced> due(LiveState state, Durations durations, double nowS) {
        OptionalDouble dueS = nextDueS(state, durations);
        OptionalInt next = state.course().nextIndex();
        return dueS.isPresent() && next.isPresent() && dueS.getAsDouble() <= nowS
                ? Optional.of(new FlightEvent.ClockAdvanced(dueS.getAsDouble(), next.getAsInt()))
                : Optional.empty();
    }

    /** When the clock will move the act on, on the session's scale; empty if it will not by itself. */
    public static OptionalDouble nextDueS(LiveState state, Durations durations) {
        if (state.source() != Source.CLOCK
                || state.incidentOpen()
                || state.course().nextIndex().isEmpty()
                || !(state.phase() instanceof Phase.Flying flying)) {
            return OptionalDouble.empty();
        }
        double dueS = endS(flying, state.course(), durations);
        if (!Double.isFinite(dueS)) {
            return OptionalDouble.empty();
        }
        return dueS <= flying.confirmedAtS() && dueS > flying.startedAtS()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(dueS, flying.startedAtS()));
    }

    /** True if the clock would have left the figure when the hand said it was still being flown. */
    public static boolean waitsForHand(LiveState state, Durations durations) {
        return state.source() == Source.CLOCK
                && state.phase() instanceof Phase.Flying
                && state.course().nextIndex().isPresent()
                && nextDueS(state, durations).isEmpty();
    }

    private static double endS(Phase.Flying flying, Course course, Durations durations) {
        double pauseS = pauseS(course, durations);
        return flying.startedAtS() + flying.heldS() + durations.secondsOf(flying.index()) + pauseS;
    }

    /** What lies between the figure being flown and the next, seconds; 0 where either is not known. */
    public static double pauseS(Course course, Durations durations) {
        OptionalInt next = course.nextIndex();
        return course.position() < 0 || next.isEmpty() ? 0 : durations.pauseS(course.position(), next.getAsInt());
    }
}
