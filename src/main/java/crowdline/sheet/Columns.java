package crowdline.sheet;

import java.util.ArrayList;
import java.util.List;

/** Text for terminals and mails, no wider than fits them. */
public final class Columns {
    /** How many letters a line has at most, but for a single word that is longer. */
    public static final int MOST = 100;

    private Columns() {}

    /**
     * A text in lines of so many letters at most. A word longer than that is left whole, so that it can be copied.
     *
     * @param most above 0
     */
    public static List<String> wrapped(String text, int most) {
        return wrapped(text, most, most);
    }

    private static List<String> wrapped(String text, int first, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            int room = lines.isEmpty() ? first : most;
            if (!line.isEmpty() && letters(line) + 1 + letters(word) > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** A head that stays as it is, with a text behind it that goes on under its own beginning. */
    public static List<String> hanging(String head, String text) {
        return hanging(head, letters(head), text);
    }

    /** The same, going on so far in. */
    public static List<String> hanging(String head, int indent, String text) {
        List<String> lines = new ArrayList<>();
        for (String part : wrapped(text, MOST - letters(head), MOST - indent)) {
            lines.add((lines.isEmpty() ? head : " ".repeat(indent)) + part);
        }
        return lines;
    }

    private static int letters(CharSequence text) {
        return Character.codePointCount(text, 0, text.length());
    }
}
