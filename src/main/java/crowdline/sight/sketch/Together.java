package crowdline.sight.sketch;

import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Outline;
import crowdline.show.figure.MomentKind;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Company;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import crowdline.sight.picture.Track;
import java.util.ArrayList;
import java.util.List;

/** What several aircraft show together: five, four or two, as the figure has it. */
final class Together {
    private static final double SPEED_MPS = 70;
    private static final double HEIGHT_M = 120;
    /** Of the size of its way, so much higher a formation flies than one alone. */
    private static final double LIFT = 0.1;
    /** Where the one on the rope flies, in drawn spans; the rope is longer than this in truth. */
    private static final Vec BEHIND = new Vec(-3.2, 0, 0.3);
    /** How far apart two keep that meet, in drawn spans. */
    private static final double APART_SPANS = 0.75;

    private Together() {}

    /** A leader's flight with the others of the figure about it; the same where nobody else flies in it. */
    static Flown with(String figure, Flown leader) {
        List<Track> others = switch (figure) {
            case "formation pass", "formation loop", "formation roll" -> Shapes.keeping(Shapes.WEDGE, leader);
            case "opposition pass" -> List.of(meeting(leader.poses()));
            case "mirror pass" -> List.of(mirrored(leader.poses()));
            default -> List.of();
        };
        if (others.isEmpty()) {
            return leader;
        }
        // Those lower than the leader stay above the ground too.
        Vec size = leader.reach().size();
        return leader.with(new Company(others, null, false)).movedBy(0, 0, LIFT * Math.max(size.x(), size.z()));
    }

    /** The other way through the same place, lower in the picture. */
    private static Track meeting(List<Pose> poses) {
        double middle =
                (poses.get(0).place().x() + poses.get(poses.size() - 1).place().x()) / 2;
        List<Pose> other = poses.stream().map(p -> acrossFrom(middle, p)).toList();
        return Track.keeping(other, new Vec(0, 0, -APART_SPANS));
    }

    /** On its back over the other, head to head. */
    private static Track mirrored(List<Pose> poses) {
        List<Pose> other = poses.stream()
                .map(p -> new Pose(p.tS(), p.place(), p.nose(), p.up().times(-1), -p.g()))
                .toList();
        return Track.keeping(other, new Vec(0, 0, -APART_SPANS));
    }

    private static Flown all(List<Pose> leader, List<Track> others, Caption... captions) {
        return new Flown(leader, List.of(captions), new Company(others, null, true));
    }

    private static Caption said(double atS, String words) {
        return new Caption(atS, MomentKind.BEGINS, words);
    }

    private static Steered fromTheLeft() {
        return new Steered(new Vec(-350, 0, HEIGHT_M), SPEED_MPS);
    }

    /** A glider behind the aeroplane that pulls it up, a little higher than its wake. */
    static Flown tow() {
        List<Pose> puller = fromTheLeft().on(2).pull(12, 2).on(8).poses();
        return new Flown(
                puller,
                List.of(said(0, "on one rope"), said(3, "they climb as one")),
                new Company(List.of(Track.keeping(puller, BEHIND).pulled()), Outline.MONOPLANE, true));
    }

    /** From places all over the sky into the wedge. */
    static Flown joinUp() {
        List<Pose> leader = fromTheLeft().on(11).poses();
        List<Vec> from =
                List.of(new Vec(-90, 60, 90), new Vec(-120, -40, -70), new Vec(-230, 100, 30), new Vec(-200, -60, -10));
        List<Track> others = new ArrayList<>();
        for (int i = 0; i < from.size(); i++) {
            List<Pose> own = new ArrayList<>();
            List<Vec> slots = new ArrayList<>();
            for (Pose pose : leader) {
                double there = Shapes.smooth((pose.tS() - 0.5 - 0.8 * i) / 5.5);
                Vec off = from.get(i).times(1 - there);
                own.add(pose.movedBy(off.x(), off.y(), off.z()));
                slots.add(Shapes.WEDGE.get(i).times(there));
            }
            others.add(new Track(own, slots, null));
        }
        return all(leader, others, said(0, "apart"), said(3, "the gaps close"), said(9, "one shape"));
    }

    /** The leader goes on; the others peel away upwards one after the other. */
    static Flown breaking() {
        List<Pose> leader = fromTheLeft().on(10.5).poses();
        List<Track> others = new ArrayList<>();
        for (int i = 0; i < Shapes.WEDGE.size(); i++) {
            double goesS = 3 + 0.7 * i;
            // Those on the left roll left, away from the crowd, and those on the right to the right.
            int side = i % 2 == 0 ? -1 : 1;
            List<Pose> own = fromTheLeft()
                    .on(goesS)
                    .roll(side * 62, 0.6)
                    .pull(150, 4)
                    .on(10.5 - goesS - 4.6)
                    .poses();
            others.add(Shapes.moving(own, Shapes.WEDGE.get(i), new Vec(0, 0, 0), goesS, goesS + 4));
        }
        return all(leader, others, said(0, "together"), said(3, "the first breaks away"), said(6, "all on their own"));
    }

    /** Straight up together, and then each its own way. */
    static Flown bombBurst() {
        double[] fanDeg = {0, 38, -38, 76, -76};
        List<List<Pose>> ways = new ArrayList<>();
        for (double fan : fanDeg) {
            ways.add(new Steered(new Vec(-210, 0, 30), SPEED_MPS)
                    .on(1.6)
                    .pull(90, 2.4)
                    .on(0.8)
                    .pull(fan, 1.8)
                    .on(2.6)
                    .poses());
        }
        List<Track> others = new ArrayList<>();
        for (int i = 1; i < ways.size(); i++) {
            List<Pose> own = ways.get(i);
            // They come as one tight bunch, so that all begin at one point.
            Vec slot = Shapes.WEDGE.get(i - 1).times(0.55);
            others.add(Shapes.moving(own, slot, new Vec(0, 0, 0), 4.2, 6));
        }
        return all(ways.get(0), others, said(0, "together"), said(4.8, "they burst apart"), said(8, "like a flower"));
    }

    /** Up the middle side by side, out at the top, and down to one point. */
    static Flown heart() {
        List<Pose> left = new Steered(new Vec(-160, 0, 40), SPEED_MPS)
                .on(0.6)
                .pull(90, 1.8)
                .on(2.2)
                .pull(225, 4.4)
                .on(3)
                .poses();
        double middleM = left.stream().mapToDouble(p -> p.place().x()).max().orElse(0) + 8;
        List<Pose> right = left.stream().map(p -> acrossFrom(middleM, p)).toList();
        return all(
                left,
                List.of(Track.keeping(right, new Vec(0, 0, 0))),
                said(0, "towards each other"),
                said(2.4, "up side by side"),
                said(5, "out and round"),
                said(9, "and they meet at the bottom"));
    }

    /** The second flies where the first flew a moment before. */
    static Flown tailChase() {
        int behind = 11;
        List<Pose> way = new Steered(new Vec(-330, 0, HEIGHT_M), SPEED_MPS)
                .on(2)
                .pull(32, 1.4)
                .pull(-64, 2.8)
                .pull(32, 1.4)
                .roll(360, 2.6)
                .on(2)
                .poses();
        double beginS = way.get(behind).tS();
        List<Pose> leader = way.subList(behind, way.size()).stream()
                .map(pose -> new Pose(pose.tS() - beginS, pose.place(), pose.nose(), pose.up(), pose.g()))
                .toList();
        List<Pose> second = way.subList(0, way.size() - behind);
        return all(
                leader,
                List.of(Track.keeping(second, new Vec(0, 0, 0))),
                said(0, "nose to tail"),
                said(1, "the leader pulls up"),
                said(2.4, "and so does the second, in the same place"),
                said(6.6, "it rolls, and so does the second"));
    }

    /** As in a mirror that stands along the line of sight. */
    private static Pose acrossFrom(double middleM, Pose pose) {
        Vec place = pose.place();
        return new Pose(
                pose.tS(),
                new Vec(2 * middleM - place.x(), place.y(), place.z()),
                new Vec(-pose.nose().x(), pose.nose().y(), pose.nose().z()),
                new Vec(-pose.up().x(), pose.up().y(), pose.up().z()),
                pose.g());
    }

    /** From the wedge into a line, and on. */
    static Flown changingShape() {
        List<Pose> leader = fromTheLeft().on(11).poses();
        List<Track> others = new ArrayList<>();
        for (int i = 0; i < Shapes.WEDGE.size(); i++) {
            others.add(Shapes.moving(leader, Shapes.WEDGE.get(i), Shapes.LINE.get(i), 3.2 + 0.3 * i, 6 + 0.3 * i));
        }
        return all(leader, others, said(0, "a wedge"), said(3.2, "they slide to new places"), said(7.5, "a line"));
    }

    /** Three go on; two turn away as a pair. */
    static Flown synchroSplit() {
        List<Pose> leader = fromTheLeft().on(10).poses();
        List<Track> others = new ArrayList<>(Shapes.keeping(Shapes.WEDGE.subList(0, 2), new Flown(leader, List.of())));
        List<Pose> pair = fromTheLeft()
                .on(3)
                .roll(-55, 0.7)
                .pull(175, 4.2)
                .roll(55, 0.7)
                .on(1.4)
                .poses();
        Vec behind = new Vec(-1.1, -0.5, 0.35);
        others.add(Shapes.moving(pair, Shapes.WEDGE.get(2), new Vec(0, 0, 0), 3, 8));
        others.add(Shapes.moving(pair, Shapes.WEDGE.get(2).plus(behind), behind, 3, 8));
        return all(leader, others, said(0, "together"), said(3, "two leave"), said(7.5, "a pair, and the rest"));
    }
}
