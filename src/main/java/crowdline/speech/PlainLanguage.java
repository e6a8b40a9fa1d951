package crowdline.speech;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    /** A word that is not among the common ones; see {@link CommonWords}. */
    public static final String RARE_WORD = "rare-word";

    /** A sentence of too many ideas; see {@link Ideas}. */
    public static final String MANY_IDEAS = "many-ideas";

    /** "25 words is our limit", Government Digital Service, Inside GOV.UK, 4 August 2014. */
    public static final int LONGEST_SENTENCE_WORDS = 25;

    /** Everybody knows these, or hears them explained by the display itself. Common practice, no source. */
    private static final Set<String> KNOWN_ABBREVIATIONS = Set.of(
            "RAF", "UK", "US", "USA", "EU", "BBC", "TV", "VIP", "DJ", "OK", "MP", "UN", "NATO", "NASA", "GPS", "CD",
            "PM", "AM", "ID", "PC", "SOS", "DIY");

    /** Right behind the word: "the rudder, the upright flap on the tail". */
    private static final Pattern SAID_AGAIN = Pattern.compile(", (?:the|a|an|or|its|their|where|when)\\b");

    private static final Pattern CAPITALS = Pattern.compile("(?<![\\p{L}\\p{N}-])[A-Z]{2,5}(?![\\p{L}\\p{N}-])");

    /** Shorter ones are abbreviations and slips. Tuned. */
    private static final int SHORTEST_RARE = 4;

    private static final Pattern WORD = Pattern.compile("\\p{L}+(?:['’]\\p{L}+)*['’]?");

    private static final Pattern NAMES = Pattern.compile(
            "\\b(?:called|known as|we call|calls? (?:it|this|that)|name (?:is|for)|that is|or)\\b[^.!?]{0,30}$",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern EXPLAINS = Pattern.compile(
            "\\b(?:that is|that's|that means|which means|means|which is|that is to say|in other words|we call|called"
                    + "|known as|is when|is where|is how|is a|is an|is the|are the|it's|simply|just like|imagine)\\b"
                    + "|[:–—(]| - ",
            Pattern.CASE_INSENSITIVE);

    private final Map<String, String> tradeWords;
    private final Pattern tradePattern;
    private final Sentences sentences = new Sentences();
    private final CommonWords common = new CommonWords();

    /** Checks with {@link TradeWords#PLAIN}. */
    public PlainLanguage() {
        this(TradeWords.PLAIN);
    }

    /**
     * Checks with these trade words.
     *
     * @param tradeWords from trade word to a plain way of saying it; case does not matter
     */
    public PlainLanguage(Map<String, String> tradeWords) {
        this.tradeWords = tradeWords.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(e -> lower(e.getKey()), Map.Entry::getValue, (a, b) -> b));
        String words = this.tradeWords.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        tradePattern = Pattern.compile(
                words.isEmpty() ? "(?!)" : "(?<![\\p{L}\\p{N}-])(" + words + ")(?:s|'s|’s)?(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /**
     * What to look at in one remark.
     *
     * @param explained words that the glossary or an earlier remark explains; case does not matter
     * @return the findings in the order of the text
     */
    public List<SpeechFinding> check(String text, Set<String> explained) {
        Set<String> known = explained.stream().map(PlainLanguage::lower).collect(Collectors.toCollection(HashSet::new));
        return check(text, known, new HashSet<>());
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
        return check(text, known);
    }

    /** The trade words and rare words of a remark, in lower case: once said, they are found no more. */
    public Set<String> said(String remark) {
        Set<String> words = new HashSet<>();
        Matcher trade = tradePattern.matcher(remark);
        while (trade.find()) {
            words.add(lower(trade.group(1)));
        }
        Matcher word = WORD.matcher(remark);
        while (word.find()) {
            if (!common.has(word.group())) {
                words.add(lower(word.group()));
            }
        }
        return words;
    }

    /**
     * What to look at in the remarks of one act, in the order they are said. A trade word is found at most once, at its
     * first use; if the remark explains it there, later remarks may use it.
     *
     * @return one list of findings for each remark
     */
    public List<List<SpeechFinding>> checkAct(List<String> remarks, Set<String> explained) {
        Set<String> known = explained.stream().map(PlainLanguage::lower).collect(Collectors.toCollection(HashSet::new));
        Set<String> reported = new HashSet<>();
        List<List<SpeechFinding>> all = new ArrayList<>();
        for (String remark : remarks) {
            all.add(check(remark, known, reported));
        }
        return List.copyOf(all);
    }

    private List<SpeechFinding> check(String text, Set<String> known, Set<String> reported) {
        Objects.requireNonNull(text, "text");
        List<SpeechFinding> findings = new ArrayList<>();
        List<TextSpan> spans = sentences.in(text);
        for (int i = 0; i < spans.size(); i++) {
            TextSpan here = spans.get(i);
            int withNext = i + 1 < spans.size() ? spans.get(i + 1).toChar() : here.toChar();
            TextSpan context = new TextSpan(here.fromChar(), withNext);
            longSentence(text, here, findings);
            tradeWords(text, here, context, known, reported, findings);
            abbreviations(text, here, known, findings);
            NumberPictures.check(text, here, context, findings);
            rareWords(text, here, known, reported, findings);
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

    private void tradeWords(
            String text,
            TextSpan sentence,
            TextSpan context,
            Set<String> known,
            Set<String> reported,
            List<SpeechFinding> findings) {
        Matcher matcher = tradePattern.matcher(text).region(sentence.fromChar(), sentence.toChar());
        while (matcher.find()) {
            String word = lower(matcher.group(1));
            if (known.contains(word) || isPartOfKnown(text, matcher, known) || !reported.add(word)) {
                continue;
            }
            if (isExplained(text, context, matcher)) {
                known.add(word);
                continue;
            }
            findings.add(new SpeechFinding(
                    TRADE_WORD,
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
        String word = lower(found.group(1));
        for (String phrase : known) {
            int inside = phrase.length() > word.length() ? phrase.indexOf(word) : -1;
            if (inside >= 0 && text.regionMatches(true, found.start() - inside, phrase, 0, phrase.length())) {
                return true;
            }
        }
        return false;
    }

    private static void abbreviations(String text, TextSpan sentence, Set<String> known, List<SpeechFinding> findings) {
        boolean shouting = sentence.in(text).codePoints().noneMatch(Character::isLowerCase);
        Matcher matcher = CAPITALS.matcher(text).region(sentence.fromChar(), sentence.toChar());
        while (!shouting && matcher.find()) {
            String word = matcher.group();
            boolean mark = RomanNumeral.value(word) > 0;
            if (mark || KNOWN_ABBREVIATIONS.contains(word) || known.contains(lower(word)) || isShouted(word)) {
                continue;
            }
            findings.add(new SpeechFinding(
                    ABBREVIATION,
                    "\"" + word + "\" is an abbreviation that many will not know. Say it in full.",
                    matcher.start(),
                    matcher.end(),
                    null));
        }
    }

    private static boolean isShouted(String word) {
        return !Initialisms.isSpelled(word, false);
    }

    private void rareWords(
            String text, TextSpan sentence, Set<String> known, Set<String> reported, List<SpeechFinding> findings) {
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
                        || Units.isUnit(word)
                        || common.has(word)
                        || isTrade(word)
                        || isPartOf(word, known)
                        || !reported.add(lower(word))) {
                    continue;
                }
                findings.add(new SpeechFinding(
                        RARE_WORD,
                        "\"" + word + "\" is a word that many will not know. Is there a shorter one?",
                        from + part.start(),
                        from + part.end(),
                        null));
            }
        }
    }

    private boolean isTrade(String word) {
        return tradePattern.matcher(word).matches();
    }

    private static boolean isPartOf(String word, Set<String> phrases) {
        String lower = lower(word);
        return phrases.stream().anyMatch(phrase -> phrase.contains(lower));
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

    private static String lower(String word) {
        return word.toLowerCase(Locale.UK);
    }
}
