package crowdline.console;

import crowdline.console.words.WordsBasis;
import crowdline.show.Show;

/**
 * A show that can be edited.
 *
 * @param called the name of its file, or what it is called without one
 * @param hasFile whether it has a file to be saved in
 * @param show the show as it stands there
 * @param basis what remarks are judged by
 */
public record EditOpened(String called, boolean hasFile, Show show, WordsBasis basis) {
    /** A show from a file. */
    public EditOpened(String file, Show show, WordsBasis basis) {
        this(file, true, show, basis);
    }
}
