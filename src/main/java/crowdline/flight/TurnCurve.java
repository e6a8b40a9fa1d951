package crowdline.flight;

/**
 * A turn across the ground: level, or climbing in its first half and descending in its second as a wing-over does.
 *
 * <p>The heading turns as in a balanced level turn, g tan(bank) / V; the path angle is peak · sin(2π · share done).
 */
record TurnCurve(double startRad, int side, double bankRad, double throughRad, double peakRad)
        implements SteeredLeg.Curve {

    @Override
    public Vec direction(double angleRad) {
        // To the pilot's right is clockwise seen from above.
        double heading = startRad - side * angleRad;
        double path = peakRad == 0 ? 0 : peakRad * Math.sin(2 * Math.PI * angleRad / throughRad);
        double level = Math.cos(path);
        return new Vec(level * Math.cos(heading), level * Math.sin(heading), Math.sin(path));
    }

    @Override
    public double rateRadPerS(double angleRad, double speedMps) {
        return Units.G_MPS2 * Math.tan(bankRad) / speedMps;
    }
}
