package crowdline.app.command;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.loaded.Prediction;
import crowdline.show.Act;
import crowdline.storage.json.JsonOut;
import crowdline.timing.FigureTime;
import crowdline.timing.LearnedFigure;
import crowdline.timing.LearnedTimes;
import crowdline.timing.Pass;
import crowdline.timing.TimedRun;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What was learned of an act from its passes, as text and as rows for JSON. */
final class PassTable {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Locale.UK);

    private final Act act;
    private final Prediction prediction;
    private final List<Pass> passes;

    /** @param passes of every act */
    PassTable(Act act, Prediction prediction, List<Pass> passes) {
        this.act = act;
        this.prediction = prediction;
        this.passes = LearnedTimes.ofAct(
                passes, prediction.flight().actId(), prediction.flight().variant());
    }

    /** How a pass was timed, in words. */
    static String how(Pass.How how) {
        return switch (how) {
            case WALKED -> "walked";
            case BY_HAND -> "by hand";
            case BY_LOG -> "flight log";
            case LIVE -> "live";
        };
    }

    List<String> lines(ZoneId zone) {
        LearnedTimes learned = prediction.learned();
        Flight flight = prediction.flight();
        List<String> lines = new ArrayList<>();
        lines.add(act.title() + ", variant \"" + flight.variant() + "\": "
                + (learned.passes() == 0
                        ? "nothing learned yet, " + passes.size() + " passes"
                        : "learned from " + learned.passes() + " of " + passes.size()
                                + (passes.size() == 1 ? " pass" : " passes")));
        lines.add("");
        lines.add(row("figure", "predicted", "most often", "learned", "most often", "passes"));
        for (LearnedFigure figure : learned.figures()) {
            FigureTime before = figure.predicted();
            FigureTime now = figure.learned();
            boolean timed = figure.passes() > 0;
            lines.add(row(
                    name(flight, figure.figureId()),
                    seconds(before.durationS()) + " s",
                    band(before),
                    timed ? seconds(now.durationS()) + " s" : "",
                    timed ? band(now) : "",
                    timed ? Integer.toString(figure.passes()) : ""));
            figure.odd().forEach(why -> lines.add("    odd, " + why));
        }
        lines.add("");
        for (int i = 0; i < passes.size(); i++) {
            Pass pass = passes.get(i);
            lines.add(String.format(
                            Locale.UK,
                            "pass %d  %s  %s, %s, %d %s, %s  %s",
                            i + 1,
                            pass.id(),
                            how(pass.how()),
                            WHEN.withZone(zone).format(pass.begunAt()),
                            pass.figures().size(),
                            pass.figures().size() == 1 ? "figure" : "figures",
                            counts(pass),
                            pass.note())
                    .stripTrailing());
        }
        if (!passes.isEmpty()) {
            lines.add("");
        }
        return lines;
    }

    private static String counts(Pass pass) {
        if (!pass.counts()) {
            return "ignored";
        }
        return pass.how().isFlown() ? "counts" : "times not used";
    }

    private static String row(Object... cells) {
        return String.format(Locale.UK, "%-30s %9s  %-12s %9s  %-12s %6s", cells)
                .stripTrailing();
    }

    private static String band(FigureTime time) {
        return seconds(time.lowS()) + "-" + seconds(time.highS()) + " s";
    }

    private static String seconds(double value) {
        return String.format(Locale.UK, "%.1f", value);
    }

    private static String name(Flight flight, String figureId) {
        return flight.figure(figureId).map(FigureFlight::name).orElse(figureId);
    }

    Map<String, Object> row() {
        LearnedTimes learned = prediction.learned();
        Flight flight = prediction.flight();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", act.id());
        row.put("variant", flight.variant());
        row.put("passesLearnedFrom", learned.passes());
        row.put("predictedS", JsonOut.thousandths(flight.totalS()));
        row.put("learnedS", JsonOut.thousandths(learned.times().totalS()));
        row.put("figures", learned.figures().stream().map(f -> row(flight, f)).toList());
        row.put("passes", passes.stream().map(PassTable::row).toList());
        return row;
    }

    private static Map<String, Object> row(Flight flight, LearnedFigure figure) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", figure.figureId());
        row.put("name", name(flight, figure.figureId()));
        row.put("predictedS", JsonOut.thousandths(figure.predicted().durationS()));
        row.put("predictedLowS", JsonOut.thousandths(figure.predicted().lowS()));
        row.put("predictedHighS", JsonOut.thousandths(figure.predicted().highS()));
        row.put("learnedS", JsonOut.thousandths(figure.learned().durationS()));
        row.put("learnedLowS", JsonOut.thousandths(figure.learned().lowS()));
        row.put("learnedHighS", JsonOut.thousandths(figure.learned().highS()));
        row.put("passes", figure.passes());
        row.put("runs", figure.runs().stream().map(PassTable::row).toList());
        return row;
    }

    private static Map<String, Object> row(TimedRun run) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("pass", run.passId());
        row.put("number", run.passNumber());
        row.put("durationS", JsonOut.thousandths(run.durationS()));
        row.put("odd", run.odd());
        return row;
    }

    private static Map<String, Object> row(Pass pass) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", pass.id());
        row.put("how", pass.how());
        row.put("begunAt", pass.begunAt().toString());
        row.put("counts", pass.counts());
        row.put("teaches", pass.teaches());
        row.put("markErrorS", pass.markErrorS());
        row.put("note", pass.note());
        row.put("figures", pass.figures());
        return row;
    }
}
