package crowdline.patter;

import crowdline.show.figure.Quiet;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a practice run went against its plan: numbers, no marks. All times in seconds of the act.
 *
 * @param fromS when the run began
 * @param toS when it was stopped; what comes later is not judged
 * @param calls the calls whose figures began in the run, in their order
 * @param overruns remarks that ran into the time of a call
 * @param quiets quiets that were talked into
 * @param dutiesDue how many duties had their time in the run
 * @param dutiesMissed those that were not said
 * @param talkS seconds somebody talked
 */
public record Practice(
        double fromS,
        double toS,
        List<Call> calls,
        List<Overrun> overruns,
        List<BrokenQuiet> quiets,
        int dutiesDue,
        List<String> dutiesMissed,
        double talkS) {
    /** A key is pressed no more exactly than this; tuned: below it nothing is held against anybody. */
    static final double KEY_S = 0.3;

    /** A remark as it was read aloud, from its start to its end. */
    public record Said(String remarkId, double startS, double endS) {
        public Said {
            if (!Double.isFinite(startS) || !Double.isFinite(endS) || endS < startS) {
                throw new IllegalArgumentException("remark " + remarkId + " was said from " + startS + " to " + endS
                        + " s; its end must not be before its start");
            }
        }
    }

    /** When a call ended against its figure. */
    public enum Timing {
        /** Within the rules. */
        ON_TIME,
        /** So long before the figure that the crowd waits. */
        EARLY,
        /** So late that the figure has begun, or the crowd has no time to look up. */
        LATE,
        NOT_SAID
    }

    /**
     * A call.
     *
     * @param beforeS how long before its figure it ended, negative if after its start; null if it was not said
     */
    public record Call(
            String remarkId,
            String figureId,
            Timing timing,
            @Nullable Double beforeS) {}

    /** A remark that ran past the moment at which a call was to begin, by {@code seconds}. */
    public record Overrun(String remarkId, String callId, double overS) {}

    /** A quiet of a figure that was talked into, for {@code seconds}. */
    public record BrokenQuiet(String figureId, double talkedS) {}

    public Practice {
        calls = List.copyOf(calls);
        overruns = List.copyOf(overruns);
        quiets = List.copyOf(quiets);
        dutiesMissed = List.copyOf(dutiesMissed);
    }

    /** Share of the run somebody talked, 0 to 1. */
    public double talkShare() {
        return toS > fromS ? talkS / (toS - fromS) : 0;
    }

    public long calls(Timing timing) {
        return calls.stream().filter(c -> c.timing() == timing).count();
    }

    /**
     * Compares a run with its plan.
     *
     * @param slots the figures as they were flown in the run
     * @param plan what was to be said when
     * @param said what was said, in any order
     * @param rules what a call's timing is held against
     */
    public static Practice of(
            List<Slot> slots, Plan plan, List<Said> said, double fromS, double toS, PatterRules rules) {
        List<Call> calls = new ArrayList<>();
        List<String> missed = new ArrayList<>();
        int duties = 0;
        for (Placed placed : plan.placed()) {
            if (placed.kind() == RemarkKind.CALL) {
                slots.stream()
                        .filter(s -> s.figureId().equals(placed.figureId()))
                        .filter(s -> s.startS() > fromS && s.startS() <= toS)
                        .findFirst()
                        .ifPresent(slot -> calls.add(call(placed, slot, said, rules)));
            } else if (placed.kind() == RemarkKind.DUTY && placed.startS() >= fromS && placed.endS() <= toS) {
                duties++;
                if (find(said, placed.remarkId()).isEmpty()) {
                    missed.add(placed.remarkId());
                }
            }
        }
        return new Practice(
                fromS,
                toS,
                calls,
                overruns(plan, said, toS),
                quiets(slots, said),
                duties,
                missed,
                talked(said, fromS, toS));
    }

    private static Optional<Said> find(List<Said> said, String remarkId) {
        return said.stream().filter(s -> s.remarkId().equals(remarkId)).findFirst();
    }

    private static Call call(Placed placed, Slot slot, List<Said> said, PatterRules rules) {
        Optional<Said> one = find(said, placed.remarkId());
        if (one.isEmpty()) {
            return new Call(placed.remarkId(), slot.figureId(), Timing.NOT_SAID, null);
        }
        double beforeS = slot.startS() - one.get().endS();
        Timing timing = beforeS > rules.callEndsAtMostBeforeS() + KEY_S
                ? Timing.EARLY
                : beforeS < rules.callEndsAtLeastBeforeS() - KEY_S ? Timing.LATE : Timing.ON_TIME;
        return new Call(placed.remarkId(), slot.figureId(), timing, beforeS);
    }

    private static List<Overrun> overruns(Plan plan, List<Said> said, double toS) {
        List<Overrun> overruns = new ArrayList<>();
        for (Said one : said) {
            for (Placed call : plan.placed()) {
                double overS = Math.min(one.endS(), toS) - call.startS();
                if (call.kind() == RemarkKind.CALL
                        && !call.remarkId().equals(one.remarkId())
                        && one.startS() < call.startS()
                        && overS > KEY_S) {
                    overruns.add(new Overrun(one.remarkId(), call.remarkId(), overS));
                    break;
                }
            }
        }
        return overruns;
    }

    private static List<BrokenQuiet> quiets(List<Slot> slots, List<Said> said) {
        List<BrokenQuiet> broken = new ArrayList<>();
        for (Slot slot : slots) {
            for (Quiet quiet : slot.quiets()) {
                Double to = quiet.toS();
                double from = slot.startS() + quiet.fromS();
                double end = to == null ? slot.endS() : Math.min(slot.endS(), slot.startS() + to);
                double talkedS = talked(said, from, end);
                if (talkedS > KEY_S) {
                    broken.add(new BrokenQuiet(slot.figureId(), talkedS));
                }
            }
        }
        return broken;
    }

    /** Seconds of a stretch in which at least one remark was being said. */
    private static double talked(List<Said> said, double fromS, double toS) {
        double sum = 0;
        double reached = fromS;
        List<Said> sorted =
                said.stream().sorted(Comparator.comparingDouble(Said::startS)).toList();
        for (Said one : sorted) {
            double start = Math.max(reached, one.startS());
            double end = Math.min(toS, one.endS());
            if (end > start) {
                sum += end - start;
                reached = end;
            }
        }
        return sum;
    }
}
