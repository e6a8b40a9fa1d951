package crowdline.flight.leg;

import crowdline.measure.Units;

/**
 * A turn across the ground: level, or climbing in its first half and descending in its second as a wing-over does.
 *
 * <p>The heading turns as in a balanced level turn, g tan(bank) / V; the path angle is peak · sin(2π · share done),
 * or peak · sin(π · share done) where it climbs all the way.
 */
final class TurnCurve implements SteeredLeg.Curve {
    private final double startRad;
    private final int side;
    private final double peakRad;
    private final double perRad;
    private final double acrossMps2;

    /** @param side +1 to turn to the right */
    TurnCurve(double startRad, int side, double bankRad, double throughRad, double peakRad, boolean climbs) {
        this.startRad = startRad;
        this.side = side;
        this.peakRad = peakRad;
        perRad = (climbs ? 1 : 2) * Math.PI / throughRad;
        acrossMps2 = Units.G_MPS2 * Math.tan(bankRad);
    }

    @Override
    public void at(double angleRad, Bend bend) {
        // To the pilot's right is clockwise seen from above.
        double heading = startRad - side * angleRad;
        double ch = Math.cos(heading);
        double sh = Math.sin(heading);
        if (peakRad == 0) {
            bend.direction(ch, sh, 0);
            bend.slope(side * sh, -side * ch, 0);
            return;
        }
        double path = peakRad * Math.sin(perRad * angleRad);
        double rise = peakRad * perRad * Math.cos(perRad * angleRad);
        double cp = Math.cos(path);
        double sp = Math.sin(path);
        bend.direction(cp * ch, cp * sh, sp);
        bend.slope(side * cp * sh - rise * sp * ch, -side * cp * ch - rise * sp * sh, rise * cp);
    }

    @Override
    public double rateRadPerS(double speedMps) {
        return acrossMps2 / speedMps;
    }
}
