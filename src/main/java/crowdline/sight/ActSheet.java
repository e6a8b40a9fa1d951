package crowdline.sight;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Track;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.measure.InTime;
import crowdline.show.aircraft.Outline;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Lies;
import crowdline.sight.SideView.Spot;
import crowdline.sight.SideView.Stretch;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A predicted flight as the side view needs it. Made once for each variant, for it goes through every sample. */
public final class ActSheet {
    /** A variant nobody has predicted. */
    public static final ActSheet NONE = new ActSheet(List.of(), List.of(), List.of(), null, Outline.MONOPLANE);

    /** A path with less over the ground than this share of its height is vertical. Tuned: a wind carries a slow up-line so far. */
    private static final double VERTICAL = 0.3;

    private final List<FigureFlight> figures;
    private final List<List<Sample>> samples;
    private final List<Stretch> stretches;
    private final @Nullable Double crowdM;
    private final Outline outline;

    private ActSheet(
            List<FigureFlight> figures,
            List<List<Sample>> samples,
            List<Stretch> stretches,
            @Nullable Double crowdM,
            Outline outline) {
        this.outline = outline;
        this.crowdM = crowdM;
        this.figures = figures;
        this.samples = samples;
        this.stretches = stretches;
    }

    /**
     * The sheet of a flight; figures that are only timed have no path of their own.
     *
     * @param crowdM from the crowd line to the display line, metres, or null if that is not known
     * @param outline the shape of what flies
     */
    public static ActSheet of(Flight flight, @Nullable Double crowdM, Outline outline) {
        List<List<Sample>> samples = new ArrayList<>();
        List<Stretch> stretches = Track.of(flight).stretches().stream()
                .map(s -> new Stretch(s.places().stream().map(ActSheet::spot).toList()))
                .toList();
        for (FigureFlight figure : flight.figures()) {
            List<Sample> own = flight.samples().stream()
                    .filter(s -> figure.simulated() && s.tS() >= figure.startS() && s.tS() <= figure.endS())
                    .toList();
            samples.add(own);
        }
        return new ActSheet(flight.figures(), samples, stretches, crowdM, outline);
    }

    /** A figure, to be watched; nothing where it is only timed or is not in the flight. */
    public Flown flown(int index) {
        return index < 0 || index >= figures.size()
                ? Flown.NONE
                : Captions.flown(figures.get(index), samples.get(index));
    }

    /** When a share of a figure's time has gone, seconds since the act began as it was predicted. */
    public double atS(int index, double share) {
        FigureFlight figure = figures.get(index);
        return figure.startS() + figure.durationS() * Math.max(0, Math.min(1, share));
    }

    /** The shape of what flies. */
    public Outline outline() {
        return outline;
    }

    /** From the crowd line to the display line, metres, or null if that is not known. */
    public @Nullable Double crowdM() {
        return crowdM;
    }

    /** How a figure is called in this flight, or empty if it is not in it. */
    public Optional<String> name(String figureId) {
        return figures.stream()
                .filter(f -> f.figureId().equals(figureId))
                .map(FigureFlight::name)
                .findFirst();
    }

    /** The whole path, with no aircraft. */
    public SideView path(int current) {
        return new SideView(stretches, current, null, crowdM);
    }

    /**
     * The path with the aircraft where the plan has it after a share of the figure's time, or where it was read to be.
     *
     * @param index of the figure being flown, or −1
     * @param share of its time that has gone, 0 to 1
     */
    public SideView at(int index, double share, @Nullable Craft read) {
        if (read != null) {
            return new SideView(stretches, index, read, crowdM);
        }
        if (index < 0 || index >= samples.size() || samples.get(index).size() < 2) {
            return path(index);
        }
        double tS = atS(index, share);
        List<Sample> own = samples.get(index);
        int i = Math.min(Math.max(InTime.firstAfter(own, Sample::tS, tS) - 1, 0), own.size() - 2);
        Spot a = spot(own.get(i));
        Spot b = spot(own.get(i + 1));
        double stepS = own.get(i + 1).tS() - own.get(i).tS();
        double part = stepS <= 0 ? 0 : Math.max(0, Math.min(1, (tS - own.get(i).tS()) / stepS));
        double pathRad = Math.atan2(b.heightM() - a.heightM(), b.alongM() - a.alongM());
        Pose pose = Pose.between(Pose.of(own.get(i)), Pose.of(own.get(i + 1)), part);
        Lies lies = new Lies(pose, outline);
        return new SideView(
                stretches, index, Craft.predicted(spot(pose.place()), pathRad, heading(own, i), lies), crowdM);
    }

    /** Which way a flight goes over the ground; on a vertical line, which way it went before, or else goes after. */
    private static double heading(List<Sample> own, int index) {
        for (int i = index; i >= 0; i--) {
            if (goesSomewhere(own.get(i), own.get(i + 1))) {
                return heading(own.get(i), own.get(i + 1));
            }
        }
        for (int i = index + 1; i < own.size() - 1; i++) {
            if (goesSomewhere(own.get(i), own.get(i + 1))) {
                return heading(own.get(i), own.get(i + 1));
            }
        }
        return 0;
    }

    private static double heading(Sample a, Sample b) {
        return Math.atan2(
                b.place().y() - a.place().y(), b.place().x() - a.place().x());
    }

    private static boolean goesSomewhere(Sample a, Sample b) {
        double overGroundM = Math.hypot(
                b.place().x() - a.place().x(), b.place().y() - a.place().y());
        return overGroundM > VERTICAL * Math.abs(b.place().z() - a.place().z()) && overGroundM > 0;
    }

    private static Spot spot(Vec place) {
        return new Spot(place.x(), place.y(), place.z());
    }

    private static Spot spot(Sample sample) {
        return spot(sample.place());
    }
}
