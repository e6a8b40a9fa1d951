package crowdline.speech.say;

import java.util.Locale;
import java.util.Set;

/**
 * Letters weighed by how long they sound. Two letters that write one sound ("th", "ck", "tt") count one and a quarter,
 * and a word that carries the sense counts one letter more than one that only joins ("the", "of", "with"), because it is
 * stressed and drawn out. Scaled so that commentary has as many weighed letters as letters, and a pace learnt for letters
 * stays right.
 */
final class SoundedLetters {

    /**
     * What a letter said by its name ("R A F") counts for. Measured: an initialism of three letters said letter by
     * letter took 0.54 s at 0.069 s a letter, so 2.6 letters each; three is the usual length of a letter's name (bee,
     * eff, tee).
     */
    static final int NAMED_LETTER = 3;

    /**
     * Tuned on espeak-ng: fitted freely, a pair took 0.65 to 0.9 of a letter off with each of five voices of two
     * synthesisers, which share no code.
     */
    private static final double OFF_FOR_A_PAIR = 0.75;

    /** Tuned on espeak-ng, where a free fit asks for 1 to 2; three other voices ask for a half to one and a half. */
    private static final double ON_FOR_A_STRESS = 1;

    /** Weighed letters for each letter of three texts (two shows' remarks, the catalogue's sentences): 1.089 to 1.093. */
    private static final double SCALE = 1.09;

    private static final String PAIRS = "th sh ch ph wh ck gh bb cc dd ff gg kk ll mm nn pp rr ss tt zz ";

    /** Articles, pronouns, prepositions, conjunctions and auxiliaries: the closed classes of English, from memory. */
    private static final Set<String> JOINING = Set.of(
            "a", "an", "the", "of", "to", "in", "on", "at", "for", "from", "with", "by", "as", "and", "or", "but",
            "nor", "than", "that", "if", "so", "his", "her", "him", "he", "she", "it", "its", "they", "them", "their",
            "you", "your", "we", "us", "our", "i", "me", "my", "is", "are", "was", "were", "be", "been", "am", "has",
            "have", "had", "do", "does", "can", "could", "will", "would", "shall", "should", "must", "may", "might",
            "this", "there", "into", "up");

    private SoundedLetters() {}

    /**
     * The weight of one word.
     *
     * @param word letters and apostrophes, not empty
     * @param letters how many letters it has, 0 or more
     */
    static double ofWord(String word, int letters) {
        if (letters == 0) {
            return 0;
        }
        String lower = word.toLowerCase(Locale.ROOT);
        double stress = JOINING.contains(lower) ? 0 : ON_FOR_A_STRESS;
        return (letters - OFF_FOR_A_PAIR * pairs(lower) + stress) / SCALE;
    }

    /** The weight of one letter said by its name. */
    static double named() {
        return NAMED_LETTER / SCALE;
    }

    private static int pairs(String lower) {
        int pairs = 0;
        for (int i = 0; i + 1 < lower.length(); i++) {
            if (PAIRS.contains(lower.substring(i, i + 2) + " ")) {
                pairs++;
                i++;
            }
        }
        return pairs;
    }
}
