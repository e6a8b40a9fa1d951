package crowdline.speech.plain;

import crowdline.speech.say.Initialisms;
import crowdline.speech.say.RomanNumeral;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds abbreviations that few listeners know. */
final class Abbreviations {

    /** Everybody knows these, or hears them explained by the display itself. Common practice, no source. */
    private static final Set<String> KNOWN_ABBREVIATIONS = Set.of(
            "RAF", "UK", "US", "USA", "EU", "BBC", "TV", "VIP", "DJ", "OK", "MP", "UN", "NATO", "NASA", "GPS", "CD",
            "PM", "AM", "ID", "PC", "SOS", "DIY");

    private static final Pattern CAPITALS = Pattern.compile("(?<![\\p{L}\\p{N}-])[A-Z]{2,5}(?![\\p{L}\\p{N}-])");

    private Abbreviations() {}

    static void check(String text, TextSpan sentence, Set<String> known, List<SpeechFinding> findings) {
        boolean shouting = sentence.in(text).codePoints().noneMatch(Character::isLowerCase);
        Matcher matcher = CAPITALS.matcher(text).region(sentence.fromChar(), sentence.toChar());
        while (!shouting && matcher.find()) {
            String word = matcher.group();
            boolean mark = RomanNumeral.value(word) > 0;
            if (mark
                    || KNOWN_ABBREVIATIONS.contains(word)
                    || known.contains(PlainLanguage.lower(word))
                    || isShouted(word)) {
                continue;
            }
            findings.add(new SpeechFinding(
                    PlainLanguage.ABBREVIATION,
                    "\"" + word + "\" is an abbreviation that many will not know. Say it in full.",
                    matcher.start(),
                    matcher.end(),
                    null));
        }
    }

    private static boolean isShouted(String word) {
        return !Initialisms.isSpelled(word, false);
    }
}
