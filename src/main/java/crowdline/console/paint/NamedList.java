package crowdline.console.paint;

import java.awt.event.KeyEvent;
import java.util.Locale;
import java.util.function.Function;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.ListModel;
import javax.swing.text.Position;

/**
 * A list in which what is typed finds the next row called so: one whose name begins with it, else one that has a word
 * beginning with it.
 *
 * @param <T> the rows
 */
public class NamedList<T> extends JList<T> {
    private static final long serialVersionUID = 1;
    private static final int NONE = -1;

    private final transient Function<T, String> name;

    /**
     * A list of rows with names.
     *
     * @param name what a row is called, as it is read on the screen
     */
    public NamedList(ListModel<T> rows, Function<T, String> name) {
        super(rows);
        this.name = name;
    }

    @Override
    public int getNextMatch(String typed, int from, Position.Bias bias) {
        return isCommand(typed.charAt(0))
                ? NONE
                : next(getModel().getSize(), row -> name.apply(getModel().getElementAt(row)), typed, from, bias);
    }

    /** A key that does something in this list is no letter of a name: it would do both. */
    private boolean isCommand(char typed) {
        int key = KeyEvent.getExtendedKeyCodeForChar(typed);
        return getInputMap().get(KeyStroke.getKeyStroke(key, 0)) != null;
    }

    /** What a row is called. */
    public interface Names {
        String of(int row);
    }

    /**
     * The next row called so, once round from one of them; below 0 if there is none.
     *
     * @param from the row looked at first
     * @param bias which way to go on
     */
    public static int next(int rows, Names names, String typed, int from, Position.Bias bias) {
        String start = typed.toLowerCase(Locale.ROOT);
        int word = -1;
        for (int i = 0; i < rows; i++) {
            int row = Math.floorMod(bias == Position.Bias.Forward ? from + i : from - i, rows);
            String name = names.of(row).toLowerCase(Locale.ROOT);
            if (name.startsWith(start)) {
                return row;
            }
            if (word < 0 && hasWord(name, start)) {
                word = row;
            }
        }
        return word;
    }

    private static boolean hasWord(String name, String start) {
        for (int at = name.indexOf(start, 1); at > 0; at = name.indexOf(start, at + 1)) {
            if (!Character.isLetterOrDigit(name.charAt(at - 1))) {
                return true;
            }
        }
        return false;
    }
}
