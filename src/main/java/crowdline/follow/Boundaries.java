package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * When each figure of a whole log began and ended. Which figures is what the follower said at every reading, without what it
 * only glimpsed; when one goes over into the next is looked at again from what followed.
 *
 * @param figures in the order flown
 * @param dropped figures of the plan that were not seen, from 0
 * @param repeated figures of the plan that were seen more than once
 */
public record Boundaries(List<Span> figures, List<Integer> dropped, List<Integer> repeated) {
    private static final double SHORTEST_S = 1;
    /** More than this between two figures is no going over, seconds. */
    private static final double PAUSE_S = 1.5;

    /**
     * One figure flown.
     *
     * @param figureIndex from 0
     * @param startS on the scale of the readings
     * @param endS on the scale of the readings
     * @param confidence mean of what was believed of it at the time, 0 to 1
     */
    public record Span(int figureIndex, double startS, double endS, double confidence) {
        private double lastsS() {
            return endS - startS;
        }

        private Span beginningAt(double tS) {
            return new Span(figureIndex, tS, endS, confidence);
        }

        private Span endingAt(double tS) {
            return new Span(figureIndex, startS, tS, confidence);
        }
    }

    public Boundaries {
        figures = List.copyOf(figures);
        dropped = List.copyOf(dropped);
        repeated = List.copyOf(repeated);
    }

    /** Follows a log from its beginning, of which nothing need be known. */
    public static Boundaries of(FollowPlan plan, List<Reading> log) {
        Follower follower = new Follower(plan);
        return said(plan, log.stream().map(follower::reading).toList(), log);
    }

    /** Of what a follower said of a log, both in the order of time. */
    public static Boundaries said(FollowPlan plan, List<FollowNow> moments, List<Reading> log) {
        List<Span> spans = new ArrayList<>();
        for (FollowNow now : moments) {
            boolean flying = now.figureIndex() >= 0 && now.figureIndex() < plan.size();
            if (flying && now.state() != FollowNow.State.OFF_PLAN) {
                add(spans, new Span(now.figureIndex(), now.tS(), now.tS(), now.confidence()));
            }
        }
        return judged(plan, lookedBackAt(new LookBack(plan), seen(plan, spans), log));
    }

    private static void add(List<Span> spans, Span next) {
        Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
        if (last == null || last.figureIndex() != next.figureIndex()) {
            spans.add(next);
            return;
        }
        double before = last.endS() - last.startS();
        double now = next.endS() - last.endS();
        double confidence = before + now <= 0
                ? last.confidence()
                : (before * last.confidence() + now * next.confidence()) / (before + now);
        spans.set(spans.size() - 1, new Span(last.figureIndex(), last.startS(), next.endS(), confidence));
    }

    /** Without what was only glimpsed: it was expected, and what follows was flown instead. */
    private static List<Span> seen(FollowPlan plan, List<Span> spans) {
        List<Span> seen = new ArrayList<>();
        double glimpsedS = Double.NaN;
        double untilS = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            boolean whole = i > 0 && i + 1 < spans.size();
            boolean goesOn = span.startS() - untilS < PAUSE_S;
            if (span.lastsS() < SHORTEST_S || (whole && span.lastsS() < plan.glimpseS(span.figureIndex()))) {
                glimpsedS = goesOn ? glimpsedS : span.startS();
                untilS = span.endS();
            } else {
                add(seen, goesOn ? span.beginningAt(glimpsedS) : span);
                untilS = Double.NEGATIVE_INFINITY;
            }
        }
        return seen;
    }

    /** With the moments at which one figure goes over into another as they look afterwards. */
    private static List<Span> lookedBackAt(LookBack back, List<Span> said, List<Reading> log) {
        List<Span> spans = new ArrayList<>(said);
        for (int i = 1; i < said.size(); i++) {
            Span before = spans.get(i - 1);
            Span span = said.get(i);
            if (span.startS() - before.endS() > PAUSE_S) {
                continue;
            }
            // It was between the reading before and the one at which it was said.
            double saidS = (before.endS() + span.startS()) / 2;
            double begin = back.begin(before.figureIndex(), span.figureIndex(), saidS, log);
            if (begin - before.startS() > SHORTEST_S && span.endS() - begin > SHORTEST_S) {
                spans.set(i - 1, before.endingAt(begin));
                spans.set(i, span.beginningAt(begin));
            }
        }
        return spans;
    }

    private static Boundaries judged(FollowPlan plan, List<Span> spans) {
        Set<Integer> seen = new HashSet<>();
        List<Integer> repeated = new ArrayList<>();
        for (Span span : spans) {
            if (!seen.add(span.figureIndex()) && !repeated.contains(span.figureIndex())) {
                repeated.add(span.figureIndex());
            }
        }
        List<Integer> dropped = new ArrayList<>();
        for (int f = 0; f < plan.size(); f++) {
            if (!seen.contains(f)) {
                dropped.add(f);
            }
        }
        return new Boundaries(spans, dropped, repeated);
    }
}
