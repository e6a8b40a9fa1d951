package crowdline.console.incident;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.TextRole;
import java.awt.BasicStroke;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** Paints how the page is left: a sentence, and a cell for each letter of the word, filled as it is typed. */
final class WayBack {
    private static final String WORDS = "When the display director says the show goes on, type the word";

    private WayBack() {}

    /**
     * @param typed letters typed rightly
     * @param sizePx most for the sentence
     */
    static void paint(Pen pen, int typed, double sizePx, Box box) {
        double cell = Math.min(box.h() * 0.9, box.w() * 0.05);
        double gap = cell * 0.15;
        double cells = ResumeWord.WORD.length() * (cell + gap) - gap;
        Box left = box.leftOf(cells + 2 * cell);
        TextBlock line = pen.block(List.of(WORDS), pen.plain(), sizePx, pen.leastPx(), left, 2);
        pen.midway(line, left, pen.palette().text());
        double x = box.x() + line.widthPx() + cell * 0.5;
        for (int i = 0; i < ResumeWord.WORD.length(); i++) {
            letter(pen, i, i < typed, new Box(x + i * (cell + gap), box.midY() - cell / 2, cell, cell));
        }
    }

    private static void letter(Pen pen, int index, boolean done, Box square) {
        double round = square.w() * 0.2;
        RoundRectangle2D frame =
                new RoundRectangle2D.Double(square.x(), square.y(), square.w(), square.h(), round, round);
        pen.surface().setColor(done ? pen.palette().chosen() : pen.palette().soft());
        pen.surface().setStroke(new BasicStroke((float) pen.px(1.6)));
        if (done) {
            pen.surface().fill(frame);
        } else {
            pen.surface().draw(frame);
        }
        TextBlock letter = pen.line(
                String.valueOf(ResumeWord.WORD.charAt(index)),
                TextRole.VALUE,
                true,
                square.inset(square.w() * .1, square.h() * .1));
        letter.draw(
                pen.surface(),
                square.x() + (square.w() - letter.widthPx()) / 2,
                square.y() + (square.h() - letter.heightPx()) / 2,
                done ? pen.palette().onChosen() : pen.palette().text());
    }
}
