package crowdline.trace;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Element;
import crowdline.show.figure.SpinKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** The figures of the catalogue as one aircraft flies them. */
final class KnownShapes {
    /** For speed every pilot dives, and hardly anybody to be seen. Common practice, no source. */
    static final Set<String> LEADS = Set.of("dive", "push-over");

    /** Metres above the datum at which they are flown; the air is much the same wherever displays are. */
    private static final double FROM_M = 300;
    /** What cannot be flown from its usual speed is begun faster, by so much of it at a time, and by less than this of it. */
    private static final double FASTER = 0.1;

    private static final double FASTEST = 1.45;
    /** Difference a figure has for every element it needs more: of two that look the same the plainer is meant. */
    private static final double PER_ELEMENT = 0.003;

    /** The same for each of the {@link #rarities}: it makes a figure a fifth as likely. Tuned. */
    private static final double RARE = 0.05;
    /** The same for each flick: in a loop it shows a little, where it is flown. Tuned. */
    private static final double FLICK = 0.015;
    /** Degrees of a pushed arc from which it is one. */
    private static final double HALF_DEG = 180;

    /** Difference of a figure that takes e times as long as it usually does; goes with the square. Tuned. */
    private static final double TEMPO = 0.05;
    /** Logarithm of how many times as long as usual a figure may take. */
    private static final double FURTHEST = 1.2;

    /** Degrees: ways are no steeper. */
    private static final double FLAT_DEG = 42;

    /** Difference: two that are nearer to each other cannot be told apart. */
    private static final double SAME = 0.05;

    /**
     * One figure.
     *
     * @param entry of the catalogue
     * @param shape as flown, without the level line before and after it
     * @param seconds how long that takes
     * @param extra the difference it has for what it needs
     * @param flat whether it is no steeper than a way
     * @param netDeg degrees between the headings before and after, all the way round counted, to whichever side
     */
    record Known(CatalogueEntry entry, Shape shape, double seconds, double extra, boolean flat, double netDeg) {
        /** The difference it has beside its shape, where it took so many seconds. */
        double price(double tookS) {
            double longer = Math.log(tookS / seconds);
            return Math.abs(longer) > FURTHEST ? Double.POSITIVE_INFINITY : extra + TEMPO * longer * longer;
        }
    }

    /** A figure more. Less cuts figures in two, more makes a way of one. Tuned. */
    static final double FIGURE = 0.25;

    /** Seconds a figure of a light aircraft takes. */
    private static final double USUAL_S = 13;

    final List<Known> all;
    /** Those no steeper than a way, without those that lead, and all others. */
    final List<Known> flat;

    final List<Known> others;
    /** Of a second, for an aircraft whose figures take more or less time than a light one's. */
    final double scale;

    /** @param trial flies the aircraft */
    KnownShapes(Catalogue catalogue, FigureTrial trial) {
        List<Known> known = new ArrayList<>();
        for (CatalogueEntry entry : catalogue.entries()) {
            if (!entry.elements().isEmpty() && !entry.family().equals("formation") && !isWay(entry)) {
                add(known, entry, trial);
            }
        }
        all = List.copyOf(known);
        flat = all.stream().filter(KnownShapes::isFlat).toList();
        others = all.stream().filter(one -> !isFlat(one)).toList();
        scale = USUAL_S / all.stream().mapToDouble(Known::seconds).average().orElse(USUAL_S);
    }

    /** What a figure costs that differs so much and takes so many seconds. */
    double cost(double difference, double seconds) {
        return FIGURE + scale * difference * seconds;
    }

    /** The difference to a figure, and which it is. */
    record Near(double difference, Known known) {}

    /** All of them, the nearest to a shape that took so many seconds first. */
    List<Near> near(Shape shape, double seconds) {
        return all.stream()
                .map(one -> new Near(shape.distance(one.shape()) + one.price(seconds), one))
                .sorted(Comparator.comparingDouble(Near::difference))
                .toList();
    }

    /** The figure of which one is only a variant, on a path that cannot be told from it: a tail slide, wheels up or not. */
    String plainest(String name) {
        for (Known one : all) {
            if (one.entry().name().equals(name)) {
                return all.stream()
                        .filter(other -> name.startsWith(other.entry().name() + " "))
                        .filter(other -> one.shape().distance(other.shape()) < SAME)
                        .map(other -> other.entry().name())
                        .findFirst()
                        .orElse(name);
            }
        }
        return name;
    }

    private static boolean isFlat(Known one) {
        return one.flat() && !LEADS.contains(one.entry().name());
    }

    /** Level turns lead from one figure to the next, and no track tells one with rolls in it from one without. */
    private static boolean isWay(CatalogueEntry entry) {
        return entry.name().equals("reposition") || entry.name().equals("rolling turn");
    }

    private static void add(List<Known> known, CatalogueEntry entry, FigureTrial trial) {
        Airframe airframe = trial.airframe();
        EntrySpeed enters = entry.enters();
        Double kt = enters == null
                ? Double.valueOf(airframe.usual().passKt())
                : enters.kt(airframe.usual(), Units.ktFromMps(trial.stallMps(FROM_M)));
        if (kt == null) {
            return;
        }
        List<Sample> flown = flown(entry.elements(), trial, Units.mpsFromKt(kt));
        if (flown.size() < 2) {
            return;
        }
        Path path = Path.flown(flown);
        int from = 0;
        int to = path.size - 1;
        while (from < to && Straight.isLine(path, from)) {
            from++;
        }
        while (to > from && Straight.isLine(path, to)) {
            to--;
        }
        if ((to - from) * Path.STEP_S > Straight.LEAST_S) {
            Shape shape = new Shape(path, from, to);
            known.add(new Known(
                    entry,
                    shape,
                    (to - from) * Path.STEP_S,
                    extra(entry.elements()),
                    shape.isFlatterThan(FLAT_DEG),
                    Math.abs(path.turnedDeg(from, to))));
        }
    }

    /** As it is flown from its usual speed on, or from the first above that does. */
    private static List<Sample> flown(List<Element> elements, FigureTrial trial, double usualMps) {
        List<Sample> flown = List.of();
        for (double times = 1; times < FASTEST && flown.size() < 2; times += FASTER) {
            flown = trial.path(elements, FlightState.along(new Vec(0, 0, FROM_M), times * usualMps, true));
        }
        return flown;
    }

    private static double extra(List<Element> elements) {
        long flicks = elements.stream().filter(e -> e instanceof Element.Flick).count();
        return PER_ELEMENT * count(elements) + RARE * rarities(elements) + FLICK * flicks;
    }

    private static int count(List<Element> elements) {
        return elements.stream()
                .mapToInt(e -> e instanceof Element.Line line ? 1 + count(line.middle()) : 1)
                .sum();
    }

    /** How many of the elements displays seldom have, and no track shows: half a turn pushed, a tumble, an odd spin. */
    private static int rarities(List<Element> elements) {
        int rarities = 0;
        for (Element element : elements) {
            boolean rare = element instanceof Element.Tumble
                    || (element instanceof Element.Spin spin && spin.kind() != SpinKind.UPRIGHT)
                    || (element instanceof Element.Arc arc && isPushedOver(arc));
            rarities += rare ? 1 : 0;
            if (element instanceof Element.Line line) {
                rarities += rarities(line.middle());
            }
        }
        return rarities;
    }

    private static boolean isPushedOver(Element.Arc arc) {
        return arc.way() == Element.Way.PUSH && arc.degrees() != null && arc.degrees() >= HALF_DEG;
    }
}
