package crowdline.list.draft;

import crowdline.list.line.ListLine;
import crowdline.list.name.Names;
import crowdline.measure.Units;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;

/** How high a figure goes, which is not how high it begins: "loop, 5,000 ft over the top", "half Cuban to 4,500". */
final class Tops {
    private static final Set<String> RISING = Set.of(
            "loop",
            "square loop",
            "loop with a roll on top",
            "avalanche",
            "outside half loop",
            "half loop with roll out on top",
            "Cuban eight",
            "half Cuban",
            "reverse half Cuban",
            "quarter clover",
            "humpty bump",
            "humpty bump with push top",
            "stall turn",
            "tail slide",
            "tail slide wheels up",
            "torque roll",
            "vertical roll up",
            "pull to vertical",
            "45 degree up-line with roll",
            "barrel roll",
            "wing-over",
            "lazy eight",
            "chandelle",
            "formation loop",
            "formation roll");

    /** A number without a unit is a height from {@link Measured#LEAST_BARE_FT} on, which has three figures. */
    private static final String HEIGHT = "(\\d+(?:\\.\\d+)? (?:ft|metre|m)|\\d{3,}(?:\\.\\d+)?)";

    private Tops() {}

    /** Whether a figure goes up from where it begins, so that it has a top of its own. */
    static boolean rises(String figure) {
        return RISING.contains(figure);
    }

    /** They say how high the top is. */
    static List<Saying> sayings() {
        return List.of(
                Saying.of(
                        " top | gate ",
                        "(?:at the |the )?(?:top|gate)(?: height)?(?: is| at| of| about| around| approx| approximately| roughly| say)* "
                                + HEIGHT,
                        Tops::said),
                Saying.of(" top | gate ", HEIGHT + " (?:(?:over|at|on) )?(?:the )?(?:top|gate)", Tops::said),
                Saying.of(" to ", "(?:up |going |rising )*to (?:about |around )?" + HEIGHT, Tops::said));
    }

    private static boolean said(Draft draft, Matcher found) {
        Names.Sense sense = draft.sense();
        String height = found.group(1);
        double number = Double.parseDouble(height.replaceFirst(" .*", ""));
        double ft = height.endsWith(" m") || height.endsWith("metre") ? Math.rint(Units.ftFromM(number)) : number;
        boolean isHeight = ft <= ListLine.MOST_FT && (ft >= Measured.LEAST_BARE_FT || height.indexOf(' ') > 0);
        if (!isHeight || (sense != null && !rises(sense.figure()))) {
            return false;
        }
        draft.say(Detail.TOP_FT, ft);
        return true;
    }
}
