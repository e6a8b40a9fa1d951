package crowdline.console.incident;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Zoom;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Paints the organiser's words large, a paragraph at a time with the next one below, and knows where one is in them. */
final class PageWords {
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
    static final double LINE_HEIGHT = 1.22;

    private static final double LETTER_WIDTH = 0.58;
    static final double LEAST_SIDE_PX = 10;

    /** From one size to the next larger one that is tried; tuned. */
    private static final double STEP = 1.06;

    private final PageReading reading = new PageReading();

    /**
     * What is painted.
     *
     * @param words what to say, by paragraphs
     * @param without what stands there if there are none
     * @param agreement who agreed the words, or that nobody has
     * @param atEnd what to do after the last of them
     * @param notYet why they must not be read out yet, or null
     */
    record Page(
            List<String> words,
            String without,
            String agreement,
            String atEnd,
            @Nullable Mark notYet) {}

    /** What the size of the words depends on. */
    private record Asked(List<String> words, Box box, Zoom zoom, double onePx) {}

    private @Nullable Asked asked;
    private double settledPx;

    private record Room(double widthPx, double heightPx, double sizePx) {}

    /** Goes to the first words. */
    void begin() {
        reading.begin();
    }

    /** Goes on by a number of parts of the words, or back if it is below 0; the words there, for a screen reader. */
    Optional<String> move(int parts) {
        for (int i = 0; i < Math.abs(parts); i++) {
            if (parts > 0) {
                reading.on();
            } else {
                reading.back();
            }
        }
        return reading.now().map(now -> now.text() + " " + now.where());
    }

    void paint(Pen pen, Page page, Box box) {
        pen.fill(box, pen.palette().stage());
        pen.fill(box.left(pen.px(8)), pen.palette().accent());
        Box inner = box.inset(pen.px(28), pen.px(14));
        Box caption = inner.top(Math.min(sizePx(pen, TextRole.VALUE) * LINE_HEIGHT, inner.h() * 0.1));
        Box agreed = inner.bottom(Math.min(sizePx(pen, TextRole.SMALL) * LINE_HEIGHT, inner.h() * 0.08));
        pen.midway(
                pen.block(
                        List.of(page.agreement()), pen.plain(), sizePx(pen, TextRole.SMALL), pen.leastPx(), agreed, 1),
                agreed,
                pen.palette().soft());
        Box text = inner.belowTop(caption.h() + pen.px(8)).aboveBottom(agreed.h() + pen.px(8));
        if (page.words().isEmpty()) {
            soft(pen, "Nothing to read out", caption);
            pen.atTop(
                    pen.block(
                            List.of(page.without()),
                            pen.strong(),
                            sizePx(pen, TextRole.REMARK),
                            LEAST_SIDE_PX,
                            text,
                            40),
                    text,
                    pen.palette().text());
            return;
        }
        Box now = box(page, text, pen.appearance().zoom());
        double size = settled(pen, page, now);
        reading.on(page.words(), new Room(now.w(), now.h(), size), words -> pen.fits(words, pen.strong(), size, now));
        Optional<PageReading.Part> saying = reading.now();
        String where = saying.map(PageReading.Part::where).orElse("");
        Mark notYet = page.notYet();
        if (notYet == null) {
            soft(pen, "Say slowly, once" + (where.isEmpty() ? "" : ": " + where), caption);
        } else {
            pen.mark(notYet, TextRole.VALUE, caption);
        }
        saying.ifPresent(part -> pen.atTop(
                pen.block(List.of(part.text()), pen.strong(), size, LEAST_SIDE_PX, now, 99),
                now,
                notYet == null ? pen.palette().text() : pen.palette().soft()));
        if (now.h() < text.h()) {
            next(pen, page, size * NEXT_SIZE, text.belowTop(now.h()));
        }
    }

    /** One paragraph by itself has all the room there is. */
    private static Box box(Page page, Box text, Zoom zoom) {
        return page.words().size() == 1 && page.words().get(0).length() < 100
                ? text
                : text.top(text.h() * (NOW_SHARE + MORE_SHARE * (zoom.factor() - 1)));
    }

    private void next(Pen pen, Page page, double size, Box box) {
        pen.fill(box.belowTop(pen.px(8)).top(pen.px(1)), pen.palette().rule());
        Box rest = box.belowTop(pen.px(16));
        Optional<PageReading.Part> next = reading.next();
        Box caption = rest.top(Math.min(sizePx(pen, TextRole.SMALL) * LINE_HEIGHT, box.h() * 0.28));
        pen.midway(
                pen.line(
                        next.isPresent() ? "Next: Space. Back: Backspace" : page.atEnd(),
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

    /**
     * One size for all the words: the largest at which no sentence is broken, if the zoom alone would break one.
     */
    private double settled(Pen pen, Page page, Box box) {
        Asked now = new Asked(page.words(), box, pen.appearance().zoom(), pen.px(1));
        if (!now.equals(asked)) {
            asked = now;
            settledPx = unbroken(pen, page, box);
        }
        return settledPx;
    }

    private static double unbroken(Pen pen, Page page, Box box) {
        double zoom = pen.appearance().zoom().factor();
        double largest = largest(pen, box);
        double least =
                Math.min(largest, largest(sizePx(pen, TextRole.REMARK) / zoom, lines(zoom, FEWER_LINES / 2), box));
        if (isUnbroken(pen, page, box, largest)) {
            return largest;
        }
        // Steps up from the least size, so that a larger zoom has the larger of two sizes.
        for (int steps = (int) (Math.log(largest / least) / Math.log(STEP)); steps >= 0; steps--) {
            double size = least * Math.pow(STEP, steps);
            if (isUnbroken(pen, page, box, size)) {
                return size;
            }
        }
        return largest;
    }

    private static boolean isUnbroken(Pen pen, Page page, Box box, double sizePx) {
        return page.words().stream()
                .map(paragraph -> Parts.of(paragraph, words -> pen.fits(words, pen.strong(), sizePx, box)))
                .allMatch(parts -> parts.stream().limit(parts.size() - 1L).allMatch(Parts::isWhole));
    }

    /** A remark's size at this zoom, as far as the window leaves room for a few lines of it. */
    private static double largest(Pen pen, Box box) {
        double zoom = pen.appearance().zoom().factor();
        return largest(sizePx(pen, TextRole.REMARK), lines(zoom, FEWER_LINES), box);
    }

    private static double lines(double zoom, double fewer) {
        return LINES / (1 + fewer * (zoom - 1));
    }

    private static double largest(double remarkPx, double lines, Box box) {
        return Math.max(
                LEAST_SIDE_PX,
                Math.min(remarkPx, Math.min(box.h() / (lines * LINE_HEIGHT), box.w() / (LETTERS * LETTER_WIDTH))));
    }

    /** A role's size, which shrinks less than the window does. */
    static double sizePx(Pen pen, TextRole role) {
        return Math.max(pen.sizePx(role), pen.appearance().sizePx(role, LEAST_SCALE));
    }

    private static void soft(Pen pen, String words, Box box) {
        pen.midway(
                pen.line(words, TextRole.VALUE, false, box), box, pen.palette().soft());
    }
}
