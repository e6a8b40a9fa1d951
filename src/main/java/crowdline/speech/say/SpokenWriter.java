package crowdline.speech.say;

/** Puts spoken words and pauses together, with single spaces. */
final class SpokenWriter {

    private final StringBuilder out = new StringBuilder();
    private boolean spaceDue;
    private boolean afterWords;

    /**
     * Words that a rule gave.
     *
     * @param hyphenFollows whether they are the first part of a compound such as "four-point"
     */
    void words(String said, boolean hyphenFollows) {
        if (!out.isEmpty() && isWordEnd(out.charAt(out.length() - 1))) {
            spaceDue = true;
        }
        append(said);
        afterWords = !hyphenFollows;
    }

    /** A character that no rule took. */
    void character(int c, int before, int after) {
        if (Character.isLetter(c)
                || Character.getType(c) == Character.NON_SPACING_MARK
                || Character.getType(c) == Character.COMBINING_SPACING_MARK) {
            if (afterWords) {
                spaceDue = true;
            }
            append(Character.toString(c));
            return;
        }
        switch (c) {
            case '\'' -> {
                if (isPart(before) && Character.isLetter(after)) {
                    append("'");
                }
            }
            case '-' -> hyphen(before, after);
            case '–', '—' -> pause(" " + (char) c + " ");
            case '.', ',', ';', ':', '!', '?', '…', ')' -> stop((char) c);
            case '(' -> pause(" (");
            default -> symbol(c);
        }
    }

    String text() {
        return out.toString().strip();
    }

    private void symbol(int c) {
        String said = switch (c) {
            case '&' -> "and";
            case '@' -> "at";
            case '+' -> "plus";
            case '=' -> "equals";
            case '%' -> "per cent";
            case '°' -> "degrees";
            case '×' -> "times";
            case '±' -> "plus or minus";
            case '²' -> "squared";
            case '³' -> "cubed";
            default -> "";
        };
        if (!said.isEmpty()) {
            words(said, false);
        }
        spaceDue = true;
    }

    private void hyphen(int before, int after) {
        if (before == ' ' && after == ' ') {
            pause(" – ");
        } else if (isPart(before) && Character.isLetter(after) && !spaceDue && !afterWords) {
            append("-");
        } else {
            spaceDue = true;
        }
    }

    private static boolean isPart(int c) {
        return Character.isLetter(c) || (c >= '0' && c <= '9');
    }

    private void stop(char c) {
        if (out.isEmpty()) {
            return;
        }
        spaceDue = false;
        append(Character.toString(c));
    }

    private void pause(String mark) {
        spaceDue = false;
        int last = out.length() - 1;
        if (last < 0) {
            return;
        }
        append(out.charAt(last) == ' ' ? mark.substring(1) : mark);
    }

    private void append(String text) {
        boolean space = spaceDue
                && !out.isEmpty()
                && out.charAt(out.length() - 1) != ' '
                && out.charAt(out.length() - 1) != '(';
        out.append(space ? " " : "").append(text);
        spaceDue = false;
        afterWords = false;
    }

    private static boolean isWordEnd(char c) {
        return Character.isLetterOrDigit(c);
    }
}
