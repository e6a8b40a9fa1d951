package crowdline.speech.plain;

import crowdline.speech.say.SpokenText;

/**
 * Reading ease of a block of text. Scores of a single remark mean nothing (the grade can even be negative), so ask
 * {@link #isMeaningful()} before showing one.
 *
 * @param sentences 1 or more
 * @param words 1 or more
 * @param syllables as many as words or more
 */
public record Readability(int sentences, int words, int syllables) {

    /** Flesch counted samples of 100 words (from memory). */
    private static final int WORDS_FOR_A_SCORE = 100;

    public Readability {
        if (sentences < 1 || words < 1 || syllables < words) {
            throw new IllegalArgumentException(
                    "readability needs at least 1 sentence and 1 word, and a syllable for each" + " word, but got "
                            + sentences + " sentences, " + words + " words, " + syllables + " syllables");
        }
    }

    /**
     * Counts a text as it is spoken, numbers in words.
     *
     * @throws IllegalArgumentException if the text has no words
     */
    public static Readability of(SpokenText text, Sentences finder) {
        String spoken = text.spoken();
        int syllables = 0;
        int words = 0;
        for (TextSpan word : finder.wordsIn(spoken)) {
            words++;
            syllables += Math.max(1, Syllables.count(word.in(spoken)));
        }
        if (words == 0) {
            throw new IllegalArgumentException("a text without words has no readability; give it some");
        }
        return new Readability(Math.max(1, finder.in(spoken).size()), words, syllables);
    }

    /** Flesch 1948: 206.835 - 1.015 words per sentence - 84.6 syllables per word. Higher is easier; 121.22 at most. */
    public double readingEase() {
        return 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }

    /** Kincaid and others 1975: 0.39 words per sentence + 11.8 syllables per word - 15.59, a US school grade. */
    public double gradeLevel() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /** Whether the text is long enough, 100 words, for the scores to say something. */
    public boolean isMeaningful() {
        return words >= WORDS_FOR_A_SCORE;
    }

    /** The usual name for the reading ease. */
    public String band() {
        double ease = readingEase();
        if (ease >= 90) {
            return "very easy";
        } else if (ease >= 80) {
            return "easy, as in conversation";
        } else if (ease >= 70) {
            return "fairly easy";
        } else if (ease >= 60) {
            return "plain English";
        } else if (ease >= 50) {
            return "fairly difficult";
        } else if (ease >= 30) {
            return "difficult";
        }
        return "very difficult";
    }
}
