package crowdline.sheet;

import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.event.Source;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The figures of a debrief as comma-separated values. */
public final class DebriefTable {
    private static final String HEAD =
            "act,variant,run,figure,name,fate,plannedStartS,plannedS,startS,flownS,lateS,longerS,heldS,markedBy,measured";

    private DebriefTable() {}

    /** The figures of every run as comma-separated values; texts are quoted. */
    public static List<String> lines(Debrief debrief) {
        return Stream.concat(
                        Stream.of(HEAD),
                        debrief.runs().stream()
                                .flatMap(r -> r.figures().stream().map(f -> cells(r, f))))
                .toList();
    }

    private static String cells(Run run, FigureRun f) {
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
                Boolean.toString(f.measured()));
    }

    private static String number(@Nullable Double value) {
        return value == null ? "" : String.format(Locale.ROOT, "%.2f", value + 0.0);
    }
}
