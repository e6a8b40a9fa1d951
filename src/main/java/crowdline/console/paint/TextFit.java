package crowdline.console.paint;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Finds the largest size at which words fit their place, and breaks them into lines there. Remembers what it found. */
public final class TextFit {
    private static final FontRenderContext FLAT = new FontRenderContext(null, true, true);
    private static final int REMEMBERED = 600;
    /**
     * Type has sizes so far apart, which nobody sees. The system keeps what it knows of each size and finds it by whole pixels:
     * with sizes of any fraction it looks through thousands.
     */
    private static final double STEP_PX = 0.25;
    /** No more letters than this are ever measured: more than any place of a screen holds. */
    static final int MOST_LETTERS = 1000;
    /** A last line filled to this share of its width is cut between words. Tuned. */
    private static final double FULL = 0.75;
    /** The narrowest letters are this wide against their size, so that no letter is left out for which there is room. */
    private static final double NARROWEST = 0.2;
    /** Extra space between breaths as a share of a line; tuned so that a breath is seen, not read. */
    private static final double BREATH_GAP = 0.24;

    /** A number stays with its unit. */
    private static final Pattern BETWEEN_WORDS = Pattern.compile("\\s+(?!(?<=[0-9] )" + PlainText.UNITS + ")");

    /** How wide a line of words is in a type, pixels. */
    interface Widths {
        double px(Font font, String text);
    }

    private final Widths widths;
    private final Map<Wish, TextBlock> found = new LinkedHashMap<>(32, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Wish, TextBlock> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** Measures with the type itself. */
    public TextFit() {
        this(TextFit::widthPx);
    }

    TextFit(Widths widths) {
        this.widths = widths;
    }

    /**
     * What is wanted.
     *
     * @param breaths stretches that each begin a line of their own
     * @param font the type at any size
     * @param mostPx largest size
     * @param leastPx smallest size
     * @param widthPx room across
     * @param heightPx room down
     * @param mostLines how many lines there may be
     */
    public record Wish(
            List<String> breaths,
            Font font,
            double mostPx,
            double leastPx,
            double widthPx,
            double heightPx,
            int mostLines) {
        /** Words beyond what the place could ever hold are left out before anything is measured. */
        public Wish {
            breaths = within(breaths, most(leastPx, widthPx, mostLines));
        }

        private static int most(double leastPx, double widthPx, int mostLines) {
            double letters = mostLines * widthPx / (Math.max(1, leastPx) * NARROWEST);
            return (int) Math.max(1, Math.min(MOST_LETTERS, Math.ceil(letters)));
        }
    }

    /** The first {@code letters} letters; one more shows that there were more. */
    private static List<String> within(List<String> breaths, int most) {
        List<String> shown = new ArrayList<>();
        int room = most + 1;
        for (String breath : breaths) {
            if (room <= 0) {
                break;
            }
            shown.add(breath.length() <= room ? breath : breath.substring(0, whole(breath, room)));
            room -= breath.length();
        }
        return List.copyOf(shown);
    }

    /** The same place or the one before it, if it lies within a letter of two. */
    private static int whole(String text, int at) {
        return at > 0 && at < text.length() && Character.isSurrogatePair(text.charAt(at - 1), text.charAt(at))
                ? at - 1
                : at;
    }

    /** The block that fits; if even the smallest size does not, it is cut with an ellipsis. */
    public TextBlock fit(Wish wish) {
        return found.computeIfAbsent(wish, this::search);
    }

    /** Whether words fit at the largest size; they are laid out once and not remembered. */
    public boolean fitsAtMost(Wish wish) {
        return fits(lay(wish, wish.mostPx()), wish);
    }

    /** Width of a line of text in pixels. */
    public static double widthPx(Font font, String text) {
        return text.isEmpty() ? 0 : font.getStringBounds(text, FLAT).getWidth();
    }

    private TextBlock search(Wish wish) {
        double most = Math.max(wish.mostPx(), wish.leastPx());
        TextBlock block = lay(wish, most);
        if (fits(block, wish)) {
            return block;
        }
        double low = wish.leastPx();
        double high = most;
        TextBlock best = lay(wish, low);
        if (!fits(best, wish)) {
            return cut(best, wish);
        }
        while (high - low > 0.5) {
            double middle = (low + high) / 2;
            TextBlock trial = lay(wish, middle);
            if (fits(trial, wish)) {
                best = trial;
                low = middle;
            } else {
                high = middle;
            }
        }
        return best;
    }

    private static boolean fits(TextBlock block, Wish wish) {
        return block.lines().size() <= wish.mostLines()
                && block.heightPx() <= wish.heightPx()
                && block.widthPx() <= wish.widthPx();
    }

    private TextBlock lay(Wish wish, double sizePx) {
        Font font = wish.font().deriveFont(inSteps(sizePx));
        LineMetrics metrics = font.getLineMetrics("Ag", FLAT);
        double lineHeight = metrics.getAscent() + metrics.getDescent();
        List<TextBlock.Line> lines = new ArrayList<>();
        double top = 0;
        double widest = 0;
        int from = 0;
        for (String breath : wish.breaths()) {
            if (!lines.isEmpty()) {
                top += BREATH_GAP * lineHeight;
            }
            for (Row row : wrap(breath, font, wish.widthPx())) {
                lines.add(new TextBlock.Line(row.text(), from, top, row.widthPx()));
                from += TextBlock.letters(row.text());
                top += lineHeight;
                widest = Math.max(widest, row.widthPx());
            }
        }
        return new TextBlock(lines, font, metrics.getAscent(), top, widest, true);
    }

    /** The next smaller step. */
    private static float inSteps(double sizePx) {
        return (float) Math.max(STEP_PX, STEP_PX * Math.floor(sizePx / STEP_PX + 1e-6));
    }

    /** Words of one line. */
    private record Row(String text, double widthPx) {}

    /** Each word is measured once: a line is as wide as its words and what stands between them, without kerning. */
    private List<Row> wrap(String text, Font font, double widthPx) {
        List<Row> rows = new ArrayList<>();
        double spacePx = widths.px(font, " ");
        StringBuilder row = new StringBuilder();
        double rowPx = 0;
        for (String word : BETWEEN_WORDS.split(text.strip(), -1)) {
            double wordPx = widths.px(font, word);
            if (!row.isEmpty() && rowPx + spacePx + wordPx > widthPx) {
                rows.add(new Row(row.toString(), rowPx));
                row.setLength(0);
            }
            rowPx = row.isEmpty() ? wordPx : rowPx + spacePx + wordPx;
            row.append(row.isEmpty() ? "" : " ").append(word);
        }
        rows.add(new Row(row.toString(), rowPx));
        return rows;
    }

    private TextBlock cut(TextBlock block, Wish wish) {
        List<TextBlock.Line> kept = new ArrayList<>();
        double lineHeight = block.heightPx() / Math.max(1, block.lines().size());
        for (TextBlock.Line line : block.lines()) {
            boolean room = line.topPx() + lineHeight <= wish.heightPx() + 0.5;
            if (kept.isEmpty() || (room && kept.size() < wish.mostLines())) {
                kept.add(shorten(line, block.font(), wish.widthPx(), false));
            }
        }
        if (kept.size() < block.lines().size()) {
            int last = kept.size() - 1;
            TextBlock.Line end = kept.get(last);
            kept.set(
                    last,
                    end.widthPx() < FULL * wish.widthPx()
                            ? shorten(joined(end, block.lines().get(last + 1)), block.font(), wish.widthPx(), true)
                            : shorten(end, block.font(), wish.widthPx(), true));
        }
        double height = kept.get(kept.size() - 1).topPx() + lineHeight;
        double width = kept.stream().mapToDouble(TextBlock.Line::widthPx).max().orElse(0);
        return new TextBlock(kept, block.font(), block.ascentPx(), height, width, false);
    }

    /** What is too long to be whole on a line begins on it all the same, where most of the line would be empty. */
    private static TextBlock.Line joined(TextBlock.Line line, TextBlock.Line next) {
        return new TextBlock.Line(line.text() + " " + next.text(), line.from(), line.topPx(), Double.MAX_VALUE);
    }

    private TextBlock.Line shorten(TextBlock.Line line, Font font, double widthPx, boolean always) {
        if (!always && line.widthPx() <= widthPx) {
            return line;
        }
        String text = line.text();
        int fits = 0;
        int beyond = text.length() + 1;
        while (beyond - fits > 1) {
            int middle = (fits + beyond) / 2;
            if (widths.px(font, text.substring(0, whole(text, middle)) + "…") <= widthPx) {
                fits = middle;
            } else {
                beyond = middle;
            }
        }
        text = text.substring(0, whole(text, fits));
        String shortened = text.stripTrailing() + "…";
        return new TextBlock.Line(shortened, line.from(), line.topPx(), widths.px(font, shortened));
    }
}
