package crowdline.sight.sketch;

import crowdline.show.figure.MomentKind;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Company;
import crowdline.sight.picture.Flown;
import java.util.List;

/** How an aeroplane comes and goes. */
final class Ways {
    /** The middle of an aeroplane that stands on its wheels, metres above the ground. */
    private static final double ON_WHEELS_M = 1.5;

    private Ways() {}

    private static Flown aeroplane(Guided way, Caption... captions) {
        return new Flown(way.poses(), List.of(captions), new Company(List.of(), null, true));
    }

    private static Caption said(double atS, String words) {
        return new Caption(atS, MomentKind.BEGINS, words);
    }

    static Flown takeOff() {
        return aeroplane(
                new Guided()
                        .at(0, -280, 0, ON_WHEELS_M, 0, 0, 0)
                        .at(4, -170, 0, ON_WHEELS_M, 0, 0, 0)
                        .at(7.9, 25, 0, ON_WHEELS_M, 0, 1, 0)
                        .at(8, 30, 0, ON_WHEELS_M, 0, 4, 0)
                        .at(10, 140, 0, 16, 0, 12, 0)
                        .at(13, 300, 0, 60, 0, 12, 0),
                said(0, "it rolls, faster and faster"),
                said(8, "the wheels leave the ground"));
    }

    static Flown landing() {
        return aeroplane(
                new Guided()
                        .at(0, -300, 0, 55, 0, -6, 0)
                        .at(4, -120, 0, 14, 0, -4, 0)
                        .at(6, -30, 0, 3, 0, 3, 0)
                        .at(7, 10, 0, ON_WHEELS_M, 0, 4, 0)
                        .at(7.1, 14, 0, ON_WHEELS_M, 0, 4, 0)
                        .at(9, 80, 0, ON_WHEELS_M, 0, 0, 0)
                        .at(14, 190, 0, ON_WHEELS_M, 0, 0, 0),
                said(0, "it comes down"),
                said(6, "the nose comes up"),
                said(7, "the wheels touch"));
    }

    /** Hardly forward, swinging from side to side as it comes down. */
    static Flown fallingLeaf() {
        Guided way = new Guided().at(0, -130, 0, 230, 0, 12, 0).at(2.5, -60, 0, 230, 0, 18, 0);
        int swings = 5;
        for (int i = 0; i < swings; i++) {
            int side = i % 2 == 0 ? 1 : -1;
            way.at(4 + 2 * i, -30 + 9 * i + 20 * side, 0, 205 - 32 * i, -28 * side, -12, 45 * side);
        }
        way.at(14, 20, 0, 45, 0, -30, 0).at(16, 90, 0, 25, 0, 4, 0).at(17.5, 160, 0, 28, 0, 4, 0);
        return aeroplane(
                way,
                said(0, "slower and slower, until the wings let go"),
                said(4, "it swings one way"),
                said(6, "and the other"),
                said(13, "nose down for speed, and it flies again"));
    }

    static Flown climb() {
        return aeroplane(
                new Guided()
                        .at(0, -300, 0, 60, 0, 0, 0)
                        .at(2, -180, 0, 62, 0, 6, 0)
                        .at(4, -70, 0, 92, 0, 20, 0)
                        .at(11, 300, 0, 232, 0, 20, 0),
                said(0, "level"),
                said(3, "the nose comes up, and it climbs"));
    }

    static Flown levelOut() {
        return aeroplane(
                new Guided()
                        .at(0, -300, 0, 260, 0, -28, 0)
                        .at(4, -110, 0, 158, 0, -28, 0)
                        .at(6.5, 25, 0, 105, 0, -14, 0)
                        .at(8.5, 145, 0, 90, 0, 0, 0)
                        .at(11.5, 320, 0, 90, 0, 0, 0),
                said(0, "it dives"),
                said(4.5, "the nose comes up to level"));
    }

    static Flown runIn() {
        return aeroplane(
                new Guided()
                        .at(0, -260, 720, 250, -78, -8, 0)
                        .at(8, -150, 210, 140, -74, -8, -8)
                        .at(11, -90, 60, 112, -48, -5, -45)
                        .at(13, 15, 6, 105, -12, -2, -38)
                        .at(15, 140, 0, 104, 0, 0, 0)
                        .at(18, 330, 0, 104, 0, 0, 0),
                said(0, "from far behind the display line"),
                said(10.5, "it turns onto the line"),
                said(15, "and runs along it"));
    }
}
