package crowdline.console.prepare.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.table.DefaultTableModel;
import org.junit.jupiter.api.Test;

/** No key is lost to an answer that comes while something is typed, whether or not the field has the keys at that moment. */
class TypedTextTest {
    private final JTextField field = new JTextField();

    @Test
    void whatIsTypedStaysUntilItIsTakenThoughAnotherWindowHasTheKeys() {
        TypedText.show(field, "");
        field.setText("16:30");

        TypedText.follow(field, "");

        assertThat(field.isFocusOwner())
                .as("as after a glance at another window")
                .isFalse();
        assertThat(field.getText()).isEqualTo("16:30");
    }

    @Test
    void whatIsTakenIsShownAsTheShowHasIt() {
        TypedText.show(field, "");
        field.setText("120 m");

        TypedText.taken(field, "120 m");
        TypedText.follow(field, "393.7");

        assertThat(field.getText()).isEqualTo("393.7");
    }

    @Test
    void whatIsTypedAfterItWasTakenOrRefusedStays() {
        TypedText.show(field, "1");
        field.setText("12");
        TypedText.taken(field, "1");
        TypedText.refused(field, "1", "0");
        TypedText.follow(field, "1");

        assertThat(field.getText()).isEqualTo("12");
    }

    @Test
    void whatIsRefusedGoesForWhatIsThere() {
        TypedText.show(field, "15:20");
        field.setText("half past");

        TypedText.refused(field, "half past", "15:20");

        assertThat(field.getText()).isEqualTo("15:20");
    }

    @Test
    void whatIsBegunIsTypedOverThoughItIsShownAgainBeforeTheKeysCome() {
        JTextArea area = new JTextArea("What must be said.");
        TypedText.begin(area);
        TypedText.show(area, "What must be said.");

        keysCome(area);
        area.replaceSelection("T");

        assertThat(area.getText()).isEqualTo("T");
    }

    @Test
    void aFieldThatWasBegunOnceIsNotChosenWholeByALaterClick() {
        JTextArea area = new JTextArea("Thanks to the dairy.");
        TypedText.begin(area);
        keysCome(area);

        area.setCaretPosition(6);
        keysCome(area);

        assertThat(area.getSelectedText()).isNull();
    }

    private static void keysCome(JTextArea area) {
        FocusEvent came = new FocusEvent(area, FocusEvent.FOCUS_GAINED);
        for (FocusListener listener : area.getFocusListeners()) {
            listener.focusGained(came);
        }
    }

    @Test
    void whatIsTypedIntoACellStaysWithItsRowWhenTheRowsAreShownAnew() {
        DefaultTableModel model = new DefaultTableModel(
                new Object[][] {{"loop", "12"}, {"spin", "20"}}, new Object[] {"Figure", "Lasts"});
        JTable table = new JTable(model);
        table.setDefaultEditor(Object.class, new BlankCell());
        table.editCellAt(1, 1);
        ((JTextField) table.getEditorComponent()).setText("2");

        TypedCell.keep(
                table,
                row -> model.getValueAt(row, 0),
                () -> model.setDataVector(
                        new Object[][] {{"climb", "9"}, {"loop", "12"}, {"spin", "20"}},
                        new Object[] {"Figure", "Lasts"}));

        assertThat(table.getEditingRow()).isEqualTo(2);
        assertThat(((JTextField) table.getEditorComponent()).getText()).isEqualTo("2");
    }

    @Test
    void whatIsTypedIntoACellGoesWithItsRow() {
        DefaultTableModel model =
                new DefaultTableModel(new Object[][] {{"loop", "12"}}, new Object[] {"Figure", "Lasts"});
        JTable table = new JTable(model);
        table.setDefaultEditor(Object.class, new BlankCell());
        table.editCellAt(0, 1);

        TypedCell.keep(table, row -> model.getValueAt(row, 0), () -> model.setRowCount(0));

        assertThat(table.isEditing()).isFalse();
    }
}
