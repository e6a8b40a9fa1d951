package crowdline.console.incident;

import crowdline.console.paint.Box;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import java.awt.Color;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Paints the incident page: the words large, a paragraph at a time with the next one below, what to do first beside them,
 * whom to reach, the time noted.
 */
public final class IncidentPanel extends Painted<IncidentPanel.Shown> {
    static final String NO_WORDS = "There are no agreed words here. The display director's words count.";

    private static final double SIDE_SHARE = 0.34;

    private final transient PageWords words = new PageWords();

    /**
     * The page and how far the way back has been typed.
     *
     * @param page what the organiser wrote
     * @param typed letters of the resume word typed rightly
     */
    public record Shown(IncidentView page, int typed) {}

    public IncidentPanel(Appearance appearance) {
        super("Incident page", appearance);
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
        return (v.page().words().isEmpty()
                        ? NO_WORDS
                        : String.join(" ", v.page().words()))
                + " First: "
                + String.join(" ", v.page().firstSteps()) + " "
                + v.page().contacts().stream()
                        .map(c -> c.role() + ": " + c.how() + ".")
                        .collect(Collectors.joining(" "))
                + " To go back to the show type the word " + ResumeWord.WORD + ".";
    }

    @Override
    protected void paint(Pen pen, Shown v, Box box) {
        Box inner = box.inset(pen.px(28), pen.px(18));
        Box top = inner.top(Math.max(28, pen.px(44)));
        double used = pen.mark(new Mark(Form.STOP, Tone.ALARM, "Incident"), TextRole.NEXT, top);
        Box noted = top.rightOf(used + pen.px(28));
        String since = v.page().since();
        text(pen, v.page().noted() + (since.isEmpty() ? "" : ", " + since), TextRole.READ, true, noted, 1);
        Box foot = inner.bottom(Math.max(34, pen.px(52)));
        Box middle = inner.belowTop(top.h() + pen.px(14)).aboveBottom(foot.h() + pen.px(14));
        double side = middle.w() * SIDE_SHARE;
        side(pen, v.page(), middle.left(side));
        words.paint(
                pen,
                new PageWords.Page(
                        v.page().words(),
                        NO_WORDS,
                        v.page().agreedWith(),
                        "Those are all the words. Back: Backspace",
                        null),
                middle.rightOf(side + pen.px(32)));
        WayBack.paint(pen, v.typed(), PageWords.sizePx(pen, TextRole.SMALL), foot);
    }

    private static void side(Pen pen, IncidentView page, Box box) {
        List<String> steps = IntStream.range(0, page.firstSteps().size())
                .mapToObj(i -> (i + 1) + "  " + page.firstSteps().get(i))
                .toList();
        SideLists.Listed first = new SideLists.Listed("First", steps);
        List<String> contacts =
                page.contacts().stream().map(c -> c.role() + ": " + c.how()).toList();
        SideLists.paint(
                pen,
                contacts.isEmpty() ? List.of(first) : List.of(first, new SideLists.Listed("Reach", contacts)),
                box);
    }

    private static void text(Pen pen, String words, TextRole role, boolean strong, Box box, int mostLines) {
        Color colour = pen.palette().text();
        TextBlock block = pen.block(
                List.of(words),
                strong ? pen.strong() : pen.plain(),
                PageWords.sizePx(pen, role),
                Math.min(PageWords.LEAST_SIDE_PX, pen.leastPx()),
                box,
                mostLines);
        pen.midway(block, box, colour);
    }
}
