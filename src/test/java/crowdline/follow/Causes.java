package crowdline.follow;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Why what was said of trial flights was wrong: each wrong moment has one cause. And whether the track could have shown it:
 * on a path that has stayed straight from the boundary on, no receiver tells one figure from the next.
 */
final class Causes {
    /** Why a moment is wrong; the first that holds. */
    enum Cause {
        WITHIN_1_S("the figure before or after, within 1 s of the boundary"),
        WITHIN_3_S("the same, within 3 s"),
        WAY_LATE("the way still said, or the figure before it, over 3 s"),
        FIGURE_LATE("the figure before still said, over 3 s"),
        EARLY("the figure after said already, over 3 s"),
        BEFORE_SAID("said not to have begun"),
        NOT_YET("said to have begun, and has not"),
        UNKNOWN_MISSED("what is in no plan, taken for a figure"),
        OFF_SAID("said to be off the plan"),
        LANDING_SAID("a take-off or landing said"),
        NAMED_SECOND("the other one of two that were named"),
        LAP_BEHIND("a figure that was flown already"),
        AHEAD("a figure that comes later, or never");

        private final String words;

        Cause(String words) {
            this.words = words;
        }
    }

    /** Radians the path may turn and still be straight for all that a receiver's noise shows. */
    private static final double STRAIGHT_RAD = Math.toRadians(8);
    /** Metres a second of height gained or lost beside that, where the aircraft is slow. */
    private static final double CLIMB_MPS = 4;

    private static final int WORST = 8;

    private final Map<Cause, Double> seconds = new EnumMap<>(Cause.class);
    private final Map<String, Double> pairs = new LinkedHashMap<>();
    private double allS;
    private double straightS;

    /** Counts one flight; what was said is in steps of {@link Score#STEP_S}. */
    void count(FollowPlan plan, Truth truth, List<Score.Said> said) {
        for (Score.Said s : said) {
            allS += Score.STEP_S;
            int is = truth.figureAt(s.tS());
            if (s.figure() == is) {
                continue;
            }
            seconds.merge(cause(plan, truth, s), Score.STEP_S, Double::sum);
            pairs.merge(called(plan, is) + " → " + called(plan, s.figure()), Score.STEP_S, Double::sum);
            straightS += isStraight(truth, s) ? Score.STEP_S : 0;
        }
    }

    static Cause cause(FollowPlan plan, Truth truth, Score.Said s) {
        int at = index(truth, s.tS());
        int is = truth.figureAt(s.tS());
        int before = figure(truth, at - 1);
        int after = figure(truth, at + 1);
        double sinceS =
                at < 0 ? Double.POSITIVE_INFINITY : s.tS() - truth.flown.get(at).startS();
        double untilS =
                at + 1 < truth.flown.size() ? truth.flown.get(at + 1).startS() - s.tS() : Double.POSITIVE_INFINITY;
        double offS = Math.min(
                s.figure() == before ? sinceS : Double.POSITIVE_INFINITY,
                s.figure() == after ? untilS : Double.POSITIVE_INFINITY);
        if (offS <= 3) {
            return offS <= 1 ? Cause.WITHIN_1_S : Cause.WITHIN_3_S;
        }
        if (is == Truth.BEFORE) {
            return Cause.NOT_YET;
        }
        if (s.figure() == Truth.BEFORE) {
            return Cause.BEFORE_SAID;
        }
        if (is == Truth.UNKNOWN) {
            return Cause.UNKNOWN_MISSED;
        }
        if (s.figure() == Truth.UNKNOWN) {
            return Cause.OFF_SAID;
        }
        if (s.figure() == before) {
            return leads(plan, is) || leads(plan, before) ? Cause.WAY_LATE : Cause.FIGURE_LATE;
        }
        if (s.figure() == after) {
            return Cause.EARLY;
        }
        if (plan.isTimedOnly(s.figure())) {
            return Cause.LANDING_SAID;
        }
        if (s.or() == is) {
            return Cause.NAMED_SECOND;
        }
        boolean flown = truth.flown.stream().anyMatch(f -> f.figure() == s.figure() && f.endS() <= s.tS());
        return flown ? Cause.LAP_BEHIND : Cause.AHEAD;
    }

    /** Whether what was said is a neighbour and the path has been straight between the boundary and this moment. */
    static boolean isStraight(Truth truth, Score.Said s) {
        int at = index(truth, s.tS());
        boolean late = at > 0 && s.figure() == figure(truth, at - 1);
        boolean early = at >= 0 && s.figure() == figure(truth, at + 1);
        if (!late && !early) {
            return false;
        }
        double boundaryS = truth.flown.get(late ? at : at + 1).startS();
        double fromS = Math.min(boundaryS, s.tS());
        double toS = Math.max(boundaryS, s.tS());
        V3 first = truth.at(fromS).groundMps();
        for (double t = fromS; t < toS; t += Score.STEP_S) {
            V3 now = truth.at(t).groundMps();
            double cosine = now.dot(first) / Math.max(now.length() * first.length(), 1e-9);
            if (Math.acos(Math.max(-1, Math.min(1, cosine))) > STRAIGHT_RAD
                    || Math.abs(now.z() - first.z()) > Math.max(CLIMB_MPS, STRAIGHT_RAD * now.length())) {
                return false;
            }
        }
        return true;
    }

    /** Which of the figures flown is flown at a time; −1 before the first. */
    private static int index(Truth truth, double tS) {
        int at = -1;
        while (at + 1 < truth.flown.size() && truth.flown.get(at + 1).startS() <= tS) {
            at++;
        }
        return at;
    }

    private static int figure(Truth truth, int at) {
        return at < 0
                ? Truth.BEFORE
                : at < truth.flown.size() ? truth.flown.get(at).figure() : Integer.MIN_VALUE;
    }

    private static boolean leads(FollowPlan plan, int f) {
        return f >= 0 && plan.bins.isWay(f);
    }

    private static String called(FollowPlan plan, int f) {
        return f == Truth.BEFORE ? "before" : f == Truth.UNKNOWN ? "off the plan" : (f + 1) + " " + plan.name(f);
    }

    void add(Causes other) {
        other.seconds.forEach((cause, s) -> seconds.merge(cause, s, Double::sum));
        other.pairs.forEach((pair, s) -> pairs.merge(pair, s, Double::sum));
        allS += other.allS;
        straightS += other.straightS;
    }

    /** Per cent of the time for each cause, and the pairs most often taken for each other. */
    String table() {
        StringBuilder table = new StringBuilder();
        double wrongS = seconds.values().stream().mapToDouble(v -> v).sum();
        table.append(String.format(
                Locale.ROOT,
                "    wrong %.2f %% of the time; a neighbour on a path still straight %.2f %%, so %.2f %% a track can show%n",
                100 * wrongS / allS,
                100 * straightS / allS,
                100 * (wrongS - straightS) / allS));
        seconds.forEach((cause, s) ->
                table.append(String.format(Locale.ROOT, "    %6.2f %%  %s%n", 100 * s / allS, cause.words)));
        String worst = pairs.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder()))
                .limit(WORST)
                .map(e -> String.format(Locale.ROOT, "%s %.2f %%", e.getKey(), 100 * e.getValue() / allS))
                .collect(Collectors.joining("; "));
        return table + "    most: " + worst + "\n";
    }
}
