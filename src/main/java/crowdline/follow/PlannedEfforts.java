package crowdline.follow;

import java.util.ArrayList;
import java.util.List;

/**
 * How seldom an act's figures and ways are flown as gently as the aircraft was of late. Who flies slowly and gently for a while where the
 * plan never does is about to land.
 */
final class PlannedEfforts {
    /** Factors on what was seen, and what is added to it, within which a stretch of the plan is as gentle. Judgement. */
    private static final double MPS = 1.5;
    /** The same of bends and climbs, and what is added to these. Judgement. */
    private static final double BENT = 1.2;

    private static final double BENT_G = 0.2;
    private static final double CLIMB = 1.2;
    private static final double CLIMB_MPS = 3;

    /**
     * Seconds at the usual speed by which it may be further from the crowd, or nearer: figures are flown on the display line and
     * circuits are not.
     */
    private static final double ASIDE_S = 1.5;

    /** Share of the mean speed of the act's figures above which no flight is gentle. Tuned: 0.95 takes a jet's wide turn for a landing. */
    private static final double SLOW_SHARE = 0.85;

    private static final double SLOWER_SHARE = 0.04;
    /** Harder than a circuit is bent: 50° of bank are 1.2 g. Common practice, no source. */
    private static final double BENDS_G = 1.3;

    private static final double BENDS_MORE_G = 0.08;
    /** Share of that speed above which it climbs or sinks too fast. */
    private static final double CLIMB_SHARE = 0.2;

    private static final double CLIMB_MORE_SHARE = 0.015;
    /** Share of the plan below which nothing is seldom. Tuned: 0.003 finds landings sooner and takes slow flight for one, 0.8 % at 1 Hz. */
    private static final double SELDOM = 0.01;

    private final List<Stretch> planned = new ArrayList<>();
    private final double usualMps;

    /** A stretch of the plan; a way is flown wherever it leads. */
    private record Stretch(Effort effort, boolean anywhere) {}

    PlannedEfforts(Bins bins, double usualMps) {
        this.usualMps = usualMps;
        int aSecond = (int) Math.round(1 / Bins.WIDTH_S);
        RecentEffort recent = new RecentEffort();
        for (int i = 0; i < bins.size; i++) {
            if (bins.timed[i]) {
                continue;
            }
            Effort effort = recent.add(i * Bins.WIDTH_S, bins.vxMps[i], bins.vyMps[i], bins.vzMps[i], bins.yM[i]);
            if (effort != null && i % aSecond == 0) {
                planned.add(new Stretch(effort, bins.isWay(bins.figure[i])));
            }
        }
    }

    /** How much likelier this is in a landing than in the plan; 1 where it is not as gentle as a circuit, or nothing is known of the plan. */
    double landsRatherThan(Effort seen) {
        if (planned.isEmpty()) {
            return 1;
        }
        double gentle = below(seen.mps() / usualMps, SLOW_SHARE, SLOWER_SHARE)
                * below(seen.bentG(), BENDS_G, BENDS_MORE_G)
                * below(seen.climbMps() / usualMps, CLIMB_SHARE, CLIMB_MORE_SHARE);
        return 1 + gentle / (shareAsGentle(seen) + SELDOM);
    }

    /** From 1 well below a limit to 0 well above it. */
    private static double below(double value, double limit, double within) {
        return 1 / (1 + Math.exp((value - limit) / within));
    }

    private double shareAsGentle(Effort seen) {
        int asGentle = 0;
        for (Stretch stretch : planned) {
            Effort p = stretch.effort();
            if (p.mps() < MPS * seen.mps()
                    && p.bentG() < BENT * seen.bentG() + BENT_G
                    && p.climbMps() < CLIMB * seen.climbMps() + CLIMB_MPS
                    && (stretch.anywhere() || Math.abs(p.awayM() - seen.awayM()) < ASIDE_S * usualMps)) {
                asGentle++;
            }
        }
        return asGentle / (double) planned.size();
    }
}
