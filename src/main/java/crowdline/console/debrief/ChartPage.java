package crowdline.console.debrief;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.CardLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The charts of a debrief one after the other: first the day, then each act flown; what each shows stands beside it in words. */
final class ChartPage extends JPanel {
    private static final String KEYS =
            "G acts and words   ← → day and acts   ↑ ↓ up and down   O another day beside it   D saves the day  "
                    + " Ctrl+P prints";

    private static final String CHART = "chart";
    private static final String DAYS = "days";

    private final JTextArea title = PlainText.wrapped("What is shown", "");
    private final JTextArea words = PlainText.wrapped("The chart in words", "");
    private final JTextArea keys = PlainText.wrapped("Keys", KEYS);
    private final ChartSurface chart;
    private final DayChooser days;
    private final CardLayout cards = new CardLayout();
    private final JPanel stage = new JPanel(cards);
    private transient Charts charts = Charts.NONE;
    private int chosen;
    private boolean made;

    ChartPage(Appearance appearance, DayChooser.Asked asked) {
        chart = new ChartSurface(appearance);
        days = new DayChooser(appearance, asked);
        stage.setOpaque(false);
        stage.add(scroll(chart), CHART);
        stage.add(days, DAYS);
        getAccessibleContext().setAccessibleName("Charts");
        wear(appearance);
    }

    /**
     * Has other charts; the one that was chosen stays chosen.
     *
     * @param seen whether anybody looks at it: otherwise it is made when somebody does
     */
    void show(Charts next, boolean seen) {
        if (!next.equals(charts)) {
            charts = next;
            chosen = Math.min(chosen, Math.max(0, charts.count() - 1));
            made = false;
            if (seen) {
                turn();
            }
        }
    }

    /** To the chart before or after. */
    void step(int by) {
        int to = chosen + by;
        if (to >= 0 && to < charts.count()) {
            chosen = to;
            turn();
        }
    }

    /** Shows the chart, and gives it the keys. */
    void toChart() {
        if (!made) {
            turn();
        }
        cards.show(stage, CHART);
        chart.requestFocusInWindow();
    }

    /** Asks which of these days is to stand beside. */
    void offer(List<DayChoice> choices) {
        cards.show(stage, DAYS);
        days.offer(choices);
    }

    private void turn() {
        if (charts.count() > 0) {
            ChartView view = charts.chart(chosen);
            made = true;
            title.setText(view.title());
            words.setText(String.join("\n\n", view.words()));
            words.setCaretPosition(0);
            chart.show(view);
            chart.scrollRectToVisible(new java.awt.Rectangle(0, 0, 1, 1));
        }
    }

    void wear(Appearance worn) {
        removeAll();
        setBackground(worn.palette().ground());
        title.setFont(worn.strong(TextRole.VALUE));
        words.setFont(worn.plain(TextRole.BODY));
        keys.setFont(worn.plain(TextRole.LABEL));
        title.setForeground(worn.palette().text());
        words.setForeground(worn.palette().text());
        keys.setForeground(worn.palette().soft());
        chart.wear(worn, 1);
        days.wear(worn);
        String gap = worn.room(12);
        boolean large = worn.zoom().percent() > 140;
        setLayout(new MigLayout(
                "insets " + gap + ", gap " + gap + " " + worn.room(6),
                large ? "[0:0:,grow,fill]" : "[0:0:,grow 28,fill][0:0:,grow 72,fill]",
                large ? "[][0:0:,grow 30,fill][0:0:,grow 70,fill][]" : "[][0:0:,grow,fill][]"));
        add(title, "wmin 0, growx, spanx, wrap");
        add(scroll(words), large ? "grow, wmin 0, hmin 0, wrap" : "grow, wmin 0, hmin 0");
        add(stage, "grow, wmin 0, hmin 0, wrap");
        add(keys, "wmin 0, growx, spanx");
        revalidate();
        repaint();
    }

    private static JScrollPane scroll(javax.swing.JComponent of) {
        JScrollPane scroll = new JScrollPane(of);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        return scroll;
    }
}
