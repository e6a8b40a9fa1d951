package crowdline.flight.leg;

import crowdline.flight.body.Vec;

/** One instant of a leg, written over and over; it never leaves the integration. */
public final class Look {
    /** Whether thrust and drag are looked for, which take longest to find. */
    final boolean forForces;

    double tx;
    double ty;
    double tz;
    double ux;
    double uy;
    double uz;
    double speedMps;
    double rhoKgM3;
    /** Load factor felt along U. */
    double g;
    /** Load factor the path asks for along U, before the wing's limit. */
    double askedG;

    double thrustN;
    double dragN;
    /** True where the wing is stalled on purpose, as in a flick or a spin. */
    boolean stalledOnPurpose;

    /** True where the path is kept even if the wing does not give what it asks for. */
    boolean keptAnyway;

    Look() {
        this(true);
    }

    private Look(boolean forForces) {
        this.forForces = forForces;
    }

    /** For whoever does not look for thrust and drag. */
    public static Look atPathAndLoad() {
        return new Look(false);
    }

    void direction(double x, double y, double z) {
        tx = x;
        ty = y;
        tz = z;
    }

    void up(double x, double y, double z) {
        ux = x;
        uy = y;
        uz = z;
    }

    void up(Vec u) {
        up(u.x(), u.y(), u.z());
    }

    void load(double felt, double asked) {
        g = felt;
        askedG = asked;
    }

    /** The speed, m/s. */
    public double speedMps() {
        return speedMps;
    }

    /** Whether the path is kept even if the wing does not give what it asks for. */
    public boolean keptAnyway() {
        return keptAnyway;
    }
}
