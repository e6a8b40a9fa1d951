package crowdline.console.prepare.field;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JTextField;

/** Tells when something was typed into a field: at Enter, and when the field is left. */
public final class Typed extends FocusAdapter {
    private final Runnable told;

    private Typed(Runnable told) {
        this.told = told;
    }

    public static void into(JTextField field, Runnable told) {
        field.addActionListener(e -> told.run());
        field.addFocusListener(new Typed(told));
    }

    @Override
    public void focusLost(FocusEvent event) {
        if (!event.isTemporary()) {
            told.run();
        }
    }
}
