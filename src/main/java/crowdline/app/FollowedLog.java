package crowdline.app;

import crowdline.follow.FollowNow;
import crowdline.follow.FollowPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What following a log gives, moment by moment: what is worth telling, and from when to when each figure was flown. */
final class FollowedLog {
    private static final double TELL_AT_LEAST_S = 1;
    /** A figure seen for less than this is a flicker between two others. */
    private static final double SHORTEST_S = 0.4;

    private final FollowPlan plan;
    private final BiConsumer<FollowPlan, FollowNow> told;
    private final List<Stretch> figures = new ArrayList<>();
    private @Nullable FollowNow last;
    private double toldS = Double.NEGATIVE_INFINITY;
    private double begunS;
    private double confidence;
    private long moments;

    /**
     * A figure that was flown.
     *
     * @param index of the figure in its plan
     * @param startS seconds into the log
     * @param endS seconds into the log
     * @param confidence mean chance that it was this figure, 0 to 1
     */
    record Stretch(int index, double startS, double endS, double confidence) {}

    /** @param told told of every change, and at least every second */
    FollowedLog(FollowPlan plan, BiConsumer<FollowPlan, FollowNow> told) {
        this.plan = plan;
        this.told = told;
    }

    void see(FollowNow now) {
        FollowNow before = last;
        boolean changed = before == null
                || figure(now) != figure(before)
                || now.state() != before.state()
                || now.elementIndex() != before.elementIndex();
        if (before == null || figure(now) != figure(before)) {
            close(now.tS());
            begunS = now.tS();
        }
        if (changed || now.tS() - toldS >= TELL_AT_LEAST_S) {
            told.accept(plan, now);
            toldS = now.tS();
        }
        confidence += now.confidence();
        moments++;
        last = now;
    }

    /** The figures that were flown, in the order flown. */
    List<Stretch> finish() {
        FollowNow end = last;
        if (end != null) {
            close(end.tS());
        }
        return List.copyOf(figures);
    }

    private void close(double tS) {
        FollowNow before = last;
        if (before != null && figure(before) >= 0 && tS - begunS >= SHORTEST_S) {
            Stretch previous = figures.isEmpty() ? null : figures.get(figures.size() - 1);
            Stretch now = new Stretch(figure(before), begunS, tS, confidence / moments);
            if (previous != null && previous.index() == now.index() && now.startS() - previous.endS() < SHORTEST_S) {
                figures.set(figures.size() - 1, new Stretch(now.index(), previous.startS(), tS, now.confidence()));
            } else {
                figures.add(now);
            }
        }
        confidence = 0;
        moments = 0;
    }

    /** The figure being flown, or −1 where none is. */
    private int figure(FollowNow now) {
        return figureId(plan, now) == null ? -1 : now.figureIndex();
    }

    static @Nullable String figureId(FollowPlan plan, FollowNow now) {
        boolean flown = now.state() == FollowNow.State.ON_PLAN || now.state() == FollowNow.State.UNSURE;
        return flown && now.figureIndex() >= 0 && now.figureIndex() < plan.size()
                ? plan.figureId(now.figureIndex())
                : null;
    }

    static String word(FollowNow.State state) {
        return switch (state) {
            case BEFORE -> "before";
            case ON_PLAN -> "on-plan";
            case OFF_PLAN -> "off-plan";
            case UNSURE -> "unsure";
            case AFTER -> "after";
        };
    }

    /** Ids of the figures of the plan that were not found. */
    static List<String> missed(FollowPlan plan, List<Stretch> figures) {
        return IntStream.range(0, plan.size())
                .filter(i -> figures.stream().noneMatch(f -> f.index() == i))
                .mapToObj(plan::figureId)
                .toList();
    }
}
