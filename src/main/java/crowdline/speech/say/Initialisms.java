package crowdline.speech.say;

import java.util.Set;

/** Which words in capitals are said letter by letter, and which are words that only shout. */
public final class Initialisms {

    private static final Set<String> SAID_AS_WORDS = Set.of(
            "NATO", "NASA", "UNESCO", "UNICEF", "STOL", "VTOL", "STOVL", "AWACS", "RADAR", "SONAR", "LASER", "LIDAR",
            "AWOL", "PIN", "SIM", "SAM", "ACE", "VAT", "ZULU", "SCUBA", "NIMBY");

    private static final Set<String> SHOUTED = Set.of(
            "A", "ALL", "AM", "AN", "AND", "ANY", "ARE", "AS", "AT", "AWAY", "BACK", "BAD", "BE", "BIG", "BOO", "BUT",
            "BY", "CAN", "COME", "DAY", "DIVE", "DO", "DOES", "DOWN", "END", "EVEN", "EVER", "EYES", "FAR", "FAST",
            "FEEL", "FEW", "FOR", "FOUR", "FULL", "FUN", "GO", "GOES", "GONE", "GOOD", "HALF", "HARD", "HAS", "HAVE",
            "HE", "HEAR", "HER", "HERE", "HIGH", "HIM", "HIS", "HOT", "HOW", "HUGE", "IF", "IN", "INTO", "IS", "IT",
            "ITS", "JUST", "LAST", "LEFT", "LET", "LIKE", "LIVE", "LOOK", "LOOP", "LOUD", "LOVE", "LOW", "MAN", "MANY",
            "MAY", "ME", "MORE", "MOST", "MUST", "MY", "NEAR", "NEW", "NEXT", "NO", "NONE", "NOT", "NOW", "OF", "OFF",
            "OH", "OLD", "ON", "ONCE", "ONE", "ONLY", "OR", "OUR", "OUT", "OVER", "PULL", "PUSH", "REAL", "ROLL",
            "SAFE", "SAME", "SAY", "SEE", "SHE", "SIX", "SLOW", "SO", "SOME", "SPIN", "STOP", "SUN", "TAKE", "TEN",
            "THAT", "THE", "THEM", "THEN", "THEY", "THIS", "TO", "TOO", "TOP", "TURN", "TWO", "UP", "US", "VERY",
            "WAIT", "WAS", "WAVE", "WAY", "WE", "WELL", "WHAT", "WHEN", "WHO", "WHY", "WILL", "WITH", "WOW", "YES",
            "YOU", "YOUR", "ZERO", "ZOOM", "WING", "TAIL", "NOSE", "FIVE", "NINE");

    private static final int LONGEST_PRONOUNCED = 4;

    private Initialisms() {}

    /**
     * Whether this word is spelled out. Without a vowel nothing else can be done with it; with one, up to four letters
     * are taken for an initialism unless known as a word.
     *
     * @param word two to six capitals
     * @param shouting whether the whole text is in capitals, so that capitals say nothing
     */
    public static boolean isSpelled(String word, boolean shouting) {
        boolean vowel = word.chars().anyMatch(c -> "AEIOUY".indexOf(c) >= 0);
        if (!vowel) {
            return !word.equals("MR") && !word.equals("MRS") && !word.equals("DR") && !word.equals("ST");
        }
        return !shouting
                && word.length() <= LONGEST_PRONOUNCED
                && !SAID_AS_WORDS.contains(word)
                && !SHOUTED.contains(word);
    }

    /** "R A F". */
    static String spelled(String letters) {
        StringBuilder said = new StringBuilder();
        letters.codePoints().filter(Character::isLetter).forEach(c -> {
            said.append(said.isEmpty() ? "" : " ").appendCodePoint(c);
        });
        return said.toString();
    }
}
