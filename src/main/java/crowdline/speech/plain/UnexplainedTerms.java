package crowdline.speech.plain;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds trade words that nothing explains where they are said first. */
final class UnexplainedTerms {

    /** Right behind the word: "the rudder, the upright flap on the tail". */
    private static final Pattern SAID_AGAIN = Pattern.compile(", (?:the|a|an|or|its|their|where|when)\\b");

    private static final Pattern NAMES = Pattern.compile(
            "\\b(?:called|known as|we call|calls? (?:it|this|that)|name (?:is|for)|that is|or)\\b[^.!?]{0,30}$",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern EXPLAINS = Pattern.compile(
            "\\b(?:that is|that's|that means|which means|means|which is|that is to say|in other words|we call|called"
                    + "|known as|is when|is where|is how|is a|is an|is the|are the|it's|simply|just like|imagine)\\b"
                    + "|[:–—(]| - ",
            Pattern.CASE_INSENSITIVE);

    /** Where a ball is played, a pitch lifts no nose. */
    private static final String NOT_OF_A_PITCH = "(?<!\\b(?:football|cricket|hockey|rugby) )";

    private final Map<String, String> tradeWords;
    private final Pattern tradePattern;

    /** @param tradeWords from trade word to a plain way of saying it; case does not matter */
    UnexplainedTerms(Map<String, String> tradeWords) {
        this.tradeWords = tradeWords.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(
                        e -> PlainLanguage.lower(e.getKey()), Map.Entry::getValue, (a, b) -> b));
        String words = this.tradeWords.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        tradePattern = Pattern.compile(
                words.isEmpty()
                        ? "(?!)"
                        : NOT_OF_A_PITCH + "(?<![\\p{L}\\p{N}-])(" + words + ")(?:s|'s|’s)?(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Adds the trade words of a remark, in lower case. */
    void said(String remark, Set<String> words) {
        Matcher found = tradePattern.matcher(remark);
        while (found.find()) {
            words.add(PlainLanguage.lower(found.group(1)));
        }
    }

    /** Whether this is a trade word, be it explained or not. */
    boolean has(String word) {
        return tradePattern.matcher(word).matches();
    }

    /**
     * Finds the trade words of a sentence.
     *
     * @param context where the explanation may stand
     * @param known words that need no explanation; a word explained here is added
     * @param reported words found before; what is found here is added
     */
    void check(
            String text,
            TextSpan sentence,
            TextSpan context,
            Set<String> known,
            Set<String> reported,
            List<SpeechFinding> findings) {
        Matcher matcher = tradePattern.matcher(text).region(sentence.fromChar(), sentence.toChar());
        while (matcher.find()) {
            String word = PlainLanguage.lower(matcher.group(1));
            if (known.contains(word) || isPartOfKnown(text, matcher, known) || !reported.add(word)) {
                continue;
            }
            if (isExplained(text, context, matcher)) {
                known.add(word);
                continue;
            }
            findings.add(new SpeechFinding(
                    PlainLanguage.TRADE_WORD,
                    "\"" + matcher.group() + "\" is a trade word that nothing here explains. Explain it at its first"
                            + " use, or say it plainly.",
                    matcher.start(),
                    matcher.end(),
                    tradeWords.get(word)));
        }
    }

    /** What follows explains the word, or the word is the name for what came before. */
    private static boolean isExplained(String text, TextSpan context, Matcher word) {
        Matcher after = EXPLAINS.matcher(text).region(word.end(), context.toChar());
        Matcher before = NAMES.matcher(text).region(context.fromChar(), word.start());
        Matcher again = SAID_AGAIN.matcher(text).region(word.end(), text.length());
        return after.useTransparentBounds(true).find() || before.find() || again.lookingAt();
    }

    /** "stall turn" may be explained where "stall" is not; within it, "stall" needs no explanation. */
    private static boolean isPartOfKnown(String text, Matcher found, Set<String> known) {
        String word = PlainLanguage.lower(found.group(1));
        for (String phrase : known) {
            int inside = phrase.length() > word.length() ? phrase.indexOf(word) : -1;
            if (inside >= 0 && text.regionMatches(true, found.start() - inside, phrase, 0, phrase.length())) {
                return true;
            }
        }
        return false;
    }
}
