package crowdline.console.debrief;

import crowdline.console.theme.Appearance;
import java.awt.CardLayout;
import java.util.List;
import javax.swing.JPanel;

/** What the Debrief place shows of a day: its acts in words, or its charts. */
final class DebriefBook extends JPanel {
    private static final String ACTS = "acts";
    private static final String CHARTS = "charts";

    private final CardLayout cards = new CardLayout();
    private final DebriefPanel acts;
    private final ChartPage charts;
    private boolean charted;
    private boolean flown;

    DebriefBook(Appearance appearance, DayChooser.Asked asked) {
        setLayout(cards);
        setOpaque(false);
        acts = new DebriefPanel(appearance);
        charts = new ChartPage(appearance, asked);
        add(acts, ACTS);
        add(charts, CHARTS);
    }

    void show(DebriefView view) {
        acts.show(view);
        flown = view.charts().count() > 0;
        charts.show(view.charts(), charted);
        if (charted && !flown) {
            turn(false);
        }
    }

    /** Turns to the charts, or back to the acts. */
    void turn() {
        turn(!charted && flown);
    }

    private void turn(boolean toCharts) {
        charted = toCharts;
        cards.show(this, toCharts ? CHARTS : ACTS);
        if (toCharts) {
            charts.toChart();
        }
    }

    /** Asks which of these days is to stand beside. */
    void offer(List<DayChoice> days) {
        if (flown) {
            turn(true);
            charts.offer(days);
        }
    }

    /** Shows the charts. */
    void toCharts() {
        turn(flown);
    }

    /** To the act, or the chart, before or after. */
    void step(int by) {
        if (charted) {
            charts.step(by);
        } else {
            acts.step(by);
        }
    }

    void wear(Appearance appearance) {
        acts.wear(appearance);
        charts.wear(appearance);
    }
}
