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

/** What helicopters and people under parachutes show. */
final class Slow {
    /** Over the ground where something stands still before the crowd, metres. */
    private static final double LOW_M = 12;

    private Slow() {}

    private static Flown helicopter(Guided way, Caption... captions) {
        return new Flown(way.poses(), List.of(captions), new Company(List.of(), Outline.HELICOPTER, true));
    }

    private static Caption said(double atS, String words) {
        return new Caption(atS, MomentKind.BEGINS, words);
    }

    static Flown hover() {
        return helicopter(
                new Guided()
                        .at(0, 0, 0, LOW_M, 20, 0, 0)
                        .at(3, 0.3, 0, LOW_M + 0.2, 21, 0.5, 0.5)
                        .at(6, 0, 0, LOW_M, 20, 0, 0),
                said(0, "it stands still in the air"));
    }

    static Flown bow() {
        return helicopter(
                new Guided()
                        .at(0, 0, 0, LOW_M, -35, 0, 0)
                        .at(2, 0, 0, LOW_M, -35, 0, 0)
                        .at(4, 2, -1, LOW_M, -35, -38, 0)
                        .at(5, 2, -1, LOW_M, -35, -38, 0)
                        .at(7, 0, 0, LOW_M, -35, 0, 0)
                        .at(8, 0, 0, LOW_M, -35, 0, 0),
                said(0, "it stands still"),
                said(4, "its nose dips to the crowd"),
                said(7, "and comes up again"));
    }

    static Flown pedalTurn() {
        return helicopter(
                new Guided()
                        .at(0, 0, 0, LOW_M, 0, 0, 0)
                        .at(5, 0, 0, LOW_M, 180, 0, 0)
                        .at(10, 0, 0, LOW_M, 360, 0, 0),
                said(0, "its middle stays where it is"),
                said(5, "half way round"),
                said(9.9, "all the way round"));
    }

    static Flown backwards() {
        return helicopter(
                new Guided().at(0, -60, 0, 15, 180, 6, 0).at(10, 60, 0, 15, 180, 6, 0),
                said(0, "the tail leads the way"));
    }

    static Flown sideways() {
        return helicopter(
                new Guided().at(0, -60, 0, 15, -90, 0, -12).at(10, 60, 0, 15, -90, 0, -12),
                said(0, "its nose points at us, and it flies to the side"));
    }

    static Flown quickStop() {
        return helicopter(
                new Guided()
                        .at(0, -150, 0, 15, 0, -12, 0)
                        .at(3, -40, 0, 15, 0, -10, 0)
                        .at(4.6, 12, 0, 20, 0, 34, 0)
                        .at(6.4, 40, 0, 22, 0, 30, 0)
                        .at(8, 46, 0, 18, 0, 3, 0)
                        .at(9.5, 46, 0, 16, 0, 0, 0),
                said(0, "fast"),
                said(4.4, "the nose comes up"),
                said(8, "it has stopped"));
    }

    static Flown spiralClimb() {
        return helicopter(
                new Guided().at(0, 0, 0, 8, 0, 0, 0).at(7, 0, 0, 60, 360, 0, 0).at(14, 0, 0, 112, 720, 0, 0),
                said(0, "straight up"),
                said(5, "round and round as it climbs"));
    }

    static Flown noseInCircle() {
        Guided way = new Guided();
        double radiusM = 55;
        for (int i = 0; i <= 16; i++) {
            double angle = -90 + 22.5 * i;
            double rad = Math.toRadians(angle);
            way.at(i, radiusM * Math.cos(rad), 60 + radiusM * Math.sin(rad), 25, angle + 180, 0, 8);
        }
        return helicopter(way, said(0, "its nose points at the middle"), said(8, "on the far side too"));
    }

    static Flown autorotation() {
        return helicopter(
                new Guided()
                        .at(0, -230, 0, 125, 0, 0, 0)
                        .at(1.5, -190, 0, 122, 0, -8, 0)
                        .at(7.5, -30, 0, 30, 0, -4, 0)
                        .at(9, 5, 0, 13, 0, 16, 0)
                        .at(10.5, 28, 0, 6, 0, 14, 0)
                        .at(12, 36, 0, 2, 0, 0, 0)
                        .at(13.5, 38, 0, 1.5, 0, 0, 0),
                said(0, "the engine goes quiet"),
                said(2.5, "down, with the rotor turning in the wind"),
                said(8.5, "the nose comes up"),
                said(12, "and it settles"));
    }

    static Flown turnBack() {
        return helicopter(
                new Guided()
                        .at(0, -150, 0, 15, 0, -5, 0)
                        .at(3, -30, 0, 22, 0, 20, 0)
                        .at(5, 22, 0, 60, 0, 50, 0)
                        .at(6.5, 36, 6, 82, 25, 40, 55)
                        .at(8, 34, 18, 82, 120, -10, 65)
                        .at(9.5, 4, 24, 76, 180, -35, 15)
                        .at(11.5, -60, 24, 50, 180, -22, 0)
                        .at(14, -150, 24, 42, 180, -5, 0),
                said(0, "it comes in"),
                said(5, "it pulls up"),
                said(7.4, "nearly stopped, it swings round"),
                said(10.5, "back the way it came"));
    }

    private static List<Pose> carrier() {
        return new Steered(new Vec(-160, 0, 300), 40).on(8).poses();
    }

    /** An aeroplane passes, and people leave it one after another. */
    static Flown jump() {
        List<Pose> aeroplane = carrier();
        List<Track> jumpers = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double outS = 2 + 1.3 * i;
            List<Pose> way = new ArrayList<>();
            for (Pose pose : aeroplane) {
                double fallenS = Math.max(0, pose.tS() - outS);
                double driftM = 40 * pose.tS() - 22 * fallenS;
                Vec place = new Vec(-160 + driftM, 0, 300 - 1.6 - 4.3 * fallenS * fallenS / (1 + 0.06 * fallenS));
                way.add(new Pose(pose.tS(), place, new Vec(1, 0, 0), Vec.UP, 1));
            }
            jumpers.add(new Track(way, Track.keeping(way, new Vec(0, 0, 0)).slots(), Outline.JUMPER));
        }
        return new Flown(
                aeroplane,
                List.of(said(0, "high up"), said(2, "the first is out"), said(4.7, "the last is out")),
                new Company(jumpers, null, true));
    }

    /** Four hold a star and fall as one. */
    static Flown freefall() {
        List<Pose> first =
                new Guided().at(0, 0, 0, 330, 0, 0, 0).at(10, 0, 0, 60, 0, 0, 0).poses();
        List<Track> others = new ArrayList<>();
        double[] sideSpans = {-1.15, 1.15, 0};
        double[] upSpans = {0.35, 0.35, 0.75};
        for (int i = 0; i < sideSpans.length; i++) {
            others.add(Track.keeping(first, new Vec(sideSpans[i], 0, upSpans[i])));
        }
        return new Flown(
                first,
                List.of(said(0, "flat on the air"), said(5, "they fall as one")),
                new Company(others, Outline.JUMPER, true));
    }

    private static Flown canopy(Guided way, Caption... captions) {
        return new Flown(way.poses(), List.of(captions), new Company(List.of(), Outline.CANOPY, true));
    }

    static Flown canopyDescent() {
        Guided way = new Guided();
        for (int i = 0; i <= 16; i++) {
            double rad = Math.toRadians(-90 + 45 * i);
            way.at(1.5 * i, 70 * Math.cos(rad), 70 + 70 * Math.sin(rad), 330 - 18 * i, 45 * i, -8, i == 0 ? 0 : -18);
        }
        return canopy(way, said(0, "under an open canopy"), said(9, "round and down"));
    }

    /** An aeroplane passes, and a strip of paper drifts down behind it. */
    static Flown streamer() {
        List<Pose> aeroplane = carrier();
        List<Pose> way = new ArrayList<>();
        for (Pose pose : aeroplane) {
            double fallenS = Math.max(0, pose.tS() - 3);
            double driftM = 40 * (pose.tS() - fallenS) + 12 * fallenS;
            Vec place = new Vec(-160 + driftM, 0, 300 - 1.6 - 7 * fallenS);
            way.add(new Pose(pose.tS(), place, new Vec(1, 0, 0), Vec.UP, 1));
        }
        return new Flown(
                aeroplane,
                List.of(said(0, "over the target"), said(3, "a strip of bright paper"), said(6, "it shows the wind")),
                new Company(
                        List.of(new Track(
                                way, Track.keeping(way, new Vec(0, 0, 0)).slots(), Outline.JUMPER)),
                        null,
                        true));
    }

    /** One comes up below another, and they go down as one. */
    static Flown canopyStack() {
        List<Pose> upper = new Guided()
                .at(0, -90, 0, 150, 0, -6, 0)
                .at(14, 90, 0, 90, 0, -6, 0)
                .poses();
        List<Vec> below = new ArrayList<>();
        for (Pose pose : upper) {
            double left = Math.max(0, 1 - pose.tS() / 6);
            below.add(new Vec(-1.4 * left, 0, -1 - 0.5 * left));
        }
        return new Flown(
                upper,
                List.of(
                        said(0, "one comes up from behind"),
                        said(6, "its canopy meets the feet above"),
                        said(10, "two fly as one")),
                new Company(List.of(new Track(upper, below, null)), Outline.CANOPY, true));
    }

    /** Both tip outwards and dive; they let go and fly level again. */
    static Flown downplane() {
        return new Flown(
                outwards(-1),
                List.of(said(0, "side by side"), said(3, "both canopies point outwards"), said(10, "they let go")),
                new Company(List.of(Track.keeping(outwards(1), new Vec(0, 0, 0))), Outline.CANOPY, true));
    }

    /** @param side which of the two, -1 on the left, 1 on the right of who watches */
    private static List<Pose> outwards(int side) {
        double awayM = 1.5 * side;
        return new Guided()
                .at(0, awayM, 0, 220, 90, -8, 10 * side)
                .at(3, awayM, 4, 200, 90, -20, 80 * side)
                .at(9, awayM, 10, 90, 90, -20, 80 * side)
                .at(11, 12 * awayM, 18, 70, 90, -8, 0)
                .at(13, 24 * awayM, 36, 64, 90, -6, 0)
                .poses();
    }

    static Flown canopyLanding() {
        return canopy(
                new Guided()
                        .at(0, -110, 0, 60, 0, -6, 0)
                        .at(5, -45, 0, 22, 0, -6, 0)
                        .at(7.5, -8, 0, 3, 0, 0, 0)
                        .at(9, 8, 0, 0.6, 0, 16, 0)
                        .at(10, 12, 0, 0.1, 0, 4, 0),
                said(0, "into the wind"),
                said(8.2, "the canopy is pulled down at the back, and slows"),
                said(9.9, "on both feet"));
    }
}
