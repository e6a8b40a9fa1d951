package crowdline.trace;

import crowdline.flight.FigureTrial;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Asked;
import crowdline.telemetry.Reading;
import crowdline.trace.Found.Guess;
import crowdline.trace.Found.What;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds the figures of a flight and writes them as a pilot would have listed them. */
public final class FlightFigures {
    /** How a line is called in which nothing but a line can be seen. */
    private static final String LINE = "low pass";

    private static final String LINE_TITLE = "a line, perhaps with rolls";
    private static final String LINE_OTHER = "slow roll";
    private static final String UNKNOWN_TITLE = "something the catalogue does not have";
    /** Chance, 0 to 1, from which a guess needs no second one. */
    private static final double SURE = 0.8;

    /** Seconds, for a light aircraft, between the halves of a figure that is another flown twice, at most. */
    private static final double TWICE_S = 3;

    /** Seconds: with readings further apart figures are hardly seen. */
    public static final double SEEN_S = 2;

    private final KnownShapes known;
    private final Finder finder;
    private final double stallMps;

    /** @param trial flies the kind of aircraft the log is of */
    public FlightFigures(Catalogue catalogue, FigureTrial trial) {
        known = new KnownShapes(catalogue, trial);
        finder = new Finder(known);
        stallMps = trial.stallMps(0);
    }

    /**
     * What was flown, in order; empty if nothing but level flight is in it. Of several flights it is the one with the most
     * figures.
     *
     * @param readings in the order of time
     */
    public List<Found> in(List<Reading> readings) {
        return flights(readings).stream()
                .max(Comparator.comparingLong(FlightFigures::figures))
                .orElse(List.of());
    }

    /**
     * The same of each flight in a log, in order, without those that show no figure.
     *
     * @param readings in the order of time
     */
    public List<List<Found>> flights(List<Reading> readings) {
        List<List<Found>> flights = new ArrayList<>();
        for (List<Reading> flight : Flights.in(readings, stallMps)) {
            Path path = Path.of(flight);
            List<Found> found = in(path);
            if (!found.isEmpty()) {
                flights.add(doubted(found, usualStepS(flight)));
            }
        }
        return flights;
    }

    private List<Found> in(Path path) {
        List<Found> found = Swings.in(path, finder.find(path));
        return Passes.in(path, new Doubles(TWICE_S / known.scale).in(found));
    }

    /** How many figures are in what was found. */
    public static long figures(List<Found> found) {
        return found.stream().filter(f -> f.what() == What.FIGURE).count();
    }

    /** Seconds from one reading to the next, mostly; 0 for less than two. */
    public static double usualStepS(List<Reading> readings) {
        double[] steps = new double[Math.max(0, readings.size() - 1)];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = readings.get(i + 1).tS() - readings.get(i).tS();
        }
        Arrays.sort(steps);
        return steps.length == 0 ? 0 : steps[steps.length / 2];
    }

    /** What lies between two readings is not seen, so the less sure the further they are apart. */
    private static List<Found> doubted(List<Found> found, double stepS) {
        double share = Math.min(1, SEEN_S / stepS);
        return share == 1
                ? found
                : found.stream()
                        .map(f -> new Found(
                                f.what(),
                                f.startS(),
                                f.endS(),
                                f.guesses().stream()
                                        .map(g -> new Guess(g.name(), share * g.sure()))
                                        .toList()))
                        .toList();
    }

    /** As a list that an act is arranged from; ways are left out, for they are found anew. */
    public static FigureList list(List<Found> found) {
        List<ListLine> lines = new ArrayList<>();
        for (Found one : found) {
            if (one.what() != What.WAY) {
                lines.add(line(one));
            }
        }
        return new FigureList(lines, List.of(), List.of());
    }

    private static ListLine line(Found one) {
        String when = String.format(
                Locale.UK,
                Asked.FROM_LOG + "at %d:%02d for %.0f s",
                (int) one.startS() / 60,
                (int) one.startS() % 60,
                one.seconds());
        return switch (one.what()) {
            case FIGURE -> {
                Guess best = one.guesses().get(0);
                List<String> choices = best.sure() >= SURE
                        ? List.of()
                        : one.guesses().stream().limit(2).map(Guess::name).toList();
                String text = String.format(Locale.UK, "%s, %.0f%% sure", when, 100 * best.sure());
                // Its own time: what it took on that day only its lines and slow rolls could make up for.
                yield line(text, best.name(), best.name(), null, choices.isEmpty(), choices);
            }
            case LINE -> line(when, LINE, LINE_TITLE, one.seconds(), false, List.of(LINE, LINE_OTHER));
            default -> line(when, null, UNKNOWN_TITLE, one.seconds(), false, List.of());
        };
    }

    private static ListLine line(
            String text,
            @Nullable String figure,
            String title,
            @Nullable Double seconds,
            boolean sure,
            List<String> choices) {
        return ListLine.of(
                text, figure, title, seconds == null ? null : Math.max(1, Math.rint(seconds)), sure, choices);
    }
}
