package crowdline.speech.say;

import java.util.Objects;

/**
 * A remark as it was written and as it sounds.
 *
 * @param written the text as the author typed it
 * @param spoken the same text in words, with the punctuation that makes a speaker pause; see {@link Spoken}
 */
public record SpokenText(String written, String spoken) {

    public SpokenText {
        Objects.requireNonNull(written, "written");
        Objects.requireNonNull(spoken, "spoken");
    }

    /** Letters of the spoken text, 0 or more; a letter said by its own name counts three. */
    public int letters() {
        return (int) Math.round(sum((word, letters) -> letters, SoundedLetters.NAMED_LETTER));
    }

    /** The letters weighed by how long they sound, 0 or more; about as many as {@link #letters()}. */
    public double soundedLetters() {
        return sum(SoundedLetters::ofWord, SoundedLetters.named());
    }

    /** What a word of {@code letters} letters counts. */
    private interface Weight {
        double of(String word, int letters);
    }

    private double sum(Weight weight, double named) {
        double sum = 0;
        int at = 0;
        boolean afterNamed = false;
        while (at < spoken.length()) {
            int end = at;
            int inWord = 0;
            while (end < spoken.length() && isInWord(spoken.codePointAt(end))) {
                int c = spoken.codePointAt(end);
                inWord += Character.isLetter(c) ? 1 : 0;
                end += Character.charCount(c);
            }
            if (end == at) {
                at += Character.charCount(spoken.codePointAt(at));
                continue;
            }
            boolean isNamed = inWord == 1 && isNamed(spoken.codePointAt(at), afterNamed);
            sum += isNamed ? named : weight.of(spoken.substring(at, end), inWord);
            afterNamed = isNamed;
            at = end;
        }
        return sum;
    }

    /** Pauses within a sentence, 0 or more: commas, semicolons, colons, dashes, opening brackets, trailing dots. */
    public int commas() {
        int commas = 0;
        int last = lastLetter();
        for (int i = 0; i < last; i++) {
            switch (spoken.charAt(i)) {
                case ',', ';', ':', '–', '—', '(' -> commas++;
                case '…' -> commas += goesOnInLowerCase(i + 1) ? 1 : 0;
                case '.' -> {
                    int end = endOfStop(i);
                    commas += isDots(i, end) && goesOnInLowerCase(end) ? 1 : 0;
                    i = end - 1;
                }
                default -> {}
            }
        }
        return commas;
    }

    /** Ends of sentences with more to say after them, 0 or more. */
    public int innerStops() {
        int stops = 0;
        int last = lastLetter();
        for (int i = 0; i < last; i++) {
            if (!isStop(spoken.charAt(i))) {
                continue;
            }
            int end = endOfStop(i);
            boolean trailingDots = (spoken.charAt(i) == '…' || isDots(i, end)) && goesOnInLowerCase(end);
            boolean endsWord = end >= spoken.length() || !Character.isLetterOrDigit(spoken.charAt(end));
            stops += end <= last && endsWord && !trailingDots ? 1 : 0;
            i = end - 1;
        }
        return stops;
    }

    private static boolean isInWord(int c) {
        return Character.isLetterOrDigit(c) || Character.getType(c) == Character.NON_SPACING_MARK || c == '\'';
    }

    /** "I", "a" and "O" are words of their own, but an "A" after another named letter is part of an initialism. */
    private static boolean isNamed(int letter, boolean afterNamed) {
        return switch (letter) {
            case 'a', 'o', 'O' -> false;
            case 'A', 'I' -> afterNamed;
            default -> true;
        };
    }

    private int lastLetter() {
        int i = spoken.length() - 1;
        while (i >= 0 && !Character.isLetter(spoken.charAt(i)) && !Character.isSurrogate(spoken.charAt(i))) {
            i--;
        }
        return i;
    }

    private static boolean isStop(char c) {
        return c == '.' || c == '!' || c == '?' || c == '…';
    }

    private int endOfStop(int from) {
        int end = from;
        while (end < spoken.length() && isStop(spoken.charAt(end))) {
            end++;
        }
        return end;
    }

    private boolean isDots(int from, int to) {
        return to - from >= 2 && spoken.charAt(from) == '.' && spoken.charAt(to - 1) == '.';
    }

    private boolean goesOnInLowerCase(int from) {
        int i = from;
        while (i < spoken.length() && spoken.charAt(i) == ' ') {
            i++;
        }
        return i < spoken.length() && Character.isLowerCase(spoken.charAt(i));
    }
}
