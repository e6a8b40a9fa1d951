package crowdline.follow;

import crowdline.flight.leg.Sample;
import crowdline.show.aircraft.Airframe;
import crowdline.show.figure.Element;
import crowdline.show.figure.Placing;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * Acts flown and received by somebody else: drawn and not simulated ({@link PlainAircraft}), in a wind nobody told of, further off
 * places, heights and loads than in the {@link Sky} that makes it hard, with ways that have nothing of the path planned.
 */
final class Elsewhere {
    private static final double FT = 0.3048;
    private static final double KT = 1852.0 / 3600;
    private static final double SHARE = 0.15;
    private static final double WIND_MPS = 4;
    /** Cosine of the angle to the A-axis at which a figure may begin. */
    private static final double ALONG = 0.98;

    private final SplittableRandom random;
    private final PlainAircraft a;
    private final PlainFigures figures;
    private final double tanBank;

    Elsewhere(Airframe airframe, V3 toldWind, Truth truth, long seed) {
        random = new SplittableRandom(seed * 31 + 5);
        V3 wind = toldWind.plus(new V3(WIND_MPS * Variety.bell(random), WIND_MPS * Variety.bell(random), 0));
        a = new PlainAircraft(airframe, wind, 0.3 + 0.4 * random.nextDouble(), 1 + 2 * random.nextDouble(), truth);
        figures = new PlainFigures(a, SHARE, 50 + 40 * random.nextDouble(), 20 + 20 * random.nextDouble(), random);
        tanBank = Math.tan(Math.toRadians(55 + 15 * random.nextDouble()));
    }

    double nowS() {
        return a.tS;
    }

    V3 way() {
        return a.way;
    }

    void enter(V3 place, V3 heading, double mps) {
        a.begin(place.plus(new V3(60 * random.nextGaussian(), 20 * random.nextGaussian(), 0)), heading, mps);
    }

    void fly(List<Element> elements, double endM, boolean mirrored) {
        figures.endM = endM;
        figures.mirrored = mirrored;
        figures.fly(elements);
    }

    /** Round, or straight on, to where the next figure is planned to begin. */
    void between(Sample to, boolean mirrored) {
        var nose = to.nose();
        V3 out = new V3(Math.signum(nose.x()) * (mirrored ? -1 : 1), 0, 0);
        V3 place = new V3(
                to.place().x() * (mirrored ? -1 : 1) + 60 * Variety.bell(random),
                30 * Variety.bell(random),
                Math.max(70, to.place().z() + 25 * Variety.bell(random)));
        to(place, out, to.speedMps() * (1 + 0.07 * Variety.bell(random)), tanBank, 0.3);
    }

    private void to(V3 place, V3 out, double mps, double tan, double slope) {
        double radius = mps * mps / (PlainAircraft.G * tan);
        List<V3> by = new ArrayList<>();
        if (a.level().dot(out) < 0 || place.minus(a.place).dot(out) < 0) {
            double back = -1.5 * radius - 4 * mps;
            by.add(place.plus(out.times(back)).plus(new V3(0, 2.5 * radius, 0)));
            by.add(place.plus(out.times(back)).plus(new V3(0, 0.3 * radius, 0)));
        }
        for (V3 next : by) {
            V3 leg = next.minus(a.place);
            V3 towards = new V3(leg.x(), leg.y(), 0).unit();
            for (double end = a.tS + 60; a.tS < end && next.minus(a.place).dot(towards) > radius; ) {
                a.speed(mps);
                a.steer(next, place.z(), tan, slope);
            }
        }
        for (double end = a.tS + 60;
                a.tS < end && (place.minus(a.place).dot(out) > 0 || a.level().dot(out) < ALONG); ) {
            a.speed(mps);
            // Towards the line, from wherever it is beside it.
            boolean past = place.minus(a.place).dot(out) <= 0;
            V3 beside = new V3(a.place.x(), past ? a.place.y() : place.y(), a.place.z());
            a.steer(beside.plus(out.times(Math.max(3 * a.mps, radius))), place.z(), tan, slope);
        }
    }

    /** A take-off, a landing, or whatever else has only a time: by way of a circuit. */
    void timed(@Nullable Placing exit, V3 out, double seconds) {
        double stall = a.stallMps();
        if (exit == null) {
            for (double end = a.tS + seconds; a.tS < end; ) {
                a.step(a.up, 0);
            }
            return;
        }
        double tan = Math.tan(Math.toRadians(25 + 15 * random.nextDouble()));
        if (a.place.z() < 5) {
            a.point(a.level(), V3.UP);
            while (a.mps < 1.2 * stall) {
                a.mps += (2 + random.nextDouble()) * PlainAircraft.DT;
                a.move(a.way.times(a.mps));
            }
        }
        V3 at = new V3(exit.alongM() + 50 * Variety.bell(random), exit.awayM(), exit.heightFt() * FT);
        if (exit.heightFt() > 0) {
            to(at, out, Math.max(exit.kt() * KT, 1.3 * stall), tan, 0.15);
            return;
        }
        V3 final_ = at.minus(out.times(500)).plus(new V3(0, 0, 30));
        to(new V3(at.x() - 1200 * out.x(), at.y() + 500, 120), out.times(-1), 1.6 * stall, tan, 0.1);
        to(final_, out, 1.35 * stall, tan, 0.1);
        for (double end = a.tS + 60; a.tS < end && a.place.z() > 0.5; ) {
            a.speed(1.25 * stall);
            a.steer(a.place.plus(out.times(300)), a.place.z() - 250, tan, 0.06);
        }
        a.place = new V3(a.place.x(), a.place.y(), 0);
        a.point(a.level(), V3.UP);
        while (a.mps > 2) {
            a.mps -= 2.2 * PlainAircraft.DT;
            a.move(a.way.times(a.mps));
        }
    }

    /**
     * A receiver of another make: four readings a second, each a third of a second old, places to the metre, heights by
     * pressure in steps of 25 ft and off by the day's, speeds to half a metre a second.
     */
    static List<Reading> receive(Truth truth, SplittableRandom random) {
        List<Reading> log = new ArrayList<>();
        double off = 20 * random.nextGaussian();
        double last = truth.instants.get(truth.instants.size() - 1).tS();
        for (double t = truth.instants.get(0).tS() + 0.4; t <= last; t += 0.25) {
            Truth.Instant i = truth.at(t - 0.35);
            double high = truth.at(t - 0.8).place().z() + off + 1.5 * random.nextGaussian();
            if (random.nextDouble() < 0.05) {
                continue;
            }
            log.add(new Reading(
                    t,
                    Math.rint(i.place().x() + 1.5 * random.nextGaussian()),
                    Math.rint(i.place().y() + 1.5 * random.nextGaussian()),
                    Math.rint(high / (25 * FT)) * 25 * FT,
                    Math.rint(2 * i.groundMps().x()) / 2,
                    Math.rint(2 * i.groundMps().y()) / 2));
        }
        return log;
    }
}
