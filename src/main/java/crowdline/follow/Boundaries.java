package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * When each figure of a whole log began and ended. The figures are those the follower named at each reading, leaving out any
 * it named only briefly. Each change from one figure to the next is then timed again, with the readings that came after it.
 *
 * @param figures in the order flown
 * @param dropped figures of the plan that were not seen, from 0
 * @param repeated figures of the plan that were seen more than once
 */
public record Boundaries(List<Span> figures, List<Integer> dropped, List<Integer> repeated) {
    /** Seconds: what was named for less was not flown. */
    private static final double SHORTEST_S = 1;
    /** Seconds: with a longer gap between them, one figure did not lead into the next. */
    private static final double PAUSE_S = 1.5;

    /**
     * One figure flown.
     *
     * @param figureIndex from 0
     * @param startS on the scale of the readings
     * @param endS on the scale of the readings
     * @param confidence mean confidence in it at the time, 0 to 1
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

    /** Confidence, 0 to 1: a figure believed in less is not taken for flown. Tuned: see {@link #sure}. */
    private static final double SURE_ENOUGH = 0.6;
    /** Share of the figures with a predicted path: with fewer of them found, it is another flight. */
    private static final double SHOWN_FROM = 0.5;
    /** The same of a log that may begin late. Tuned: 0.5 takes twice as many flights of other acts. */
    private static final double SHOWN_LATE_FROM = 0.65;

    public Boundaries {
        figures = List.copyOf(figures);
        dropped = List.copyOf(dropped);
        repeated = List.copyOf(repeated);
    }

    /**
     * Those that are believed in enough to learn from. Those of an act flown as planned have a confidence of 0.88 and more,
     * those seen in a flight of another act down to 0.2.
     */
    public List<Span> sure() {
        return figures.stream()
                .filter(span -> span.lastsS() > 0 && span.confidence() >= SURE_ENOUGH)
                .toList();
    }

    /**
     * How many figures with a predicted path are surely among these in the order planned; what is only timed is found in nearly any
     * flight, and figures of another act come in any order.
     */
    public int recognised(FollowPlan plan) {
        List<Integer> found = sure().stream()
                .map(Span::figureIndex)
                .filter(f -> !plan.isTimedOnly(f))
                .toList();
        int[] upTo = new int[found.size()];
        for (int i = 0; i < upTo.length; i++) {
            upTo[i] = 1;
            for (int j = 0; j < i; j++) {
                upTo[i] = found.get(j) < found.get(i) ? Math.max(upTo[i], upTo[j] + 1) : upTo[i];
            }
        }
        return Arrays.stream(upTo).max().orElse(0);
    }

    /** True if a flight in which these were found is of this plan, wholly or for the most part. */
    public boolean show(FollowPlan plan) {
        int recognised = recognised(plan);
        return recognised > 0 && recognised >= SHOWN_FROM * plan.recognisable();
    }

    /**
     * Follows a log; nothing else need be known of the flight. Where it does not show the act from its beginning it may begin late;
     * then more of the act is asked, for what begins anywhere fits more flights.
     */
    public static Boundaries of(FollowPlan plan, List<Reading> log) {
        Boundaries whole = by(new Follower(plan), plan, log);
        if (whole.show(plan)) {
            return whole;
        }
        Boundaries late = by(Follower.heardLate(plan), plan, log);
        return late.recognised(plan) >= SHOWN_LATE_FROM * plan.recognisable() ? late : whole;
    }

    private static Boundaries by(Follower follower, FollowPlan plan, List<Reading> log) {
        return said(plan, log.stream().map(follower::reading).toList(), log);
    }

    /** Takes what a follower said of a log, both in the order of time. */
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

    /** Leaves out what was named only briefly: it was expected, but the figure after it was flown instead. */
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

    /** Times each change from one figure to the next again. */
    private static List<Span> lookedBackAt(LookBack back, List<Span> said, List<Reading> log) {
        List<Span> spans = new ArrayList<>(said);
        for (int i = 1; i < said.size(); i++) {
            Span before = spans.get(i - 1);
            Span span = said.get(i);
            if (span.startS() - before.endS() > PAUSE_S) {
                continue;
            }
            // The change came between the last reading of one figure and the first of the next.
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
