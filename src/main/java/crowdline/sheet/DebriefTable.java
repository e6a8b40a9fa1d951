package crowdline.sheet;

import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.event.Source;
import crowdline.live.state.Note;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The figures of a debrief as comma-separated values. */
public final class DebriefTable {
    private static final String HEAD =
            "act,variant,run,figure,name,fate,plannedStartS,plannedS,startS,flownS,lateS,longerS,heldS,markedBy,measured,notes";

    private DebriefTable() {}

    /** The figures of every run as comma-separated values; texts are quoted. */
    public static List<String> lines(Debrief debrief) {
        return Stream.concat(
                        Stream.of(HEAD),
                        Stream.concat(
                                debrief.runs().stream()
                                        .flatMap(r -> r.figures().stream()
                                                .map(f -> cells(r, f, notes(debrief, note -> isIn(note, r, f))))),
                                Stream.of(notes(
                                                debrief,
                                                note -> debrief.runs().stream()
                                                        .noneMatch(r -> r.figures().stream()
                                                                .anyMatch(f -> isIn(note, r, f)))))
                                        .filter(notes -> !notes.isEmpty())
                                        .map(DebriefTable::outside)))
                .toList();
    }

    /** What was noted while a figure was flown, in this run and not in another of the same act. */
    private static boolean isIn(Note note, Run run, FigureRun figure) {
        Double startS = figure.startS();
        Double endS = run.sessionEndS();
        return startS != null
                && run.actId().equals(note.actId())
                && figure.figureId().equals(note.figureId())
                && note.atS() >= run.sessionStartS()
                && (endS == null || note.atS() <= endS);
    }

    private static String notes(Debrief debrief, Predicate<Note> which) {
        return debrief.notes().stream()
                .filter(which)
                .map(note -> note.text().isEmpty() ? "noted" : note.text())
                .collect(Collectors.joining("; "));
    }

    /** A row for what was noted while no figure was flown. */
    private static String outside(String notes) {
        return ",".repeat(5) + "note" + ",".repeat(10) + CsvCell.quoted(notes);
    }

    private static String cells(Run run, FigureRun f, String notes) {
        Source mark = f.mark();
        return String.join(
                ",",
                CsvCell.quoted(run.title()),
                CsvCell.quoted(run.variant()),
                Integer.toString(run.run()),
                CsvCell.quoted(f.figureId()),
                CsvCell.quoted(f.name()),
                f.fate().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                number(f.plannedStartS()),
                number(f.plannedS()),
                number(f.startS()),
                number(f.flownS()),
                number(f.lateS()),
                number(f.longerS()),
                number(f.heldS()),
                mark == null ? "" : mark.name().toLowerCase(Locale.ROOT),
                Boolean.toString(f.measured()),
                notes.isEmpty() ? "" : CsvCell.quoted(notes));
    }

    private static String number(@Nullable Double value) {
        return value == null ? "" : String.format(Locale.ROOT, "%.2f", value + 0.0);
    }
}
