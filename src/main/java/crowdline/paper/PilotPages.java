package crowdline.paper;

import crowdline.loaded.ActOrigins;
import crowdline.loaded.ActOrigins.Value;
import crowdline.loaded.ActOrigins.What;
import crowdline.loaded.NotKept;
import crowdline.loaded.Origin;
import crowdline.loaded.Undrawn;
import crowdline.measure.Measures;
import crowdline.sheet.RunningSheet;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Lines;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.still.PaperStill;
import crowdline.show.Performer.SourcedFact;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.timing.FigureTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the commentator has of an act, for its pilot to read, correct and sign. */
final class PilotPages {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);
    private static final double NUMBER_PT = 24;
    private static final double DRAWING_PT = 74;

    private final PaperAct act;
    private final Type type;
    private final Measures measures;
    private final Flow flow = new Flow(PaperSize.A4, page -> PageFrame.room());

    private PilotPages(PaperAct act, Wanted wanted) {
        this.act = act;
        type = wanted.type();
        measures = wanted.measures();
    }

    static Pages of(String title, List<PaperAct> acts, Wanted wanted, Counting count) {
        Pages all = new Pages(title, List.of(), List.of());
        for (PaperAct act : acts) {
            count.is(all.pages().size(), acts.size());
            PilotPages made = new PilotPages(act, wanted);
            made.head();
            made.figures();
            made.facts();
            made.words();
            SignatureBox.on(made.flow, made.type, act.pilot());
            String sheet = "Pilot's sheet · " + act.act().title();
            all = all.with(made.flow.pages(title, new PageFrame(act.show().title(), sheet, true)));
        }
        return all;
    }

    private void head() {
        flow.bookmark(act.act().title(), 0);
        flow.text("title", act.act().title(), type.title());
        flow.gap(3);
        flow.text(
                "about",
                act.pilot() + ", " + act.aircraft() + "; " + act.show().venue().name() + ", "
                        + DAY.format(act.show().date()) + ", slot " + act.slot() + ". Variant “" + act.variant()
                        + "”, "
                        + RunningSheet.minutes(act.totalS()) + ".",
                type.words());
        flow.gap(type.pt(6));
        flow.text(
                "please",
                "This is what the commentator has for your act. Please cross out what is wrong, write in what is"
                        + " right, and sign at the end.",
                type.strongWords());
        flow.gap(type.pt(4));
        double half = flow.room().width() / 2;
        legend(Origin.TOLD, Origin.ASSUMED, half);
        legend(Origin.TIMED, Origin.TYPED, half);
    }

    private void legend(Origin left, Origin right, double half) {
        flow.row(
                new Cell("legend", 0, half - 8, OriginSign.about(left), type.small()).with(OriginSign.sign(left)),
                new Cell("legend", half, half, OriginSign.about(right), type.small()).with(OriginSign.sign(right)));
    }

    private void section(String name) {
        flow.gap(type.pt(14));
        flow.keep(type.head().leadingPt() + 4 * type.words().leadingPt());
        flow.bookmark(name, 1);
        flow.text("head", name, type.head());
    }

    private void figures() {
        section("The figures");
        ActOrigins origins = act.origins();
        for (int i = 0; i < act.times().size(); i++) {
            FigureTime time = act.times().get(i);
            figure(
                    i,
                    origins.numbers().stream()
                            .filter(n -> time.figureId().equals(n.figureId()) && !Double.isNaN(n.value()))
                            .map(n -> asPlanned(n, time))
                            .toList());
        }
        long ofAircraft = origins.assumed().stream()
                .filter(n -> n.what() == What.AIRCRAFT)
                .count();
        if (ofAircraft > 0) {
            flow.gap(type.pt(6));
            flow.row(new Cell(
                            "aircraft",
                            0,
                            flow.room().width(),
                            "Of the aircraft only its kind is known; " + ofAircraft
                                    + " of its numbers are those usual for the kind.",
                            type.words())
                    .with(OriginSign.sign(Origin.ASSUMED)));
        }
    }

    /** How long it takes as the act is planned, by the list's own clock and by passes, not as it was predicted alone. */
    private static Value asPlanned(Value value, FigureTime time) {
        boolean isTime = value.what() == What.TIME || value.what() == What.TRANSIT;
        return isTime
                ? new Value(value.what(), value.figureId(), value.key(), value.origin(), time.durationS())
                : value;
    }

    private void figure(int i, List<Value> values) {
        PaperStill still = act.still(i);
        boolean drawn = still.isDrawn();
        double tall = still.height(DRAWING_PT);
        double left = NUMBER_PT + DRAWING_PT + 12;
        double width = flow.room().width() - left;
        List<String> written = written(i);
        int rows = (values.size() + 1) / 2;
        double needed = flow.height(act.name(i), type.name())
                + rows * type.words().leadingPt()
                + written.stream()
                        .mapToDouble(line -> Lines.of(line, type.words(), width).size()
                                * type.words().leadingPt())
                        .sum();
        flow.gap(type.pt(6));
        flow.keep(Math.max(tall, needed) + 6);
        flow.rule(Type.RULE, 0.6);
        flow.gap(type.pt(3));
        double from = flow.at();
        int page = flow.page();
        if (drawn) {
            flow.picture("drawing", NUMBER_PT, DRAWING_PT, tall, a -> still.inks(a.x(), a.y(), a.width(), a.height()));
            flow.goOnFrom(from);
        }
        flow.row(
                new Cell("number", 0, NUMBER_PT - 4, Integer.toString(i + 1), type.name()),
                new Cell("name", left, width, act.name(i), type.name()));
        written.forEach(line -> flow.row(new Cell("written", left, width, line, type.words())));
        for (int n = 0; n < values.size(); n += 2) {
            if (n + 1 < values.size()) {
                flow.row(
                        value(values.get(n), left, width / 2 - 8),
                        value(values.get(n + 1), left + width / 2, width / 2));
            } else {
                flow.row(value(values.get(n), left, width));
            }
        }
        if (flow.page() == page) {
            flow.goOnFrom(Math.max(flow.at(), from + tall));
        }
    }

    /** The pilot's own line, and what of it we do not draw. */
    private List<String> written(int i) {
        String id = act.times().get(i).figureId();
        Figure figure = act.act().figure(id).orElse(null);
        Asked asked = figure == null || figure.transit() ? null : figure.asked();
        if (asked == null || asked.isOfLog() || asked.text().strip().equalsIgnoreCase(act.name(i))) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add("You wrote: “" + asked.written() + "”");
        List<String> undrawn =
                act.flight().figure(id).map(flown -> Undrawn.of(asked, flown)).orElse(List.of());
        if (!undrawn.isEmpty()) {
            lines.add("We draw it without " + Undrawn.quoted(undrawn) + ".");
        }
        return lines;
    }

    private Cell value(Value value, double x, double width) {
        String words = measures.told(asTold(value).orElseGet(() -> inWords(value))
                + ", "
                + OriginSign.word(value.origin())
                + otherwise(value));
        return new Cell("value", x, width, words, type.words()).with(OriginSign.sign(value.origin()));
    }

    /**
     * What the pilot said, which is not what follows from it: told where a figure begins, its lowest height and where it
     * ends are still predicted.
     */
    private Optional<String> asTold(Value value) {
        Asked asked = Optional.ofNullable(value.figureId())
                .flatMap(act.act()::figure)
                .map(Figure::asked)
                .orElse(null);
        return asked == null || value.origin() != Origin.TOLD ? Optional.empty() : ToldWords.of(value.what(), asked);
    }

    /** What is flown here in place of what was told; empty where it is kept. */
    private String otherwise(Value value) {
        return Optional.ofNullable(value.figureId())
                .flatMap(act.act()::figure)
                .filter(figure -> value.origin() == Origin.TOLD)
                .flatMap(figure -> NotKept.of(figure, act.flight()).stream()
                        .filter(not -> not.what() == value.what())
                        .findFirst())
                .map(not -> "; ours " + not.flownWords())
                .orElse("");
    }

    private static String inWords(Value value) {
        double number = value.value();
        return switch (value.what()) {
            case ENTRY_SPEED -> String.format(Locale.UK, "begins at %.0f kt", number);
            case HEIGHT -> String.format(Locale.UK, "lowest %,.0f ft", 10 * Math.rint(number / 10));
            case PLACE -> Math.round(number) == 0 ? "ends at the datum" : "ends " + ToldWords.along(number);
            case TURNS ->
                String.format(Locale.UK, number == 1 ? "%.3g turn" : "%.3g turns", number)
                        .replaceAll("\\.?0+ ", " ");
            case TIME -> String.format(Locale.UK, "takes %.0f s", number);
            case BEGINS -> "begins at " + RunningSheet.minutes(number);
            case TRANSIT -> String.format(Locale.UK, "way between figures, %.0f s", number);
            case AIRCRAFT -> value.key();
        };
    }

    private void facts() {
        section("About you");
        act.performer().ifPresent(p -> {
            String said = p.sayAs();
            flow.text(
                    "say",
                    "Your name is said: " + (said == null ? p.name() + ", as it is written" : said),
                    type.words());
            for (SourcedFact fact : p.facts()) {
                flow.gap(type.pt(5));
                flow.keep(flow.height(fact.text(), type.words()) + type.small().leadingPt());
                flow.text("fact", fact.text(), type.words());
                flow.text("source", "Source: " + fact.source(), type.small());
            }
        });
        if (act.performer().filter(p -> !p.facts().isEmpty()).isEmpty()) {
            flow.text("fact", "No facts about you yet. What would you like the crowd to know?", type.words());
        }
    }

    private void words() {
        section("What will be said");
        for (Remark remark : act.act().remarks()) {
            said("In the act", remark);
        }
        for (int i = 0; i < act.times().size(); i++) {
            String name = act.name(i);
            act.act()
                    .figure(act.times().get(i).figureId())
                    .map(Figure::remarks)
                    .orElse(List.of())
                    .forEach(remark -> said(name, remark));
        }
    }

    private void said(String where, Remark remark) {
        double x = type.pt(120);
        double width = flow.room().width() - x;
        flow.gap(type.pt(4));
        flow.row(
                new Cell("where", 0, x - 10, where, type.label()),
                new Cell(
                        "remark " + remark.id(),
                        x,
                        width,
                        remark.text() + (remark.draft() ? " (draft)" : ""),
                        type.words()));
    }
}
