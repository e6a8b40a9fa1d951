package crowdline.sheet.page;

import crowdline.sheet.ink.Lettering;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A text cut into lines no wider than there is room. */
public final class Lines {
    /** Has no width; a line that begins with a name in other letters goes the way of its paragraph behind it. */
    private static final String RIGHT_TO_LEFT = "\u200f";

    private Lines() {}

    /**
     * The lines of a text, in its own words and order. A word wider than a line is cut between letters.
     *
     * @param widthPt what a line may be wide
     */
    public static List<String> of(String text, Style style, double widthPt) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\\R", -1)) {
            List<String> own = new ArrayList<>();
            wrap(paragraph.strip(), style, widthPt, own);
            boolean fromRight = Lettering.isRightToLeft(paragraph);
            own.forEach(line -> lines.add(fromRight && !Lettering.isRightToLeft(line) ? RIGHT_TO_LEFT + line : line));
        }
        return lines;
    }

    private static void wrap(String paragraph, Style style, double widthPt, List<String> lines) {
        StringBuilder line = new StringBuilder();
        double space = wide(" ", style);
        double taken = 0;
        for (String word : paragraph.split("\\s+", -1)) {
            double wide = wide(word, style);
            if (!line.isEmpty() && taken + space + wide > widthPt) {
                lines.add(line.toString());
                line.setLength(0);
            }
            String rest = word;
            if (wide > widthPt) {
                rest = cut(word, style, widthPt, lines);
                wide = wide(rest, style);
            }
            taken = line.isEmpty() ? wide : taken + space + wide;
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
    }

    /** What is left of a word for the last line, after the lines it fills alone. */
    private static String cut(String word, Style style, double widthPt, List<String> lines) {
        BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
        letters.setText(word);
        int start = 0;
        int end = letters.next();
        for (int next = letters.next(); next != BreakIterator.DONE; next = letters.next()) {
            if (wide(word.substring(start, next), style) > widthPt) {
                lines.add(word.substring(start, end));
                start = end;
            }
            end = next;
        }
        return word.substring(start);
    }

    private static double wide(String text, Style style) {
        return Lettering.widthPx(text, style.sizePt(), style.strong());
    }
}
