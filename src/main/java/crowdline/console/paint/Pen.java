package crowdline.console.paint;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Palette;
import crowdline.console.theme.TextRole;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** What a row paints with: its surface, the appearance, and the window's scale against the designed one. */
public final class Pen {
    /** Nothing is ever set smaller than this at scale 1; tuned: the smallest that reads at arm's length. */
    private static final double LEAST_PX = 11;

    /** How high a shape is against the words beside it, and how far off against its height. */
    private static final double SHAPE = 0.74;

    private static final double SHAPE_GAP = 0.45;
    private static final Box ENDLESS = new Box(0, 0, 1e5, 1e5);

    private final Graphics2D g;
    private final Appearance appearance;
    private final double scale;
    private final TextFit fit;
    private final boolean ofRows;
    private boolean cut;

    public Pen(Graphics2D g, Appearance appearance, double scale, TextFit fit) {
        this(g, appearance, scale, fit, false);
    }

    private Pen(Graphics2D g, Appearance appearance, double scale, TextFit fit, boolean ofRows) {
        this.ofRows = ofRows;
        this.g = g;
        this.appearance = appearance;
        this.scale = scale;
        this.fit = fit;
    }

    /**
     * A pen for the rows of a list, which have one size whatever their words: a role has its size, or the largest at which
     * its lines fit down the row, and what is too long is cut with an ellipsis.
     */
    static Pen ofRows(Graphics2D g, Appearance appearance, TextFit fit) {
        return new Pen(g, appearance, 1, fit, true);
    }

    /** Whether anything written by its role was cut. */
    boolean hasCut() {
        return cut;
    }

    public Graphics2D surface() {
        return g;
    }

    public Palette palette() {
        return appearance.palette();
    }

    public Appearance appearance() {
        return appearance;
    }

    /** So many designed pixels in this window; gaps do not grow with the zoom, words do. */
    public double px(double designedPx) {
        return designedPx * scale;
    }

    /** A role's size in this window at this zoom. */
    public double sizePx(TextRole role) {
        return appearance.sizePx(role, scale);
    }

    /** A role's size in this window at 100 %. */
    public double designedPx(TextRole role) {
        return appearance.theme().typeface().sizePx(role) * scale;
    }

    public double leastPx() {
        return LEAST_PX * scale;
    }

    public Font plain() {
        return appearance.theme().typeface().plain(12);
    }

    public Font strong() {
        return appearance.theme().typeface().strong(12);
    }

    /** One line of words at most as large as its role, laid out to fit across and down. */
    public TextBlock line(String text, TextRole role, boolean strong, Box box) {
        return lines(text, role, strong, box, 1);
    }

    /** Several lines of words at most as large as their role. */
    public TextBlock lines(String text, TextRole role, boolean strong, Box box, int mostLines) {
        if (!ofRows) {
            return block(List.of(text), strong ? strong() : plain(), sizePx(role), leastPx(), box, mostLines);
        }
        double most = sizePx(role);
        double highPx = lineHeightPx(strong, most) * mostLines;
        double sizePx = highPx <= box.h() ? most : Math.max(leastPx(), 0.999 * most * box.h() / highPx);
        TextBlock block = at(text, strong, sizePx, box, mostLines);
        cut |= !block.whole();
        return block;
    }

    /**
     * Several lines of words at most as large as their role, or one, if its type need not be smaller than a share of theirs: a
     * last line of one word is worth less than that.
     */
    public TextBlock lineOrLines(String text, TextRole role, Box box, int mostLines, double leastShare) {
        boolean before = cut;
        TextBlock one = line(text, role, false, box);
        // What was only tried is nothing that is cut.
        cut = before;
        TextBlock several = lines(text, role, false, box, mostLines);
        if (one.whole() && one.sizePx() >= leastShare * several.sizePx()) {
            cut = before;
            return one;
        }
        return several;
    }

    /** Words in breaths, as large as fits between two sizes. */
    public TextBlock block(List<String> breaths, Font font, double mostPx, double leastPx, Box box, int mostLines) {
        return fit.fit(
                new TextFit.Wish(breaths, Script.type(font, breaths), mostPx, leastPx, box.w(), box.h(), mostLines));
    }

    /** Words at one size, in as many lines as they need across a box, cut with an ellipsis where there are more. */
    public TextBlock at(List<String> breaths, boolean strong, double sizePx, Box box, int mostLines) {
        return block(breaths, strong ? strong() : plain(), sizePx, sizePx, box, mostLines);
    }

    /** The same for words without breaths. */
    public TextBlock at(String text, boolean strong, double sizePx, Box box, int mostLines) {
        return at(List.of(text), strong, sizePx, box, mostLines);
    }

    /** How wide words are in one line at a size. */
    public double widthPx(String text, boolean strong, double sizePx) {
        return at(text, strong, sizePx, ENDLESS, 1).widthPx();
    }

    /** How high a line of this type is at a size. */
    public double lineHeightPx(boolean strong, double sizePx) {
        return at("0", strong, sizePx, ENDLESS, 1).heightPx();
    }

    /** How wide a shape and its word are at a size. */
    public double widthPx(Mark mark, double sizePx) {
        // A whole pixel more, so that no rounding cuts the word in a box of just this width.
        return shapePx(mark, sizePx) + widthPx(mark.word(), true, sizePx) + 1;
    }

    /** Draws a shape and its word at a size, midway down a box. */
    public double mark(Mark mark, double sizePx, Box box) {
        return mark(mark, sizePx, box, 1);
    }

    /** How wide the shape of a mark of a size is, with the gap to its word. */
    public double shapePx(Mark mark, double sizePx) {
        return sizePx * SHAPE * (Forms.aspect(mark.form()) + SHAPE_GAP);
    }

    /** The same with a word that may take several lines. */
    public double mark(Mark mark, double sizePx, Box box, int mostLines) {
        double shape = Math.min(sizePx * SHAPE, box.h());
        double before = shape * (Forms.aspect(mark.form()) + SHAPE_GAP);
        Color colour = appearance.theme().tone(mark.tone());
        g.setColor(colour);
        Forms.draw(g, mark.form(), box.x(), box.midY() - shape / 2, shape);
        TextBlock word = at(mark.word(), true, sizePx, box.rightOf(before), mostLines);
        midway(word, box.rightOf(before), colour);
        return before + word.widthPx();
    }

    /** Whether words fit a box at this size, in any number of lines. */
    public boolean fits(String words, Font font, double sizePx, Box box) {
        return fit.fitsAtMost(new TextFit.Wish(
                List.of(words),
                Script.type(font, List.of(words)),
                sizePx,
                sizePx,
                box.w(),
                box.h(),
                Integer.MAX_VALUE));
    }

    /** Draws a block at the top left of a box. */
    public void atTop(TextBlock block, Box box, Color colour) {
        block.draw(g, left(block, box), box.y(), colour);
    }

    /** Draws a block at the left, midway down a box. */
    public void midway(TextBlock block, Box box, Color colour) {
        block.draw(g, left(block, box), box.y() + (box.h() - block.heightPx()) / 2, colour);
    }

    /** What is written from right to left stands at the right. */
    private static double left(TextBlock block, Box box) {
        return block.isRightToLeft() ? box.maxX() - block.widthPx() : box.x();
    }

    /** Draws a block at the right, midway down a box. */
    public void atRight(TextBlock block, Box box, Color colour) {
        block.draw(g, box.maxX() - block.widthPx(), box.y() + (box.h() - block.heightPx()) / 2, colour);
    }

    /** Draws a shape and its word midway down a box; returns the width used. */
    public double mark(Mark mark, TextRole role, Box box) {
        return mark(mark, role, box, 1);
    }

    /** The same with a word that may take several lines. */
    public double mark(Mark mark, TextRole role, Box box, int mostLines) {
        return mark(mark, role, box, mostLines, appearance.theme().tone(mark.tone()));
    }

    /** The same on the ground of a chosen row, where a tone would not be readable: the shape and the word stay. */
    public double markOnChosen(Mark mark, TextRole role, Box box) {
        return markOnChosen(mark, role, box, 1);
    }

    /** The same with a word that may take several lines. */
    public double markOnChosen(Mark mark, TextRole role, Box box, int mostLines) {
        return mark(mark, role, box, mostLines, palette().onChosen());
    }

    /** A shape alone, of a size, with its left edge at the box's and midway down it. */
    public void shape(Form form, double sizePx, Box box, Color colour) {
        g.setColor(colour);
        Forms.draw(g, form, box.x(), box.midY() - sizePx / 2, sizePx);
    }

    private double mark(Mark mark, TextRole role, Box box, int mostLines, Color colour) {
        double shape = Math.min(sizePx(role) * SHAPE, box.h() * 0.8);
        double wide = shape * Forms.aspect(mark.form());
        double gap = shape * SHAPE_GAP;
        TextBlock word = lines(mark.word(), role, true, box.rightOf(wide + gap), mostLines);
        g.setColor(colour);
        Forms.draw(g, mark.form(), box.x(), box.midY() - shape / 2, shape);
        midway(word, box.rightOf(wide + gap), colour);
        return wide + gap + word.widthPx();
    }

    /** A bar, a share of it filled from the left. */
    public void bar(Box box, double share, Color filled, Color empty) {
        double round = Math.min(box.h(), px(6));
        RoundRectangle2D whole = new RoundRectangle2D.Double(box.x(), box.y(), box.w(), box.h(), round, round);
        g.setColor(empty);
        g.fill(whole);
        double clamped = Math.max(0, Math.min(1, share));
        if (clamped > 0) {
            g.setColor(filled);
            g.fill(new RoundRectangle2D.Double(
                    box.x(), box.y(), Math.max(round, box.w() * clamped), box.h(), round, round));
        }
    }

    public void fill(Box box, Color colour) {
        g.setColor(colour);
        g.fill(new Rectangle2D.Double(box.x(), box.y(), box.w(), box.h()));
    }

    /** A filled box with round corners, behind a word. */
    public void tag(Box box, Color colour) {
        g.setColor(colour);
        g.fill(round(box));
    }

    /** The outline of a box with round corners, within it. */
    public void hollow(Box box, double thickPx, Color colour) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) thickPx));
        g.draw(round(box.inset(thickPx / 2, thickPx / 2)));
    }

    private RoundRectangle2D round(Box box) {
        double round = Math.min(box.h(), px(12));
        return new RoundRectangle2D.Double(box.x(), box.y(), box.w(), box.h(), round, round);
    }
}
