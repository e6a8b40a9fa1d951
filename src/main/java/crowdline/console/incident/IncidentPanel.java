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
import java.awt.BasicStroke;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.stream.Collectors;

/** Paints the incident page: the words large, what to do first beside them, whom to reach, the time noted. */
public final class IncidentPanel extends Painted<IncidentPanel.Shown> {

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

    @Override
    protected String spoken(Shown v) {
        return String.join(" ", v.page().words()) + " First: "
                + String.join(" ", v.page().firstSteps()) + " "
                + v.page().contacts().stream()
                        .map(c -> c.role() + ": " + c.how() + ".")
                        .collect(Collectors.joining(" "))
                + " To go back to the show type the word " + ResumeWord.WORD + ".";
    }

    @Override
    protected void paint(Pen pen, Shown v, Box box) {
        Box inner = box.inset(pen.px(28), pen.px(18));
        Box top = inner.top(pen.px(44));
        double used = pen.mark(new Mark(Form.STOP, Tone.ALARM, "Incident"), TextRole.NEXT, top);
        Box noted = top.rightOf(used + pen.px(28));
        pen.midway(
                pen.line(v.page().noted() + ", " + v.page().since(), TextRole.READ, true, noted),
                noted,
                pen.palette().text());
        Box foot = inner.bottom(pen.px(52));
        Box middle = inner.belowTop(pen.px(58)).aboveBottom(pen.px(66));
        double side = middle.w() * 0.34;
        side(pen, v.page(), middle.left(side));
        words(pen, v.page(), middle.rightOf(side + pen.px(32)));
        wayBack(pen, v.typed(), foot);
    }

    private static void words(Pen pen, IncidentView page, Box box) {
        pen.fill(box, pen.palette().stage());
        pen.fill(box.left(pen.px(8)), pen.palette().accent());
        Box inner = box.inset(pen.px(28), pen.px(14));
        Box caption = inner.top(pen.px(28));
        pen.midway(
                pen.line("Say, slowly, once", TextRole.VALUE, false, caption),
                caption,
                pen.palette().soft());
        Box agreed = inner.bottom(pen.px(26));
        pen.midway(
                pen.line(page.agreedWith(), TextRole.SMALL, false, agreed),
                agreed,
                pen.palette().soft());
        Box text = inner.belowTop(pen.px(36)).aboveBottom(pen.px(34));
        TextBlock block =
                pen.block(page.words(), pen.strong(), pen.sizePx(TextRole.REMARK) * 1.1, pen.leastPx() * 1.3, text, 40);
        pen.atTop(block, text, pen.palette().text());
    }

    private static void side(Pen pen, IncidentView page, Box box) {
        double contactsHeight = page.contacts().isEmpty() ? 0 : box.h() * 0.42;
        Box first = box.aboveBottom(contactsHeight);
        list(pen, "First", numbered(page.firstSteps()), first);
        if (!page.contacts().isEmpty()) {
            List<String> contacts =
                    page.contacts().stream().map(c -> c.role() + ": " + c.how()).toList();
            list(pen, "Reach", contacts, box.bottom(contactsHeight).belowTop(pen.px(12)));
        }
    }

    private static List<String> numbered(List<String> steps) {
        return java.util.stream.IntStream.range(0, steps.size())
                .mapToObj(i -> (i + 1) + "  " + steps.get(i))
                .toList();
    }

    private static void list(Pen pen, String caption, List<String> items, Box box) {
        Box top = box.top(pen.px(30));
        pen.midway(
                pen.line(caption, TextRole.VALUE, false, top),
                top,
                pen.palette().soft());
        Box rest = box.belowTop(pen.px(36));
        if (!items.isEmpty()) {
            pen.atTop(
                    pen.block(items, pen.strong(), pen.sizePx(TextRole.READ), pen.leastPx(), rest, 40),
                    rest,
                    pen.palette().text());
        }
    }

    private static void wayBack(Pen pen, int typed, Box box) {
        String words = "When the display director says that the show goes on, type the word";
        TextBlock line = pen.line(words, TextRole.SMALL, false, box.left(box.w() * 0.68));
        pen.midway(line, box, pen.palette().text());
        double cell = Math.min(box.h() * 0.8, pen.px(40));
        double x = box.x() + line.widthPx() + pen.px(20);
        for (int i = 0; i < ResumeWord.WORD.length(); i++) {
            Box square = new Box(x + i * (cell + pen.px(6)), box.midY() - cell / 2, cell, cell);
            RoundRectangle2D frame =
                    new RoundRectangle2D.Double(square.x(), square.y(), cell, cell, pen.px(8), pen.px(8));
            boolean done = i < typed;
            pen.surface().setColor(done ? pen.palette().chosen() : pen.palette().soft());
            pen.surface().setStroke(new BasicStroke((float) pen.px(1.6)));
            if (done) {
                pen.surface().fill(frame);
            } else {
                pen.surface().draw(frame);
            }
            TextBlock letter = pen.line(
                    String.valueOf(ResumeWord.WORD.charAt(i)),
                    TextRole.VALUE,
                    true,
                    square.inset(cell * .1, cell * .1));
            letter.draw(
                    pen.surface(),
                    square.x() + (cell - letter.widthPx()) / 2,
                    square.y() + (cell - letter.heightPx()) / 2,
                    done ? pen.palette().onChosen() : pen.palette().text());
        }
    }
}
