package crowdline.sheet.ink;

import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/** The type of pictures and pages, and how wide words are in it. */
public final class Lettering {
    /** Stands where a letter is in no font. */
    public static final String LACKING = "\u25A1";

    private Lettering() {}

    /**
     * Letters of one face beside each other, from the left.
     *
     * @param text in the order seen
     */
    public record Run(Face face, String text) {
        double widthPx(double sizePx) {
            return face.widthPx(text, sizePx);
        }
    }

    /** A line of text as its letters stand from the left. */
    public static List<Run> runs(String line, boolean strong) {
        if (!line.isEmpty() && line.chars().allMatch(c -> c >= ' ' && c < 0x7F)) {
            return List.of(new Run(Face.of(strong), line));
        }
        List<Run> runs = new ArrayList<>();
        StringBuilder letters = new StringBuilder();
        Face now = Face.of(strong);
        for (int c :
                VisualOrder.of(line).codePoints().filter(c -> !isNothing(c)).toArray()) {
            Face face = face(c, strong);
            if (face != now && !letters.isEmpty()) {
                runs.add(new Run(now, letters.toString()));
                letters.setLength(0);
            }
            now = face;
            letters.append(isLacking(c) ? LACKING : Character.toString(c));
        }
        if (!letters.isEmpty()) {
            runs.add(new Run(now, letters.toString()));
        }
        return runs;
    }

    private static Face face(int c, boolean strong) {
        Face first = Face.of(strong);
        return first.has(c) ? first : first.more();
    }

    /** Whether no face has a letter; a box stands in its place. */
    public static boolean isLacking(int c) {
        return !isNothing(c) && c >= ' ' && !Face.REGULAR.has(c) && !Face.MORE_REGULAR.has(c);
    }

    /** What has neither shape nor width: marks of direction, joiners, selectors. */
    private static boolean isNothing(int c) {
        return Character.getType(c) == Character.FORMAT || (c >= 0xFE00 && c <= 0xFE0F);
    }

    /** How wide a line of text is. */
    public static double widthPx(String line, double sizePx, boolean strong) {
        return runs(line, strong).stream().mapToDouble(r -> r.widthPx(sizePx)).sum();
    }

    /** As much of a text as is no wider than this, with a mark where something is missing. */
    public static String fitted(String text, double sizePx, boolean strong, double mostPx) {
        if (text.length() < 1000 && widthPx(text, sizePx, strong) <= mostPx) {
            return text;
        }
        int fits = 0;
        int over = text.codePointCount(0, text.length());
        while (over - fits > 1) {
            int middle = (fits + over) / 2;
            if (widthPx(cut(text, middle), sizePx, strong) <= mostPx) {
                fits = middle;
            } else {
                over = middle;
            }
        }
        return cut(text, fits);
    }

    private static String cut(String text, int letters) {
        return text.substring(0, text.offsetByCodePoints(0, letters)).stripTrailing() + "…";
    }

    /** Whether a text is written from right to left, by the first letter in it that has a direction. */
    public static boolean isRightToLeft(String text) {
        return !new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
    }
}
