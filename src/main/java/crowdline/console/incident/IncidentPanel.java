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
import crowdline.console.theme.Zoom;
import java.awt.Color;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Paints the incident page: the words large, a paragraph at a time with the next one below, what to do first beside them,
 * whom to reach, the time noted.
 */
public final class IncidentPanel extends Painted<IncidentPanel.Shown> {
    static final String NO_WORDS = "There are no agreed words here. The display director's words count.";

    private static final double SIDE_SHARE = 0.34;
    /** The words to say now have this share of their room at zoom 100 when others follow, and so much more at 200; tuned. */
    private static final double NOW_SHARE = 0.68;

    private static final double MORE_SHARE = 0.08;
    /** The words that follow against those to say now. */
    private static final double NEXT_SIZE = 0.62;
    /** What the words may shrink by in a small window: 34 pixels at zoom 100. */
    private static final double LEAST_SCALE = 0.85;
    /** Words are no larger than leaves this many lines at zoom 100, of this many letters each; tuned. */
    private static final double LINES = 3.6;

    private static final double LETTERS = 15;
    /** Larger words leave fewer lines: so much of what the zoom adds is taken from them; tuned. */
    private static final double FEWER_LINES = 0.2;
    /** From the metrics of the shipped type: a line, and a letter, in sizes of the type. */
    private static final double LINE_HEIGHT = 1.22;

    private static final double LETTER_WIDTH = 0.58;
    private static final double LEAST_SIDE_PX = 10;

    private final transient PageReading reading = new PageReading();

    /**
     * The page and how far the way back has been typed.
     *
     * @param page what the organiser wrote
     * @param typed letters of the resume word typed rightly
     */
    public record Shown(IncidentView page, int typed) {}

    private record Room(double widthPx, double heightPx, double sizePx) {}

    public IncidentPanel(Appearance appearance) {
        super("Incident page", appearance);
    }

    /** Goes to the first words. */
    public void begin() {
        reading.begin();
        repaint();
    }

    /** Goes on by a number of parts of the words, or back if it is below 0. */
    public void move(int parts) {
        for (int i = 0; i < Math.abs(parts); i++) {
            if (parts > 0) {
                reading.on();
            } else {
                reading.back();
            }
        }
        reading.now().ifPresent(now -> getAccessibleContext().setAccessibleDescription(now.text() + " " + now.where()));
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
        words(pen, v.page(), middle.rightOf(side + pen.px(32)));
        WayBack.paint(pen, v.typed(), sizePx(pen, TextRole.SMALL), foot);
    }

    private void words(Pen pen, IncidentView page, Box box) {
        pen.fill(box, pen.palette().stage());
        pen.fill(box.left(pen.px(8)), pen.palette().accent());
        Box inner = box.inset(pen.px(28), pen.px(14));
        Box caption = inner.top(Math.min(sizePx(pen, TextRole.VALUE) * LINE_HEIGHT, inner.h() * 0.1));
        Box agreed = inner.bottom(Math.min(sizePx(pen, TextRole.SMALL) * LINE_HEIGHT, inner.h() * 0.08));
        pen.midway(
                pen.block(
                        List.of(page.agreedWith()), pen.plain(), sizePx(pen, TextRole.SMALL), pen.leastPx(), agreed, 1),
                agreed,
                pen.palette().soft());
        Box text = inner.belowTop(caption.h() + pen.px(8)).aboveBottom(agreed.h() + pen.px(8));
        if (page.words().isEmpty()) {
            soft(pen, "Nothing to read out", caption);
            pen.atTop(
                    pen.block(List.of(NO_WORDS), pen.strong(), sizePx(pen, TextRole.REMARK), LEAST_SIDE_PX, text, 40),
                    text,
                    pen.palette().text());
            return;
        }
        Box now = box(page, text, pen.appearance().zoom());
        double size = largest(pen, now);
        reading.on(page.words(), new Room(now.w(), now.h(), size), words -> pen.fits(words, pen.strong(), size, now));
        Optional<PageReading.Part> saying = reading.now();
        String where = saying.map(PageReading.Part::where).orElse("");
        soft(pen, "Say, slowly, once" + (where.isEmpty() ? "" : "   " + where), caption);
        saying.ifPresent(part -> pen.atTop(
                pen.block(List.of(part.text()), pen.strong(), size, LEAST_SIDE_PX, now, 99),
                now,
                pen.palette().text()));
        if (now.h() < text.h()) {
            next(pen, size * NEXT_SIZE, text.belowTop(now.h()));
        }
    }

    /** One paragraph by itself has all the room there is. */
    private static Box box(IncidentView page, Box text, Zoom zoom) {
        return page.words().size() == 1 && page.words().get(0).length() < 100
                ? text
                : text.top(text.h() * (NOW_SHARE + MORE_SHARE * (zoom.factor() - 1)));
    }

    private void next(Pen pen, double size, Box box) {
        pen.fill(box.belowTop(pen.px(8)).top(pen.px(1)), pen.palette().rule());
        Box rest = box.belowTop(pen.px(16));
        Optional<PageReading.Part> next = reading.next();
        Box caption = rest.top(Math.min(sizePx(pen, TextRole.SMALL) * LINE_HEIGHT, box.h() * 0.28));
        pen.midway(
                pen.line(
                        next.isPresent() ? "Next: Space. Back: Backspace" : "Those are all the words. Back: Backspace",
                        TextRole.SMALL,
                        false,
                        caption),
                caption,
                pen.palette().soft());
        Box words = rest.belowTop(caption.h() + pen.px(4));
        next.ifPresent(part -> pen.atTop(
                pen.block(List.of(part.text()), pen.plain(), size, size * 0.75, words, 99),
                words,
                pen.palette().soft()));
    }

    /** A remark's size at this zoom, as far as the window leaves room for a few lines of it. */
    private static double largest(Pen pen, Box box) {
        double lines = LINES / (1 + FEWER_LINES * (pen.appearance().zoom().factor() - 1));
        return Math.max(
                LEAST_SIDE_PX,
                Math.min(
                        sizePx(pen, TextRole.REMARK),
                        Math.min(box.h() / (lines * LINE_HEIGHT), box.w() / (LETTERS * LETTER_WIDTH))));
    }

    /** A role's size, which shrinks less than the window does. */
    private static double sizePx(Pen pen, TextRole role) {
        return Math.max(pen.sizePx(role), pen.appearance().sizePx(role, LEAST_SCALE));
    }

    private static void side(Pen pen, IncidentView page, Box box) {
        List<String> steps = IntStream.range(0, page.firstSteps().size())
                .mapToObj(i -> (i + 1) + "  " + page.firstSteps().get(i))
                .toList();
        List<String> contacts =
                page.contacts().stream().map(c -> c.role() + ": " + c.how()).toList();
        double captionPx = Math.max(20, pen.px(30));
        double gapPx = pen.px(10);
        Box room = new Box(box.x(), box.y(), box.w(), box.h() - 2 * captionPx - gapPx);
        double sizePx = items(
                        pen,
                        Stream.concat(steps.stream(), contacts.stream()).toList(),
                        sizePx(pen, TextRole.READ),
                        room)
                .sizePx();
        double usedPx = list(pen, "First", steps, sizePx, captionPx, box);
        if (!contacts.isEmpty()) {
            list(pen, "Reach", contacts, sizePx, captionPx, box.belowTop(usedPx + gapPx));
        }
    }

    private static double list(Pen pen, String caption, List<String> items, double sizePx, double captionPx, Box box) {
        soft(pen, caption, box.top(captionPx));
        if (items.isEmpty()) {
            return captionPx;
        }
        Box rest = box.belowTop(captionPx);
        TextBlock block = items(pen, items, sizePx, rest);
        pen.atTop(block, rest, pen.palette().text());
        return captionPx + block.heightPx();
    }

    /** Items below each other, as large as there is room for all of them; no word is too long for a line. */
    private static TextBlock items(Pen pen, List<String> items, double mostPx, Box box) {
        double leastPx = Math.min(LEAST_SIDE_PX, pen.leastPx());
        Box across = new Box(0, 0, box.w(), Double.MAX_VALUE);
        List<String> broken = items.stream()
                .map(item -> String.join(" ", LongWords.of(item, w -> pen.fits(w, pen.strong(), leastPx, across))))
                .toList();
        return pen.block(broken, pen.strong(), mostPx, leastPx, box, 99);
    }

    private static void soft(Pen pen, String words, Box box) {
        pen.midway(
                pen.line(words, TextRole.VALUE, false, box), box, pen.palette().soft());
    }

    private static void text(Pen pen, String words, TextRole role, boolean strong, Box box, int mostLines) {
        Color colour = pen.palette().text();
        TextBlock block = pen.block(
                List.of(words),
                strong ? pen.strong() : pen.plain(),
                sizePx(pen, role),
                Math.min(LEAST_SIDE_PX, pen.leastPx()),
                box,
                mostLines);
        pen.midway(block, box, colour);
    }
}
