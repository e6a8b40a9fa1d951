package crowdline.timing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A pass being timed by keys, as a value: every key gives the next one. Times are seconds on any scale that does not go
 * back; a mark that is not after the one before it, as of a key that bounced, changes nothing.
 *
 * @param figureIds the figures of the variant in the order flown
 * @param index place of the figure being flown, −1 before the first, the count when it is over
 * @param markedS when the last mark was made; not used before the first
 * @param dropped places of the figures left out
 * @param done figures that were timed
 * @param before what going back leads to, or null at the beginning
 */
public record PassTimer(
        List<String> figureIds,
        int index,
        double markedS,
        List<Integer> dropped,
        List<Pass.TimedFigure> done,
        @Nullable PassTimer before) {
    public PassTimer {
        figureIds = List.copyOf(figureIds);
        dropped = List.copyOf(dropped);
        done = List.copyOf(done);
    }

    /** A timer before its pass. */
    public static PassTimer of(List<String> figureIds) {
        return new PassTimer(figureIds, -1, 0, List.of(), List.of(), null);
    }

    /** Begins the first figure that is not dropped, or ends the one being flown and begins the next; after the last it ends. */
    public PassTimer next(double atS) {
        return marked(atS, nextIndex());
    }

    /** Ends the figure being flown, and the pass with it. Before the first figure nothing is there to end. */
    public PassTimer end(double atS) {
        return index < 0 ? this : marked(atS, figureIds.size());
    }

    /** The next figure will not be flown. */
    public PassTimer drop() {
        int next = nextIndex();
        if (over() || next == figureIds.size()) {
            return this;
        }
        List<Integer> more = new ArrayList<>(dropped);
        more.add(next);
        return new PassTimer(figureIds, index, markedS, more, done, this);
    }

    /** Takes the last key back that did anything; at the beginning there is none. */
    public PassTimer back() {
        return before == null ? this : before;
    }

    /** The figure being flown, or empty before and after the pass. */
    public Optional<String> current() {
        return flying() ? Optional.of(figureIds.get(index)) : Optional.empty();
    }

    /** The figure that the next mark begins, or empty if it ends the pass. */
    public Optional<String> upcoming() {
        int next = nextIndex();
        return next < figureIds.size() ? Optional.of(figureIds.get(next)) : Optional.empty();
    }

    public boolean over() {
        return index >= 0 && index == figureIds.size();
    }

    /**
     * What was timed so far.
     *
     * @param id the new pass's own name
     * @param how {@link Pass.How#WALKED} or {@link Pass.How#BY_HAND}
     */
    public Pass pass(String id, String actId, String variant, Pass.How how, Instant begunAt) {
        return Pass.of(id, actId, variant, how, begunAt, done).fromZero();
    }

    private boolean flying() {
        return index >= 0 && index < figureIds.size();
    }

    private int nextIndex() {
        int next = index + 1;
        while (dropped.contains(next)) {
            next++;
        }
        return Math.min(next, figureIds.size());
    }

    private PassTimer marked(double atS, int nextIndex) {
        if (!Double.isFinite(atS) || over() || (index >= 0 && !(atS > markedS))) {
            return this;
        }
        List<Pass.TimedFigure> more = new ArrayList<>(done);
        if (flying()) {
            more.add(new Pass.TimedFigure(figureIds.get(index), markedS, atS));
        }
        return new PassTimer(figureIds, nextIndex, atS, dropped, more, this);
    }
}
