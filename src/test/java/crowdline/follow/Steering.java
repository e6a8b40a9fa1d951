package crowdline.follow;

/** Takes an aircraft of the trials round and up and down, without figures, as fast as bank, climb and engine let it. */
final class Steering {
    private static final double ROLL_S = 0.8;
    /** Metres beyond the display line: nearer than this nobody turns round towards the crowd. */
    private static final double NEAR_CROWD_M = 150;

    private static final double PITCH_S = 1.2;
    private static final double FASTER_MPS2 = 1.5;
    private static final double SLOWER_MPS2 = 2;

    private final Aircraft a;
    private final V3 wind;
    private final double tanBank;
    private double turning;
    private double climbing;

    Steering(Aircraft aircraft, V3 wind, double bankRad) {
        a = aircraft;
        this.wind = wind;
        tanBank = Math.tan(bankRad);
        climbing = a.speedMps * a.direction.z();
    }

    double tanBank() {
        return tanBank;
    }

    V3 level() {
        return new V3(a.direction.x(), a.direction.y(), 0).unit();
    }

    /** One step towards a place and a height, at most so fast up and down. */
    void step(V3 to, double high, double mps, double climbMps, double sinkMps) {
        V3 heading = level();
        V3 wanted = new V3(to.x() - a.place.x(), to.y() - a.place.y(), 0).unit();
        V3 aim = wanted.times(Math.max(a.speedMps, 10))
                .minus(new V3(wind.x(), wind.y(), 0))
                .unit();
        double error = Math.atan2(heading.cross(aim).z(), heading.dot(aim));
        if (Math.abs(error) > Math.PI / 2 && a.place.y() < NEAR_CROWD_M) {
            double away = heading.x() < 0 ? -1 : 1;
            error = away * Math.abs(error);
        }
        double most = Aircraft.G * tanBank / Math.max(a.speedMps, 10);
        double rate = Math.max(-most, Math.min(most, error * 0.8));
        turning += (rate - turning) * Aircraft.DT / ROLL_S;
        double mostUp = a.speedMps > 1.2 * a.stallMps() ? climbMps : 0;
        double up = Math.max(-sinkMps, Math.min(mostUp, (high - a.place.z()) / 4));
        climbing += (up - climbing) * Aircraft.DT / PITCH_S;
        if (a.place.z() <= 0) {
            climbing = Math.max(climbing, 0);
        }
        double faster = Math.max(-SLOWER_MPS2, Math.min(FASTER_MPS2, (mps - a.speedMps) / 2));
        a.speedMps += faster * Aircraft.DT;
        double slope = Math.max(-0.9, Math.min(0.9, climbing / Math.max(a.speedMps, 10)));
        V3 now = heading.turned(V3.UP, turning * Aircraft.DT)
                .times(Math.sqrt(1 - slope * slope))
                .plus(V3.UP.times(slope));
        a.point(now, V3.UP);
        a.move(now.times(a.speedMps));
    }

    /** One step straight on, sinking. */
    void sinkOn(double mps) {
        climbing += (-mps - climbing) * Aircraft.DT;
        a.move(level().times(a.speedMps).plus(V3.UP.times(climbing)));
    }
}
