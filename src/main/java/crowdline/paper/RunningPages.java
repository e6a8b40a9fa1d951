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
import crowdline.show.figure.Figure;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.stream.IntStream;

/** An act on A4: its picture, then what is flown and said, by the second. */
final class RunningPages {
    /** Gaps, of what they usually are, that may save a page with a line or two on it. */
    private static final List<Double> TIGHTER = List.of(0.75, 0.5);

    private static final String GONE_OVER = "gone over";

    private final PaperAct act;
    private final Type type;
    private final Measures measures;
    private final Flow flow = new Flow(PaperSize.A4, page -> PageFrame.room());
    /** How wide gaps are, of what they usually are. */
    private final double gaps;
    /** Whether most of it is a first draft: then what is none is marked, and not every line. */
    private final boolean mostlyDrafts;

    private final boolean allDrafts;

    private RunningPages(PaperAct act, Wanted wanted, double gaps) {
        this.gaps = gaps;
        this.act = act;
        type = wanted.type();
        measures = wanted.measures();
        List<Boolean> drafts = IntStream.range(-1, act.times().size())
                .mapToObj(act::said)
                .flatMap(List::stream)
                .map(placed -> Said.of(act, placed).draft())
                .toList();
        allDrafts = !drafts.isEmpty() && !drafts.contains(false);
        mostlyDrafts = drafts.stream().filter(draft -> draft).count() > drafts.size() / 2;
    }

    static Pages of(String title, List<PaperAct> acts, Wanted wanted, Counting count) {
        Pages all = new Pages(title, List.of(), List.of());
        for (PaperAct act : acts) {
            Pages made = laid(title, act, wanted, 1, count);
            for (double gaps : TIGHTER) {
                Pages tighter = made.pages().size() == 1 ? made : laid(title, act, wanted, gaps, Counting.UNHEARD);
                if (tighter.pages().size() < made.pages().size()) {
                    made = tighter;
                    break;
                }
            }
            all = all.with(made);
        }
        return all;
    }

    private static Pages laid(String title, PaperAct act, Wanted wanted, double gaps, Counting count) {
        RunningPages made = new RunningPages(act, wanted, gaps);
        made.head();
        for (int i = 0; i < act.times().size(); i++) {
            count.is(i, act.times().size());
            made.figure(i);
        }
        made.left();
        String sheet = "Running sheet · " + act.act().title();
        return made.flow.pages(title, new PageFrame(act.show().title(), sheet, true));
    }

    private void head() {
        flow.bookmark(act.act().title(), 0);
        flow.text("title", act.act().title(), type.title());
        flow.gap(3);
        flow.text(
                "about",
                act.pilot() + ", " + act.aircraft() + ". Slot " + act.slot() + ". Variant “" + act.variant() + "”, "
                        + RunningSheet.minutes(act.totalS()) + "."
                        + drafts(),
                type.words());
        ActSketch sketch = new ActSketch(
                act.flight(),
                i -> !isWay(act.flight().figures().get(i).figureId()),
                flow.room().width(),
                measures);
        if (!sketch.isEmpty()) {
            flow.gap(8);
            flow.picture("act", 0, flow.room().width(), sketch.heightPt(), a -> sketch.inks(a.x(), a.y()));
        }
        flow.gap(10);
        before();
    }

    private String drafts() {
        return allDrafts
                ? " All that is said is a first draft."
                : mostlyDrafts ? " What is not marked “" + GONE_OVER + "” is a first draft." : "";
    }

    private boolean isWay(String figureId) {
        return act.act().figure(figureId).filter(Figure::transit).isPresent();
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
        flow.gap(type.pt(7) * gaps);
        flow.keep(type.name().leadingPt() + 2 * type.words().leadingPt() + 8);
        flow.bookmark((i + 1) + " " + act.name(i), 1);
        flow.rule(Type.RULE, 0.6);
        flow.gap(type.pt(4) * gaps);
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
        flow.gap(type.pt(3) * gaps);
        double width = flow.room().width();
        double kind = type.pt(84);
        double aside = type.pt(34);
        double x = timeWide();
        double wordsWide = width - x - kind - aside - 6;
        flow.keep(Lines.of(said.words(), type.words(), wordsWide).size()
                * type.words().leadingPt());
        String more = !mostlyDrafts ? said.noteOfDraft() : said.draft() ? said.note() : said.note(GONE_OVER);
        String note = more.isEmpty() ? "" : "\n" + more;
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
