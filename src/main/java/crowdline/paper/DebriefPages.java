package crowdline.paper;

import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.RemarkRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.Debrief.Told;
import crowdline.live.debrief.DutyRun;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Hour;
import crowdline.sheet.DebriefSheet;
import crowdline.sheet.DutySheet;
import crowdline.sheet.chart.ChartPainter;
import crowdline.sheet.chart.DayChart;
import crowdline.sheet.day.DayBeside;
import crowdline.sheet.day.DayCharts;
import crowdline.sheet.day.DayWords;
import crowdline.sheet.day.OtherDay;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.page.Sign;
import crowdline.sheet.page.Style;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What was flown and said, against the plan. */
final class DebriefPages {
    /** Where each column of the figures ends, as a share of the width; the name takes what is between the first and these. */
    private static final double[] ENDS = {0.085, 0.165, 0.265, 0.59, 0.685, 0.78, 1};

    private final Debrief debrief;
    private final Wanted.Flown flown;
    private final Type type;
    private final Flow flow = new Flow(PaperSize.A4, page -> PageFrame.room());

    private DebriefPages(Wanted.Flown flown, Type type) {
        this.flown = flown;
        this.type = type;
        debrief = flown.debrief();
    }

    static Pages of(String title, Wanted wanted) throws NothingOnPaper {
        Wanted.Flown flown = wanted.flown();
        if (flown == null || flown.debrief().runs().isEmpty()) {
            throw new NothingOnPaper(
                    "no act of this show has been flown yet, so there is nothing to debrief; run it in Live"
                            + " first");
        }
        DebriefPages made = new DebriefPages(flown, wanted.type());
        made.fill();
        return made.flow.pages(title, new PageFrame(flown.debrief().showTitle(), "Debrief", true));
    }

    private void fill() {
        flow.text("title", debrief.showTitle(), type.title());
        flow.gap(type.pt(4));
        flow.text("thanks", DebriefSheet.thanks(debrief), type.words());
        DebriefSheet.incidents(debrief, flown.hour()).forEach(i -> flow.text("incident", i, type.words()));
        DebriefSheet.announcements(debrief, flown.hour()).forEach(a -> flow.text("announcement", a, type.words()));
        section("To change", 0);
        if (debrief.changes().isEmpty()) {
            flow.text("change", "Nothing stands out.", type.words());
        }
        changes();
        OtherDay other = flown.other();
        if (debrief.day().span() != null) {
            DayChart chart = DayCharts.day(debrief, flown.hour(), other);
            flow.keep(type.pt(60) + height(chart));
            section("The day as a chart", 0);
            flow.text(
                    "how",
                    DayWords.HOW + " Talk is shown for every five minutes."
                            + (other == null ? "" : " " + DayWords.how(other)),
                    type.small());
            chart(chart);
        }
        if (other != null) {
            section("The day beside " + other.name(), 0);
            DayBeside.sentences(debrief.day(), flown.hour(), other).forEach(this::beside);
        }
        if (!debrief.day().duties().isEmpty()) {
            section("Duties of the day", 0);
            debrief.day().duties().forEach(this::duty);
        }
        for (int i = 0; i < debrief.runs().size(); i++) {
            run(i);
        }
        List<RemarkRun> told = debrief.remarks().stream()
                .filter(r -> r.told() != Told.NOT_MARKED)
                .toList();
        if (!told.isEmpty()) {
            section("Remarks of the show", 0);
            told.forEach(this::remark);
        }
        if (!debrief.notes().isEmpty()) {
            section("Notes", 0);
            debrief.notes().forEach(n -> flow.text("note", hour(n.atS()) + "  " + n.text(), type.words()));
        }
        flow.gap(type.pt(12));
        flow.text("known", DebriefSheet.KNOWN, type.small());
    }

    /** What is to change in an act stands under its name, said once. */
    private void changes() {
        String act = "";
        for (String change : debrief.changes()) {
            String of = debrief.runs().stream()
                    .map(Run::title)
                    .filter(title -> change.startsWith(title + ": "))
                    .findFirst()
                    .orElse("");
            if (!of.equals(act) && !of.isEmpty()) {
                flow.gap(type.pt(6));
                flow.keep(2 * type.words().leadingPt());
                flow.text("act", of, type.strongWords());
            }
            act = of;
            flow.gap(type.pt(3));
            String words = of.isEmpty() ? change : change.substring(of.length() + 2);
            flow.row(new Cell("change", 0, flow.room().width(), capital(words), type.words()).with(Sign.BOX));
        }
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.UK) + words.substring(1);
    }

    private void section(String name, int level) {
        flow.gap(type.pt(16));
        flow.keep(type.head().leadingPt() + 4 * type.words().leadingPt());
        flow.bookmark(name, level);
        flow.text("head", name, type.head());
    }

    private String hour(double sessionS) {
        return Hour.toTheSecond(flown.hour().apply(sessionS));
    }

    private void run(int number) {
        Run run = debrief.runs().get(number);
        Double endS = run.sessionEndS();
        section(run.title() + (run.run() > 1 ? ", run " + run.run() : ""), 0);
        flow.text(
                "when",
                "Variant \"" + run.variant() + "\", " + hour(run.sessionStartS())
                        + (endS == null ? ", still in the air. " : " to " + hour(endS) + ". ")
                        + DebriefSheet.total(run),
                type.words());
        OtherDay other = flown.other();
        if (other != null) {
            DayBeside.sentences(run, other).forEach(this::beside);
        }
        flow.gap(type.pt(6));
        figureHead();
        for (FigureRun figure : run.figures()) {
            Cell[] cells = figure(figure);
            if (flow.leftPt() < type.pt(2) + flow.height(cells)) {
                flow.freshPage();
                figureHead();
            }
            flow.gap(type.pt(2));
            flow.row(cells);
        }
        run.offPlan()
                .forEach(o -> flow.text(
                        "off",
                        "Off the plan from " + Said.clock(o.fromS()) + " to " + Said.clock(o.toS()),
                        type.words()));
        if (other != null && DayBeside.isFlown(run, other)) {
            flow.gap(type.pt(8));
            chart(DayCharts.run(debrief, flown.hour(), number, other));
        }
        flow.gap(type.pt(8));
        flow.keep(4 * type.words().leadingPt());
        flow.text("said", DebriefSheet.said(run.remarks()), type.strongWords());
        run.remarks().stream()
                .filter(r -> r.told() != Told.NOT_MARKED || r.kind() == RemarkKind.DUTY)
                .forEach(this::remark);
    }

    private void figureHead() {
        flow.row(cells("head", type.label(), "due", "began", "late", "figure", "planned", "flown", "differs", false));
        flow.rule(Type.ACCENT, 0.8);
    }

    /** What was flown stands out from what was not. */
    private Cell[] figure(FigureRun figure) {
        String fate = DebriefSheet.word(figure.fate());
        String differs = (figure.measured() ? signed(figure.longerS()) : "") + DebriefSheet.how(figure);
        return cells(
                "figure " + figure.figureId(),
                type.words(),
                DebriefSheet.minutes(figure.plannedStartS()),
                DebriefSheet.minutes(figure.startS()),
                signed(figure.lateS()),
                figure.name() + (fate.isEmpty() ? "" : " (" + fate + ")"),
                DebriefSheet.tenths(figure.plannedS()),
                DebriefSheet.tenths(figure.flownS()),
                differs.strip(),
                figure.startS() != null);
    }

    private static String signed(@Nullable Double seconds) {
        return DebriefSheet.signed(seconds).replace('-', '−');
    }

    private Cell[] cells(
            String name,
            Style style,
            String plannedAt,
            String began,
            String late,
            String figure,
            String planned,
            String flownS,
            String differs,
            boolean strong) {
        String[] words = {plannedAt, began, late, figure, planned, flownS, differs};
        Cell[] cells = new Cell[words.length];
        double width = flow.room().width();
        for (int i = 0; i < words.length; i++) {
            double from = i == 0 ? 0 : ENDS[i - 1] * width;
            boolean isName = i == 3;
            Style own = isName && strong ? type.strongWords() : style;
            Cell cell = new Cell(
                    name, from + (isName ? 12 : 2), (ENDS[i] * width) - from - (isName ? 14 : 4), words[i], own);
            cells[i] = isName ? cell : cell.ending();
        }
        return cells;
    }

    private void beside(String sentence) {
        flow.gap(type.pt(3));
        flow.text("beside", sentence, type.words());
    }

    private void chart(DayChart chart) {
        ChartPainter painter = new ChartPainter(
                chart,
                type.small().sizePt(),
                new ChartPainter.Colours(0xFFFFFF, Type.BLACK, Type.RULE, Type.RULE, Type.ACCENT));
        flow.picture(
                "chart",
                0,
                flow.room().width(),
                height(chart),
                area -> List.of(new Ink.Drawing(area.x(), area.y(), area.width(), area.height(), painter)));
    }

    /** So high that its rows do not run into each other, and never higher than a page under its heading. */
    private double height(DayChart chart) {
        return Math.min(
                flow.room().height() - type.pt(60), chart.lines() * type.small().sizePt());
    }

    private void duty(DutyRun duty) {
        double width = flow.room().width();
        double count = type.pt(190);
        String when = DutySheet.when(duty, flown.hour());
        String asked = DutySheet.asked(duty);
        Sign sign = duty.missing() > 0 ? Sign.CROSS : duty.shownCount() > 0 ? Sign.RING : Sign.DISC;
        flow.gap(type.pt(2));
        flow.row(
                new Cell("fate", 0, count - 6, DutySheet.count(duty), type.label()).with(sign),
                new Cell(
                        "duty " + duty.remarkId(),
                        count,
                        width - count,
                        duty.text() + (when.isEmpty() ? "" : " (" + when + ")") + (asked.isEmpty() ? "" : ", " + asked),
                        type.words()));
    }

    private void remark(RemarkRun remark) {
        Double atS = remark.sessionAtS();
        double width = flow.room().width();
        double time = type.pt(56);
        double fate = type.pt(112);
        flow.gap(type.pt(2));
        flow.row(
                new Cell("at", 0, time - 4, atS == null ? "" : hour(atS), type.small()),
                new Cell("fate", time, fate - 6, DebriefSheet.word(remark.told()), type.label())
                        .with(sign(remark.told())),
                new Cell(
                        "remark " + remark.remarkId(),
                        time + fate,
                        width - time - fate,
                        ShowLookup.word(remark.kind()) + ": " + remark.text(),
                        type.words()));
    }

    private static Sign sign(Told told) {
        return switch (told) {
            case SAID -> Sign.DISC;
            case SKIPPED -> Sign.CROSS;
            case CUT_SHORT -> Sign.DIAMOND;
            case SHOWN, NOT_MARKED -> Sign.RING;
        };
    }
}
