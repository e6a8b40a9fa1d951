package crowdline.sheet;

import crowdline.flight.Drift;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.flight.Spread;
import crowdline.measure.Hour;
import crowdline.measure.Measures;
import crowdline.measure.Measures.Dimension;
import crowdline.measure.SpeedUnit;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Caution;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.timing.FigureTime;
import crowdline.timing.LearnedFigure;
import crowdline.timing.LearnedTimes;
import crowdline.timing.PredictedTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The predicted act as text: what comes when, how long, how fast, how high, how heavy. */
public final class RunningSheet {
    /** The caution every page carries. */
    public static final String CAUTION = Caution.ON_PAPER;

    /** What heights are counted from. */
    public static final String HEIGHTS = "Heights are above the display datum.";

    private static final int NAME_WIDE = 23;

    private final Measures measures;
    /** How much longer the unit of speeds is than usual; its columns take that room from the names, so that all of it still fits a page. */
    private final int more;

    private RunningSheet(Measures measures) {
        this.measures = measures;
        more = measures.speeds().sign().length() - SpeedUnit.KNOTS.sign().length();
    }

    /**
     * The lines of the sheet.
     *
     * @param bands one for each figure of the flight
     * @param drifts one for each figure of the flight
     * @param learned what passes say about the times, on top of this flight
     * @param notes lines to print under the figure with the same place, such as what is said in it; may be empty
     * @param measures what speeds and heights are told in
     */
    public static List<String> lines(
            Show show,
            Act act,
            Flight flight,
            List<Spread.Band> bands,
            List<Drift> drifts,
            LearnedTimes learned,
            List<List<String>> notes,
            Measures measures) {
        return new RunningSheet(measures).all(show, act, flight, bands, drifts, learned, notes);
    }

    private List<String> all(
            Show show,
            Act act,
            Flight flight,
            List<Spread.Band> bands,
            List<Drift> drifts,
            LearnedTimes learned,
            List<List<String>> notes) {
        List<String> lines = new ArrayList<>();
        String pilot = show.performer(act.performer()).map(Performer::name).orElse(act.performer());
        String aircraft = show.aircraft(act.airframe()).map(Aircraft::name).orElse(act.airframe());
        lines.addAll(Columns.wrapped(act.title(), Columns.MOST));
        lines.addAll(Columns.wrapped(
                pilot + ", " + aircraft + ". Slot " + Hour.toTheMinute(act.slotStart()) + ", " + trim(act.slotMinutes())
                        + " min. Variant \"" + flight.variant() + "\", " + lasts(flight, learned) + ".",
                Columns.MOST));
        lines.add("");
        lines.addAll(row(
                "starts",
                "figure",
                "lasts",
                "most often",
                measures.speeds().sign() + " in/out",
                measures.speeds().sign() + " min-max",
                measures.heights().sign() + " low-high",
                "g felt"));
        for (int i = 0; i < flight.figures().size(); i++) {
            lines.addAll(
                    row(flight.figures().get(i), bands.get(i), learned.figures().get(i)));
            if (i < notes.size()) {
                lines.addAll(notes.get(i));
            }
        }
        if (flight.figures().stream().anyMatch(FigureFlight::isPlaced)) {
            lines.add("");
            lines.addAll(ends("starts", "figure", "ends", "wind carried"));
            for (int i = 0; i < flight.figures().size(); i++) {
                FigureFlight f = flight.figures().get(i);
                Drift drift = drifts.get(i);
                lines.addAll(ends(
                        minutes(learned.figures().get(i).learned().startS()),
                        f.name(),
                        f.isPlaced() ? place(f.exitAlongM(), f.exitAwayM()) : "",
                        f.simulated() && drift.isKnown() ? place(drift.alongM(), drift.awayM()) : ""));
            }
        }
        if (!flight.findings().isEmpty()) {
            lines.add("");
            for (FlightFinding finding : flight.findings()) {
                String severity = finding.severity().name().toLowerCase(Locale.ROOT);
                lines.addAll(Columns.hanging(severity + ": ", 2, measures.told(finding.message())));
            }
        }
        lines.add("");
        lines.addAll(Columns.wrapped(
                HEIGHTS + " Ends: metres to the right (R) or left (L) of the datum, and away from the crowd (A) or over"
                        + " the display line towards it (C). Wind carried: from where the figure would end in still air.",
                Columns.MOST));
        lines.addAll(Columns.wrapped(CAUTION, Columns.MOST));
        return lines;
    }

    private static String lasts(Flight flight, LearnedTimes learned) {
        String predicted = "predicted " + minutes(flight.totalS());
        int passes = learned.passes();
        if (passes == 0) {
            return isAsPredicted(flight, learned)
                    ? predicted
                    : minutes(learned.times().totalS()) + " by the list's own clock, " + predicted;
        }
        long timed = learned.figures().stream().filter(f -> f.passes() > 0).count();
        return minutes(learned.times().totalS()) + " learned from " + passes + (passes == 1 ? " pass" : " passes")
                + (timed < learned.figures().size()
                        ? " for " + timed + " of " + learned.figures().size() + " figures"
                        : "")
                + ", " + predicted;
    }

    private static boolean isAsPredicted(Flight flight, LearnedTimes learned) {
        for (int i = 0; i < flight.figures().size(); i++) {
            if (!isAsPredicted(flight.figures().get(i), learned.figures().get(i))) {
                return false;
            }
        }
        return true;
    }

    /** Otherwise the list's own clock has it. */
    private static boolean isAsPredicted(FigureFlight f, LearnedFigure learned) {
        return learned.predicted().durationS() == PredictedTimes.durationS(f);
    }

    private List<String> row(FigureFlight f, Spread.Band band, LearnedFigure learned) {
        FigureTime time = learned.learned();
        boolean timed = learned.passes() > 0 || !isAsPredicted(f, learned);
        double lastsS = timed ? time.durationS() : f.durationS();
        String often = often(f, band, timed ? time : null);
        if (!f.simulated()) {
            return row(
                    minutes(time.startS()),
                    f.name(),
                    String.format(Locale.UK, "%.1f s", lastsS),
                    often,
                    "",
                    "",
                    "",
                    "");
        }
        return row(
                minutes(time.startS()),
                f.name(),
                String.format(Locale.UK, "%.1f s", lastsS),
                often,
                kt(f.entryMps()) + "/" + kt(f.exitMps()),
                kt(f.leastMps()) + "-" + kt(f.greatestMps()),
                ft(f.lowestM()) + "-" + ft(f.highestM()),
                String.format(Locale.UK, "%+.1f/%+.1f", tenths(f.leastG()), tenths(f.greatestG())));
    }

    /** Metres along and across the display line, such as "120 R 45 A". */
    private static String place(double alongM, double awayM) {
        return String.format(
                Locale.UK,
                "%4d %s %4d %s",
                Math.round(Math.abs(alongM)),
                alongM < 0 ? "L" : "R",
                Math.round(Math.abs(awayM)),
                awayM < 0 ? "C" : "A");
    }

    private static String often(FigureFlight f, Spread.Band band, @Nullable FigureTime timed) {
        if (timed != null) {
            return String.format(Locale.UK, "%.1f-%.1f s", timed.lowS(), timed.highS());
        }
        if (!f.simulated()) {
            return "as given";
        }
        return Double.isFinite(band.lowS()) ? String.format(Locale.UK, "%.1f-%.1f s", band.lowS(), band.highS()) : "";
    }

    private List<String> row(String starts, String name, Object... cells) {
        String rest =
                String.format(Locale.UK, "%7s  %-11s  %" + (9 + more) + "s  %-" + (10 + more) + "s  %-11s  %s", cells);
        return named(starts, name, "  " + rest);
    }

    private List<String> ends(String starts, String name, String ends, String carried) {
        return named(starts, name, String.format(Locale.UK, "  %-13s  %s", ends, carried));
    }

    /** A row whose name goes on under itself if it is long. */
    private List<String> named(String starts, String name, String rest) {
        List<String> lines = new ArrayList<>();
        for (String part : Columns.wrapped(name, nameWide())) {
            String line = lines.isEmpty()
                    ? String.format(Locale.UK, "%6s  %-" + nameWide() + "s%s", starts, part, rest)
                    : " ".repeat(8) + part;
            lines.add(line.stripTrailing());
        }
        return lines;
    }

    private int nameWide() {
        return NAME_WIDE - 2 * more;
    }

    /** Rounded before it is written, or what is just below nothing would be minus nothing. */
    private static double tenths(double g) {
        return Math.rint(g * 10) / 10 + 0.0;
    }

    private String kt(double mps) {
        return Long.toString(Math.round(measures.in(Units.ktFromMps(mps), Dimension.SPEED)));
    }

    private String ft(double m) {
        return measures.roughlyNumber(Units.ftFromM(m));
    }

    /** Minutes and seconds, such as 3:07. */
    public static String minutes(double seconds) {
        long whole = Math.round(seconds);
        return String.format(Locale.UK, "%d:%02d", whole / 60, whole % 60);
    }

    private static String trim(double minutes) {
        return minutes == Math.rint(minutes)
                ? Long.toString((long) minutes)
                : String.format(Locale.UK, "%.1f", minutes);
    }
}
