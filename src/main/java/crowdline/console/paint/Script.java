package crowdline.console.paint;

import java.awt.Font;
import java.util.List;

/** Writing that the shipped type has no letters for, or that runs from right to left. */
public final class Script {
    /** The shipped type has all letters before this one: those of European languages in Latin script. */
    private static final char BEYOND = '\u0250';

    private Script() {}

    /** The type, or the system's own in its weight where the type lacks letters. */
    static Font type(Font type, List<String> words) {
        boolean lacks = words.stream()
                .anyMatch(text -> text.chars().anyMatch(c -> c >= BEYOND) && type.canDisplayUpTo(text) >= 0);
        return lacks ? new Font(Font.SANS_SERIF, type.getStyle(), 1).deriveFont(type.getSize2D()) : type;
    }

    /** Whether the first letter that has a direction runs from right to left. */
    public static boolean isRightToLeft(String text) {
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            switch (Character.getDirectionality(text.codePointAt(at))) {
                case Character.DIRECTIONALITY_LEFT_TO_RIGHT -> {
                    return false;
                }
                case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC -> {
                    return true;
                }
                default -> {}
            }
        }
        return false;
    }
}
