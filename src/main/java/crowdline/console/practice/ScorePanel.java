package crowdline.console.practice;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.practice.PracticeScore;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Says how a practice went, one sentence for each thing, what did not go well first in each part; then again, next or back. */
public final class ScorePanel extends JPanel {
    private static final int MOST_LINES = 2;

    private final JButton next;

    /** A row: the title of a part, or a sentence. */
    private record Row(boolean isTitle, boolean well, String words) {
        Mark mark() {
            return well ? new Mark(Form.DISC, Tone.GOOD, "Good") : new Mark(Form.DIAMOND, Tone.CAUTION, "Look at this");
        }

        String spoken() {
            return isTitle ? words : mark().word() + ": " + words;
        }
    }

    /**
     * @param again told what is to be flown now
     * @param back closes it
     */
    public ScorePanel(Appearance appearance, PracticeScored scored, Consumer<PracticeChoice> again, Runnable back) {
        String gap = appearance.room(16);
        setLayout(new MigLayout(
                "insets " + gap + ", gap 0 " + appearance.room(10), "[0:0:,grow,fill]", "[][0:0:,grow,fill][]"));
        JTextArea title = PlainText.wrapped("What was practised", scored.title());
        title.setFont(appearance.strong(TextRole.BODY));
        title.setFocusable(false);
        JList<Row> rows = new JList<>(rows(scored.score()).toArray(Row[]::new));
        rows.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        rows.setCellRenderer(new CellPainter<>(appearance, 50, Row::spoken, ScorePanel::paint));
        rows.getAccessibleContext().setAccessibleName("How it went");
        JScrollPane scroll = new JScrollPane(rows);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        JButton same = button(appearance, "Again, the same flight", 'A', () -> again.accept(scored.choice()));
        next = button(
                appearance,
                "Next flight",
                'N',
                () -> again.accept(scored.choice().next()));
        add(title, "wmin 0, wrap");
        add(scroll, "grow, wmin 0, hmin 0, wrap");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap " + appearance.room(10)));
        buttons.add(next);
        buttons.add(same);
        buttons.add(button(appearance, "Back", 'B', back));
        add(buttons, "wmin 0");
        getAccessibleContext().setAccessibleName("How it went");
    }

    /** The button that has the keys first. */
    JButton first() {
        return next;
    }

    private static JButton button(Appearance appearance, String words, char mnemonic, Runnable pressed) {
        JButton button = new JButton(words);
        button.setFont(appearance.plain(TextRole.BODY));
        button.setMnemonic(mnemonic);
        button.addActionListener(e -> pressed.run());
        button.registerKeyboardAction(e -> button.doClick(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        return button;
    }

    private static List<Row> rows(PracticeScore score) {
        List<Row> rows = new ArrayList<>();
        for (About about : About.values()) {
            List<Line> lines = score.about(about);
            if (!lines.isEmpty()) {
                rows.add(new Row(true, true, about.title()));
                lines.stream().filter(l -> !l.well()).forEach(l -> rows.add(new Row(false, false, l.words())));
                lines.stream().filter(Line::well).forEach(l -> rows.add(new Row(false, true, l.words())));
            }
        }
        return rows;
    }

    private static void paint(Pen pen, Row row, Box box, boolean isChosen) {
        Box inner = box.inset(pen.px(10), box.h() * 0.08);
        if (row.isTitle()) {
            pen.midway(
                    pen.line(row.words(), TextRole.BODY, true, inner),
                    inner,
                    isChosen ? pen.palette().onChosen() : pen.palette().text());
            return;
        }
        double wide = pen.sizePx(TextRole.BODY) * 8;
        Box mark = inner.left(wide);
        if (isChosen) {
            pen.markOnChosen(row.mark(), TextRole.BODY, mark);
        } else {
            pen.mark(row.mark(), TextRole.BODY, mark);
        }
        Box words = inner.rightOf(wide);
        pen.midway(
                pen.lines(row.words(), TextRole.BODY, false, words, MOST_LINES),
                words,
                isChosen ? pen.palette().onChosen() : pen.palette().text());
    }
}
