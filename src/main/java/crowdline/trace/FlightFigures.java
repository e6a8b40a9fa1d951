package crowdline.trace;

import crowdline.flight.FigureTrial;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.catalogue.Catalogue;
import crowdline.telemetry.Reading;
import crowdline.trace.Found.Guess;
import crowdline.trace.Found.What;
import java.util.ArrayList;
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
    private static final double SURE = 0.7;

    private final Finder finder;

    /** @param trial flies the kind of aircraft the log is of */
    public FlightFigures(Catalogue catalogue, FigureTrial trial) {
        finder = new Finder(new KnownShapes(catalogue, trial));
    }

    /**
     * What was flown, in order; empty if nothing but level flight is in it.
     *
     * @param readings in the order of time
     */
    public List<Found> in(List<Reading> readings) {
        if (readings.size() < 2
                || readings.get(readings.size() - 1).tS() - readings.get(0).tS() < Path.STEP_S) {
            return List.of();
        }
        Path path = Path.of(readings);
        return Passes.in(path, finder.find(path));
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
                Locale.UK, "%d:%02d, timed at %.0f s", (int) one.startS() / 60, (int) one.startS() % 60, one.seconds());
        return switch (one.what()) {
            case FIGURE -> {
                Guess best = one.guesses().get(0);
                List<String> choices = best.sure() >= SURE
                        ? List.of()
                        : one.guesses().stream().limit(2).map(Guess::name).toList();
                String text = String.format(Locale.UK, "%s, %.0f %% sure", when, 100 * best.sure());
                yield line(text, best.name(), best.name(), one.seconds(), choices.isEmpty(), choices);
            }
            case LINE -> line(when, LINE, LINE_TITLE, one.seconds(), false, List.of(LINE, LINE_OTHER));
            default -> line(when, null, UNKNOWN_TITLE, one.seconds(), false, List.of());
        };
    }

    private static ListLine line(
            String text, @Nullable String figure, String title, double seconds, boolean sure, List<String> choices) {
        return new ListLine(
                text,
                figure,
                title,
                null,
                null,
                null,
                null,
                null,
                null,
                Math.max(1, Math.rint(seconds)),
                null,
                null,
                sure,
                choices);
    }
}
