package crowdline.flight;

import crowdline.flight.leg.Sample;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How the figures of one flight are called, so that no two have the same name, what is flown between them apart. A name that only one figure has stays as it
 * is. The others add where the crowd sees them ("loop, left"), and, where that tells nothing apart, which one it is in the
 * order flown ("loop, centre, second").
 */
public final class FigureNames {
    /** Half of the middle third of what the crowd has before it: beyond this it turns its head. */
    private static final double CENTRE_DEG = 30;

    private static final String[] ORDINALS = {
        "first",
        "second",
        "third",
        "fourth",
        "fifth",
        "sixth",
        "seventh",
        "eighth",
        "ninth",
        "tenth",
        "eleventh",
        "twelfth"
    };

    /** Where along the crowd line a figure is flown, as the crowd sees it from its centre. */
    enum Side {
        LEFT("left"),
        CENTRE("centre"),
        RIGHT("right"),
        /** Not predicted. */
        UNKNOWN("");

        private final String word;

        Side(String word) {
            this.word = word;
        }
    }

    /**
     * A figure and the name that it would have if it were the only one.
     *
     * @param id unique among the figures of the flight
     * @param transit whether it is only the way to the next; such a name may come again
     */
    record Named(String id, String name, Side side, boolean transit) {
        Named(String id, String name, Side side) {
            this(id, name, side, false);
        }
    }

    private FigureNames() {}

    /**
     * The names of figures that nobody predicted, by their ids.
     *
     * @param catalogue with the show's own figures
     * @param figures in the order flown
     */
    public static Map<String, String> unplaced(Catalogue catalogue, List<Figure> figures) {
        return of(figures.stream()
                .map(f -> new Named(f.id(), catalogue.nameOf(f), Side.UNKNOWN, f.transit()))
                .toList());
    }

    /**
     * The names, by the figures' ids.
     *
     * @param figures in the order flown
     */
    static Map<String, String> of(List<Named> figures) {
        Map<String, List<Named>> same = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        figures.stream().filter(Named::transit).forEach(f -> names.put(f.id(), f.name()));
        figures.stream()
                .filter(f -> !f.transit())
                .forEach(f -> same.computeIfAbsent(Written.key(f.name()), key -> new ArrayList<>())
                        .add(f));
        Set<String> taken = new HashSet<>(same.keySet());
        for (List<Named> group : same.values()) {
            if (group.size() == 1) {
                names.put(group.get(0).id(), group.get(0).name());
            } else {
                apart(group, taken).forEach(names::put);
            }
        }
        return names;
    }

    /** Puts the names into a flight that has its samples; without the crowd's distance there are no sides to tell. */
    static List<FigureFlight> told(
            List<FigureFlight> figures, Set<String> transits, List<Sample> samples, @Nullable Double crowdToLineM) {
        List<Named> named = new ArrayList<>();
        int from = 0;
        for (FigureFlight figure : figures) {
            while (from < samples.size() && samples.get(from).tS() < figure.startS()) {
                from++;
            }
            int to = from;
            while (to < samples.size() && samples.get(to).tS() <= figure.endS()) {
                to++;
            }
            Side side = figure.simulated() && crowdToLineM != null
                    ? side(samples.subList(from, to), crowdToLineM)
                    : Side.UNKNOWN;
            named.add(new Named(figure.figureId(), figure.name(), side, transits.contains(figure.figureId())));
        }
        Map<String, String> names = of(named);
        return figures.stream()
                .map(f -> f.withName(names.getOrDefault(f.figureId(), f.name())))
                .toList();
    }

    /** On which side of the crowd's centre the mean of a path lies. */
    private static Side side(List<Sample> path, double crowdToLineM) {
        if (path.isEmpty()) {
            return Side.UNKNOWN;
        }
        double alongM = path.stream().mapToDouble(s -> s.place().x()).average().orElseThrow();
        double outM = crowdToLineM
                + path.stream().mapToDouble(s -> s.place().y()).average().orElseThrow();
        double rightDeg = Math.toDegrees(Math.atan2(alongM, outM));
        if (!(Math.abs(rightDeg) > CENTRE_DEG)) {
            return Side.CENTRE;
        }
        return rightDeg < 0 ? Side.LEFT : Side.RIGHT;
    }

    /** Names for figures that share one; those without a place are counted among all of them. */
    private static Map<String, String> apart(List<Named> group, Set<String> taken) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<Side, Integer> seen = new LinkedHashMap<>();
        for (int i = 0; i < group.size(); i++) {
            Named figure = group.get(i);
            Side side = figure.side();
            int at = seen.merge(side, 1, Integer::sum);
            String placed = side == Side.UNKNOWN ? figure.name() : figure.name() + ", " + side.word;
            boolean told = side != Side.UNKNOWN
                    && group.stream().filter(f -> f.side() == side).count() == 1
                    && !taken.contains(Written.key(placed));
            String name = told ? placed : placed + ", " + ordinal(side == Side.UNKNOWN ? i + 1 : at);
            names.put(figure.id(), name);
        }
        return names;
    }

    private static String ordinal(int number) {
        if (number <= ORDINALS.length) {
            return ORDINALS[number - 1];
        }
        boolean teens = number % 100 >= 11 && number % 100 <= 13;
        return number
                + switch (teens ? 0 : number % 10) {
                    case 1 -> "st";
                    case 2 -> "nd";
                    case 3 -> "rd";
                    default -> "th";
                };
    }
}
