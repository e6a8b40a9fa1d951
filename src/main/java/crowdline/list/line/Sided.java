package crowdline.list.line;

import java.util.List;
import java.util.Set;

/** What "left" means with a figure: the way it turns, the way it flies, or the end it is flown at. */
public final class Sided {
    private static final Set<String> TURNS = Set.of(
            "turn",
            "roll",
            "rolls",
            "flick",
            "spin",
            "wing-over",
            "chandelle",
            "avalanche",
            "lomcovak",
            "break",
            "eight",
            "clover",
            "reposition");

    private static final Set<String> ALONG =
            Set.of("pass", "dive", "climb", "run-in", "take-off", "landing", "flight", "level out");

    private static final Set<String> ROLLS_ON_A_LINE =
            Set.of("vertical roll up", "vertical roll down", "45 degree up-line with roll");

    private static final Set<String> AT_AN_END =
            Set.of("half loop with roll out on top", "Cuban eight", "half Cuban", "split S");

    private Sided() {}

    /** Whether it turns or rolls to a side. */
    public static boolean turns(String figure) {
        return !AT_AN_END.contains(figure)
                && List.of(figure.split(" ")).stream().anyMatch(TURNS::contains);
    }

    /** Whether a bare number may be the angle through which it turns or rolls. */
    public static boolean isAngle(String figure, double number) {
        return number % 45 == 0 && turns(figure);
    }

    /** Whether it is a straight line up or down with as many rolls, or parts of one, as one likes. */
    public static boolean hasRollsOnALine(String figure) {
        return ROLLS_ON_A_LINE.contains(figure);
    }

    /** Whether it is flown along the line. */
    public static boolean fliesAlong(String figure) {
        return ALONG.stream().anyMatch(figure::contains);
    }
}
