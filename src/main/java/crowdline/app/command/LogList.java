package crowdline.app.command;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.list.line.Aside;
import crowdline.list.line.FigureList;
import crowdline.loaded.LogReadings;
import crowdline.show.Show;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.IgcHeight;
import crowdline.trace.FlightFigures;
import crowdline.trace.Found;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** The list of figures that was flown in a flight log, as a pilot would have written it. */
final class LogList {
    private static final String NOTE =
            "found in a flight log, which shows no roll along a line, and of look-alikes the usual: ask the pilot";

    /** Things found: no display has so many, nor may an act. Common practice, no source. */
    private static final int MOST = 100;

    private LogList() {}

    /**
     * Reads a log; a finding that is an error says that there is no figure in it.
     *
     * @param waiting told where reading may take long
     * @throws ShowFileException if it cannot be read, or the figures of such an aircraft are only timed
     */
    static FigureList read(Path log, Show show, Kind kind, Catalogue catalogue, Consumer<String> waiting)
            throws ShowFileException {
        if (!kind.flies()) {
            throw new ShowFileException("--from needs a kind of aircraft whose figures can be drawn, to compare them"
                    + " with the log; the figures of " + kind.name() + " are only timed");
        }
        String name = String.valueOf(log.getFileName());
        LogReadings readings = LogReadings.readAnywhere(log, IgcHeight.GNSS, waiting);
        FigureTrial trial =
                new FigureTrial(kind.airframe("log", kind.name(), Sliders.TYPICAL), Air.of(show.air(), show.venue()));
        List<List<Found>> flights = new FlightFigures(catalogue, trial).flights(readings.readings());
        if (flights.isEmpty()) {
            List<Finding> findings = leftOut(name, readings);
            findings.add(new Finding(
                    Severity.ERROR,
                    "no-figure-in-log",
                    "no figure was found in " + name
                            + ": it shows only level flight, turns and slow climbs; name the log of a display, and the"
                            + " kind of aircraft that flew it",
                    ""));
            return new FigureList(List.of(), List.of(), findings);
        }
        List<Found> most = Collections.max(flights, Comparator.comparingLong(FlightFigures::figures));
        FigureList list = FlightFigures.list(most);
        if (list.lines().size() > MOST) {
            List<Finding> findings = leftOut(name, readings);
            findings.add(tooMany(name, list.lines().size(), most));
            return new FigureList(List.of(), List.of(), findings);
        }
        return new FigureList(
                list.lines(), List.of(new Aside(NOTE, 0, List.of())), findings(name, readings, most, flights.size()));
    }

    private static Finding tooMany(String log, int lines, List<Found> most) {
        return new Finding(
                Severity.ERROR,
                "too-much-in-log",
                String.format(
                        Locale.UK,
                        "%d figures and lines were found in %s, from %s to %s, and an act made of a log has at most %d;"
                                + " keep only the part of the log in which one display was flown",
                        lines,
                        log,
                        clock(most.get(0).startS()),
                        clock(most.get(most.size() - 1).endS()),
                        MOST),
                "");
    }

    private static String clock(double seconds) {
        return String.format(Locale.UK, "%d:%02d", (int) seconds / 60, (int) seconds % 60);
    }

    /** What of the log could not be read, each with its line, as where it was cut off or damaged on its way. */
    private static List<Finding> leftOut(String log, LogReadings readings) {
        List<Finding> findings = new ArrayList<>();
        for (String what : readings.leftOut()) {
            findings.add(new Finding(Severity.WARNING, "log-left-out", log + ", " + what, ""));
        }
        return findings;
    }

    private static List<Finding> findings(String log, LogReadings readings, List<Found> most, int flights) {
        List<Finding> findings = leftOut(log, readings);
        if (flights > 1) {
            findings.add(new Finding(
                    Severity.WARNING,
                    "several-flights-in-log",
                    String.format(
                            Locale.UK,
                            "figures were found in %d flights of this log; these are those of the flight with the most, from %s on;"
                                    + " for another one keep only its part of the log",
                            flights,
                            clock(most.get(0).startS())),
                    ""));
        }
        double stepS = FlightFigures.usualStepS(readings.readings());
        if (stepS > FlightFigures.SEEN_S) {
            findings.add(new Finding(
                    Severity.WARNING,
                    "log-is-coarse",
                    String.format(
                            Locale.UK,
                            "the log has a place only every %.0f s, and what lies between is not seen, so hardly a figure is"
                                    + " sure; ask for a log with a place every second",
                            stepS),
                    ""));
        }
        return findings;
    }
}
