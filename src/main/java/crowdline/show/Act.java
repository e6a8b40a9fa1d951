package crowdline.show;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Remark;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One performer's slot.
 *
 * @param id stable, unique within the show
 * @param title how the act is announced
 * @param performer id of the performer
 * @param airframe id of the airframe
 * @param slotStart planned start by the clock at the venue
 * @param slotMinutes planned length in minutes, above 0
 * @param entry where the aircraft is when the first figure begins, or null if that is not known: only an act whose figures
 *     are all timed can do without
 * @param figures every figure any variant uses
 * @param variants at least one; the first is the one meant to be flown
 * @param remarks what can be said at any time in the act
 */
public record Act(
        String id,
        String title,
        String performer,
        String airframe,
        LocalTime slotStart,
        double slotMinutes,
        @Nullable Placing entry,
        List<Figure> figures,
        List<Variant> variants,
        List<Remark> remarks) {

    public Act {
        Most.mustBeText("act id", id);
        Most.mustBeText("act title", title);
        Quantity.SLOT_MINUTES.must(slotMinutes);
        Most.FIGURES.must(figures);
        Most.VARIANTS.must(variants);
        Most.REMARKS.must(remarks);
        figures = List.copyOf(figures);
        variants = List.copyOf(variants);
        remarks = List.copyOf(remarks);
        if (variants.isEmpty()) {
            throw new IllegalArgumentException("act " + id + " has no variant; it needs at least one");
        }
    }

    public Optional<Variant> variant(String name) {
        return variants.stream().filter(v -> v.name().equals(name)).findFirst();
    }

    public Optional<Figure> figure(String figureId) {
        return figures.stream().filter(f -> f.id().equals(figureId)).findFirst();
    }

    /** The figures of a variant in the order flown; ids the act does not have are left out. */
    public List<Figure> inOrder(Variant variant) {
        return variant.order().stream().flatMap(id -> figure(id).stream()).toList();
    }

    /** Where the aircraft is when a variant begins; null if that is not known. */
    public @Nullable Placing entry(Variant variant) {
        return variant.entry() == null ? entry : variant.entry();
    }

    /** The first variant agreed for a cloud base in feet, or null if none was measured; the last if none is agreed. */
    public Variant variantUnder(@Nullable Double cloudBaseFt) {
        return variants.stream()
                .filter(v -> Variant.isAgreed(v.minCloudBaseFt(), cloudBaseFt))
                .findFirst()
                .orElse(variants.get(variants.size() - 1));
    }

    /** The same called otherwise. */
    public Act withTitle(String other) {
        return new Act(id, other, performer, airframe, slotStart, slotMinutes, entry, figures, variants, remarks);
    }

    /** The same at another time. */
    public Act withSlot(LocalTime start, double minutes) {
        return new Act(id, title, performer, airframe, start, minutes, entry, figures, variants, remarks);
    }

    /** The same flown by somebody else, or in another aircraft. */
    public Act flownBy(String performerId, String airframeId) {
        return new Act(id, title, performerId, airframeId, slotStart, slotMinutes, entry, figures, variants, remarks);
    }

    /** The same flown otherwise. */
    public Act flown(@Nullable Placing from, List<Figure> figures, List<Variant> variants) {
        return new Act(id, title, performer, airframe, slotStart, slotMinutes, from, figures, variants, remarks);
    }

    /** The same with other figures, and other remarks outside them. */
    public Act withFigures(List<Figure> figures, List<Remark> remarks) {
        return new Act(id, title, performer, airframe, slotStart, slotMinutes, entry, figures, variants, remarks);
    }
}
