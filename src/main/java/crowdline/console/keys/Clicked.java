package crowdline.console.keys;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;

/** Tells of a double click. */
public final class Clicked extends MouseAdapter {
    private final Runnable told;

    public Clicked(Runnable told) {
        this.told = told;
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (event.getClickCount() == 2) {
            told.run();
        }
    }
}
