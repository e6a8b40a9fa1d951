package crowdline.list.word;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cells of a table that say along which axis a figure is flown: "A -> right", "B away". The letters are no figures. */
final class Axes {
    private static final Pattern CELL = Pattern.compile("(?m)(?<=^|[|\\t;]) {0,9}(?<cell>[ab](?: axis)?"
            + "(?: ?(?:<?-{1,2}>?|[→←])? ?(?<way>left|right)| (?:away|in|out|towards?)| (?=(?:left|right) end))?)"
            + "(?= {0,9}[|\\t;]|(?<= )(?:left|right) end)");

    /** "SL to SR": to the left and right of a show as of a stage. */
    private static final Pattern STAGE =
            Pattern.compile("\\bs(?=l to sr\\b|r to sl\\b|[lr] (?:end|side)\\b)|(?<=\\bsl to |\\bsr to )s(?=[lr]\\b)");

    /** Fewer may be the letters of figures. */
    private static final int LEAST = 4;

    private Axes() {}

    /** The text, as long as it was, with what such cells say of the way only, if it has several. */
    static String mended(String written) {
        String folded = STAGE.matcher(written).replaceAll(" ");
        Matcher found = CELL.matcher(folded);
        long cells = found.results().count();
        boolean areAxes = cells >= LEAST
                && found.reset().results().map(cell -> cell.group(1)).distinct().count() > 1
                && found.reset().results().anyMatch(cell -> cell.group(2) != null);
        if (!areAxes) {
            return folded;
        }
        StringBuilder text = new StringBuilder(folded);
        found.reset();
        while (found.find()) {
            String way = found.group("way");
            for (int i = found.start("cell"); i < found.end("cell"); i++) {
                text.setCharAt(i, ' ');
            }
            if (way != null) {
                text.setCharAt(found.start("cell"), way.equals("right") ? Arrows.RIGHT : Arrows.LEFT);
            }
        }
        return text.toString();
    }
}
