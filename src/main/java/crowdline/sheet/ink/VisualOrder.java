package crowdline.sheet.ink;

import java.text.Bidi;
import java.text.Normalizer;

/** One line of text in the order its letters stand from the left, Arabic ones in the shapes they take there. */
final class VisualOrder {
    private VisualOrder() {}

    static String of(String line) {
        String plain = plain(line);
        char[] letters = plain.toCharArray();
        if (!Bidi.requiresBidi(letters, 0, letters.length)) {
            return plain;
        }
        Bidi bidi = new Bidi(plain, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int runs = bidi.getRunCount();
        byte[] levels = new byte[runs];
        Integer[] order = new Integer[runs];
        for (int i = 0; i < runs; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            order[i] = i;
        }
        Bidi.reorderVisually(levels, 0, order, 0, runs);
        StringBuilder seen = new StringBuilder();
        for (int i : order) {
            String run = plain.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            seen.append(bidi.getRunLevel(i) % 2 == 0 ? run : turned(ArabicForms.shaped(run)));
        }
        return seen.toString();
    }

    /** Composed, on one line, without what has no width and no meaning once the letters are in order. */
    private static String plain(String line) {
        StringBuilder plain = new StringBuilder();
        Normalizer.normalize(line, Normalizer.Form.NFC).codePoints().forEach(c -> {
            switch (Character.getType(c)) {
                case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> plain.append(' ');
                case Character.SPACE_SEPARATOR -> plain.append(c == 0xA0 ? '\u00A0' : ' ');
                case Character.SURROGATE -> plain.append('\uFFFD');
                default -> plain.appendCodePoint(c);
            }
        });
        return plain.toString();
    }

    /** From the right, each mark still behind its letter, brackets the other way. */
    private static String turned(String run) {
        StringBuilder turned = new StringBuilder();
        int end = run.length();
        while (end > 0) {
            int start = run.offsetByCodePoints(end, -1);
            while (start > 0 && Character.getType(run.codePointAt(start)) == Character.NON_SPACING_MARK) {
                start = run.offsetByCodePoints(start, -1);
            }
            run.substring(start, end).codePoints().map(VisualOrder::mirrored).forEach(turned::appendCodePoint);
            end = start;
        }
        return turned.toString();
    }

    private static int mirrored(int c) {
        return switch (c) {
            case '(' -> ')';
            case ')' -> '(';
            case '[' -> ']';
            case ']' -> '[';
            case '{' -> '}';
            case '}' -> '{';
            case '<' -> '>';
            case '>' -> '<';
            case '«' -> '»';
            case '»' -> '«';
            default -> c;
        };
    }
}
