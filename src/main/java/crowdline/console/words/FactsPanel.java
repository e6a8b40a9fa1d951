package crowdline.console.words;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.words.FactsView.FactRow;
import crowdline.sight.fact.CrowdFacts;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The computed facts of the chosen place, the most telling first, with the caution that goes with them. */
final class FactsPanel extends JPanel {
    private final WordsList<FactRow> facts;
    private final JTextArea title = PlainText.wrapped("Facts of the figure", "");
    private final JTextArea caution = PlainText.wrapped("Caution", CrowdFacts.CAUTION);

    /** @param chosen told of the number of a fact that somebody chose */
    FactsPanel(IntConsumer chosen) {
        facts = new WordsList<>("Computed facts", FactRow::text, chosen);
        title.setFocusable(false);
    }

    void show(FactsView view) {
        title.setText(view.title());
        facts.show(view.rows(), view.chosen());
    }

    void blank() {
        show(new FactsView(" ", List.of(), -1));
    }

    void wear(Appearance worn) {
        removeAll();
        setLayout(new MigLayout("insets 0, gap 0 " + worn.room(5), "[0:0:,grow,fill]", "[][0:0:,grow,fill][]"));
        facts.list().setCellRenderer(WordsCells.facts(worn));
        facts.list().setBackground(worn.palette().stage());
        title.setFont(worn.plain(TextRole.LABEL));
        title.setForeground(worn.palette().soft());
        caution.setFont(worn.plain(TextRole.LABEL));
        caution.setForeground(worn.palette().soft());
        add(title, "growx, wmin 0, wrap");
        add(facts.scroll(), "grow, wmin 0, hmin 0, wrap");
        add(caution, "growx, wmin 0");
    }
}
