package crowdline.console.prepare;

import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesView;
import crowdline.show.Variant;
import crowdline.sight.SideView;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The show at a glance.
 *
 * @param title of the event
 * @param where the venue and the day
 * @param air the air of the day in words
 * @param acts in running order
 * @param findings of the check, the worst first
 */
public record PrepareView(String title, String where, String air, List<ActView> acts, List<FindingView> findings) {

    /**
     * An act.
     *
     * @param slot such as "14:30, 12 min"
     * @param variants at least one, the one meant to be flown first
     * @param inLive the name of the variant that Live begins with, by the air of the day
     */
    public record ActView(
            String title, String performer, String airframe, String slot, List<VariantView> variants, String inLive) {
        public ActView {
            variants = List.copyOf(variants);
            if (variants.isEmpty()) {
                throw new IllegalArgumentException("the act " + title + " has no variant to show");
            }
        }

        /** The first variant agreed for this cloud base; empty if none is. */
        public Optional<VariantView> under(double cloudBaseFt) {
            return variants.stream()
                    .filter(v -> Variant.isAgreed(v.minCloudBaseFt(), cloudBaseFt))
                    .findFirst();
        }
    }

    /**
     * One way the act is flown.
     *
     * @param minCloudBaseFt lowest cloud base in feet it was agreed for, or null
     * @param base the same in words
     * @param total how long all of it takes
     * @param figures in the order flown
     * @param path the act from the crowd, a stretch for each figure
     * @param passes its passes and what was learned from them
     */
    public record VariantView(
            String name,
            @Nullable Double minCloudBaseFt,
            String base,
            String total,
            List<FigureView> figures,
            SideView path,
            PassesView passes) {
        public VariantView {
            figures = List.copyOf(figures);
        }

        /** A variant that was never timed. */
        public VariantView(
                String name,
                @Nullable Double minCloudBaseFt,
                String base,
                String total,
                List<FigureView> figures,
                SideView path) {
            this(name, minCloudBaseFt, base, total, figures, path, PassesView.NONE);
        }
    }

    /** A figure with what is predicted of it; a value nobody knows is a dash. */
    public record FigureView(
            String name,
            String look,
            String start,
            String duration,
            String band,
            String entry,
            String height,
            String load,
            List<RemarkView> remarks) {
        public FigureView {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A remark against the time there is for it.
     *
     * @param kind in a word
     * @param takesS seconds it takes, with the top of its band
     * @param takesAtMostS the top of its band
     * @param thereIsS seconds there are, or 0 if it is bound to no figure
     * @param verdict whether it fits
     */
    public record RemarkView(
            String kind, String text, double takesS, double takesAtMostS, double thereIsS, Mark verdict) {}

    /** A finding of the check: how bad, what, and on which line. */
    public record FindingView(Mark mark, String message, String where) {}

    public PrepareView {
        acts = List.copyOf(acts);
        findings = List.copyOf(findings);
    }
}
