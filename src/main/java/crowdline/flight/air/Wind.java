package crowdline.flight.air;

import crowdline.measure.Units;
import crowdline.show.DayAir;
import crowdline.show.WindAt;
import java.util.Arrays;
import java.util.List;

/**
 * The wind in the display frame: where the air goes, not where it comes from. Given at one or more heights, joined by
 * straight lines between them in each component, unchanged above the highest.
 *
 * <p>Below the lowest of several heights it weakens towards the ground as (z / lowest)^(1/7), the usual power law over
 * open land (from memory); one wind alone is the same at every height.
 */
public final class Wind {
    public static final Wind CALM = steady(0, 0, 0);

    /** Where the wind at the ground is measured, m (WMO-No. 8, Guide to Instruments, measurement of surface wind). */
    private static final double GROUND_M = 10;

    private static final double EXPONENT = 1.0 / 7;
    /** Below this the power law, which has no end at the ground, goes no further down. */
    private static final double LEAST_M = 1;

    private final double[] heightM;
    private final double[] alongMps;
    private final double[] awayMps;
    /** Growth from each height to the next, 1/s; 0 above the highest. */
    private final double[] alongPerS;

    private final double[] awayPerS;
    private final boolean calm;

    private Wind(double[] heightM, double[] alongMps, double[] awayMps) {
        int n = heightM.length;
        this.heightM = heightM;
        this.alongMps = alongMps;
        this.awayMps = awayMps;
        alongPerS = new double[n];
        awayPerS = new double[n];
        boolean still = true;
        for (int i = 0; i < n; i++) {
            if (!(Double.isFinite(alongMps[i]) && Double.isFinite(awayMps[i]))) {
                throw new IllegalArgumentException(
                        "the wind must be finite, not " + alongMps[i] + " and " + awayMps[i] + " m/s");
            }
            if (i + 1 < n) {
                double up = heightM[i + 1] - heightM[i];
                alongPerS[i] = (alongMps[i + 1] - alongMps[i]) / up;
                awayPerS[i] = (awayMps[i + 1] - awayMps[i]) / up;
            }
            still &= alongMps[i] == 0 && awayMps[i] == 0;
        }
        calm = still;
    }

    /**
     * The same wind at every height.
     *
     * @param fromDeg true direction it comes from
     * @param kt speed in knots
     * @param axisBearingDeg true bearing of the A-axis towards the commentator's right
     */
    public static Wind steady(double fromDeg, double kt, double axisBearingDeg) {
        return new Wind(new double[] {GROUND_M}, new double[] {along(fromDeg, kt, axisBearingDeg)}, new double[] {
            away(fromDeg, kt, axisBearingDeg)
        });
    }

    /**
     * The wind of a day: at the ground, which is measured at 10 m, and higher up where that is given.
     *
     * @param axisBearingDeg true bearing of the A-axis towards the commentator's right
     */
    public static Wind of(DayAir day, double axisBearingDeg) {
        List<WindAt> aloft = day.windsAloft();
        int n = aloft.size() + 1;
        double[] height = new double[n];
        double[] along = new double[n];
        double[] away = new double[n];
        height[0] = GROUND_M;
        along[0] = along(day.windFromDeg(), day.windKt(), axisBearingDeg);
        away[0] = away(day.windFromDeg(), day.windKt(), axisBearingDeg);
        for (int i = 1; i < n; i++) {
            WindAt at = aloft.get(i - 1);
            height[i] = Units.mFromFt(at.heightFt());
            along[i] = along(at.fromDeg(), at.kt(), axisBearingDeg);
            away[i] = away(at.fromDeg(), at.kt(), axisBearingDeg);
        }
        return new Wind(height, along, away);
    }

    private static double along(double fromDeg, double kt, double axisBearingDeg) {
        return Units.mpsFromKt(kt) * Math.cos(Math.toRadians(fromDeg + 180 - axisBearingDeg));
    }

    /** Bearings run clockwise; away from the crowd is 90 degrees to the left of the A-axis. */
    private static double away(double fromDeg, double kt, double axisBearingDeg) {
        return -Units.mpsFromKt(kt) * Math.sin(Math.toRadians(fromDeg + 180 - axisBearingDeg));
    }

    /** This wind with another added to it at every height given, m/s. */
    public Wind plus(double moreAlongMps, double moreAwayMps) {
        return new Wind(
                heightM,
                Arrays.stream(alongMps).map(v -> v + moreAlongMps).toArray(),
                Arrays.stream(awayMps).map(v -> v + moreAwayMps).toArray());
    }

    /** True if the air stands still at every height. */
    public boolean isCalm() {
        return calm;
    }

    /** Towards the commentator's right, m/s. */
    public double alongMps(double zM) {
        int i = layer(zM);
        return i < 0 ? share(zM) * alongMps[0] : alongMps[i] + alongPerS[i] * (zM - heightM[i]);
    }

    /** Away from the crowd, m/s. */
    public double awayMps(double zM) {
        int i = layer(zM);
        return i < 0 ? share(zM) * awayMps[0] : awayMps[i] + awayPerS[i] * (zM - heightM[i]);
    }

    /** Growth with height of the wind along a level direction, 1/s: the direction's parts are not made a unit first. */
    public double growthPerS(double zM, double tx, double ty) {
        int i = layer(zM);
        if (i >= 0) {
            return alongPerS[i] * tx + awayPerS[i] * ty;
        }
        return zM < LEAST_M ? 0 : EXPONENT * share(zM) / zM * (alongMps[0] * tx + awayMps[0] * ty);
    }

    /** Index of the height at or below this one; −1 where the power law holds. */
    private int layer(double zM) {
        int last = heightM.length - 1;
        if (last == 0) {
            return 0;
        }
        int i = -1;
        while (i < last && zM >= heightM[i + 1]) {
            i++;
        }
        return i;
    }

    private double share(double zM) {
        return Math.pow(Math.max(zM, LEAST_M) / heightM[0], EXPONENT);
    }
}
