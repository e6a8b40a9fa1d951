package crowdline.show.bounds;

import crowdline.measure.Must;
import java.util.Locale;

/**
 * Every number of a show file: between what it can be computed with, and what is plausible. Beyond the first a show is
 * refused; beyond the second it is asked about. What is plausible is common practice and memory, no source, where none is
 * named; it says what a slip of the hand looks like, and nothing about what may be flown.
 */
public enum Quantity {
    MASS_KG("massKg", 20, 700_000, 150, 30_000, "from an ultralight to a wartime bomber"),
    WING_AREA_M2("wingAreaM2", 1, 2_000, 4, 150, "from a racer to a wartime bomber"),
    SPAN_M("spanM", 1, 150, 4, 40, "from a racer to a wartime bomber"),
    LENGTH_M("lengthM", 1, 120, 3.5, 30, "from a racer to a wartime bomber"),
    POWER_KW("powerKw", 0, 50_000, 15, 6_000, "from an ultralight to a wartime bomber"),
    PROPELLER_DIAMETER_M("propellerDiameterM", 0, 15, 1, 5, "from an ultralight to a wartime fighter"),
    PROPELLER_RPM("propellerRpm", 0, 20_000, 800, 4_000, "of the propeller, behind its gears"),
    THRUST_KN("thrustKn", 0.05, 2_000, 1, 300, "from a very light jet to a bomber"),
    REHEAT_KN("reheatKn", 0.05, 3_000, 2, 450, "from a small fighter to a bomber"),
    HEAVIER("heavier", -1, 1, -1, 1, "a share of the kind's range"),
    STRONGER("stronger", -1, 1, -1, 1, "a share of the kind's range"),
    ROLLS_FASTER("rollsFaster", -1, 1, -1, 1, "a share of the kind's range"),
    ZERO_LIFT_DRAG("zeroLiftDrag", 0.001, 1, 0.007, 0.09, "from a sailplane to a braced biplane"),
    INDUCED_DRAG_FACTOR("inducedDragFactor", 0.001, 2, 0.008, 0.25, "1 / (pi e A) of slender to stubby wings"),
    MAX_LIFT_UPRIGHT("maxLiftUpright", 0.1, 10, 0.8, 3, "from a plain to a flapped wing"),
    MAX_LIFT_INVERTED("maxLiftInverted", 0.1, 10, 0.5, 2.5, "of a plain wing upside down"),
    ROLL_RATE_DEG_PER_S("rollRateDegPerS", 1, 2_000, 10, 600, "from a heavy glider to an aerobatic monoplane"),
    ROLL_RATE_KT("rollRateKt", 1, 2_000, 40, 550, "a speed the aircraft is rolled at"),
    FLICK_RATE_DEG_PER_S("flickRateDegPerS", 1, 3_000, 80, 800, "autorotation of a stalled wing"),
    SPIN_RATE_DEG_PER_S("spinRateDegPerS", 1, 3_000, 50, 600, "one turn in 0.6 to 7 seconds"),
    SPIN_DESCENT_FT_PER_TURN("spinDescentFtPerTurn", 1, 20_000, 60, 1_500, "height lost in a turn"),
    PIVOT_S("pivotS", 0.1, 60, 0.6, 8, "the half turn of a stall turn"),
    TUMBLE_RATE_DEG_PER_S("tumbleRateDegPerS", 1, 3_000, 60, 900, "about as a flick"),
    LIMIT_POSITIVE_G("limitPositiveG", 1, 20, 2, 12, "from a transport to an aerobatic aircraft"),
    LIMIT_NEGATIVE_G("limitNegativeG", -20, 0, -10, -0.5, "from an aerobatic aircraft to a transport"),
    NEVER_EXCEED_KT("neverExceedKt", 10, 2_000, 50, 850, "from an ultralight to a fast jet"),

    PLACE_ALONG_M("alongM", -100_000, 100_000, -5_000, 5_000, "within sight of the crowd"),
    PLACE_AWAY_M("awayM", -100_000, 100_000, -2_000, 8_000, "within sight of the crowd"),
    PLACE_HEIGHT_FT("heightFt", -1_000, 60_000, 0, 12_000, "feet above the datum, within sight of the crowd"),
    PLACE_KT("kt", 0.1, 2_000, 1, 650, "from rolling on the ground to a fast jet"),

    DURATION_S("durationS", 0.01, 7_200, 0.5, 1_200, "one figure"),
    ASKED_COUNT("count", 0.01, 100, 0.25, 16, "how often, or how many turns"),
    ASKED_SECONDS("seconds", 0.01, 7_200, 0.5, 1_200, "one figure"),
    ASKED_BEGINS_S("beginsS", 0, 7_200, 0, 1_800, "an act"),
    MIN_ENTRY_KT("minEntryKt", 1, 2_000, 20, 550, "the speed a figure begins at"),
    QUIET_FROM_S("fromS", 0, 7_200, 0, 300, "within a figure"),
    QUIET_TO_S("toS", 0.01, 7_200, 0.2, 600, "within a figure"),
    SLOT_MINUTES("slotMinutes", 0.01, 1_440, 1, 120, "an act"),
    MIN_CLOUD_BASE_FT("minCloudBaseFt", 0, 60_000, 150, 12_000, "what a variant was agreed for"),

    EARLIEST_S("earliestS", -7_200, 7_200, -120, 600, "about its figure"),
    LATEST_S("latestS", -7_200, 7_200, -120, 900, "about its figure"),
    WEIGHT("weight", 0.001, 1_000, 0.05, 20, "1 is ordinary"),
    DUTY_TIMES("times", 1, 100, 1, 20, "more than twenty times a day nobody listens any more"),
    TALK_PERCENT("talkPercent", 0, 100, 10, 90, "of a gap between acts"),
    ANSWER_S("answerS", 0, 1_800, 0, 180, "an answer before a crowd"),
    APART_MINUTES("apartMinutes", 1, 1_440, 3, 240, "from one time to the next"),

    LINE_SECONDS("seconds", 0, 600, 0.1, 60, "a line is predicted for a minute at most"),
    LINE_METRES("metres", 0, 50_000, 1, 5_000, "within sight of the crowd"),
    LINE_TO_KT("toKt", 0, 2_000, 10, 650, "up to a fast jet"),
    LINE_TO_FT("toFt", -1_000, 60_000, 30, 12_000, "within sight of the crowd"),
    LINE_TO_ALONG_M("toAlongM", -100_000, 100_000, -5_000, 5_000, "within sight of the crowd"),
    LINE_RADII("radii", 0, 20, 0.1, 6, "times the radius of the figure"),
    LINE_TO_STALLS("toStalls", 0.2, 10, 0.5, 5, "times the stalling speed"),
    POWER("power", 0, 1, 0, 1, "the share of full power"),
    ARC_DEGREES("degrees", 0, 3_600, 1, 1_080, "up to three loops"),
    ARC_TO_PATH_DEG("toPathDeg", -90, 90, -90, 90, "straight down to straight up"),
    ARC_LOAD_G("loadG", -30, 30, -9, 12, "what an aerobatic aircraft is flown with"),
    ARC_RADIUS_M("radiusM", 1, 100_000, 5, 5_000, "from the top of a slow loop to a fast jet pushed over gently"),
    ARC_ROUND_FROM_G("roundFromG", -30, 30, -9, 12, "what an aerobatic aircraft is flown with"),
    ARC_TOP_SHARE("topShare", 0.1, 1, 0.1, 1, "a loop that is a circle has 1"),
    ROLL_DEGREES("degrees", 0.1, 36_000, 10, 3_600, "up to ten rolls"),
    ROLL_SECONDS("seconds", 0.05, 600, 0.5, 60, "one roll"),
    POINTS_PER_TURN("pointsPerTurn", 0, 360, 2, 16, "two to sixteen points"),
    PAUSE_S("pauseS", 0, 60, 0.1, 5, "a short stop"),
    FLICK_DEGREES("degrees", 0.1, 36_000, 90, 1_440, "up to four flicks"),
    SPIN_TURNS("turns", 0.01, 100, 0.25, 15, "what fits above the ground"),
    HOVER_SECONDS("seconds", 0.05, 600, 0.5, 30, "what an engine bears"),
    TUMBLE_TURNS("turns", 0.01, 100, 0.25, 8, "before it falls out of it"),
    TURN_DEGREES("degrees", 0.1, 36_000, 5, 1_080, "up to three circles"),
    TURN_BANK_DEG("bankDeg", 1, 89, 3, 85, "what holds its height"),
    TURN_PEAK_PATH_DEG("peakPathDeg", 0, 85, 0, 85, "up to nearly straight up"),
    TURN_ROLLS("rolls", -36, 36, -9, 9, "rolls in a turn"),
    REPOSITION_BANK_DEG("bankDeg", 10, 80, 10, 80, "what holds its height"),

    LAT_DEG("latDeg", -90, 90, -75, 75, "where people live"),
    LON_DEG("lonDeg", -180, 180, -180, 180, "all round"),
    ELEVATION_FT("elevationFt", -1_500, 15_000, -100, 9_000, "where people live; feet"),
    AXIS_BEARING_DEG("axisBearingDeg", 0, 360, 0, 360, "all round"),
    CROWD_TO_LINE_M("crowdToLineM", 0, 50_000, 20, 1_200, "within sight of the crowd"),
    BASE_FT("baseFt", 0, 60_000, 0, 5_000, "within sight of the crowd"),
    CEILING_FT("ceilingFt", 1, 60_000, 300, 30_000, "within sight of the crowd"),
    HALF_LENGTH_M("halfLengthM", 1, 100_000, 200, 8_000, "within sight of the crowd"),
    DEPTH_M("depthM", 1, 100_000, 50, 8_000, "within sight of the crowd"),

    QNH_HPA("qnhHpa", 850, 1_100, 930, 1_060, "hectopascals on a day of any weather"),
    TEMPERATURE_C("temperatureC", -60, 60, -25, 45, "degrees Celsius on a day with a crowd"),
    WIND_FROM_DEG("windFromDeg", 0, 360, 0, 360, "all round"),
    WIND_KT("windKt", 0, 100, 0, 50, "a day with a crowd"),
    ALOFT_FT("heightFt", 34, 20_000, 34, 20_000, "above the ground"),
    ALOFT_FROM_DEG("fromDeg", 0, 360, 0, 360, "all round"),
    ALOFT_KT("kt", 0, 200, 0, 100, "on a day with a crowd"),
    CLOUD_BASE_FT("cloudBaseFt", 0, 60_000, 150, 45_000, "feet above the datum");

    private final String key;
    private final double least;
    private final double most;
    private final double low;
    private final double high;
    private final String why;

    Quantity(String key, double least, double most, double low, double high, String why) {
        this.key = key;
        this.least = least;
        this.most = most;
        this.low = low;
        this.high = high;
        this.why = why;
    }

    /** Its key in the show file. */
    public String key() {
        return key;
    }

    /** The least it is computed with. */
    double least() {
        return least;
    }

    /** The most it is computed with. */
    double most() {
        return most;
    }

    public String why() {
        return why;
    }

    public boolean isPlausible(double value) {
        return value >= low && value <= high;
    }

    /** Such as "150 to 30,000". */
    public String plausible() {
        return written(low) + " to " + written(high);
    }

    /**
     * Refuses a value that nothing can be computed with.
     *
     * @throws IllegalArgumentException if nothing can be computed with it, which names it and what is allowed
     */
    public void must(double value) {
        Must.beFinite(key, value);
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    key + " is " + written(value) + "; it must be from " + written(least) + " to " + written(most));
        }
    }

    /** A number as a sentence writes it: no more digits than it has, thousands apart. */
    public static String written(double value) {
        if (Math.abs(value) >= 1e15 || (value != 0 && Math.abs(value) < 1e-4)) {
            return String.valueOf(value);
        }
        String text = String.format(Locale.UK, "%,.4f", value);
        return text.replaceAll("\\.?0+$", "");
    }
}
