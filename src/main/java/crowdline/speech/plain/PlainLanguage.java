package crowdline.speech.plain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds what listeners may not follow: long sentences, trade words nobody explained, unusual abbreviations, rare words,
 * numbers without a picture, more than one idea. It finds and never rewrites; a clean result is no certificate of plain language.
 *
 * <p>Whether something is explained is guessed from turns of phrase ("that is", "which means", "like a ..."), so a
 * finding can be wrong; the author decides.
 */
public final class PlainLanguage {

    /** A sentence of more than 25 words. */
    public static final String LONG_SENTENCE = "long-sentence";

    /** A trade word that is not explained at its first use. */
    public static final String TRADE_WORD = "trade-word";

    /** An abbreviation few listeners know. */
    public static final String ABBREVIATION = "abbreviation";

    /** A number that is compared with nothing. */
    public static final String NUMBER_WITHOUT_PICTURE = "number-without-picture";

    /** A word that is not among the common ones; see {@link CommonVocabulary}. */
    public static final String RARE_WORD = "rare-word";

    /** A sentence of too many ideas; see {@link Ideas}. */
    public static final String MANY_IDEAS = "many-ideas";

    /** "25 words is our limit", Government Digital Service, Inside GOV.UK, 4 August 2014. */
    public static final int LONGEST_SENTENCE_WORDS = 25;

    private final UnexplainedTerms trade;
    private final RareTerms rare = new RareTerms();
    private final Sentences sentences = new Sentences();

    /** Checks with {@link TradeTerms#PLAIN}. */
    public PlainLanguage() {
        this(TradeTerms.PLAIN);
    }

    /**
     * Checks with these trade words.
     *
     * @param tradeWords from trade word to a plain way of saying it; case does not matter
     */
    public PlainLanguage(Map<String, String> tradeWords) {
        trade = new UnexplainedTerms(tradeWords);
    }

    /**
     * What to look at in one remark.
     *
     * @param explained words that the glossary or an earlier remark explains; case does not matter
     * @return the findings in the order of the text
     */
    public List<SpeechFinding> check(String text, Set<String> explained) {
        return check(List.of(), text, explained);
    }

    /**
     * What to look at in one remark of an act: a trade word or a rare word is found only where it is said first.
     *
     * @param before the remarks of the act that are said before it
     * @param explained words that need no explanation here; case does not matter
     */
    public List<SpeechFinding> check(List<String> before, String text, Set<String> explained) {
        Set<String> known = new HashSet<>(explained);
        before.forEach(said -> known.addAll(said(said)));
        return found(text, known.stream().map(PlainLanguage::lower).collect(Collectors.toSet()));
    }

    /** The trade words and rare words of a remark, in lower case: once said, they are found no more. */
    public Set<String> said(String remark) {
        Set<String> words = new HashSet<>();
        trade.said(remark, words);
        rare.said(remark, words);
        return words;
    }

    private List<SpeechFinding> found(String text, Set<String> known) {
        Objects.requireNonNull(text, "text");
        Set<String> reported = new HashSet<>();
        List<SpeechFinding> findings = new ArrayList<>();
        List<TextSpan> spans = sentences.in(text);
        for (int i = 0; i < spans.size(); i++) {
            TextSpan here = spans.get(i);
            int withNext = i + 1 < spans.size() ? spans.get(i + 1).toChar() : here.toChar();
            TextSpan context = new TextSpan(here.fromChar(), withNext);
            longSentence(text, here, findings);
            trade.check(text, here, context, known, reported, findings);
            Abbreviations.check(text, here, known, findings);
            NumberPictures.check(text, here, context, findings);
            rare.check(text, here, known, reported, trade, findings);
            manyIdeas(text, here, findings);
        }
        findings.sort(Comparator.comparingInt(SpeechFinding::fromChar));
        return List.copyOf(findings);
    }

    private void longSentence(String text, TextSpan sentence, List<SpeechFinding> findings) {
        int words = sentences.wordsIn(sentence.in(text)).size();
        if (words > LONGEST_SENTENCE_WORDS) {
            findings.add(new SpeechFinding(
                    LONG_SENTENCE,
                    "This sentence has " + words + " words; over " + LONGEST_SENTENCE_WORDS
                            + " a listener loses the start. Make it two.",
                    sentence.fromChar(),
                    sentence.toChar(),
                    null));
        }
    }

    private static void manyIdeas(String text, TextSpan sentence, List<SpeechFinding> findings) {
        int ideas = Ideas.in(sentence.in(text));
        if (ideas > Ideas.MOST) {
            findings.add(new SpeechFinding(
                    MANY_IDEAS,
                    "This sentence has about " + ideas
                            + " ideas; a listener keeps one at a time. Make it two or three.",
                    sentence.fromChar(),
                    sentence.toChar(),
                    null));
        }
    }

    static String lower(String word) {
        return word.toLowerCase(Locale.UK);
    }
}
