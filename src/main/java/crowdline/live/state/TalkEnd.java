package crowdline.live.state;

import crowdline.live.event.TalkEvent;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Speaking;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * When what was taken by a key leaves the screen by itself, as planned words do: once it has had its time, and at once for
 * a call that is due.
 */
public final class TalkEnd {
    /** What has had its time stays this long, for the commentator to mark it, seconds. Tuned. */
    public static final double LINGER_S = 3;
    /** A call is shown this long before it begins, seconds. Tuned: a breath in. */
    public static final double AHEAD_S = 1;

    private TalkEnd() {}

    /**
     * What ends by itself at {@code nowS}, if anything.
     *
     * @param lengths how long a form of a remark takes this speaker; empty for one that is no longer in the show
     */
    public static Optional<TalkEvent.RemarkLeft> due(
            LiveState state, Plan plan, BiFunction<String, RemarkForm, Optional<SpokenTime>> lengths, double nowS) {
        Speaking speaking = state.talk().speaking();
        if (speaking == null || state.incidentOpen()) {
            return Optional.empty();
        }
        Optional<SpokenTime> time = lengths.apply(speaking.remarkId(), speaking.form());
        double saidS = speaking.startedAtS() + time.map(SpokenTime::seconds).orElse(0.0);
        double overS = speaking.startedAtS()
                + time.map(t -> Math.max(t.seconds() + LINGER_S, t.highS())).orElse(0.0);
        if (overS <= nowS) {
            return Optional.of(new TalkEvent.RemarkLeft(Math.max(0, overS), speaking.remarkId(), false));
        }
        return callIsDue(state, plan, speaking, nowS)
                ? Optional.of(new TalkEvent.RemarkLeft(nowS, speaking.remarkId(), nowS < saidS))
                : Optional.empty();
    }

    private static boolean callIsDue(LiveState state, Plan plan, Speaking speaking, double nowS) {
        Talk here = state.talkHere();
        return plan.placed().stream()
                .filter(p -> p.kind() == RemarkKind.CALL && !p.remarkId().equals(speaking.remarkId()))
                .filter(p -> !here.settled(p))
                .anyMatch(p -> isDue(p, nowS));
    }

    private static boolean isDue(Placed call, double nowS) {
        return call.startS() - AHEAD_S <= nowS && nowS < call.endS();
    }
}
