package crowdline.console.place;

import java.util.List;
import java.util.function.Supplier;
import javax.swing.Action;

/**
 * The ways to a show where none is open.
 *
 * @param fresh begins a new one
 * @param open opens a file
 * @param demo opens the demo show
 * @param again each opens one of the files that were open last, the last one first; asked when they are shown
 */
public record Ways(Action fresh, Action open, Action demo, Supplier<List<Action>> again) {
    /** Where no file was ever open. */
    public Ways(Action fresh, Action open, Action demo) {
        this(fresh, open, demo, List::of);
    }
}
