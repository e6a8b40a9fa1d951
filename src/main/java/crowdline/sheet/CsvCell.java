package crowdline.sheet;

import java.text.Normalizer;

/** A text as a cell of comma-separated values (RFC 4180) that no spreadsheet runs as a formula. */
public final class CsvCell {
    private static final String STARTS_A_FORMULA = "=+-@";

    private CsvCell() {}

    /** In quotes, on one line; what a spreadsheet would run is kept from it by a quote mark before it. */
    public static String quoted(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints().forEach(c -> line.appendCodePoint(Character.isISOControl(c) || isLineEnd(c) ? ' ' : c));
        String tame = (isFormula(text) ? "'" : "") + line;
        return '"' + tame.replace("\"", "\"\"") + '"';
    }

    /**
     * Whether it begins as a formula does, behind whatever a spreadsheet may pass over: spaces, tabs, other control
     * characters and what has no width. Signs of full width count as the signs they are.
     */
    private static boolean isFormula(String text) {
        return text.codePoints()
                .filter(c -> !isPassedOver(c))
                .mapToObj(Character::toString)
                .findFirst()
                .map(first -> Normalizer.normalize(first, Normalizer.Form.NFKC))
                .filter(first -> STARTS_A_FORMULA.contains(first) || first.equals("\u2212"))
                .isPresent();
    }

    private static boolean isPassedOver(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SPACE_SEPARATOR,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.NON_SPACING_MARK,
                    Character.ENCLOSING_MARK,
                    Character.SURROGATE,
                    Character.UNASSIGNED -> true;
            default -> c == '\'' || c == '"';
        };
    }

    private static boolean isLineEnd(int c) {
        return c == '\u2028' || c == '\u2029';
    }
}
