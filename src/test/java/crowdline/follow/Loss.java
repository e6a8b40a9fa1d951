package crowdline.follow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Where time is lost when an act is flown otherwise than planned: outside of the changes, until a change is noticed, and in
 * changes that are noticed late or never. And how soon anybody could notice who knows what other pilots make of the figure
 * that was due, and nothing of this one: the track has shown a change once it is twice as far from their mean as they are.
 */
final class Loss {
    /** A change noticed later than this is late, seconds. Judgement. */
    private static final double SOON_S = 10;
    /** Metres: noise of a receiver. */
    private static final double NOISE_M = 4;
    /** The track must stay outside for so long, seconds. Judgement. */
    private static final double STAYS_S = 0.5;
    /** So many pilots at least say how far pilots differ. */
    private static final int FEWEST = 3;

    private final List<Double> showsS = new ArrayList<>();
    private double allS;
    private double outsideS;
    private double soonS;
    private double lateS;

    private record Change(double startS, double recoversS) {}

    /**
     * Counts one flight; what was said is in steps of {@link Score#STEP_S}.
     *
     * @param others the act as planned, flown by others
     */
    void count(Truth truth, List<Score.Said> said, List<Truth> others) {
        List<Change> changes = new ArrayList<>();
        for (int i = 1; i < truth.flown.size(); i++) {
            Truth.Flown flown = truth.flown.get(i);
            if (flown.figure() != truth.flown.get(i - 1).figure() + 1) {
                changes.add(new Change(flown.startS(), Changes.recoversS(truth, said, flown.startS())));
                showsS.add(showsS(truth, i, others));
            }
        }
        for (Score.Said s : said) {
            allS += Score.STEP_S;
            if (s.figure() != truth.figureAt(s.tS())) {
                lose(changes, s.tS());
            }
        }
    }

    private void lose(List<Change> changes, double tS) {
        double recoversS = changes.stream()
                .filter(c -> tS >= c.startS() && tS < c.startS() + c.recoversS())
                .mapToDouble(Change::recoversS)
                .reduce(0, (before, last) -> last);
        if (recoversS == 0) {
            outsideS += Score.STEP_S;
        } else if (recoversS <= SOON_S) {
            soonS += Score.STEP_S;
        } else {
            lateS += Score.STEP_S;
        }
    }

    /** Seconds after which the track of what is flown has left what other pilots make of what was due; to its end if never. */
    static double showsS(Truth truth, int index, List<Truth> others) {
        Truth.Flown flown = truth.flown.get(index);
        double lastsS = flown.endS() - flown.startS();
        int due = due(truth, index);
        List<Track> tracks = others.stream()
                .flatMap(o ->
                        o.flown.stream().filter(f -> f.figure() == due).limit(1).map(f -> new Track(o, f.startS())))
                .toList();
        if (tracks.size() < FEWEST) {
            return lastsS;
        }
        Track own = new Track(truth, flown.startS());
        double outsideSinceS = Double.NaN;
        for (double t = 0; t <= lastsS; t += Score.STEP_S) {
            double now = t;
            List<V3> places = tracks.stream().map(k -> k.at(now)).toList();
            V3 mean = places.stream().reduce(new V3(0, 0, 0), V3::plus).times(1.0 / places.size());
            double squares = places.stream()
                    .mapToDouble(p -> p.minus(mean).dot(p.minus(mean)))
                    .sum();
            double scatterM = Math.sqrt(squares / (places.size() - 1) + NOISE_M * NOISE_M);
            if (own.at(t).minus(mean).length() <= 2 * scatterM) {
                outsideSinceS = Double.NaN;
            } else {
                outsideSinceS = Double.isNaN(outsideSinceS) ? t : outsideSinceS;
                if (t - outsideSinceS >= STAYS_S) {
                    return outsideSinceS;
                }
            }
        }
        return lastsS;
    }

    /** The figure that the plan has after the last of its figures flown before. */
    private static int due(Truth truth, int index) {
        int before = index - 1;
        while (before >= 0 && truth.flown.get(before).figure() < 0) {
            before--;
        }
        return before < 0 ? 0 : truth.flown.get(before).figure() + 1;
    }

    /** A flight from a moment on, as it looks to who was there and flew the same way. */
    private record Track(Truth truth, double startS) {
        V3 at(double sinceS) {
            Truth.Instant start = truth.at(startS);
            V3 way = truth.at(startS + sinceS).place().minus(start.place());
            double speed =
                    Math.max(Math.hypot(start.groundMps().x(), start.groundMps().y()), 1e-9);
            double along = start.groundMps().x() / speed;
            double aside = start.groundMps().y() / speed;
            return new V3(along * way.x() + aside * way.y(), along * way.y() - aside * way.x(), way.z());
        }
    }

    /** Per cent of the time, lost outside of changes. */
    double outside() {
        return 100 * outsideS / allS;
    }

    /** The same until a change is noticed, if it soon is. */
    double soon() {
        return 100 * soonS / allS;
    }

    /** The same in changes noticed late or never. */
    double late() {
        return 100 * lateS / allS;
    }

    /** The same until a track can have shown its changes. */
    double least() {
        return 100 * showsS.stream().mapToDouble(s -> s).sum() / allS;
    }

    String line(String name) {
        List<Double> sorted = new ArrayList<>(showsS);
        Collections.sort(sorted);
        return String.format(
                Locale.ROOT,
                "%-36s wrong outside of changes %.2f %%, until noticed %.2f %%, noticed late or never %.2f %%; tracks show changes after %.1f %.1f s, which costs %.2f %%",
                name,
                outside(),
                soon(),
                late(),
                sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2),
                sorted.isEmpty() ? Double.NaN : sorted.get((int) (0.9 * sorted.size())),
                least());
    }
}
