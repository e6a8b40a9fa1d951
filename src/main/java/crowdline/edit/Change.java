package crowdline.edit;

import crowdline.show.Show;

/**
 * One change of a show.
 *
 * @param name what was done, as it stands after "Undo" and "Redo": "Move the loop", "Add act “Solo display”"
 * @param show the show after it
 * @param about what it is about: changes about the same thing that follow each other, such as letters typed into one word,
 *     are one step; empty for a step of its own
 */
public record Change(String name, Show show, String about) {
    public Change {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a change needs a name; say what was done");
        }
    }

    /** A change that is a step of its own. */
    public static Change of(String name, Show show) {
        return new Change(name, show, "");
    }
}
