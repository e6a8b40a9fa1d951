package crowdline.show.figure;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One named manoeuvre of an act.
 *
 * @param id stable, unique within the act
 * @param figure the catalogue's name for it, or an alias; what is null below is taken from there
 * @param title how it is called in this act, or null for the catalogue's name
 * @param look the one sentence of what to look for, or null for the catalogue's
 * @param elements its elements in place of the catalogue's, or null
 * @param durationS given duration in seconds for a figure that is timed, not simulated; null if it is simulated
 * @param exit where the aircraft is after a figure that is not simulated; null to go on from where it was
 * @param minEntryKt slowest speed at which it can begin, or null for the catalogue's
 * @param asked what was asked of it, if it was laid out; its elements are then the layout's, unless it has a
 *     shape of its own, and null otherwise
 * @param transit true if the layout put it between two figures; it may be put elsewhere when they change
 * @param quiets stretches of silence on purpose
 * @param remarks what can be said about it
 */
public record Figure(
        String id,
        String figure,
        @Nullable String title,
        @Nullable String look,
        @Nullable List<Element> elements,
        @Nullable Double durationS,
        @Nullable Placing exit,
        @Nullable Double minEntryKt,
        @Nullable Asked asked,
        boolean transit,
        List<Quiet> quiets,
        List<Remark> remarks) {

    public Figure {
        Most.mustBeText("figure id", id);
        Most.mustBeText("figure name", figure);
        if (durationS != null) {
            Quantity.DURATION_S.must(durationS);
        }
        if (minEntryKt != null) {
            Quantity.MIN_ENTRY_KT.must(minEntryKt);
        }
        if (elements != null) {
            Most.ELEMENTS.must(elements);
        }
        Most.QUIETS.must(quiets);
        Most.REMARKS.must(remarks);
        elements = elements == null ? null : List.copyOf(elements);
        quiets = List.copyOf(quiets);
        remarks = List.copyOf(remarks);
    }

    /** A figure that was typed, not laid out. */
    public Figure(
            String id,
            String figure,
            @Nullable String title,
            @Nullable String look,
            @Nullable List<Element> elements,
            @Nullable Double durationS,
            @Nullable Placing exit,
            @Nullable Double minEntryKt,
            List<Quiet> quiets,
            List<Remark> remarks) {
        this(id, figure, title, look, elements, durationS, exit, minEntryKt, null, false, quiets, remarks);
    }

    /** Whether its elements were found by the layout, and told by nobody. */
    public boolean isLaidOut() {
        return transit || asked != null;
    }

    /** A figure flown as the catalogue has it. */
    public static Figure of(String id, String figure) {
        return new Figure(id, figure, null, null, null, null, null, null, List.of(), List.of());
    }

    /** How the figure is called in this act. */
    public String shownName() {
        return title == null ? figure : title;
    }

    /** The same, laid out for what is asked of it now; what it is called stays, and its own shape if it is to have one. */
    public Figure asking(Asked what) {
        return what.ownShape()
                ? new Figure(id, figure, title, look, elements, null, null, null, what, false, quiets, remarks)
                : new Figure(id, figure, title, look, null, what.seconds(), null, null, what, false, quiets, remarks);
    }

    /** Whether it is flown with elements that somebody told, not the catalogue or the layout. */
    public boolean hasOwnShape() {
        return elements != null && !transit && (asked == null || asked.ownShape());
    }

    /** The same as another figure of the catalogue. */
    public Figure flownAs(String other) {
        return new Figure(
                id, other, title, look, elements, durationS, exit, minEntryKt, asked, transit, quiets, remarks);
    }

    /** The same under another id. */
    public Figure withId(String other) {
        return new Figure(
                other, figure, title, look, elements, durationS, exit, minEntryKt, asked, transit, quiets, remarks);
    }

    /** The same with other stretches of silence. */
    public Figure withQuiets(List<Quiet> others) {
        return new Figure(
                id, figure, title, look, elements, durationS, exit, minEntryKt, asked, transit, others, remarks);
    }

    /** The same with other remarks. */
    public Figure withRemarks(List<Remark> remarks) {
        return new Figure(
                id, figure, title, look, elements, durationS, exit, minEntryKt, asked, transit, quiets, remarks);
    }
}
