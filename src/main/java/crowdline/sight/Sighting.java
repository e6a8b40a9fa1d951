package crowdline.sight;

import crowdline.flight.body.Vec;

/**
 * A place as the crowd sees it.
 *
 * @param rightDeg degrees to the right of straight out from the crowd line, −180 to 180
 * @param upDeg degrees above the horizon, −90 to 90
 * @param slantM distance from the eye along the line of sight, metres
 */
public record Sighting(double rightDeg, double upDeg, double slantM) {
    /** From here up it is overhead and a side means little; judgement, no source. */
    private static final double OVERHEAD_DEG = 75;

    /**
     * Where to look for a place in the display frame.
     *
     * @param crowdToLineM distance from the crowd line to the display line, metres
     */
    public static Sighting of(Vec place, double crowdToLineM) {
        double outM = place.y() + crowdToLineM;
        double levelM = Math.hypot(place.x(), outM);
        return new Sighting(
                Math.toDegrees(Math.atan2(place.x(), outM)),
                Math.toDegrees(Math.atan2(place.z(), levelM)),
                Math.hypot(levelM, place.z()));
    }

    /** The hour of a clock face lying on the ground, 1 to 12; 12 is straight out from the crowd line, 3 to the right. */
    public int clock() {
        int hour = Math.floorMod(Math.round(rightDeg / 30), 12);
        return hour == 0 ? 12 : hour;
    }

    /** How many fists at arm's length above the horizon, see {@link Everyday#FIST_WIDTH}. */
    public double fistsUp() {
        return upDeg / Everyday.FIST_WIDTH.value();
    }

    /** Where to look, such as "high to your right, about two o'clock". */
    public String words() {
        if (upDeg >= OVERHEAD_DEG) {
            return "almost overhead";
        }
        return height() + side() + ", about " + CountedWords.of(clock()) + " o'clock";
    }

    private String height() {
        return upDeg < 20 ? "low" : upDeg < 45 ? "well up" : "high";
    }

    private String side() {
        String hand = rightDeg < 0 ? "left" : "right";
        double off = Math.abs(rightDeg);
        if (off <= 10) {
            return " straight ahead";
        }
        if (off > 170) {
            return " straight behind you";
        }
        if (off > 105) {
            return " behind you on the " + hand;
        }
        return (off <= 30 ? ", a little to your " : off < 75 ? " to your " : ", far to your ") + hand;
    }
}
