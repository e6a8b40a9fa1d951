package crowdline.speech.pace;

/** What can be counted in a text of any language: letters, figures, and where a reader pauses. */
final class ForeignText {
    private static final String PAUSES = ",;:\u2013\u2014(\u3001\uff0c\uff1b\uff1a\u060c\u061b";
    private static final String STOPS = ".!?\u2026\u3002\uff01\uff1f\uff0e\u061f\u06d4\u0964";

    private ForeignText() {}

    static int letters(String text) {
        return (int) text.codePoints().filter(Character::isLetter).count();
    }

    static int digits(String text) {
        return (int) text.codePoints().filter(Character::isDigit).count();
    }

    /** Pauses within sentences, with words after them. */
    static int commas(String text) {
        return signs(text, PAUSES);
    }

    /** Ends of sentences with more to say after them. */
    static int innerStops(String text) {
        return signs(text, STOPS);
    }

    /** Signs that stand between words, several together once; one between two figures belongs to a number. */
    private static int signs(String text, String signs) {
        int count = 0;
        boolean said = false;
        boolean open = false;
        int[] points = text.codePoints().toArray();
        for (int i = 0; i < points.length; i++) {
            if (Character.isLetterOrDigit(points[i])) {
                count += said && open ? 1 : 0;
                said = true;
                open = false;
            } else if (signs.indexOf(points[i]) >= 0 && !isInNumber(points, i)) {
                open = true;
            }
        }
        return count;
    }

    private static boolean isInNumber(int[] points, int at) {
        return at > 0
                && at + 1 < points.length
                && Character.isDigit(points[at - 1])
                && Character.isDigit(points[at + 1]);
    }
}
