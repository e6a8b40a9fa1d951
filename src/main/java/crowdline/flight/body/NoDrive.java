package crowdline.flight.body;

/** No engine: a glider's. */
public enum NoDrive implements Drive {
    NONE;

    @Override
    public double thrustN(double speedMps, double rhoKgM3, double share) {
        return 0;
    }

    @Override
    public double torqueNm(double rhoKgM3, double share) {
        return 0;
    }
}
