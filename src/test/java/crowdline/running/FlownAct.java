package crowdline.running;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.loaded.FlownLog;
import crowdline.show.Venue;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * An act as somebody flies it, and what a receiver says of it five times a second: each figure a little slower or faster
 * than predicted, a take-off and a landing that no prediction knows, and noise on every reading. The act begins at 0.
 */
public final class FlownAct {
    public static final double STEP_S = 0.2;
    /** It is seen so long before it begins, seconds. */
    public static final double BEFORE_S = 40;

    private static final double RHYTHM = 0.03;
    private static final double NOISE_M = 2;
    /** How fast a run down the runway gathers speed, and for how long. */
    private static final double RUN_MPSS = 3;

    private static final double RUN_S = 15;

    /** A landing shorter than this leaves no time for a round, seconds. */
    private static final double SHORT_S = 60;

    /** When a figure began. */
    public record Began(String figureId, String name, double atS) {}

    /** Where it was. */
    private record Place(double tS, Vec at) {}

    private final List<Began> begun = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final SplittableRandom random;
    private final double endS;

    public FlownAct(Flight flight, long seed) {
        random = new SplittableRandom(seed);
        List<FigureFlight> figures = flight.figures();
        before(flight);
        double t = 0;
        for (FigureFlight figure : figures) {
            begun.add(new Began(figure.figureId(), figure.name(), t));
            double off = Math.max(-2 * RHYTHM, Math.min(2 * RHYTHM, RHYTHM * random.nextGaussian()));
            double lastsS = figure.durationS() * (1 + off);
            if (figure.simulated()) {
                for (double s = 0; s < lastsS; s += STEP_S / 2) {
                    places.add(new Place(t + s, at(flight, figure.startS() + s * figure.durationS() / lastsS)));
                }
            } else if (t == 0) {
                takeOff(lastsS, at(flight, 0), at(flight, figure.endS()));
            } else {
                landing(
                        t,
                        lastsS,
                        places.get(places.size() - 6).at(),
                        places.get(places.size() - 1).at());
            }
            t += lastsS;
        }
        endS = t;
    }

    public List<Began> begun() {
        return List.copyOf(begun);
    }

    public double endS() {
        return endS;
    }

    /** What the receiver says at a time of the act. */
    public byte[] heard(double tS, Venue venue) {
        Vec a = at(tS);
        Vec b = at(tS + STEP_S);
        Vec read = new Vec(a.x() + noise(), a.y() + noise(), a.z() + noise());
        return FlownLog.instant(venue, BEFORE_S + tS, read, (b.x() - a.x()) / STEP_S, (b.y() - a.y()) / STEP_S);
    }

    private double noise() {
        return NOISE_M * random.nextGaussian();
    }

    /** It stands where it will begin its run, or comes straight in to where it begins in the air. */
    private void before(Flight flight) {
        Vec first = at(flight, 0);
        boolean flies = flight.figures().get(0).simulated();
        Vec second = flies ? at(flight, 1) : first;
        for (double s = -BEFORE_S - 1; s < 0; s += STEP_S / 2) {
            places.add(new Place(
                    s,
                    new Vec(
                            first.x() + s * (second.x() - first.x()),
                            first.y() + s * (second.y() - first.y()),
                            first.z())));
        }
    }

    /** A run to the left, a climb, a wide turn behind the display line, and in again from the right. */
    private void takeOff(double lastsS, Vec from, Vec to) {
        double offX = from.x() - RUN_MPSS * RUN_S * RUN_S / 2;
        for (double s = 0; s < RUN_S; s += STEP_S) {
            places.add(new Place(s, new Vec(from.x() - RUN_MPSS * s * s / 2, from.y(), from.z())));
        }
        double rest = lastsS - RUN_S;
        way(
                RUN_S,
                List.of(
                        new Place(0, new Vec(offX, from.y(), 0)),
                        new Place(0.21 * rest, new Vec(offX - 660, 0, 50)),
                        new Place(0.33 * rest, new Vec(offX - 860, 400, 90)),
                        new Place(0.52 * rest, new Vec(offX - 160, 650, 150)),
                        new Place(0.73 * rest, new Vec(offX + 640, 600, 190)),
                        new Place(0.90 * rest, new Vec(to.x() + 300, to.y() + 270, to.z())),
                        new Place(rest, to)));
    }

    /** On, round behind the display line, and down on to the runway the way it came; where that takes too long, a half turn. */
    private void landing(double startS, double lastsS, Vec before, Vec from) {
        double mps = Math.hypot(from.x() - before.x(), from.y() - before.y()) / (STEP_S / 2 * 5);
        double size = mps * lastsS / 5475;
        double on = Math.signum(from.x() - before.x()) * size;
        double y = from.y();
        if (lastsS < SHORT_S) {
            way(
                    startS,
                    List.of(
                            new Place(0, from),
                            new Place(0.10 * lastsS, new Vec(from.x() + 470 * on, y + 100 * size, from.z() * 0.85)),
                            new Place(0.18 * lastsS, new Vec(from.x() + 620 * on, y * 0.7, from.z() * 0.7)),
                            new Place(0.27 * lastsS, new Vec(from.x() + 400 * on, y * 0.2, from.z() * 0.5)),
                            new Place(0.40 * lastsS, new Vec(from.x() - 150 * on, 0, from.z() * 0.25)),
                            new Place(0.62 * lastsS, new Vec(from.x() - 1000 * on, 0, 2)),
                            new Place(0.78 * lastsS, new Vec(from.x() - 1400 * on, 0, 0)),
                            new Place(lastsS, new Vec(from.x() - 1550 * on, 0, 0))));
            return;
        }
        way(
                startS,
                List.of(
                        new Place(0, from),
                        new Place(0.11 * lastsS, new Vec(from.x() + 500 * on, y + 122 * size, from.z() + 15)),
                        new Place(0.21 * lastsS, new Vec(from.x() + 400 * on, y + 622 * size, from.z() + 25)),
                        new Place(0.40 * lastsS, new Vec(from.x() - 300 * on, y + 822 * size, from.z())),
                        new Place(0.60 * lastsS, new Vec(from.x() - 1200 * on, y + 722 * size, from.z() * 0.8)),
                        new Place(0.73 * lastsS, new Vec(from.x() - 1800 * on, y + 322 * size, from.z() * 0.5)),
                        new Place(0.83 * lastsS, new Vec(from.x() - 1700 * on, 0, from.z() * 0.25)),
                        new Place(0.91 * lastsS, new Vec(from.x() - 1400 * on, 0, 2)),
                        new Place(0.96 * lastsS, new Vec(from.x() - 1230 * on, 0, 0)),
                        new Place(lastsS, new Vec(from.x() - 1100 * on, 0, 0))));
    }

    /** Smoothly through places. */
    private void way(double startS, List<Place> knots) {
        for (int i = 0; i + 1 < knots.size(); i++) {
            Place a = knots.get(i);
            Place b = knots.get(i + 1);
            Vec out = slope(knots, i);
            Vec in = slope(knots, i + 1);
            double lastsS = b.tS() - a.tS();
            for (double s = 0; s < lastsS; s += STEP_S / 2) {
                double u = s / lastsS;
                places.add(new Place(
                        startS + a.tS() + s,
                        new Vec(
                                hermite(u, lastsS, a.at().x(), out.x(), b.at().x(), in.x()),
                                hermite(u, lastsS, a.at().y(), out.y(), b.at().y(), in.y()),
                                Math.max(0, hermite(u, lastsS, a.at().z(), out.z(), b.at().z(), in.z())))));
            }
        }
    }

    private static Vec slope(List<Place> knots, int i) {
        Place a = knots.get(Math.max(0, i - 1));
        Place b = knots.get(Math.min(knots.size() - 1, i + 1));
        double s = b.tS() - a.tS();
        return new Vec((b.at().x() - a.at().x()) / s, (b.at().y() - a.at().y()) / s, (b.at().z() - a.at().z()) / s);
    }

    private static double hermite(double u, double s, double a, double va, double b, double vb) {
        double u2 = u * u;
        double u3 = u2 * u;
        return (2 * u3 - 3 * u2 + 1) * a + (u3 - 2 * u2 + u) * s * va + (3 * u2 - 2 * u3) * b + (u3 - u2) * s * vb;
    }

    private Vec at(double tS) {
        int i = 0;
        int last = places.size() - 1;
        int low = 0;
        int high = last;
        while (low < high) {
            i = (low + high + 1) / 2;
            if (places.get(i).tS() <= tS) {
                low = i;
            } else {
                high = i - 1;
            }
        }
        Place a = places.get(low);
        Place b = places.get(Math.min(low + 1, last));
        return between(a.tS(), a.at(), b.tS(), b.at(), tS);
    }

    private static Vec at(Flight flight, double tS) {
        List<Sample> samples = flight.samples();
        int i = 0;
        while (i + 2 < samples.size() && samples.get(i + 1).tS() <= tS) {
            i++;
        }
        Sample a = samples.get(i);
        Sample b = samples.get(i + 1);
        return between(a.tS(), a.place(), b.tS(), b.place(), tS);
    }

    private static Vec between(double aS, Vec a, double bS, Vec b, double tS) {
        double u = bS > aS ? Math.max(0, Math.min(1, (tS - aS) / (bS - aS))) : 0;
        return new Vec(a.x() + u * (b.x() - a.x()), a.y() + u * (b.y() - a.y()), a.z() + u * (b.z() - a.z()));
    }
}
