package crowdline.console.prepare.people;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.people.PairTable.Pair;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

/** Facts are typed one after the other, and the show answers each a moment later. */
class PairTableTest {
    private static final Pair FIRST = new Pair("won a cup", "her letter");
    private static final Pair SECOND = new Pair("built the wing", "her letter");

    private final List<List<Pair>> told = new ArrayList<>();
    private final PairTable table = new PairTable("Facts", "Fact", "Source", "", told::add);

    private void type(int row, Pair pair) {
        table.setValueAt(pair.left(), row, 0);
        table.setValueAt(pair.right(), row, 1);
    }

    private List<String> firsts() {
        List<String> all = new ArrayList<>();
        for (int row = 0; row < table.getRowCount(); row++) {
            all.add(String.valueOf(table.getValueAt(row, 0)));
        }
        return all;
    }

    /** The change of a name typed before is answered while the first fact is on its way. */
    @Test
    void answerToAnEarlierChangeTakesNothingAway() {
        table.show(List.of(), "ada");
        type(0, FIRST);
        assertThat(told).containsExactly(List.of(FIRST));
        table.show(List.of(), "ada");
        assertThat(firsts()).containsExactly("won a cup", "");
        type(1, SECOND);
        table.show(List.of(FIRST), "ada");
        table.show(List.of(FIRST, SECOND), "ada");
        assertThat(firsts()).containsExactly("won a cup", "built the wing", "");
        table.show(List.of(SECOND), "ada");
        assertThat(firsts()).as("taken back").containsExactly("built the wing", "");
    }

    @Test
    void pairsOfAnotherAndOfARefusalAreShown() {
        table.show(List.of(), "ada");
        type(0, FIRST);
        table.show(List.of(), "bob");
        assertThat(firsts()).containsExactly("");
        type(0, FIRST);
        table.refused();
        table.show(List.of(), "bob");
        assertThat(firsts()).containsExactly("");
    }

    @Test
    void enterGoesOnToTheNextTextAndToTheNextPair() {
        table.show(List.of(), "ada");
        table.changeSelection(0, 0, false, false);
        enter(FIRST.left());
        assertThat(at()).isEqualTo("0 1");
        enter(FIRST.right());
        assertThat(at()).isEqualTo("1 0");
        table.show(List.of(FIRST), "ada");
        assertThat(at()).as("after the answer").isEqualTo("1 0");
    }

    private String at() {
        return table.getSelectedRow() + " " + table.getSelectedColumn();
    }

    private void enter(String text) {
        table.editCellAt(table.getSelectedRow(), table.getSelectedColumn());
        JTextField field = (JTextField) table.getEditorComponent();
        // Else the field would keep Enter for itself.
        assertThat(field.getActionListeners()).isEmpty();
        field.setText(text);
        Object name =
                table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke("ENTER"));
        table.getActionMap().get(name).actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, ""));
    }
}
