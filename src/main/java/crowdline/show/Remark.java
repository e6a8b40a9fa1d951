package crowdline.show;

import org.jspecify.annotations.Nullable;

/**
 * Something to say. It belongs to a figure, an act or the show, by where it stands in the show file.
 *
 * @param id stable, unique within the show
 * @param kind what sort of remark it is
 * @param text what to say, as written
 * @param shortText a shorter form for when time is short, or null
 * @param earliestS earliest start against the start of its figure in seconds, negative for before it; null for the
 *     kind's own rule. Without meaning outside a figure
 * @param latestS latest end against the start of its figure in seconds, or null
 * @param weight how much it is wanted against others, above 0; 1 is ordinary
 * @param once true if it is to be said once in the whole show at most
 */
public record Remark(
        String id,
        RemarkKind kind,
        String text,
        @Nullable String shortText,
        @Nullable Double earliestS,
        @Nullable Double latestS,
        double weight,
        boolean once) {

    public Remark {
        Most.mustBeText("remark id", id);
        Most.mustBeText("remark text", text);
        if (shortText != null) {
            Most.mustBeText("remark short text", shortText);
        }
        if (earliestS != null) {
            Quantity.EARLIEST_S.must(earliestS);
        }
        if (latestS != null) {
            Quantity.LATEST_S.must(latestS);
        }
        if (earliestS != null && latestS != null && latestS <= earliestS) {
            throw new IllegalArgumentException("latestS is " + latestS + "; it must be after earliestS, " + earliestS);
        }
        Quantity.WEIGHT.must(weight);
    }

    /** A plain remark with no short form and no times of its own. */
    public static Remark of(String id, RemarkKind kind, String text) {
        return new Remark(id, kind, text, null, null, null, 1, false);
    }
}
