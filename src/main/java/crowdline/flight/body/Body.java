package crowdline.flight.body;

import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;

/** An airframe in SI units, as one flight of the prediction has it. */
public record Body(
        double massKg,
        double areaM2,
        double spanM,
        double lengthM,
        Drive drive,
        double cd0,
        double k,
        double clMaxUpright,
        double clMaxInverted,
        double rollRateRadPerS,
        double rollRateMps,
        double flickRateRadPerS,
        double spinRateRadPerS,
        double spinSinkMps,
        double pivotS,
        double tumbleRateRadPerS,
        double limitPositiveG,
        double limitNegativeG,
        double neverExceedMps) {

    public static Body of(Airframe a, Variation v) {
        double spinRate = Math.toRadians(a.spinRateDegPerS());
        return new Body(
                a.massKg() * v.mass(),
                a.wingAreaM2(),
                a.spanM(),
                a.lengthM(),
                Drive.of(a.engine(), v.power()),
                a.zeroLiftDrag() * v.drag(),
                a.inducedDragFactor(),
                a.maxLiftUpright(),
                a.maxLiftInverted(),
                Math.toRadians(a.rollRateDegPerS()) * v.rollRate(),
                Units.mpsFromKt(a.rollRateKt()),
                Math.toRadians(a.flickRateDegPerS()) * v.rollRate(),
                spinRate,
                Units.mFromFt(a.spinDescentFtPerTurn()) * spinRate / (2 * Math.PI),
                a.pivotS(),
                Math.toRadians(a.tumbleRateDegPerS()),
                a.limitPositiveG(),
                a.limitNegativeG(),
                Units.mpsFromKt(a.neverExceedKt()));
    }

    public double weightN() {
        return massKg * Units.G_MPS2;
    }

    /** Load factor the wing can give at a dynamic pressure in pascals, upright. */
    public double mostG(double qPa) {
        return qPa * areaM2 * clMaxUpright / weightN();
    }

    /** Load factor the wing can give upside down: a negative number. */
    public double leastG(double qPa) {
        return -qPa * areaM2 * clMaxInverted / weightN();
    }

    /** Speed at which the wing just carries its weight upright, m/s. */
    public double stallMps(double rhoKgM3) {
        return Math.sqrt(2 * weightN() / (rhoKgM3 * areaM2 * clMaxUpright));
    }

    /** Aileron roll rate at a speed, rad/s: in proportion to speed up to the speed it was given for. */
    public double rollRateAt(double speedMps) {
        return rollRateRadPerS * Math.min(1, Math.max(speedMps, 1) / rollRateMps);
    }

    /** Drag, newtons, for a lift in newtons; lift is capped at what the wing can give. */
    public double dragN(double qPa, double liftN) {
        double qs = qPa * areaM2;
        double most = qs * Math.max(clMaxUpright, clMaxInverted);
        double lift = Math.min(Math.abs(liftN), most);
        return qs * cd0 + (qs > 0 ? k * lift * lift / qs : 0);
    }
}
