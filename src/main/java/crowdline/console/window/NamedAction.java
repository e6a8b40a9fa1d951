package crowdline.console.window;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;

/** Something a menu or a button does that no key does. */
public final class NamedAction extends AbstractAction {
    private final transient Runnable work;

    /** An action under a name. */
    public NamedAction(String name, Runnable work) {
        super(name);
        this.work = work;
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        work.run();
    }
}
