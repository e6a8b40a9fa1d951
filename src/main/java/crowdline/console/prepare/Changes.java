package crowdline.console.prepare;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Tells of every change of a text. */
record Changes(Runnable told) implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent event) {
        told.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        told.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        told.run();
    }
}
