package crowdline.steer;

import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Course;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * When an act that the aircraft began must have begun for it to be where it is seen to be. The start that was told first is
 * when the follower was sure; early and late for the whole act would be wrong by the seconds between. It is put right while
 * the first figure is flown that the follower can see into, and then stands. Not thread-safe.
 */
final class StartCorrection {
    /** What is believed at one reading wanders; this many seconds of it are averaged. Tuned. */
    private static final double SECONDS = 2;
    /**
     * Before this share of the figure the follower knows that it is flown, and hardly how far. Tuned on flights to plan: on a
     * straight line or in a spin it is 8 s out at first and half a second here.
     */
    private static final double SEEN_INTO = 0.6;
    /** Less than this is not worth a line in the journal, seconds. Tuned: nobody is told of less than three. */
    private static final double WORTH_S = 0.3;
    /** What was told is not told again while it is on its way, seconds. */
    private static final double ON_ITS_WAY_S = 1;

    private record Guess(double atS, double beganS) {}

    private final Deque<Guess> guesses = new ArrayDeque<>();
    private double toldS = Double.NEGATIVE_INFINITY;

    /** The start of the act put right, if it must be now. */
    Optional<FlightEvent> next(FollowPlan plan, LiveState state, FollowNow now, double nowS) {
        Double startS = state.course().actStartedAtS();
        if (startS == null || state.incidentOpen() || !mayCorrect(plan, state.course())) {
            guesses.clear();
            return Optional.empty();
        }
        int figure = state.course().position();
        if (plan.isTimedOnly(figure)
                || now.state() != FollowNow.State.ON_PLAN
                || now.figureIndex() != figure
                || !now.isSure()
                || now.phase() < SEEN_INTO) {
            guesses.clear();
            return Optional.empty();
        }
        double gone = now.phase() * plan.plannedS(figure);
        for (int f = 0; f < figure; f++) {
            gone += plan.plannedS(f);
        }
        guesses.addLast(new Guess(nowS, nowS - gone));
        while (nowS - guesses.getFirst().atS() > SECONDS) {
            guesses.removeFirst();
        }
        boolean enough = nowS - guesses.getFirst().atS() > SECONDS / 2;
        double beganS = guesses.stream().mapToDouble(Guess::beganS).average().orElse(startS);
        if (!enough || nowS - toldS < ON_ITS_WAY_S || Math.abs(beganS - startS) < WORTH_S) {
            return Optional.empty();
        }
        toldS = nowS;
        return Optional.of(new FlightEvent.AircraftBegan(nowS, Math.max(0, Math.min(nowS, beganS))));
    }

    /** Only what the aircraft alone has marked, in the order of the plan, up to the first figure that can be seen into. */
    private static boolean mayCorrect(FollowPlan plan, Course course) {
        if (!(course.phase() instanceof Phase.Flying)
                || course.source() != Source.AIRCRAFT
                || course.clockStandsIn()
                || course.flown().size() != course.position() + 1) {
            return false;
        }
        for (int f = 0; f < course.flown().size(); f++) {
            boolean asPlanned = course.flown().get(f).figureId().equals(plan.figureId(f))
                    && course.flown().get(f).mark() == Source.AIRCRAFT;
            boolean before = f < course.position();
            if (!asPlanned || (before && !plan.isTimedOnly(f))) {
                return false;
            }
        }
        return true;
    }
}
