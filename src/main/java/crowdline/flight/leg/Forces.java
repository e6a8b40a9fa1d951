package crowdline.flight.leg;

import crowdline.flight.air.Atmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.measure.Units;

/** Everything that pulls and pushes in one flight: body, air and this flight's wind. */
public final class Forces {
    public final Body body;
    private final Atmosphere atmosphere;
    private final Wind wind;
    private final boolean calm;

    public Forces(Body body, Atmosphere atmosphere, Wind wind) {
        this.body = body;
        this.atmosphere = atmosphere;
        this.wind = wind;
        calm = wind.isCalm();
    }

    public double rho(double zM) {
        return atmosphere.densityKgM3(zM);
    }

    /** Writes the rates of the place for an airspeed along a direction, carried by the wind. */
    void move(double[] y, double speedMps, double tx, double ty, double tz, double[] dy) {
        dy[0] = speedMps * tx;
        dy[1] = speedMps * ty;
        dy[2] = speedMps * tz;
        drift(y[2], dy);
    }

    /**
     * Speed over the ground along a track that the pilot holds by leaning into the wind, m/s. Where the airspeed is
     * hardly more than the wind across, as at the top of an up-line, less and less of it can be held.
     */
    public double overGroundMps(double zM, double speedMps, double tx, double ty) {
        if (calm) {
            return speedMps;
        }
        double alongAxis = wind.alongMps(zM);
        double away = wind.awayMps(zM);
        double along = alongAxis * tx + away * ty;
        double across2 = across2(alongAxis, away, along);
        return groundMps(speedMps, along, across2, held(speedMps, across2));
    }

    private static double groundMps(double speedMps, double alongMps, double across2, double held) {
        return alongMps + Math.sqrt(Math.max(speedMps * speedMps - held * held * across2, 0));
    }

    /** How much faster the ground goes by than the air; 1 where the aircraft hardly moves. */
    static double share(double groundMps, double airMps) {
        return airMps < 0.5 ? 1 : groundMps / airMps;
    }

    /**
     * Writes the rates of the place for a track that is held over the ground as far as the airspeed allows.
     *
     * @return {@link #overGroundMps(double, double, double, double) speed over the ground} along it, m/s
     */
    double hold(double[] y, double airMps, double tx, double ty, double tz, double[] dy) {
        double alongAxis = calm ? 0 : wind.alongMps(y[2]);
        double away = calm ? 0 : wind.awayMps(y[2]);
        double along = alongAxis * tx + away * ty;
        double across2 = across2(alongAxis, away, along);
        double held = held(airMps, across2);
        double ground = calm ? airMps : groundMps(airMps, along, across2, held);
        double lost = 1 - held;
        dy[0] = ground * tx + lost * (alongAxis - along * tx);
        dy[1] = ground * ty + lost * (away - along * ty);
        dy[2] = ground * tz - lost * along * tz;
        return ground;
    }

    /** Square of the wind across a track, m²/s². */
    private static double across2(double alongAxisMps, double awayMps, double alongMps) {
        return Math.max(alongAxisMps * alongAxisMps + awayMps * awayMps - alongMps * alongMps, 0);
    }

    /** The share of the wind across the track that is flown against, 0 to 1. */
    private static double held(double speedMps, double across2) {
        return across2 == 0 ? 1 : Math.min(Math.max(Math.abs(speedMps) / Math.sqrt(across2) - 1, 0), 1);
    }

    /** Adds the wind to the rates of the place. */
    void drift(double zM, double[] dy) {
        if (!calm) {
            dy[0] += wind.alongMps(zM);
            dy[1] += wind.awayMps(zM);
        }
    }

    /**
     * Rate of change of airspeed along the path, m/s².
     *
     * @param acrossMps2 acceleration the air must give across the path, m/s²
     * @param power share of full power
     * @param extraCd drag coefficient of what is stalled or broadside
     */
    public double alongMps2(
            double zM,
            double speedMps,
            double tx,
            double ty,
            double tz,
            double acrossMps2,
            double power,
            double extraCd) {
        double rho = rho(zM);
        double thrustN = body.drive().thrustN(speedMps, rho, power);
        return alongMps2(zM, speedMps, tx, ty, tz, thrustN, drag(rho, speedMps, acrossMps2, extraCd));
    }

    /** The same where thrust and drag are known, newtons. */
    double alongMps2(double zM, double speedMps, double tx, double ty, double tz, double thrustN, double dragN) {
        double net = thrustN - dragN * Math.signum(speedMps);
        double rate = net / body.massKg() - Units.G_MPS2 * tz;
        if (!calm) {
            // The air itself changes speed along the path when the wind grows with height.
            double climbMps = speedMps * tz;
            rate -= climbMps * wind.growthPerS(zM, tx, ty);
        }
        return rate;
    }

    double drag(double rho, double speedMps, double acrossMps2, double extraCd) {
        double q = 0.5 * rho * speedMps * speedMps;
        return body.dragN(q, body.massKg() * acrossMps2) + q * body.areaM2() * extraCd;
    }

    /** The load factor the wing gives when asked for one, at this speed. */
    public double capG(double rho, double speedMps, double askedG) {
        double q = 0.5 * rho * speedMps * speedMps;
        return Math.min(Math.max(askedG, body.leastG(q)), body.mostG(q));
    }

    /** Writes the speed of an instant, and thrust and drag where they are looked for; direction must be there already. */
    void see(double zM, double speedMps, double acrossMps2, double power, double extraCd, Look look) {
        look.speedMps = speedMps;
        look.rhoKgM3 = rho(zM);
        if (look.forForces) {
            look.thrustN = body.drive().thrustN(speedMps, look.rhoKgM3, power);
            look.dragN = drag(look.rhoKgM3, speedMps, acrossMps2, extraCd);
        }
        look.stalledOnPurpose = false;
        look.keptAnyway = false;
    }
}
