package crowdline.trace;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.storage.show.CatalogueFile;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A log as a receiver writes it, two metres of noise, five readings a second, level lines between the figures. */
final class Log {
    private final FigureTrial trial = FlightFiguresTest.trial("light aerobatic biplane");

    private final SplittableRandom random = new SplittableRandom(4);
    final List<Reading> readings = new ArrayList<>();
    double tS;
    Vec at = new Vec(0, 0, 300);
    Vec way = new Vec(1, 0, 0);

    Log line(double seconds) {
        for (double t = 0; t < seconds; t += 0.2) {
            read(at);
            at = at.plus(way.times(0.2 * 60));
        }
        return this;
    }

    /** Flown in whatever direction, half as large again. */
    Log figure(String name, double kt) {
        return figure(name, kt, 1.5);
    }

    Log figure(String name, double kt, double larger) {
        List<Sample> flown = trial.path(
                CatalogueFile.shipped().find(name).orElseThrow().elements(),
                FlightState.along(new Vec(0, 0, 300), kt * 1852 / 3600, true));
        assertThat(flown).as(name).hasSizeGreaterThan(20);
        Vec from = at;
        for (int i = 0; i < flown.size(); i += 2) {
            Vec p = flown.get(i).place().minus(new Vec(0, 0, 300)).times(larger);
            at = from.plus(new Vec(way.x() * p.x() - way.y() * p.y(), way.y() * p.x() + way.x() * p.y(), p.z()));
            read(at);
        }
        Vec nose = flown.get(flown.size() - 1).nose();
        way = new Vec(way.x() * nose.x() - way.y() * nose.y(), way.y() * nose.x() + way.x() * nose.y(), 0).unit();
        return this;
    }

    void read(Vec p) {
        readings.add(new Reading(
                tS,
                p.x() + 2 * random.nextGaussian(),
                p.y() + 2 * random.nextGaussian(),
                p.z() + 2 * random.nextGaussian(),
                null,
                null));
        tS += 0.2;
    }
}
