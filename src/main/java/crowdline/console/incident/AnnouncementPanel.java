package crowdline.console.incident;

import crowdline.console.paint.Box;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Paints an announcement as large as the incident page: its words, what is filled in, and what goes on meanwhile. */
public final class AnnouncementPanel extends Painted<AnnouncementPanel.Shown> {
    private static final double SIDE_SHARE = 0.3;
    private static final String KEYS = "Read out: Enter. Change what is filled in: F. Another: B. Back to the act: Esc";
    private static final String KEYS_WHOLE = "Read out: Enter. Another: B. Back to the act: Esc";
    private static final String KEYS_NOT_YET = "Fill in: Enter. Another: B. Back to the act: Esc";

    private final transient PageWords words = new PageWords();

    /**
     * The page and what goes on under it.
     *
     * @param meanwhile what is flown, a line for each
     */
    public record Shown(AnnouncementView page, List<String> meanwhile) {
        public Shown {
            meanwhile = List.copyOf(meanwhile);
        }
    }

    public AnnouncementPanel(Appearance appearance) {
        super("Announcement", appearance);
    }

    /** Goes to the first words. */
    public void begin() {
        words.begin();
        repaint();
    }

    /** Goes on by a number of parts of the words, or back if it is below 0. */
    public void move(int parts) {
        words.move(parts).ifPresent(now -> getAccessibleContext().setAccessibleDescription(now));
        repaint();
    }

    @Override
    protected String spoken(Shown v) {
        Mark notYet = v.page().notYet();
        return v.page().occasion() + ". " + (notYet == null ? "" : notYet.word() + ". ")
                + String.join(" ", v.page().words()) + " " + v.page().agreement() + ". "
                + v.page().blanks().stream().map(AnnouncementPanel::filled).collect(Collectors.joining(". "));
    }

    @Override
    protected void paint(Pen pen, Shown v, Box box) {
        AnnouncementView page = v.page();
        Box inner = box.inset(pen.px(28), pen.px(16));
        Box top = inner.top(Math.max(28, pen.px(44)));
        Box title = page.times().isEmpty() ? top : top.left(top.w() * 0.6);
        double used = pen.mark(new Mark(Form.SQUARE, Tone.CALM, page.occasion()), TextRole.NEXT, title);
        Box times = top.rightOf(used + pen.px(28));
        pen.midway(
                pen.block(
                        List.of(page.times()),
                        pen.strong(),
                        PageWords.sizePx(pen, TextRole.READ),
                        PageWords.LEAST_SIDE_PX,
                        times,
                        2),
                times,
                pen.palette().text());
        Box foot = inner.bottom(Math.max(28, pen.px(34)));
        String keys = page.notYet() != null ? KEYS_NOT_YET : page.blanks().isEmpty() ? KEYS_WHOLE : KEYS;
        pen.midway(
                pen.block(
                        List.of(keys),
                        pen.plain(),
                        PageWords.sizePx(pen, TextRole.SMALL),
                        PageWords.LEAST_SIDE_PX,
                        foot,
                        1),
                foot,
                pen.palette().text());
        Box middle = inner.belowTop(top.h() + pen.px(10)).aboveBottom(foot.h() + pen.px(10));
        double side = middle.w() * SIDE_SHARE;
        List<SideLists.Listed> lists = new ArrayList<>();
        if (!page.blanks().isEmpty()) {
            lists.add(new SideLists.Listed(
                    "Filled in",
                    page.blanks().stream().map(AnnouncementPanel::filled).toList()));
        }
        lists.add(new SideLists.Listed("Meanwhile", v.meanwhile()));
        SideLists.paint(pen, lists, middle.left(side));
        words.paint(
                pen,
                new PageWords.Page(
                        page.words(),
                        IncidentPanel.NO_WORDS,
                        page.agreement(),
                        "Those are all the words. Read out: Enter. Back: Backspace",
                        page.notYet()),
                middle.rightOf(side + pen.px(32)));
    }

    private static String filled(AnnouncementView.Blank blank) {
        return blank.asks() + ": " + (blank.isMissing() ? "[missing]" : blank.said());
    }
}
