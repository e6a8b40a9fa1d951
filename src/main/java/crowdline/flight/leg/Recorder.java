package crowdline.flight.leg;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import java.util.ArrayList;
import java.util.List;

/** Watches a flight: keeps samples on the grid and the extremes of the figure being flown. */
public final class Recorder implements Integrator.Watcher {
    private final double gridS;
    private final List<Sample> samples = new ArrayList<>();
    private final Look look = new Look();
    private Extremes extremes = new Extremes();

    public Recorder(double gridS) {
        this.gridS = gridS;
    }

    @Override
    public void at(Leg leg, double tS, double legS, double[] y) {
        leg.look(legS, y, look);
        extremes.see(tS, y, look);
        if (onGrid(tS)
                && (samples.isEmpty() || tS > samples.get(samples.size() - 1).tS() + 1e-6)) {
            samples.add(sample(tS, y));
        }
    }

    private boolean onGrid(double tS) {
        double steps = tS / gridS;
        return Math.abs(steps - Math.rint(steps)) < 1e-6;
    }

    private Sample sample(double tS, double[] y) {
        return new Sample(
                tS,
                new Vec(y[0], y[1], y[2]),
                look.speedMps,
                new Vec(look.tx, look.ty, look.tz),
                new Vec(look.ux, look.uy, look.uz),
                look.g,
                look.thrustN,
                look.dragN);
    }

    /** Fills the time of a figure that is not simulated with a straight run from one place to the next. */
    public void coast(FlightState from, FlightState to) {
        double first = Math.ceil(from.tS() / gridS - 1e-6) * gridS;
        double until = Math.min(to.tS() - 1e-6, ElementFlyer.LONGEST_FLIGHT_S);
        for (int i = 0; first + i * gridS < until; i++) {
            double t = first + i * gridS;
            double share = (t - from.tS()) / Math.max(to.tS() - from.tS(), 1e-9);
            Vec place = from.place().times(1 - share).plus(to.place().times(share));
            double speed = from.speedMps() + share * (to.speedMps() - from.speedMps());
            if (samples.isEmpty() || t > samples.get(samples.size() - 1).tS() + 1e-6) {
                samples.add(new Sample(t, place, speed, from.direction(), from.up(), 1, 0, 0));
            }
        }
    }

    /** Starts a new figure and gives the extremes of the one before. */
    public Extremes next() {
        Extremes done = extremes;
        extremes = new Extremes();
        return done;
    }

    public List<Sample> samples() {
        return samples;
    }
}
