package crowdline.list.draft;

import crowdline.list.name.Names;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;

/** What a figure becomes where several fly it together: "loop in box four", "diamond nine flypast". */
public final class Formations {
    private static final Map<String, String> TOGETHER = Map.of(
            "loop", "formation loop",
            "barrel roll", "formation roll",
            "aileron roll", "formation roll",
            "low pass", "formation pass");

    private static final Saying SHAPE = Saying.of(
            "vic|echelon|arrow|delta|line|ship|diamond|box|finger|card|swan|together|cathedral|chevron|trident|formation|pair",
            "(?:in |as )*(?:a |the )?(?:big |large |tight |wide |close |loose )?(?:"
                    + "(?:\\d+ ship |\\d+ aircraft )?(?:vic|echelon(?: left| right)?|arrowhead|delta|line abreast|line astern)"
                    + "|\\d+ ship(?: formation)?"
                    + "|(?:diamond|box|finger|card|arrow|swan) (?:\\d+|formation)"
                    + "|(?<=(?:in|as) (?:a |the )?(?:big |large |tight |wide )?)(?:diamond|arrow|swan|card|finger|cathedral|chevron|trident|formation|pair)"
                    + "|(?:diamond|arrow|swan|card|finger|cathedral|chevron|trident|pair)(?= ¤)"
                    + "|(?<=¤ )together"
                    + "|(?<=(?:in|as) )box"
                    + ")(?: \\d+)?(?: formation)?",
            Formations::fly);

    /** Shapes, of a pass that is flown in one. */
    private static final Set<String> ALONE = Set.of(
            "vic",
            "arrow",
            "arrowhead",
            "delta",
            "echelon",
            "line abreast",
            "line astern",
            "diamond nine",
            "card",
            "swan",
            "in formation");

    private static final Set<String> SHAPES = Set.of(
            "vic",
            "arrow",
            "arrowhead",
            "delta",
            "echelon",
            "diamond",
            "box",
            "card",
            "swan",
            "line",
            "astern",
            "abreast");

    private Formations() {}

    /** Makes a figure that several fly of one that names the shape they fly it in; the shape is noted. */
    static Saying saying() {
        return SHAPE;
    }

    /** Whether these words are nothing but the shape that a figure is flown in, which it then is. */
    public static boolean isShape(Draft figure, List<Word> words) {
        Matcher found =
                SHAPE.pattern().matcher(words.stream().map(Word::plain).collect(Collectors.joining(" ", " ", " ")));
        String shape = words.stream().map(Word::plain).collect(Collectors.joining(" "));
        if ((ALONE.contains(shape) || (figure.means("low pass") && shape.equals("diamond"))) && flyTogether(figure)) {
            figure.note(shape);
            return true;
        }
        return found.find() && found.start() == 1 && found.end() >= found.regionEnd() - 1 && fly(figure, found);
    }

    /** Whether a word is the shape that several fly in. */
    public static boolean isShape(String word) {
        return SHAPES.contains(word);
    }

    /** Makes the figure that several fly of one that is flown alone; false if there is none. */
    public static boolean flyTogether(Draft figure) {
        Names.Sense alone = figure.sense();
        String together = alone == null ? null : TOGETHER.get(alone.figure());
        if (together == null) {
            return false;
        }
        figure.mean(Names.Sense.of(together));
        return true;
    }

    private static boolean fly(Draft figure, Matcher shape) {
        boolean isOutline = shape.group().equals("diamond") && figure.means("loop");
        if (isOutline || !flyTogether(figure)) {
            return false;
        }
        figure.note(shape.group());
        return true;
    }
}
