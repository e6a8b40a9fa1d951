package crowdline.console.paint;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Tells of every letter that comes or goes. */
public record EveryLetter(Runnable told) implements DocumentListener {
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
