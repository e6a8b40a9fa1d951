package crowdline.live.state;

import crowdline.patter.Placed;
import crowdline.patter.Speaking;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What has been said.
 *
 * @param speaking the remark being spoken, or null
 * @param entries what became of remarks, oldest first
 */
public record Talk(@Nullable Speaking speaking, List<RemarkEntry> entries) {
    public Talk {
        entries = List.copyOf(entries);
    }

    /** No remark is to be said twice within this time, seconds: duties are at least so far apart. */
    public static final double AGAIN_S = 60;

    static final Talk NONE = new Talk(null, List.of());

    /** True if the remark was said to its end at least once. */
    public boolean said(String remarkId) {
        return is(remarkId, RemarkEntry.Outcome.SAID);
    }

    /** True if the remark was skipped and not said. */
    public boolean skipped(String remarkId) {
        return is(remarkId, RemarkEntry.Outcome.SKIPPED) && !said(remarkId);
    }

    /** True if nothing more is to be said of it: it was said, left out, or stood on the screen for its time. */
    public boolean settled(String remarkId) {
        return entries.stream().anyMatch(e -> e.remarkId().equals(remarkId) && e.settles());
    }

    /**
     * True if nothing more is to be said of what the plan has here: a duty that is asked for more than once comes again, so
     * for it only what became of it since counts.
     */
    public boolean settled(Placed placed) {
        double sinceS = placed.kind() == RemarkKind.DUTY ? placed.startS() - AGAIN_S : Double.NEGATIVE_INFINITY;
        return entries.stream()
                .anyMatch(e -> e.remarkId().equals(placed.remarkId()) && e.settles() && e.endedAtS() > sinceS);
    }

    /** True if a key has just said of it that it was said: a second press says nothing new. */
    boolean justSaid(String remarkId, double atS) {
        return entries.stream()
                .anyMatch(e -> e.remarkId().equals(remarkId)
                        && e.outcome() == RemarkEntry.Outcome.SAID
                        && atS - e.endedAtS() < AGAIN_S);
    }

    /** As if nothing had been heard of these remarks in the entries that {@code which} names. */
    Talk without(List<String> remarkIds, Predicate<RemarkEntry> which) {
        boolean spoken = speaking != null && remarkIds.contains(speaking.remarkId());
        return new Talk(
                spoken ? null : speaking,
                entries.stream()
                        .filter(e -> !remarkIds.contains(e.remarkId()) || !which.test(e))
                        .toList());
    }

    /** The remark being spoken if it is this one, or null. */
    @Nullable
    Speaking speaking(String remarkId) {
        return speaking != null && speaking.remarkId().equals(remarkId) ? speaking : null;
    }

    private boolean is(String remarkId, RemarkEntry.Outcome outcome) {
        return entries.stream().anyMatch(e -> e.remarkId().equals(remarkId) && e.outcome() == outcome);
    }

    Talk with(@Nullable Speaking next, @Nullable RemarkEntry entry) {
        if (entry == null) {
            return new Talk(next, entries);
        }
        List<RemarkEntry> more = new ArrayList<>(entries);
        more.add(entry);
        return new Talk(next, more);
    }

    /** Whatever is being spoken ends here, unfinished. */
    Talk cutShort(double atS, @Nullable String actId, @Nullable String figureId) {
        Speaking now = speaking;
        if (now == null) {
            return this;
        }
        return ended(now, RemarkEntry.Outcome.CUT_SHORT, atS, actId, figureId);
    }

    /** What is being spoken ends here by itself. */
    Talk ended(
            Speaking now, RemarkEntry.Outcome outcome, double atS, @Nullable String actId, @Nullable String figureId) {
        RemarkEntry entry = new RemarkEntry(
                now.remarkId(),
                now.form(),
                outcome,
                now.filler(),
                now.startedAtS(),
                Math.max(atS, now.startedAtS()),
                actId,
                figureId);
        return with(null, entry);
    }
}
