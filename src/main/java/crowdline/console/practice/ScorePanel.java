package crowdline.console.practice;

import crowdline.console.keys.Command;
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
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Says how a practice went, one sentence for each thing, what did not go well first in each part; then again, next or away. */
public final class ScorePanel extends JPanel {
    private static final int MOST_LINES = 2;

    private final JTextArea title;
    private final JList<Row> rows;
    private final transient List<JButton> buttons;

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
     * @param again flies the same once more
     * @param next flies another
     * @param away puts this away
     */
    public ScorePanel(Appearance appearance, PracticeScored scored, Runnable again, Runnable next, Runnable away) {
        title = PlainText.wrapped("What was practised", "How it went: " + scored.title());
        title.setFocusable(false);
        rows = PlainText.plain(new JList<>(rows(scored.score()).toArray(Row[]::new)));
        rows.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        rows.getAccessibleContext().setAccessibleName("How it went");
        buttons = List.of(
                button(Command.SCORE_NEXT, next), button(Command.SCORE_AGAIN, again), button(Command.SCORE_AWAY, away));
        getAccessibleContext().setAccessibleName("The score of a practice flight");
        wear(appearance);
    }

    private static JButton button(Command command, Runnable pressed) {
        JButton button = PlainText.plain(new JButton(command.label() + " (" + command.key() + ")"));
        button.setFocusable(false);
        button.setToolTipText(command.help());
        button.addActionListener(e -> pressed.run());
        return button;
    }

    /** What has the keys: the arrows go through the lines. */
    public JComponent first() {
        return rows;
    }

    /** Takes another look. */
    public void wear(Appearance appearance) {
        removeAll();
        setBackground(appearance.palette().stage());
        setLayout(new MigLayout(
                "insets " + appearance.room(24) + " " + appearance.room(28) + ", gap 0 " + appearance.room(12),
                "[0:0:,grow,fill]",
                "[][0:0:,grow,fill][]"));
        title.setFont(appearance.strong(TextRole.VALUE));
        title.setForeground(appearance.palette().text());
        rows.setBackground(appearance.palette().stage());
        rows.setCellRenderer(new CellPainter<>(appearance, 42, Row::spoken, ScorePanel::paint));
        JScrollPane scroll = new JScrollPane(rows);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(title, "wmin 0, wrap");
        add(scroll, "grow, wmin 0, hmin 0, wrap");
        JPanel row = new JPanel(new MigLayout("insets 0, gap " + appearance.room(10)));
        row.setOpaque(false);
        for (JButton button : buttons) {
            button.setFont(appearance.plain(TextRole.BODY));
            row.add(button, "wmin 0");
        }
        add(row, "wmin 0");
        revalidate();
        repaint();
    }

    private static List<Row> rows(PracticeScore score) {
        List<Row> rows = new ArrayList<>();
        for (About about : About.values()) {
            List<Line> lines = score.about(about);
            if (!lines.isEmpty()) {
                rows.add(new Row(true, true, about.title() + counted(score, about)));
                lines.stream().filter(l -> !l.well()).forEach(l -> rows.add(new Row(false, false, l.words())));
                lines.stream().filter(Line::well).forEach(l -> rows.add(new Row(false, true, l.words())));
            }
        }
        return rows;
    }

    private static String counted(PracticeScore score, About about) {
        return score.counts().stream()
                .filter(c -> c.about() == about)
                .map(c -> ": " + c.well() + " of " + c.of())
                .findFirst()
                .orElse("");
    }

    private static void paint(Pen pen, Row row, Box box, boolean isChosen) {
        Box inner = box.inset(pen.px(10), box.h() * 0.08);
        if (row.isTitle()) {
            pen.midway(
                    pen.line(row.words(), TextRole.BODY, true, inner),
                    inner,
                    isChosen ? pen.palette().onChosen() : pen.palette().accent());
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
