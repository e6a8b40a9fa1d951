package crowdline.console;

import crowdline.console.words.WordsBasis;
import crowdline.show.Show;

/**
 * A show that can be edited.
 *
 * @param file the name of its file
 * @param show the show as it stands there
 * @param basis what remarks are judged by
 */
public record EditOpened(String file, Show show, WordsBasis basis) {}
