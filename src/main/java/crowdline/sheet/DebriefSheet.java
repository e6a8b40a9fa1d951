package crowdline.sheet;

import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.Fate;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.RemarkRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.Debrief.Told;
import crowdline.live.event.Source;
import crowdline.live.state.Announced;
import crowdline.live.state.IncidentSpan;
import crowdline.live.state.Note;
import crowdline.measure.Hour;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** A debrief as text, and what pages and screens say of it in the same words. */
public final class DebriefSheet {
    /** What a debrief can know. */
    public static final String KNOWN =
            "A remark is marked when S was pressed for it; nothing else is known of what was said. Planned times are"
                    + " predictions, for commentary only.";

    private DebriefSheet() {}

    /**
     * The lines to read and print.
     *
     * @param hour the clock at the venue at a second of the session
     */
    public static List<String> lines(Debrief debrief, DoubleFunction<LocalTime> hour) {
        List<String> lines = new ArrayList<>();
        lines.add(debrief.showTitle() + ": debrief");
        lines.add("");
        if (debrief.runs().isEmpty()) {
            lines.add("No act has been flown yet. Acts flown in Live are compared with the plan here.");
        }
        for (Run run : debrief.runs()) {
            act(lines, run, hour);
        }
        List<RemarkRun> told = debrief.remarks().stream()
                .filter(r -> r.told() != Told.NOT_MARKED)
                .toList();
        if (!told.isEmpty()) {
            lines.add("Remarks of the show");
            told.forEach(r -> lines.add(remark(r, hour)));
            lines.add("");
        }
        if (!debrief.day().duties().isEmpty()) {
            lines.add("Duties of the day");
            debrief.day().duties().forEach(d -> lines.add(DutySheet.line(d, hour)));
            lines.add("");
        }
        lines.add(thanks(debrief));
        lines.addAll(incidents(debrief, hour));
        lines.addAll(announcements(debrief, hour));
        lines.addAll(notes(debrief, hour));
        lines.add("");
        lines.add(debrief.changes().isEmpty() ? "To change: nothing stands out." : "To change:");
        debrief.changes().forEach(c -> lines.add("  - " + c));
        lines.add("");
        lines.add(KNOWN);
        return lines;
    }

    /** What was noted and when, each with the figure that was flown then. */
    public static List<String> notes(Debrief debrief, DoubleFunction<LocalTime> hour) {
        return debrief.notes().stream()
                .map(n -> "Note at " + Hour.toTheSecond(hour.apply(n.atS()))
                        + figure(debrief, n).map(name -> ", " + name).orElse("")
                        + (n.text().isEmpty() ? "" : ": " + n.text()))
                .toList();
    }

    private static Optional<String> figure(Debrief debrief, Note note) {
        return debrief.runs().stream()
                .filter(run -> run.actId().equals(note.actId()))
                .flatMap(run -> run.figures().stream())
                .filter(figure -> figure.figureId().equals(note.figureId()))
                .map(FigureRun::name)
                .findFirst();
    }

    private static void act(List<String> lines, Run run, DoubleFunction<LocalTime> hour) {
        Double endS = run.sessionEndS();
        lines.add(run.title() + ", " + run.variant() + (run.run() > 1 ? ", run " + run.run() : ""));
        lines.add(Hour.toTheSecond(hour.apply(run.sessionStartS()))
                + (endS == null ? ", still in the air. " : " to " + Hour.toTheSecond(hour.apply(endS)) + ". ")
                + total(run));
        lines.add("");
        lines.add(row("due", "began", "late", "figure", "planned", "flown", "differs"));
        run.figures().forEach(f -> lines.add(row(f)));
        run.offPlan()
                .forEach(o -> lines.add("Off the plan from " + RunningSheet.minutes(o.fromS()) + " to "
                        + RunningSheet.minutes(o.toS())));
        lines.add("");
        lines.add(said(run.remarks()));
        run.remarks().stream()
                .filter(r -> r.told() != Told.NOT_MARKED || r.kind() == RemarkKind.DUTY)
                .forEach(r -> lines.add(remark(r, hour)));
        lines.add("");
    }

    /** "4:12 flown, 4:00 planned: 12 s longer". */
    public static String total(Run run) {
        Double flownS = run.flownS();
        Double plannedS = run.plannedS();
        String planned = plannedS == null ? "no prediction" : RunningSheet.minutes(plannedS) + " planned";
        if (flownS == null) {
            return planned;
        }
        String flown = RunningSheet.minutes(flownS) + " flown, " + planned;
        return plannedS == null ? flown : flown + ": " + differs(flownS - plannedS);
    }

    private static String differs(double seconds) {
        long whole = Math.round(seconds);
        String amount = Math.abs(whole) < 60 ? Math.abs(whole) + " s" : RunningSheet.minutes(Math.abs(seconds));
        return whole == 0 ? "as planned" : amount + (whole > 0 ? " longer" : " shorter");
    }

    /** "Remarks: 4 of 9 marked, 1 left out, 0 not finished, 4 not marked". */
    public static String said(List<RemarkRun> remarks) {
        long said = remarks.stream().filter(r -> r.told() == Told.SAID).count();
        long skipped = remarks.stream().filter(r -> r.told() == Told.SKIPPED).count();
        long cut = remarks.stream().filter(r -> r.told() == Told.CUT_SHORT).count();
        return "Remarks: " + said + " of " + remarks.size() + " marked, " + skipped + " left out, " + cut
                + " not finished, " + (remarks.size() - said - skipped - cut) + " not marked";
    }

    /** "Duties and thanks: 2 of 3 marked". */
    public static String thanks(Debrief debrief) {
        List<RemarkRun> duties = debrief.remarks(RemarkKind.DUTY);
        long said = duties.stream().filter(r -> r.told() == Told.SAID).count();
        return duties.isEmpty()
                ? "Duties and thanks: none in the acts flown"
                : "Duties and thanks: " + said + " of " + duties.size() + " marked";
    }

    /** One line for each time the incident page was open, or one that says there was none. */
    public static List<String> incidents(Debrief debrief, DoubleFunction<LocalTime> hour) {
        if (debrief.incidents().isEmpty()) {
            return List.of("Incident page: not opened");
        }
        return debrief.incidents().stream().map(i -> incident(i, hour)).toList();
    }

    /** One line for each time an announcement was shown; of one that was read out, what was said. */
    public static List<String> announcements(Debrief debrief, DoubleFunction<LocalTime> hour) {
        return debrief.announcements().stream()
                .map(page -> announcement(page, hour))
                .toList();
    }

    private static String announcement(Announced.Page page, DoubleFunction<LocalTime> hour) {
        Double readAtS = page.readAtS();
        String shown = "Announcement: " + page.occasion() + ", shown " + Hour.toTheSecond(hour.apply(page.shownAtS()));
        return readAtS == null
                ? shown + ", not marked as read"
                : shown + ", read out " + Hour.toTheSecond(hour.apply(readAtS)) + ": " + String.join(" ", page.words());
    }

    private static String incident(IncidentSpan span, DoubleFunction<LocalTime> hour) {
        Double closedAtS = span.closedAtS();
        String from = "Incident page: from " + Hour.toTheSecond(hour.apply(span.openedAtS()));
        return closedAtS == null
                ? from + ", still open"
                : from + " to " + Hour.toTheSecond(hour.apply(closedAtS)) + ", "
                        + RunningSheet.minutes(closedAtS - span.openedAtS());
    }

    private static String remark(RemarkRun remark, DoubleFunction<LocalTime> hour) {
        Double atS = remark.sessionAtS();
        return String.format(
                Locale.UK,
                "  %-8s  %-17s  %-11s  %s",
                atS == null ? "" : Hour.toTheSecond(hour.apply(atS)),
                word(remark.told()),
                remark.kind().name().toLowerCase(Locale.ROOT),
                remark.text());
    }

    /** What became of a remark, in a word or two. */
    public static String word(Told told) {
        return switch (told) {
            case SAID -> "marked";
            case SKIPPED -> "left out";
            case CUT_SHORT -> "begun, not marked";
            case SHOWN -> "shown, not marked";
            case NOT_MARKED -> "not marked";
        };
    }

    /** What became of a figure, in a word or two; empty if it was flown as planned. */
    public static String word(Fate fate) {
        return switch (fate) {
            case FLOWN -> "";
            case AGAIN -> "again";
            case SWAPPED -> "swapped";
            case DROPPED -> "dropped";
            case NOT_FLOWN -> "not flown";
        };
    }

    private static String row(FigureRun f) {
        String fate = word(f.fate());
        return row(
                minutes(f.plannedStartS()),
                minutes(f.startS()),
                signed(f.lateS()),
                f.name() + (fate.isEmpty() ? "" : " (" + fate + ")"),
                tenths(f.plannedS()),
                tenths(f.flownS()) + (f.measured() || f.flownS() == null ? "" : "*"),
                (f.measured() ? signed(f.longerS()) : "") + how(f));
    }

    /** That the clock began it, and how long its clock was held; empty if neither. */
    public static String how(FigureRun f) {
        return (f.mark() == Source.CLOCK ? " by clock" : "")
                + (f.heldS() > 0 ? String.format(Locale.UK, " held %.0f s", f.heldS()) : "");
    }

    private static String row(Object... cells) {
        return String.format(Locale.UK, "%7s  %7s  %7s  %-34s %8s  %8s  %s", cells)
                .stripTrailing();
    }

    /** "3:07", or empty if it is not known. */
    public static String minutes(@Nullable Double seconds) {
        return seconds == null ? "" : RunningSheet.minutes(Math.max(0, seconds));
    }

    /** "3.1 s", or empty if it is not known. */
    public static String tenths(@Nullable Double seconds) {
        return seconds == null ? "" : String.format(Locale.UK, "%.1f s", seconds);
    }

    /** "+1.2 s". */
    public static String signed(@Nullable Double seconds) {
        return seconds == null ? "" : String.format(Locale.UK, "%+.1f s", Math.rint(seconds * 10) / 10 + 0.0);
    }
}
