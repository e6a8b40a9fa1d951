package crowdline.console.edit;

import crowdline.show.Show;

/**
 * Changes that were not saved when the program ended, and are still there.
 *
 * @param name under which they are kept
 * @param of what they are changes of, in words
 * @param since when they were kept, by the clock of the machine, in words
 * @param neverSaved whether they are of a show that has no file
 * @param changedSince whether the file has changed since
 * @param show the show with them
 */
public record UnsavedOffer(String name, String of, String since, boolean neverSaved, boolean changedSince, Show show) {}
