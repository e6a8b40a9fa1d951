package crowdline.console.prepare.field;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Objects;
import javax.swing.text.JTextComponent;

/**
 * What is typed into a field stays until it is taken, whatever is answered meanwhile and wherever the keys are: another window
 * may have them for a moment. On the event thread.
 */
public final class TypedText {
    /** What a field was last given to show. */
    private static final String SHOWN = "crowdline.shown";

    private TypedText() {}

    /**
     * Gives the keys to a field, and what is typed next takes the place of all of it. What is shown between the asking and the
     * coming of the keys does not take that back.
     */
    public static void begin(JTextComponent field) {
        field.selectAll();
        if (!field.isFocusOwner()) {
            field.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent event) {
                    field.removeFocusListener(this);
                    field.selectAll();
                }
            });
            field.requestFocusInWindow();
        }
    }

    /** Shows a text in place of whatever stands there. */
    public static void show(JTextComponent field, String text) {
        if (!field.getText().strip().equals(text)) {
            boolean wasAllChosen = field.isFocusOwner()
                    && field.getSelectionStart() == 0
                    && field.getSelectionEnd() > 0
                    && field.getSelectionEnd() == field.getDocument().getLength();
            field.setText(text);
            field.setCaretPosition(0);
            if (wasAllChosen) {
                // What is typed next still takes the place of all of it.
                field.selectAll();
            }
        } else if (!field.isFocusOwner()) {
            // A long text is left at its beginning, as it is read.
            field.setCaretPosition(0);
        }
        field.putClientProperty(SHOWN, field.getText());
    }

    /** Shows a text, unless another was typed there that is not taken yet. */
    public static void follow(JTextComponent field, String text) {
        if (!isTyped(field) || field.getText().strip().equals(text)) {
            show(field, text);
        }
    }

    /** What was typed is taken, so that what it became can be shown; nothing if more was typed since. */
    public static void taken(JTextComponent field, String typed) {
        if (stands(field, typed)) {
            field.putClientProperty(SHOWN, field.getText());
        }
    }

    /** What was typed cannot be: shows what is there instead, unless more was typed since. */
    public static void refused(JTextComponent field, String typed, String instead) {
        if (stands(field, typed)) {
            show(field, instead);
        }
    }

    private static boolean stands(JTextComponent field, String typed) {
        return field.getText().strip().equals(typed.strip());
    }

    private static boolean isTyped(JTextComponent field) {
        Object shown = Objects.requireNonNullElse(field.getClientProperty(SHOWN), "");
        return !field.getText().equals(shown);
    }
}
