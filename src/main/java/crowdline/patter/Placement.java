package crowdline.patter;

import java.util.ArrayList;
import java.util.List;

/**
 * Gives a sequence its times: each step at the start it wishes for (where it was before; a call in the middle of its
 * window; anything else as early as it may), moved only as far as its neighbours make it.
 */
final class Placement {
    /** A step and its start in ticks. */
    record Timed(Step step, int start) {
        int end() {
            return start + step.choice().length();
        }
    }

    private Placement() {}

    static List<Timed> of(Sequence sequence, Workload work) {
        List<Timed> timed = new ArrayList<>();
        int free = work.horizon().freeFrom();
        for (int i = 0; i < sequence.steps().size(); i++) {
            Step step = sequence.steps().get(i);
            Choice choice = step.choice();
            int latest = sequence.latestStart(i);
            int start = choice.starts().earliest(Math.max(free, Math.min(choice.wishedStart(), latest)));
            if (start > latest) {
                start = choice.starts().latest(latest);
            }
            timed.add(new Timed(step, start));
            free = start + choice.length() + work.breath();
        }
        return timed;
    }
}
