package crowdline.sight.picture;

import crowdline.flight.body.Vec;
import crowdline.measure.InTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A stretch of a flight, to be watched.
 *
 * @param poses in the order flown, a tenth of a second or less apart; none where nothing is known but times
 * @param captions what there is to see in it and when, in the order seen
 * @param company what else is seen with it
 */
public record Flown(List<Pose> poses, List<Caption> captions, Company company) {
    public static final Flown NONE = new Flown(List.of(), List.of());

    /** Nearer to a caption than this it is the one that is shown, seconds. */
    private static final double THERE_S = 0.02;

    public Flown {
        poses = List.copyOf(poses);
        captions = List.copyOf(captions);
    }

    /** Of one aircraft. */
    public Flown(List<Pose> poses, List<Caption> captions) {
        this(poses, captions, Company.NONE);
    }

    /** The same without words. */
    public Flown silent() {
        return new Flown(poses, List.of(), company);
    }

    /** The same with company. */
    public Flown with(Company next) {
        return new Flown(poses, captions, next);
    }

    /** Too short to be watched. */
    public boolean isEmpty() {
        return poses.size() < 2;
    }

    public double fromS() {
        return isEmpty() ? 0 : poses.get(0).tS();
    }

    public double toS() {
        return isEmpty() ? 0 : poses.get(poses.size() - 1).tS();
    }

    /**
     * The pose at a time; before the first and after the last it is that one.
     *
     * @throws IllegalStateException if there is nothing to be watched
     */
    public Pose at(double tS) {
        if (isEmpty()) {
            throw new IllegalStateException("nothing is flown here");
        }
        int after = firstAfter(tS);
        if (after == 0 || after == poses.size()) {
            return poses.get(Math.min(after, poses.size() - 1));
        }
        Pose a = poses.get(after - 1);
        Pose b = poses.get(after);
        return Pose.between(a, b, (tS - a.tS()) / (b.tS() - a.tS()));
    }

    /** The poses between two times, and those at the times themselves. */
    public List<Pose> between(double fromS, double toS) {
        List<Pose> inside = new ArrayList<>();
        inside.add(at(fromS));
        for (int i = firstAfter(fromS); i < poses.size() && poses.get(i).tS() < toS; i++) {
            inside.add(poses.get(i));
        }
        inside.add(at(toS));
        return List.copyOf(inside);
    }

    private int firstAfter(double tS) {
        return InTime.firstAfter(poses, Pose::tS, tS);
    }

    /** The caption that was reached last; the first before any was. */
    public Caption captionAt(double tS) {
        Caption shown = captions.isEmpty() ? Caption.NONE : captions.get(0);
        for (Caption caption : captions) {
            if (caption.atS() <= tS + THERE_S) {
                shown = caption;
            }
        }
        return shown;
    }

    /** When the next moment is; none after the last. */
    public OptionalDouble nextS(double tS) {
        return captions.stream()
                .mapToDouble(Caption::atS)
                .filter(s -> s > tS + THERE_S)
                .findFirst();
    }

    /** When the moment before is; none before the first. */
    public OptionalDouble beforeS(double tS) {
        return captions.stream()
                .mapToDouble(Caption::atS)
                .filter(s -> s < tS - THERE_S)
                .reduce((a, b) -> b);
    }

    /** The same somewhere else, with the same times. */
    public Flown movedBy(double alongM, double awayM, double upM) {
        Company moved = new Company(
                company.others().stream()
                        .map(t -> t.movedBy(alongM, awayM, upM))
                        .toList(),
                company.own(),
                company.sketched());
        return new Flown(poses.stream().map(p -> p.movedBy(alongM, awayM, upM)).toList(), captions, moved);
    }

    /** The same the other way along the display line, with the same times. */
    public Flown mirrored() {
        Company other =
                new Company(company.others().stream().map(Track::mirrored).toList(), company.own(), company.sketched());
        return new Flown(poses.stream().map(Pose::mirrored).toList(), captions, other);
    }

    /** The smallest and the largest place in each direction. */
    public Reach reach() {
        return reach(poses);
    }

    /** The same of all that fly together, without how far beside each other they are drawn. */
    public Reach reachOfAll() {
        return reach(Stream.concat(poses.stream(), company.others().stream().flatMap(track -> track.poses().stream()))
                .toList());
    }

    private static Reach reach(List<Pose> poses) {
        Vec first = poses.get(0).place();
        Vec least = first;
        Vec most = first;
        for (Pose pose : poses) {
            Vec p = pose.place();
            least = new Vec(Math.min(least.x(), p.x()), Math.min(least.y(), p.y()), Math.min(least.z(), p.z()));
            most = new Vec(Math.max(most.x(), p.x()), Math.max(most.y(), p.y()), Math.max(most.z(), p.z()));
        }
        return new Reach(least, most);
    }

    /** The box around it, metres in the display frame. */
    public record Reach(Vec least, Vec most) {
        public Vec size() {
            return most.minus(least);
        }
    }
}
