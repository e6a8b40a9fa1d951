package crowdline.show;

import crowdline.show.bounds.Most;

/**
 * Something to remember about a figure, written down while walking an act through.
 *
 * @param actId the act it belongs to
 * @param figureId the figure of that act
 * @param text plain words, at most {@value #LONGEST} letters; never empty
 */
public record FigureNote(String actId, String figureId, String text) {
    /** Longest a note may be: what can be read at a glance. A design choice. */
    public static final int LONGEST = 400;

    public FigureNote {
        Most.mustBeText("act id of a note", actId);
        Most.mustBeText("figure id of a note", figureId);
        Most.mustBeText("note", text);
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "the note has " + text.length() + " letters; it may have " + LONGEST + " at most");
        }
    }

    /** True if it is about this figure. */
    public boolean about(String act, String figure) {
        return actId.equals(act) && figureId.equals(figure);
    }
}
