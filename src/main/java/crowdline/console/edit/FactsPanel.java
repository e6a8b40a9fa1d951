package crowdline.console.edit;

import crowdline.console.edit.FactsView.FactRow;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.sight.CrowdFacts;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** The computed facts of the chosen place, the most telling first, with the caution that goes with them. */
final class FactsPanel extends JPanel {
    private final DefaultListModel<FactRow> facts = new DefaultListModel<>();
    private final JList<FactRow> list = WordsPanel.list("Computed facts", facts);
    private final JLabel title = new JLabel();
    private final JTextArea caution = PlainText.wrapped("Caution", CrowdFacts.CAUTION);
    private boolean showing;

    /** @param chosen told of the number of a fact that somebody chose */
    FactsPanel(IntConsumer chosen) {
        title.setLabelFor(list);
        list.addListSelectionListener(e -> {
            if (!showing && list.getSelectedIndex() >= 0) {
                chosen.accept(list.getSelectedIndex());
            }
        });
    }

    void show(FactsView view) {
        showing = true;
        try {
            title.setText(view.title());
            WordsPanel.fill(facts, view.rows());
            if (view.chosen() < 0) {
                list.clearSelection();
            } else if (list.getSelectedIndex() != view.chosen()) {
                list.setSelectedIndex(view.chosen());
                list.ensureIndexIsVisible(view.chosen());
            }
        } finally {
            showing = false;
        }
    }

    void blank() {
        show(new FactsView(" ", List.of(), -1));
    }

    void wear(Appearance worn) {
        removeAll();
        setLayout(new MigLayout("insets 0, gap 0 " + worn.room(5), "[0:0:,grow,fill]", "[][0:0:,grow,fill][]"));
        list.setCellRenderer(WordsCells.facts(worn));
        list.setBackground(worn.palette().stage());
        title.setFont(worn.plain(TextRole.LABEL));
        title.setForeground(worn.palette().soft());
        caution.setFont(worn.plain(TextRole.LABEL));
        caution.setForeground(worn.palette().soft());
        add(title, "growx, wmin 0, wrap");
        add(WordsPanel.scroll(list), "grow, wmin 0, hmin 0, wrap");
        add(caution, "growx, wmin 0");
    }
}
