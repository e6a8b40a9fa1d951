package crowdline.console.place;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.theme.Appearance;
import java.util.Set;
import javax.swing.JComponent;

/** A place of the window, as the frame knows it. On the event thread. */
public interface PlaceScreen {
    /** What is shown of it. */
    JComponent component();

    /** What its commands do. */
    CommandTable commands();

    /** What can be given here now, of the commands that are not the window's. */
    default Set<Command> possible() {
        return commands().possible();
    }

    /** It has been gone to. */
    default void arrive() {}

    /** Whether it moves with the clock, and is to be shown anew 20 times a second. */
    default boolean moves() {
        return false;
    }

    /** Shows the present moment. */
    default void refresh() {}

    /** Takes the keys for something that is being written there; false if nothing is. */
    default boolean takeFocus() {
        return false;
    }

    /** Whether keys are heard without the focus in any part of it. */
    default boolean needsNoFocus() {
        return false;
    }

    /** Says this where a show would be. */
    default void showEmpty(EmptyShow.Shown shown) {}

    /** Takes another look. */
    void wear(Appearance appearance);
}
