package crowdline.patter;

import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where one form of a remark may lie by the rules of its kind and its own times, in ticks, before quiets and the moment
 * now are looked at.
 *
 * @param first earliest start
 * @param last latest start; below {@code first} if it does not fit at all
 * @param spare how far inside a remark new to the plan must lie
 * @param wished the best start
 * @param insist true if it may use the whole window where it does not fit well inside
 */
record Window(int first, int last, int spare, int wished, boolean insist) {

    static Window floating(RemarkKind kind, int length, Horizon horizon, PatterRules rules) {
        // Nothing drifts at the near end, so what floats may begin at once; only the far end needs spare time.
        int spare = Tick.at(rules.spareS());
        return new Window(
                horizon.freeFrom() - spare, horizon.end() - length, spare, horizon.freeFrom(), kind == RemarkKind.DUTY);
    }

    static Window of(Remark remark, int length, Slot slot, PatterRules rules) {
        int start = Tick.at(slot.startS());
        OwnTimes own = OwnTimes.of(remark, slot.moments(), rules);
        @Nullable Integer earliest = against(start, own.earliestS());
        @Nullable Integer latest = against(start, own.latestS());
        @Nullable Integer startBy = against(start, own.startByS());
        int spare = Tick.at(rules.spareS());
        int first;
        int lastEnd;
        if (remark.kind() == RemarkKind.CALL) {
            int endsFrom = start - Tick.at(rules.callEndsAtMostBeforeS());
            lastEnd = start - Tick.at(rules.callEndsAtLeastBeforeS());
            first = Math.max(endsFrom - length, start - Tick.at(rules.callStartsAtMostBeforeS()));
            first = earliest == null ? first : Math.max(first, earliest);
            spare = Math.min(spare, (lastEnd - endsFrom) / 2);
        } else {
            first = earliest == null ? start : earliest;
            lastEnd = Tick.at(slot.endS() + rules.runPastS());
        }
        boolean ownEnd = latest != null && latest <= lastEnd;
        lastEnd = latest == null ? lastEnd : Math.min(latest, lastEnd);
        if (latest == null && startBy == null && remark.kind() != RemarkKind.CALL) {
            // Begun in the last moment of a figure it would tell of what is over; where it must, it may begin at once.
            lastEnd = Math.min(lastEnd, Math.max(Tick.at(slot.endS()) + length / 2, first + length + 2 * spare));
        }
        int last = startBy == null ? lastEnd - length : Math.min(lastEnd - length, startBy);
        boolean insist =
                ownEnd || startBy != null || remark.kind() == RemarkKind.CALL || remark.kind() == RemarkKind.DUTY;
        int wished = remark.kind() == RemarkKind.CALL ? (first + last) / 2 : first + spare;
        return new Window(first, last, spare, wished, insist);
    }

    private static @Nullable Integer against(int start, @Nullable Double seconds) {
        return seconds == null ? null : start + Tick.at(seconds);
    }

    /**
     * Every start the rules allow a remark of a length.
     *
     * @param closed stretches in which it may not be said
     */
    Starts all(int length, Horizon horizon, List<Starts.Stretch> closed) {
        return Starts.within(Math.max(first, horizon.freeFrom()), last, length, closed, 0);
    }

    /** The starts for a remark new to the plan: clear of every edge that drifts, or all if it insists and must. */
    Starts forNewcomer(int length, Horizon horizon, List<Starts.Stretch> closed) {
        int low = Math.max(first + spare, horizon.freeFrom());
        Starts clear = Starts.within(low, last - spare, length, closed, spare);
        return clear.isEmpty() && insist ? all(length, horizon, closed) : clear;
    }
}
