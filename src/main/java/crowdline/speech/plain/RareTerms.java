package crowdline.speech.plain;

import crowdline.speech.say.SpokenUnits;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds words that are not among the common ones. */
final class RareTerms {

    /** Shorter ones are abbreviations and slips. Tuned. */
    private static final int SHORTEST_RARE = 4;

    /** What stands on the poster of every air display is known to those who came; of judgement, no source. */
    private static final Set<String> ON_THE_POSTER =
            Set.of("aerobatic", "aerobatics", "airshow", "airshows", "flypast", "flypasts");

    private static final Pattern WORD = Pattern.compile("\\p{L}+(?:['’]\\p{L}+)*['’]?");

    private final CommonVocabulary common = new CommonVocabulary();
    private final Sentences sentences = new Sentences();

    /** Adds the rare words of a remark, in lower case. */
    void said(String remark, Set<String> words) {
        Matcher word = WORD.matcher(remark);
        while (word.find()) {
            if (!common.has(word.group())) {
                words.add(PlainLanguage.lower(word.group()));
            }
        }
    }

    /**
     * Finds the rare words of a sentence.
     *
     * @param known words that need no explanation
     * @param reported words found before; what is found here is added
     * @param trade words that are judged as such
     */
    void check(
            String text,
            TextSpan sentence,
            Set<String> known,
            Set<String> reported,
            UnexplainedTerms trade,
            List<SpeechFinding> findings) {
        for (TextSpan span : sentences.wordsIn(sentence.in(text))) {
            int from = sentence.fromChar() + span.fromChar();
            Matcher part = WORD.matcher(span.in(sentence.in(text)));
            while (part.find()) {
                String word = part.group();
                boolean name = Character.isUpperCase(word.charAt(0));
                boolean stillTyped = from + part.end() == text.length();
                if (name
                        || stillTyped
                        || word.length() < SHORTEST_RARE
                        || SpokenUnits.isUnit(word)
                        || common.has(word)
                        || ON_THE_POSTER.contains(PlainLanguage.lower(word))
                        || trade.has(word)
                        || isPartOf(word, known)
                        || !reported.add(PlainLanguage.lower(word))) {
                    continue;
                }
                findings.add(new SpeechFinding(
                        PlainLanguage.RARE_WORD,
                        "\"" + word + "\" is a word that many will not know. Is there a shorter one?",
                        from + part.start(),
                        from + part.end(),
                        null));
            }
        }
    }

    private static boolean isPartOf(String word, Set<String> phrases) {
        String lower = PlainLanguage.lower(word);
        return phrases.stream().anyMatch(phrase -> phrase.contains(lower));
    }
}
