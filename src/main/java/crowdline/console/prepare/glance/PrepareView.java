package crowdline.console.prepare.glance;

import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesView;
import crowdline.console.path.SkyView;
import crowdline.edit.shape.Shape;
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

    /** What stands at the head of an act, as it is typed: its title, who flies it, and its slot. */
    public record ActHeadView(String id, String title, String performer, String begins, String minutes) {
        public static final ActHeadView NONE = new ActHeadView("", "", "", "", "");
    }

    /**
     * An act.
     *
     * @param id its own in the show
     * @param slot such as "14:30, 12 min"
     * @param variants at least one, the one meant to be flown first
     * @param inLive the name of the variant that Live begins with, by the air of the day
     */
    public record ActView(
            String id,
            String title,
            String performer,
            String airframe,
            String slot,
            List<VariantView> variants,
            String inLive) {
        public ActView {
            variants = List.copyOf(variants);
            if (variants.isEmpty()) {
                throw new IllegalArgumentException("the act " + title + " has no variant to show");
            }
        }

        /** Its head; the slot is such as "14:30, 12 min". */
        public ActHeadView head() {
            String[] parts = slot.split(", ", 2);
            return new ActHeadView(
                    id, title, performer, parts[0], parts.length < 2 ? "" : parts[1].replace(" min", ""));
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

    /**
     * One thing that can be told of a figure.
     *
     * @param told as it was told; empty if it was not
     * @param value what it is, told or not; empty if nobody knows
     * @param mark whether it was told, timed or assumed
     */
    public record PinView(PinField field, String told, String value, Mark mark) {}

    /**
     * Where a figure is flown now.
     *
     * @param alongM its middle, metres along the display line to the right
     * @param beginsFt feet above the datum at which it begins
     * @param seconds how long it takes
     */
    public record PlaceNow(double alongM, double beginsFt, double seconds) {}

    /**
     * The shape of a figure.
     *
     * @param isOwn whether somebody told it
     * @param shape what is flown; nothing if the figure only takes its time
     * @param why why it cannot be edited, in a sentence; empty if it can
     */
    public record ShapeView(boolean isOwn, Shape shape, String why) {
        public static final ShapeView NONE =
                new ShapeView(false, new Shape(List.of()), "Choose a figure to see its shape.");
    }

    /**
     * What the pilot wrote of a figure.
     *
     * @param text as it was written, in one line; empty if it was not
     * @param undrawn what of it is not in the figure as it is drawn, in quotation marks; empty if all of it is
     */
    public record WrittenView(String text, String undrawn) {
        public static final WrittenView NONE = new WrittenView("", "");
    }

    /**
     * How a figure is edited.
     *
     * @param id its own in the act
     * @param isTransit whether it was put between two others, and follows from them
     * @param pins what can be told of it; none where nothing was laid out
     * @param place where it is flown, or null if that is not known
     * @param shape what is flown in it
     * @param written what its pilot wrote of it
     */
    public record FigureEdit(
            String id,
            boolean isTransit,
            List<PinView> pins,
            @Nullable PlaceNow place,
            ShapeView shape,
            WrittenView written) {
        public static final FigureEdit NONE =
                new FigureEdit("", false, List.of(), null, ShapeView.NONE, WrittenView.NONE);

        public FigureEdit {
            pins = List.copyOf(pins);
        }

        /** The same with a shape of its own. */
        public FigureEdit shaped(Shape own) {
            return new FigureEdit(id, isTransit, pins, place, new ShapeView(true, own, ""), written);
        }
    }

    /**
     * Speed, height and load over a figure.
     *
     * @param seconds from its start, growing
     * @param kt airspeed in knots at each
     * @param ft feet above the datum
     * @param g load felt
     */
    public record Curves(List<Double> seconds, List<Double> kt, List<Double> ft, List<Double> g) {
        public static final Curves NONE = new Curves(List.of(), List.of(), List.of(), List.of());

        public Curves {
            seconds = List.copyOf(seconds);
            kt = List.copyOf(kt);
            ft = List.copyOf(ft);
            g = List.copyOf(g);
        }
    }

    /**
     * A figure with what is predicted of it; a value nobody knows is a dash.
     *
     * @param edit how it is edited
     * @param curves what is predicted from moment to moment; none of what is only timed
     * @param sketch how it usually looks where it is only timed; empty where nobody knows, or its flight is predicted
     */
    public record FigureView(
            FigureEdit edit,
            Curves curves,
            SkyView sketch,
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

        /** A figure that is only looked at. */
        public FigureView(
                String name,
                String look,
                String start,
                String duration,
                String band,
                String entry,
                String height,
                String load,
                List<RemarkView> remarks) {
            this(
                    FigureEdit.NONE,
                    Curves.NONE,
                    SkyView.NONE,
                    name,
                    look,
                    start,
                    duration,
                    band,
                    entry,
                    height,
                    load,
                    remarks);
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

    /** A finding of the check: how bad, what, and of which act or figure, or in a file that is no show on which line. */
    public record FindingView(Mark mark, String message, String where) {}

    public PrepareView {
        acts = List.copyOf(acts);
        findings = List.copyOf(findings);
    }
}
