package crowdline.console.words;

import crowdline.show.Show;

/**
 * A show whose words can be edited.
 *
 * @param file the name of its file
 * @param show the show as it stands there
 * @param basis what remarks are judged by
 */
public record WordsOpened(String file, Show show, WordsBasis basis) {}
