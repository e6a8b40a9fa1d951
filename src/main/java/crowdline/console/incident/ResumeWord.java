package crowdline.console.incident;

/**
 * The word that leaves the incident page. It is typed letter by letter: no single key, pedal or remote can do it, and
 * neither can an elbow. A wrong letter begins again.
 */
public final class ResumeWord {
    public static final String WORD = "RESUME";

    private int right;

    /** How many letters have been typed rightly. */
    public int right() {
        return right;
    }

    /**
     * Takes a typed letter, in either case.
     *
     * @return true if the word is complete; it then begins again
     */
    public boolean type(char letter) {
        char upper = Character.toUpperCase(letter);
        if (upper == WORD.charAt(right)) {
            right++;
        } else {
            right = upper == WORD.charAt(0) ? 1 : 0;
        }
        if (right == WORD.length()) {
            right = 0;
            return true;
        }
        return false;
    }

    public void clear() {
        right = 0;
    }
}
