package crowdline.app.command;

import crowdline.arrange.ShowArranging;
import crowdline.layout.LaidOut;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.measure.Hour;
import crowdline.show.Performer;
import crowdline.show.check.Finding;
import crowdline.show.figure.Figure;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was made of a list, as JSON. */
final class ArrangedJson {
    private ArrangedJson() {}

    /**
     * The lines, the notes, the act and what was found.
     *
     * @param made null if no act could be made
     */
    static Map<String, Object> of(FigureList read, ShowArranging.@Nullable Made made) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("lines", read.lines().stream().map(ArrangedJson::json).toList());
        all.put("notes", read.notes());
        if (made != null) {
            Map<String, Object> act = new LinkedHashMap<>();
            act.put("id", made.act().id());
            act.put("title", made.act().title());
            act.put(
                    "performer",
                    made.show()
                            .performer(made.act().performer())
                            .map(Performer::name)
                            .orElse(""));
            act.put("slotStart", Hour.toTheMinute(made.act().slotStart()));
            act.put("slotMinutes", made.act().slotMinutes());
            act.put("seconds", made.arranged().seconds());
            List<Object> figures = new ArrayList<>();
            for (FigureTime time : ArrangedTimes.of(made)) {
                Figure figure = made.act().figure(time.figureId()).orElseThrow();
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("id", figure.id());
                row.put("figure", figure.figure());
                row.put("title", figure.shownName());
                row.put("beginsS", time.startS());
                row.put("seconds", time.durationS());
                row.put("transit", figure.transit());
                figures.add(row);
            }
            act.put("figures", figures);
            all.put("act", act);
        }
        List<Object> findings = new ArrayList<>();
        for (Finding finding : read.findings()) {
            findings.add(
                    finding(finding.severity().name().toLowerCase(Locale.ROOT), finding.code(), finding.message()));
        }
        if (made != null) {
            for (LaidOut.Finding finding : made.arranged().findings()) {
                findings.add(finding("warning", "layout", finding.message()));
            }
        }
        all.put("findings", findings);
        return all;
    }

    private static Map<String, Object> finding(String severity, String code, String message) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("severity", severity);
        row.put("code", code);
        row.put("message", message);
        return row;
    }

    private static Map<String, Object> json(ListLine line) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("text", line.text());
        row.put("figure", line.figure());
        row.put("title", line.title());
        row.put("count", line.count());
        row.put("place", line.place() == null ? null : words(line.place()));
        row.put("side", line.side() == null ? null : words(line.side()));
        row.put("heading", line.heading() == null ? null : words(line.heading()));
        row.put("heightFt", line.heightFt());
        row.put("entryKt", line.entryKt());
        row.put("seconds", line.seconds());
        row.put("beginsS", line.beginsS());
        row.put("smoke", line.smoke());
        row.put("note", line.note());
        row.put("sure", line.sure());
        row.put("choices", line.choices());
        return row;
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
