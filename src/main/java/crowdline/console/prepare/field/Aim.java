package crowdline.console.prepare.field;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JComponent;

/** Tells that a component has the focus now. */
public final class Aim extends FocusAdapter {
    private final Runnable told;

    private Aim(Runnable told) {
        this.told = told;
    }

    public static void at(JComponent component, Runnable told) {
        component.addFocusListener(new Aim(told));
    }

    @Override
    public void focusGained(FocusEvent event) {
        told.run();
    }
}
