package crowdline.console.prepare.list;

import crowdline.console.prepare.list.InLetter.Span;
import crowdline.console.theme.Palette;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.util.List;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.JTextComponent;
import javax.swing.text.View;

/**
 * Marks in the letter what became a figure: a ground behind it, a line under it as well where that is a guess, and the
 * ground of a chosen row behind the piece that is chosen. What has no mark was left out.
 */
final class LetterMarks {
    private static final double CHOSEN_SHARE = 0.3;
    private static final double LINE_SHARE = 0.09;
    private static final double LEAST_LINE_PX = 2;

    private LetterMarks() {}

    /**
     * Marks the pieces that stand in a letter.
     *
     * @param chosen the row that is chosen; below 0 for none
     */
    static void show(JTextComponent letter, InLetter in, List<ListView.Row> rows, int chosen, Palette palette) {
        letter.getHighlighter().removeAllHighlights();
        for (int i = 0; i < rows.size(); i++) {
            ListView.Row row = rows.get(i);
            Span span = in.spans().get(row.key());
            boolean isChosen = i == chosen;
            if (span == null || span.to() > letter.getDocument().getLength() || !(isChosen || row.flown())) {
                continue;
            }
            Color ground = isChosen ? between(palette.stage(), palette.row()) : palette.sunk();
            try {
                letter.getHighlighter()
                        .addHighlight(
                                span.from(), span.to(), new Ground(ground, row.isGuess() ? palette.caution() : ground));
            } catch (BadLocationException e) {
                // The letter went on while it was read; it is read anew.
                return;
            }
        }
    }

    /** A colour on which words are as legible as on the stage. */
    private static Color between(Color stage, Color row) {
        return new Color(
                between(stage.getRed(), row.getRed()),
                between(stage.getGreen(), row.getGreen()),
                between(stage.getBlue(), row.getBlue()));
    }

    private static int between(int stage, int row) {
        return (int) Math.round(stage + CHOSEN_SHARE * (row - stage));
    }

    /** A ground, with a line at its foot. */
    private static final class Ground extends DefaultHighlighter.DefaultHighlightPainter {
        private final Color line;

        Ground(Color ground, Color line) {
            super(ground);
            this.line = line;
        }

        @Override
        public Shape paintLayer(Graphics g, int from, int to, Shape bounds, JTextComponent text, View view) {
            Shape painted = super.paintLayer(g, from, to, bounds, text, view);
            if (painted != null) {
                Rectangle box = painted.getBounds();
                int high = (int) Math.round(Math.max(LEAST_LINE_PX, box.height * LINE_SHARE));
                Graphics2D surface = (Graphics2D) g.create();
                surface.setColor(line);
                surface.fillRect(box.x, box.y + box.height - high, box.width, high);
                surface.dispose();
            }
            return painted;
        }
    }
}
