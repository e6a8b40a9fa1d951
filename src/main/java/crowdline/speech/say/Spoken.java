package crowdline.speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Turns what is written into what is said: "180 hp" into "one hundred and eighty horsepower", "1944" into "nineteen
 * forty-four", "RAF" into "R A F". British English.
 *
 * <p>Any text is accepted: mark-up is not read as such, emoji and control characters are silent, letters of other
 * scripts pass as they are. Slow to make, quick to use; safe to share between threads.
 */
public final class Spoken {

    /** From this many letters on, a text mostly in capitals shouts rather than abbreviates. Tuned. */
    private static final int ENOUGH_TO_SHOUT = 12;

    private static final Rules RULES = Rules.made();

    private final @Nullable SayingRule names;

    /**
     * A speaker of texts with names said in their own way.
     *
     * @param sayAs names as written (exact, whole words, capitals as given) and as they sound, such as "Quillan" to
     *     "Kwil-an"; neither blank
     */
    public Spoken(Map<String, String> sayAs) {
        names = names(sayAs);
    }

    /**
     * What a written text sounds like.
     *
     * @param written any text, also empty
     */
    public SpokenText expand(String written) {
        String text = CleanText.of(Objects.requireNonNull(written, "written"));
        return new SpokenText(written, new Walk(text).say());
    }

    /** What is the same for everybody: the rules for numbers, for words, and for words in text that is all capitals. */
    private record Rules(List<SayingRule> numbers, List<SayingRule> words, List<SayingRule> shouted) {
        static Rules made() {
            SpelledNumbers words = new SpelledNumbers();
            DateRules dates = new DateRules(words);
            QuantityRules quantities = new QuantityRules(words);
            CodeRules codes = new CodeRules(words);
            List<SayingRule> numbers = new ArrayList<>(codes.numbers());
            numbers.addAll(new ClockRules(words).rules());
            numbers.addAll(dates.timesAndDates());
            numbers.add(SayingRule.of("(?<!\\d)(\\d)(\\d)(\\d)(?= (?:Squadron|Sqn))", m -> words.digits(m.group())));
            numbers.addAll(quantities.rules());
            numbers.addAll(dates.years());
            numbers.add(codes.withCapitals());
            numbers.add(quantities.plain());
            AbbreviationRules abbreviations = new AbbreviationRules(words);
            return new Rules(
                    List.copyOf(numbers),
                    wordRules(dates, codes, abbreviations, false),
                    wordRules(dates, codes, abbreviations, true));
        }
    }

    private static List<SayingRule> wordRules(
            DateRules dates, CodeRules codes, AbbreviationRules abbreviations, boolean shouting) {
        List<SayingRule> rules = new ArrayList<>(dates.monthFirst());
        rules.addAll(codes.words());
        rules.addAll(abbreviations.rules(shouting));
        return List.copyOf(rules);
    }

    private static @Nullable SayingRule names(Map<String, String> sayAs) {
        Map<String, String> table = sayAs.entrySet().stream()
                .collect(Collectors.toMap(
                        e -> requireText(CleanText.of(e.getKey()).strip(), e),
                        e -> requireText(e.getValue(), e),
                        (first, second) -> second));
        if (table.isEmpty()) {
            return null;
        }
        String alternatives = table.keySet().stream()
                .sorted((a, b) -> b.length() - a.length())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        return SayingRule.of("(" + alternatives + ")(?![\\p{L}\\p{N}])", m -> table.get(m.group(1)));
    }

    private static String requireText(String text, Map.Entry<String, String> entry) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("the name \"" + entry.getKey() + "\" is said as \"" + entry.getValue()
                    + "\", but both must have letters; correct or remove it");
        }
        return text;
    }

    /** One way through one text, rule by rule at each start of a word, number or sign. */
    private final class Walk {

        private final String text;
        private final List<Matcher> numberMatchers;
        private final List<Matcher> wordMatchers;
        private final List<SayingRule> words;
        private final @Nullable Matcher nameMatcher;
        private final SpokenWriter out = new SpokenWriter();

        Walk(String text) {
            this.text = text;
            words = isShouting(text) ? RULES.shouted() : RULES.words();
            numberMatchers = matchers(RULES.numbers());
            wordMatchers = matchers(words);
            nameMatcher = names == null ? null : matcher(names);
        }

        String say() {
            int at = 0;
            while (at < text.length()) {
                int next = sayAt(at);
                at = next > at ? next : sayCharacter(at);
            }
            return out.text();
        }

        private int sayAt(int at) {
            char c = text.charAt(at);
            boolean wordStart = at == 0 || !Character.isLetterOrDigit(text.codePointBefore(at));
            if (names != null && nameMatcher != null && wordStart && c != ' ') {
                int next = apply(names, nameMatcher, at);
                if (next > at) {
                    return next;
                }
            }
            if (Character.isLetter(c)) {
                return wordStart ? firstOf(words, wordMatchers, at) : at;
            }
            return startsNumber(at, c, wordStart) ? firstOf(RULES.numbers(), numberMatchers, at) : at;
        }

        private boolean startsNumber(int at, char c, boolean wordStart) {
            return switch (c) {
                case '-', '.' -> wordStart && numberFollows(at);
                case '#' -> at + 1 < text.length() && Character.isLetterOrDigit(text.charAt(at + 1));
                case '+', '±', '£', '$', '€', '\'', '~', '≈', '<', '>', '≤', '≥' -> numberFollows(at);
                default -> isDigit(c) || FractionRules.isFractionSign(c);
            };
        }

        private boolean numberFollows(int at) {
            int next = at + 1 < text.length() && text.charAt(at + 1) == ' ' ? at + 2 : at + 1;
            return next < text.length() && (isDigit(text.charAt(next)) || text.charAt(next) == '.');
        }

        private int firstOf(List<SayingRule> rules, List<Matcher> matchers, int at) {
            for (int i = 0; i < rules.size(); i++) {
                int next = apply(rules.get(i), matchers.get(i), at);
                if (next > at) {
                    return next;
                }
            }
            return at;
        }

        private int apply(SayingRule rule, Matcher matcher, int at) {
            matcher.region(at, text.length());
            if (!matcher.lookingAt()) {
                return at;
            }
            String said = rule.saying().say(matcher);
            if (said == null) {
                return at;
            }
            boolean compound = matcher.end() < text.length() - 1
                    && text.charAt(matcher.end()) == '-'
                    && Character.isLetter(text.charAt(matcher.end() + 1));
            out.words(said, compound);
            return matcher.end();
        }

        private int sayCharacter(int at) {
            int c = text.codePointAt(at);
            out.character(c, at == 0 ? ' ' : text.codePointBefore(at), nextAfter(at, c));
            return at + Character.charCount(c);
        }

        private int nextAfter(int at, int c) {
            int next = at + Character.charCount(c);
            return next < text.length() ? text.codePointAt(next) : ' ';
        }

        private List<Matcher> matchers(List<SayingRule> rules) {
            return rules.stream().map(this::matcher).toList();
        }

        private Matcher matcher(SayingRule rule) {
            return rule.pattern().matcher(text).useTransparentBounds(true).useAnchoringBounds(false);
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isShouting(String text) {
        long letters = text.codePoints().filter(Character::isLetter).count();
        long capitals = text.codePoints().filter(Character::isUpperCase).count();
        return letters >= ENOUGH_TO_SHOUT && capitals * 10 > letters * 6;
    }
}
