package crowdline.paper;

import crowdline.measure.Measures;
import crowdline.patter.Placed;
import crowdline.patter.Unplaced;
import crowdline.sheet.ActSketch;
import crowdline.sheet.RunningSheet;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Lines;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.page.Style;
import crowdline.timing.FigureTime;
import java.util.List;

/** An act on A4: its picture, then what is flown and said, by the second. */
final class RunningPages {
    private final PaperAct act;
    private final Type type;
    private final Measures measures;
    private final Flow flow = new Flow(PaperSize.A4, page -> PageFrame.room());

    private RunningPages(PaperAct act, Wanted wanted) {
        this.act = act;
        type = wanted.type();
        measures = wanted.measures();
    }

    static Pages of(String title, List<PaperAct> acts, Wanted wanted, Counting count) {
        Pages all = new Pages(title, List.of(), List.of());
        for (PaperAct act : acts) {
            RunningPages made = new RunningPages(act, wanted);
            made.head();
            for (int i = 0; i < act.times().size(); i++) {
                count.is(i, act.times().size());
                made.figure(i);
            }
            made.left();
            String sheet = "Running sheet · " + act.act().title();
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
                act.pilot() + ", " + act.aircraft() + ". Slot " + act.slot() + ". Variant “" + act.variant() + "”, "
                        + RunningSheet.minutes(act.totalS()) + ".",
                type.words());
        ActSketch sketch = new ActSketch(act.flight(), flow.room().width(), measures);
        if (!sketch.isEmpty()) {
            flow.gap(8);
            flow.picture("act", 0, flow.room().width(), sketch.heightPt(), a -> sketch.inks(a.x(), a.y()));
        }
        flow.gap(10);
        before();
    }

    private void before() {
        List<Placed> opening = act.said(-1);
        opening.forEach(this::said);
    }

    private double timeWide() {
        return type.pt(48);
    }

    private void figure(int i) {
        FigureTime time = act.times().get(i);
        flow.gap(type.pt(7));
        flow.keep(type.name().leadingPt() + 2 * type.words().leadingPt() + 8);
        flow.bookmark((i + 1) + " " + act.name(i), 1);
        flow.rule(Type.RULE, 0.6);
        flow.gap(type.pt(4));
        double width = flow.room().width();
        double aside = type.pt(96);
        String lasts = Said.seconds(time.durationS()) + range(time);
        flow.row(
                new Cell("time " + time.figureId(), 0, timeWide(), Said.clock(time.startS()), accented()),
                new Cell(
                        "name " + time.figureId(),
                        timeWide(),
                        width - timeWide() - aside,
                        (i + 1) + "  " + act.name(i),
                        type.name()),
                new Cell("lasts " + time.figureId(), width - aside, aside, lasts, type.small()).ending());
        act.said(i).forEach(this::said);
    }

    private static String range(FigureTime time) {
        long low = Math.round(time.lowS());
        long high = Math.round(time.highS());
        return low < high ? " (" + low + "–" + high + ")" : "";
    }

    private Style accented() {
        return new Style(type.name().sizePt(), true, Type.ACCENT);
    }

    private void said(Placed placed) {
        said(Said.of(act, placed));
    }

    private void said(Said said) {
        flow.gap(type.pt(3));
        double width = flow.room().width();
        double kind = type.pt(84);
        double aside = type.pt(34);
        double x = timeWide();
        double wordsWide = width - x - kind - aside - 6;
        flow.keep(Lines.of(said.words(), type.words(), wordsWide).size()
                * type.words().leadingPt());
        String note = said.note().isEmpty() ? "" : "\n" + said.note();
        flow.row(
                new Cell("at " + said.id(), 0, x - 6, said.when(), type.small()),
                new Cell("kind " + said.id(), x, kind - 8, said.word() + note, type.label()).with(said.sign()),
                new Cell("remark " + said.id(), x + kind, wordsWide, said.words(), type.words()),
                new Cell("seconds " + said.id(), width - aside, aside, said.seconds(), type.strongWords()).ending());
    }

    private void left() {
        List<Unplaced> left = act.planned().plan().unplaced();
        if (left.isEmpty()) {
            return;
        }
        flow.gap(type.pt(14));
        flow.keep(type.head().leadingPt() + 3 * type.words().leadingPt());
        flow.text("head", "In hand: what the plan has no room for", type.head());
        for (Unplaced unplaced : left) {
            said(Said.of(act, unplaced));
        }
    }
}
