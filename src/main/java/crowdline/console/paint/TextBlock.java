package crowdline.console.paint;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.List;

/**
 * Text already broken into lines at a size.
 *
 * @param lines from the top
 * @param font type at the size found
 * @param ascentPx from the top of a line to its baseline
 * @param heightPx of everything
 * @param widthPx of the widest line
 * @param whole true if nothing had to be cut off
 */
public record TextBlock(List<Line> lines, Font font, double ascentPx, double heightPx, double widthPx, boolean whole) {

    /** Has no width; what follows it is laid out from right to left. */
    private static final char RIGHT_TO_LEFT = '\u200f';

    /**
     * One line.
     *
     * @param text its words
     * @param from how many letters of the text stand before it, not counting spaces, which a line may begin without
     * @param topPx its top within the block
     * @param widthPx its width
     */
    public record Line(String text, int from, double topPx, double widthPx) {}

    public TextBlock {
        lines = List.copyOf(lines);
    }

    /** Whether its first letters are written from right to left; then its lines end at one edge. */
    public boolean isRightToLeft() {
        return !lines.isEmpty() && Script.isRightToLeft(lines.get(0).text());
    }

    /** Draws the block with its top left corner here. */
    public void draw(Graphics2D g, double x, double y, Color colour) {
        draw(g, x, y, colour, colour, 0);
    }

    /** How many letters a text has, spaces not counted. */
    public static int letters(String text) {
        return (int) text.chars().filter(c -> !Character.isWhitespace(c)).count();
    }

    /** Where in a line its first {@code letters} letters end. */
    private static int after(String text, int letters) {
        int at = 0;
        for (int left = letters; at < text.length() && left > 0; at++) {
            if (!Character.isWhitespace(text.charAt(at))) {
                left--;
            }
        }
        return at;
    }

    /** Draws the block, its first {@code pastLetters} letters in the colour of what was said. */
    public void draw(Graphics2D g, double x, double y, Color colour, Color past, int pastLetters) {
        g.setFont(font);
        boolean rightToLeft = isRightToLeft();
        for (Line line : lines) {
            float baseline = (float) (y + line.topPx() + ascentPx);
            if (rightToLeft) {
                g.setColor(colour);
                // A line may begin with a word of the other direction.
                g.drawString(RIGHT_TO_LEFT + line.text(), (float) (x + widthPx - line.widthPx()), baseline);
                continue;
            }
            int cut = after(line.text(), pastLetters - line.from());
            String said = line.text().substring(0, cut);
            if (!said.isEmpty()) {
                g.setColor(past);
                g.drawString(said, (float) x, baseline);
            }
            if (cut < line.text().length()) {
                g.setColor(colour);
                g.drawString(line.text().substring(cut), (float) (x + TextFit.widthPx(font, said)), baseline);
            }
        }
    }

    public double sizePx() {
        return font.getSize2D();
    }
}
