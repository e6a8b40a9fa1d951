package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.DefaultListModel;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import javax.swing.text.Position;
import org.junit.jupiter.api.Test;

class NamedListTest {
    private record Row(String name) {}

    private static NamedList<Row> list(String... names) {
        DefaultListModel<Row> rows = new DefaultListModel<>();
        for (String name : names) {
            rows.addElement(new Row(name));
        }
        return new NamedList<>(rows, Row::name);
    }

    @Test
    void aRowIsFoundByWhatItIsCalledNotByWhatItIs() {
        NamedList<Row> list = list("Take-off", "stall turn", "Roll");
        assertThat(list.getNextMatch("ro", 0, Position.Bias.Forward)).isEqualTo(2);
        assertThat(list.getNextMatch("row[", 0, Position.Bias.Forward)).isNegative();
        assertThat(list.getNextMatch("T", 0, Position.Bias.Forward)).isZero();
    }

    @Test
    void aWordWithinANameIsFoundWhereNoNameBeginsSo() {
        NamedList<Row> list = list("stall turn", "half-loop", "turn left", "saturn");
        assertThat(list.getNextMatch("tu", 0, Position.Bias.Forward)).isEqualTo(2);
        assertThat(list.getNextMatch("loop", 0, Position.Bias.Forward)).isEqualTo(1);
        assertThat(list.getNextMatch("urn", 0, Position.Bias.Forward)).isNegative();
        assertThat(list().getNextMatch("a", 0, Position.Bias.Forward)).isNegative();
    }

    @Test
    void itGoesRoundBothWays() {
        NamedList<Row> list = list("loop", "roll", "loop again");
        assertThat(list.getNextMatch("l", 1, Position.Bias.Forward)).isEqualTo(2);
        assertThat(list.getNextMatch("r", 2, Position.Bias.Forward)).isEqualTo(1);
        assertThat(list.getNextMatch("l", 1, Position.Bias.Backward)).isZero();
    }

    private static void type(JTable table, char letter, long whenMs, int modifiers) {
        KeyEvent event = new KeyEvent(table, KeyEvent.KEY_TYPED, whenMs, modifiers, KeyEvent.VK_UNDEFINED, letter);
        for (var listener : table.getKeyListeners()) {
            listener.keyTyped(event);
        }
    }

    private static JTable table() {
        JTable table = new JTable(new DefaultTableModel(
                new Object[][] {{1, "loop"}, {2, "stall turn"}, {3, "slow roll"}, {4, "turn"}},
                new Object[] {"n", "f"}));
        RowFinding.in(table, 1);
        table.setRowSelectionInterval(0, 0);
        return table;
    }

    @Test
    void lettersCloseTogetherAreOneNameInATable() {
        JTable table = table();
        type(table, 's', 1_000, 0);
        assertThat(table.getSelectedRow()).isEqualTo(1);
        type(table, 'l', 1_200, 0);
        assertThat(table.getSelectedRow()).isEqualTo(2);
        type(table, 'l', 5_000, 0);
        assertThat(table.getSelectedRow()).isZero();
    }

    @Test
    void theSameLetterGoesOnToTheNextAndACommandToNone() {
        JTable table = table();
        type(table, 's', 1_000, 0);
        type(table, 's', 1_100, 0);
        assertThat(table.getSelectedRow()).isEqualTo(2);
        type(table, 't', 9_000, InputEvent.CTRL_DOWN_MASK);
        type(table, '\u007f', 9_100, 0);
        type(table, 'x', 9_200, 0);
        assertThat(table.getSelectedRow()).isEqualTo(2);
    }
}
