package crowdline.console.paint;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import javax.swing.JTable;
import javax.swing.text.Position;

/** Finds the row of a table by the letters typed into it, as a list does; a cell that can be typed into takes them itself. */
public final class RowFinding extends KeyAdapter {
    /** Milliseconds: letters typed closer together than this belong to one name, as in the lists of Swing. */
    private static final long ONE_NAME_MS = 1_000;

    private final JTable table;
    private final int column;
    private String typed = "";
    private long lastMs = Long.MIN_VALUE / 2;

    private RowFinding(JTable table, int column) {
        this.table = table;
        this.column = column;
    }

    /**
     * Lets a table find its rows.
     *
     * @param column the one that says what a row is called
     */
    public static void in(JTable table, int column) {
        table.addKeyListener(new RowFinding(table, column));
    }

    @Override
    public void keyTyped(KeyEvent event) {
        char letter = event.getKeyChar();
        int modifiers = KeyEvent.CTRL_DOWN_MASK | KeyEvent.ALT_DOWN_MASK | KeyEvent.META_DOWN_MASK;
        boolean goesOn = event.getWhen() - lastMs < ONE_NAME_MS;
        boolean finds = Character.isLetterOrDigit(letter) || (letter == ' ' && goesOn && !typed.isEmpty());
        if ((event.getModifiersEx() & modifiers) != 0 || !finds || table.isEditing() || table.getRowCount() == 0) {
            return;
        }
        boolean again = !goesOn || typed.equals(String.valueOf(letter));
        int at = Math.max(0, table.getSelectedRow());
        typed = again ? String.valueOf(letter) : typed + letter;
        lastMs = event.getWhen();
        int row = NamedList.next(
                table.getRowCount(),
                r -> String.valueOf(table.getValueAt(r, column)),
                typed,
                again ? at + 1 : at,
                Position.Bias.Forward);
        if (row >= 0) {
            int chosen = table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
            table.changeSelection(row, Math.max(0, chosen), false, false);
        }
    }
}
