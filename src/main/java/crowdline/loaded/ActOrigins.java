package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.timing.Pass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Every number an act rests on, with where it comes from. It is read off what the file has: what was asked of a figure was told
 * by the pilot, what the layout found is assumed, what stands there without either was typed.
 *
 * @param numbers in the order flown, then those of the aircraft
 */
public record ActOrigins(List<Value> numbers) {

    /** What a number says. */
    public enum What {
        ENTRY_SPEED("entry speed", "entry speeds"),
        HEIGHT("height", "heights"),
        PLACE("place", "places"),
        TURNS("number of turns", "numbers of turns"),
        TIME("time", "times"),
        BEGINS("beginning", "beginnings"),
        TRANSIT("way between figures", "ways between figures"),
        AIRCRAFT("number of the aircraft", "numbers of the aircraft");

        private final String one;
        private final String many;

        What(String one, String many) {
            this.one = one;
            this.many = many;
        }

        String counted(long number) {
            return number + " " + (number == 1 ? one : many);
        }
    }

    /**
     * One of them.
     *
     * @param figureId the figure, or null if it is of the aircraft
     * @param key what it is called in the show file, of a number of the aircraft; else empty
     * @param value knots, feet, metres along the line, turns or seconds; NaN where it is not one number
     */
    public record Value(What what, @Nullable String figureId, String key, Origin origin, double value) {}

    public ActOrigins {
        numbers = List.copyOf(numbers);
    }

    /**
     * The origins of an act.
     *
     * @param flight the act as predicted
     * @param passes those of the act
     */
    public static ActOrigins of(Show show, Act act, Flight flight, Catalogue catalogue, List<Pass> passes) {
        Set<String> timed = passes.stream()
                .filter(p -> p.actId().equals(act.id()) && p.counts() && p.how().isFlown())
                .flatMap(p -> p.figures().stream())
                .map(f -> f.figureId())
                .collect(Collectors.toSet());
        List<Value> numbers = new ArrayList<>();
        Asked runIn = null;
        for (FigureFlight flown : flight.figures()) {
            Figure figure = act.figure(flown.figureId()).orElse(null);
            if (figure == null) {
                continue;
            }
            figure(figure, flown, timed.contains(figure.id()), runIn, catalogue).forEach(numbers::add);
            runIn = figure.transit() ? runIn : flown.simulated() ? null : figure.asked();
        }
        Aircraft aircraft = show.aircraft(act.airframe()).orElse(null);
        if (aircraft instanceof Airframe airframe) {
            airframe.assumed()
                    .forEach(key -> numbers.add(new Value(What.AIRCRAFT, null, key, Origin.ASSUMED, Double.NaN)));
        }
        return new ActOrigins(numbers);
    }

    /** Whether anything of an act can have been assumed: it was laid out, or its aircraft is only known by its kind. */
    public static boolean mayAssume(Show show, Act act) {
        return act.figures().stream().anyMatch(Figure::isLaidOut)
                || show.airframe(act.airframe())
                        .filter(a -> !a.assumed().isEmpty())
                        .isPresent();
    }

    /** @param runIn what was asked of what is only timed right before it, whose height and speed are where it begins; or null */
    private static List<Value> figure(
            Figure figure, FigureFlight flown, boolean timed, @Nullable Asked runIn, Catalogue catalogue) {
        List<Value> numbers = new ArrayList<>();
        Asked asked = figure.asked();
        String id = figure.id();
        if (figure.transit()) {
            numbers.add(new Value(What.TRANSIT, id, "", timed ? Origin.TIMED : Origin.ASSUMED, flown.durationS()));
            return numbers;
        }
        numbers.add(new Value(
                What.TIME,
                id,
                "",
                timed
                        ? Origin.TIMED
                        : asked != null && (asked.seconds() != null || (asked.beginsS() != null && !flown.simulated()))
                                ? Origin.TOLD
                                : flown.simulated() ? flownFrom(asked) : asked == null ? Origin.TYPED : Origin.ASSUMED,
                flown.durationS()));
        if (asked != null && asked.beginsS() != null) {
            numbers.add(new Value(What.BEGINS, id, "", Origin.TOLD, asked.beginsS()));
        }
        if (flown.simulated()) {
            numbers.add(new Value(
                    What.ENTRY_SPEED,
                    id,
                    "",
                    origin(asked, told(asked, runIn, Asked::kt)),
                    Units.ktFromMps(flown.entryMps())));
            numbers.add(new Value(
                    What.HEIGHT,
                    id,
                    "",
                    origin(asked, told(asked, runIn, Asked::heightFt)),
                    Units.ftFromM(flown.lowestM())));
            Object place = asked == null ? null : asked.place() != null ? asked.place() : asked.alongM();
            numbers.add(new Value(What.PLACE, id, "", origin(asked, place), flown.exitAlongM()));
            double turns = turns(figure, catalogue);
            if (turns > 0) {
                numbers.add(new Value(What.TURNS, id, "", origin(asked, asked == null ? null : asked.count()), turns));
            }
        }
        if (!flown.simulated() && asked != null) {
            if (asked.kt() != null) {
                numbers.add(new Value(What.ENTRY_SPEED, id, "", Origin.TOLD, asked.kt()));
            }
            if (asked.heightFt() != null) {
                numbers.add(new Value(What.HEIGHT, id, "", Origin.TOLD, asked.heightFt()));
            }
        }
        return numbers;
    }

    private static @Nullable Object told(
            @Nullable Asked asked, @Nullable Asked runIn, Function<Asked, @Nullable Double> number) {
        Double own = asked == null ? null : number.apply(asked);
        return own != null || runIn == null ? own : number.apply(runIn);
    }

    /** A predicted time rests on the figure, not on a number of its own. */
    private static Origin flownFrom(@Nullable Asked asked) {
        return asked == null ? Origin.TYPED : Origin.ASSUMED;
    }

    private static Origin origin(@Nullable Asked asked, @Nullable Object told) {
        return asked == null ? Origin.TYPED : told == null ? Origin.ASSUMED : Origin.TOLD;
    }

    private static double turns(Figure figure, Catalogue catalogue) {
        List<Element> own = figure.elements();
        List<Element> flown = own != null
                ? own
                : catalogue.find(figure.figure()).map(e -> e.elements()).orElse(List.of());
        return flown.stream()
                .filter(Element.Spin.class::isInstance)
                .mapToDouble(e -> ((Element.Spin) e).turns())
                .sum();
    }

    /** Those that nobody told. */
    public List<Value> assumed() {
        return numbers.stream().filter(n -> n.origin() == Origin.ASSUMED).toList();
    }

    /** That an act rests on assumptions, and on how many, in one line; empty if it rests on none. */
    public Optional<String> sentence() {
        Map<What, Long> counts = new LinkedHashMap<>();
        assumed().forEach(n -> counts.merge(n.what(), 1L, Long::sum));
        if (counts.isEmpty()) {
            return Optional.empty();
        }
        List<String> parts = counts.entrySet().stream()
                .map(e -> e.getKey().counted(e.getValue()))
                .toList();
        String all = parts.size() == 1
                ? parts.get(0)
                : String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
        return Optional.of("Rests on assumptions: " + all + ". crowdline check lists what to ask the pilot.");
    }
}
