package crowdline.list.name;

import crowdline.list.word.Manner;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import crowdline.show.bounds.Nearest;
import crowdline.speech.plain.CommonVocabulary;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds the word of the trade that somebody meant. Keeps what it found, and is asked by one thread. */
public final class Spelling {
    /** Longer words are nobody's slip. */
    private static final Pattern DRAWLED = Pattern.compile("([a-z])\\1{2,}");

    private static final int LONGEST = 30;

    /** In a shorter word other vowels make another word. */
    private static final int LONG = 6;

    private static final String OTHER_WORDS = "left right centre crowd smoke height knots seconds minutes middle front"
            + " towards behind datum degree upright wheels followed canopy hand side recover up down over out off";

    private static final List<String> NUMBERS =
            List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "half", "quarter");

    /** Words that stand beside names without being of them. */
    private static final Set<String> LEFT_ALONE =
            Words.of(OTHER_WORDS).stream().map(Word::plain).collect(Collectors.toUnmodifiableSet());

    private final Set<String> known = new HashSet<>();
    private final Set<String> inNames = new HashSet<>();
    private final Set<String> shortenable = new TreeSet<>();
    private final Set<String> ofThreeLetters = new TreeSet<>();
    private final List<List<String>> byLength = new ArrayList<>();
    private final CommonVocabulary common = new CommonVocabulary();
    private final Map<String, Optional<String>> found = new HashMap<>();

    public Spelling(Names names, List<String> wordings) {
        for (int i = 0; i <= LONGEST + 4; i++) {
            byLength.add(new ArrayList<>());
        }
        wordings.forEach(wording -> Words.of(Words.folded(wording)).forEach(word -> learn(word.plain())));
        Words.of(OTHER_WORDS).forEach(word -> learn(word.plain()));
        names.keys().forEach(this::learn);
        NUMBERS.forEach(this::learn);
        names.inNames()
                .forEach(name -> Words.of(Words.folded(name)).forEach(word -> {
                    if (word.plain().length() > 3 && word.number() == null) {
                        inNames.add(word.plain());
                    }
                }));
        names.inNames().stream()
                .flatMap(name -> Stream.of(Words.folded(name).split("[^a-z]+")))
                .filter(word -> word.length() >= 3)
                .forEach(word -> (word.length() == 3 ? ofThreeLetters : shortenable).add(word));
        Words.spellings().stream().filter(word -> word.length() > 3).forEach(shortenable::add);
        Words.of(OTHER_WORDS).forEach(word -> shortenable.add(word.plain()));
    }

    private void learn(String word) {
        boolean isWord = word.length() >= 3 && word.chars().allMatch(Character::isLetter);
        if (isWord && word.length() < byLength.size() && known.add(word)) {
            byLength.get(word.length()).add(word);
        }
    }

    /** Whether a word stands in a figure's name. */
    public boolean isOfAName(Word word) {
        return inNames.contains(word.plain()) && !LEFT_ALONE.contains(word.plain());
    }

    /** Whether a word stands in a figure's name, or is one of three letters in them. */
    public boolean mayName(Word word) {
        return isOfAName(word) || ofThreeLetters.contains(word.plain());
    }

    /** The one word of a figure's name that somebody shortened: "stl", "immel"; empty if there is none, or are several. */
    private Optional<String> shortened(String plain) {
        if (Manner.isAny(plain) || plain.length() > 8) {
            return Optional.empty();
        }
        List<String> ofThree = plain.length() > 2 || !isConsonants(plain)
                ? List.of()
                : ofThreeLetters.stream()
                        .filter(word -> isShortFor(plain, word))
                        .toList();
        if (ofThree.size() == 1) {
            return Optional.of(ofThree.get(0));
        }
        List<String> whole =
                shortenable.stream().filter(word -> isShortFor(plain, word)).toList();
        List<String> shortest = whole.stream()
                .filter(word -> whole.stream()
                        .allMatch(other ->
                                other.startsWith(word) || Words.plain(other).equals(Words.plain(word))))
                .toList();
        return shortest.stream().findFirst();
    }

    /** Without its vowels, or without its end. */
    private static boolean isShortFor(String plain, String word) {
        if (plain.length() >= word.length() || plain.charAt(0) != word.charAt(0)) {
            return false;
        }
        return (plain.length() >= 3
                        && (word.startsWith(plain) || undoubled(word).startsWith(plain)))
                || (isWithin(plain, word) && consonants(plain).equals(consonants(word)))
                || (plain.length() >= 5
                        && isWithin(plain, word)
                        && plain.charAt(plain.length() - 1) == word.charAt(word.length() - 1))
                || (plain.length() >= 3
                        && hasNoVowels(plain)
                        && consonants(word).startsWith(consonants(plain)));
    }

    /** "Baril", "burrel": the one word of a figure's name that has the same consonants. */
    private Optional<String> withOtherVowels(String plain) {
        String skeleton = consonants(plain);
        if (skeleton.length() < 3 || plain.length() < LONG - 1) {
            return Optional.empty();
        }
        List<String> same = inNames.stream()
                .filter(word -> word.length() >= LONG
                        && Math.abs(word.length() - plain.length()) <= 1
                        && consonants(word).equals(skeleton))
                .toList();
        return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
    }

    private static String undoubled(String word) {
        return word.replaceAll("(.)\\1", "$1");
    }

    private static boolean hasNoVowels(String plain) {
        return isConsonants(plain.substring(1));
    }

    private static boolean isConsonants(String plain) {
        return plain.chars().noneMatch(c -> "aeiouy".indexOf(c) >= 0);
    }

    /** Whether a word is another without one of its letters that is not the first. */
    public static boolean isALetterShort(String word, String whole) {
        return word.length() + 1 == whole.length() && word.charAt(0) == whole.charAt(0) && isWithin(word, whole);
    }

    /** Whether all letters of one stand in the other, in order. */
    private static boolean isWithin(String letters, String word) {
        int at = 0;
        for (int i = 0; i < word.length() && at < letters.length(); i++) {
            at += word.charAt(i) == letters.charAt(at) ? 1 : 0;
        }
        return at == letters.length();
    }

    /** The first letter and the consonants after it, each once where it is doubled. */
    private static String consonants(String word) {
        return word.charAt(0) + undoubled(word.substring(1).replaceAll("[aeiouy]", ""));
    }

    /** Whether a word is spelt as the trade spells one. */
    public boolean isKnown(Word word) {
        return known.contains(word.plain()) || word.number() != null || Manner.FILLER.has(word);
    }

    /** Whether anybody writes these letters as a word. */
    public boolean isWritten(String letters) {
        return known.contains(Words.plain(letters)) || common.has(letters);
    }

    /** Whether a word is one of everyday English, so that it is probably meant as it stands. */
    public boolean isEveryday(Word word) {
        boolean isShort = word.plain().length() <= 2 && !word.plain().matches("[lr][lp]");
        return isShort || word.plain().length() > LONGEST || common.has(word.plain());
    }

    /** The word of the trade that lies nearest; empty if none is near, or it is one itself. */
    public Optional<String> nearest(Word word) {
        String plain = word.plain();
        if (isKnown(word) || plain.length() < 2 || plain.length() > LONGEST || !Character.isLetter(plain.charAt(0))) {
            return Optional.empty();
        }
        return found.computeIfAbsent(plain, p -> drawled(p).or(() -> sought(p)).map(Words::plain));
    }

    /** "Loooop": a word that is known with each letter said twice at most, or once. */
    private Optional<String> drawled(String plain) {
        String twice = DRAWLED.matcher(plain).replaceAll("$1$1");
        String once = DRAWLED.matcher(plain).replaceAll("$1");
        return twice.equals(plain)
                ? Optional.empty()
                : Stream.of(twice, once).filter(known::contains).findFirst();
    }

    private Optional<String> sought(String plain) {
        Optional<String> whole = shortened(plain);
        if (whole.isPresent()) {
            return whole;
        }
        Optional<String> vowels = withOtherVowels(plain);
        if (vowels.isPresent()) {
            return vowels;
        }
        int allowed = slips(plain);
        if (plain.length() < 3) {
            return Optional.empty();
        }
        String best = null;
        int least = allowed + 1;
        int bestRank = Integer.MAX_VALUE;
        int mask = letters(plain);
        for (int length = plain.length() - allowed; length <= plain.length() + allowed; length++) {
            for (String word : byLength.get(Math.max(0, length))) {
                if (Integer.bitCount(letters(word) ^ mask) > 2 * Math.min(least, allowed) || word.length() < 4) {
                    continue;
                }
                int distance = Nearest.distance(plain, word);
                boolean isNear = distance
                        <= (word.charAt(0) == plain.charAt(0)
                                ? plain.startsWith(word) ? allowed : Math.min(allowed, slips(word))
                                : 1);
                int rank = 3 * distance + (word.length() != plain.length() ? 2 : letters(word) == mask ? 0 : 1);
                if (isNear && rank < bestRank) {
                    bestRank = rank;
                    least = Math.min(least, distance);
                    best = word;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** In how many places a word of this length may be misspelt; an ending that many words have makes none longer. */
    private static int slips(String word) {
        int letters = word.length() - (word.endsWith("ing") ? 3 : 0);
        return letters < 6 ? 1 : letters < 10 ? 2 : 3;
    }

    /** Which letters a word has: each change adds and takes one at most. */
    private static int letters(String word) {
        int mask = 0;
        for (int i = 0; i < word.length(); i++) {
            mask |= 1 << (word.charAt(i) % 31);
        }
        return mask;
    }
}
