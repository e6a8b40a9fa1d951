package crowdline.glossary;

import crowdline.show.bounds.Nearest;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds by words, wherever they stand: in a name, in another name, in a text. Every word of the question must be found; the
 * last may be the beginning of a word. A word that nothing has as it is written is forgiven its spelling: one letter in
 * three may be wrong, missing, or swapped with its neighbour, and in names it may be written by ear (see {@link Soundex}).
 *
 * @param <T> what is found
 */
public final class TextSearch<T> {
    /** Words too common to look for, unless there is nothing else. */
    private static final Set<String> COMMON = Set.of(
            "a", "an", "and", "are", "at", "by", "does", "for", "how", "in", "is", "it", "of", "on", "or", "the", "to",
            "what", "when", "who", "why", "with");

    private static final Pattern PARTS = Pattern.compile("[^\\p{L}\\d]+");
    private static final int NOWHERE = Integer.MAX_VALUE;
    /** Shorter words have nothing to forgive: another letter is another word. */
    private static final int SHORTEST_FORGIVEN = 3;
    /** Of a whole name, to have a letter wrong; tuned. */
    private static final int LONG_ENOUGH = 5;
    /** Of a whole name one letter in so many may be wrong: fewer than of one word, which has others beside it. Tuned. */
    private static final int LETTERS_FOR_A_WRONG_ONE = 4;

    /** The name and the other names: only there a word may be written by ear, as texts have too many that sound alike. */
    private static final int NAMES = 2;
    /** How far behind it is what only sounds alike: as two wrong letters. */
    private static final int BY_EAR = 20;
    /** So many letters more or fewer, and such a share of other ones, it has at most. Tuned. */
    private static final int BY_EAR_LONGER = 2;

    private static final double BY_EAR_OTHER = 0.75;

    private static final Map<String, String> DIGITS =
            Map.of("1", "one", "2", "two", "3", "three", "4", "four", "8", "eight");

    private final List<Indexed<T>> entries;

    /**
     * Something to be found.
     *
     * @param name by which it is found first
     * @param aliases other names
     * @param group what it belongs with, or empty
     * @param texts what is said of it, the most telling first
     */
    public record Searched<T>(T item, String name, List<String> aliases, String group, List<String> texts) {
        public Searched {
            aliases = List.copyOf(aliases);
            texts = List.copyOf(texts);
        }
    }

    /** The words of one entry, a list for each of its names and texts, the most telling first. */
    private record Indexed<T>(
            T item,
            String name,
            List<List<String>> names,
            List<String> joined,
            List<String> compact,
            List<List<String>> fields) {}

    /** @param wrong how many of its letters may be */
    private record Wanted(String word, int wrong) {}

    private record Hit<T>(T item, int rank) {}

    /** Finds among these; where two are found as well as each other, the one before comes first. */
    public TextSearch(List<Searched<T>> items) {
        entries = items.stream().map(TextSearch::indexed).toList();
    }

    private static <T> Indexed<T> indexed(Searched<T> item) {
        List<List<String>> fields = new ArrayList<>();
        fields.add(words(item.name()));
        fields.add(item.aliases().stream().flatMap(a -> words(a).stream()).toList());
        fields.add(words(item.group()));
        item.texts().forEach(text -> fields.add(words(text)));
        List<String> names =
                Stream.concat(Stream.of(item.name()), item.aliases().stream()).toList();
        return new Indexed<>(
                item.item(),
                String.join(" ", words(item.name())),
                names.stream().map(TextSearch::words).toList(),
                names.stream().map(name -> joined(words(name))).toList(),
                names.stream().map(name -> String.join("", words(name))).toList(),
                fields);
    }

    /** What has these words, the best first; all of it for no words. */
    public List<T> find(String question) {
        List<String> asked = words(question);
        List<String> telling =
                asked.stream().filter(word -> !COMMON.contains(word)).toList();
        List<Wanted> wanted =
                (telling.isEmpty() ? asked : telling).stream().map(this::wanted).toList();
        String whole = String.join("", asked);
        return entries.stream()
                .map(entry -> new Hit<>(entry.item(), rank(entry, wanted, String.join(" ", asked), whole)))
                .filter(hit -> hit.rank() != NOWHERE)
                .sorted(Comparator.comparingInt(Hit::rank))
                .<T>map(Hit::item)
                .toList();
    }

    /**
     * What somebody meant who wrote a name: a part of it that no other has, or all of it forgiven its spelling as elsewhere here,
     * or written by ear; nothing where it may be one of several.
     *
     * @param among what it may be
     */
    Optional<T> called(String written, Predicate<T> among) {
        List<String> telling =
                words(written).stream().filter(word -> !COMMON.contains(word)).toList();
        String whole = String.join("", telling);
        List<Indexed<T>> all =
                entries.stream().filter(entry -> among.test(entry.item())).toList();
        int most = whole.length() < SHORTEST_FORGIVEN ? 0 : Math.max(1, whole.length() / LETTERS_FOR_A_WRONG_ONE);
        return only(all, entry -> distance(entry, whole) == 0)
                .or(() -> telling.isEmpty() ? Optional.empty() : only(all, entry -> hasPart(entry, telling)))
                .or(() -> nearest(all, whole, most))
                .or(() -> most == 0 ? Optional.empty() : only(all, entry -> sounds(entry, whole)));
    }

    private static <T> Optional<T> only(List<Indexed<T>> all, Predicate<Indexed<T>> wanted) {
        List<T> found = all.stream().filter(wanted).map(Indexed::item).limit(2).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static <T> Optional<T> nearest(List<Indexed<T>> all, String whole, int most) {
        int least = all.stream().mapToInt(entry -> distance(entry, whole)).min().orElse(Integer.MAX_VALUE);
        return least > most ? Optional.empty() : only(all, entry -> distance(entry, whole) == least);
    }

    private static boolean hasPart(Indexed<?> entry, List<String> telling) {
        return entry.names().stream().anyMatch(name -> name.containsAll(telling));
    }

    private static boolean sounds(Indexed<?> entry, String whole) {
        return entry.joined().stream().anyMatch(name -> soundsAlike(name, whole));
    }

    private static int distance(Indexed<?> entry, String whole) {
        return entry.joined().stream()
                .mapToInt(name -> Nearest.distance(name, whole))
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private static String joined(List<String> words) {
        return words.stream().filter(word -> !COMMON.contains(word)).collect(Collectors.joining());
    }

    /** 0 for the name itself; the higher the further away it stands. */
    private static int rank(Indexed<?> entry, List<Wanted> wanted, String asked, String whole) {
        if (!asked.isEmpty() && entry.name().equals(asked)) {
            return 0;
        } else if (!asked.isEmpty() && entry.compact().contains(whole)) {
            return 1;
        }
        int rank = wanted.isEmpty() ? 0 : 2;
        for (Wanted word : wanted) {
            int at = placeOf(entry, word);
            if (at == NOWHERE) {
                return isNamed(entry, whole) ? 2 : NOWHERE;
            }
            rank += at;
        }
        return rank;
    }

    /** "tailwheel" for "tail wheel", "flat sin" for "flat spin": as one word, and with a letter wrong if there are enough. */
    private static boolean isNamed(Indexed<?> entry, String whole) {
        return whole.length() >= SHORTEST_FORGIVEN
                && entry.compact().stream()
                        .anyMatch(name -> name.startsWith(whole)
                                || (whole.length() >= LONG_ENOUGH
                                        && Math.abs(name.length() - whole.length()) <= 1
                                        && Nearest.distance(name, whole) <= 1));
    }

    private Wanted wanted(String word) {
        boolean isWritten = entries.stream().anyMatch(entry -> placeOf(entry, new Wanted(word, 0)) != NOWHERE);
        return new Wanted(word, isWritten || word.length() < SHORTEST_FORGIVEN ? 0 : Math.max(1, word.length() / 3));
    }

    /** In which of its names and texts the word stands, a whole word a step before the beginning of one. */
    private static int placeOf(Indexed<?> entry, Wanted wanted) {
        String word = wanted.word();
        int wrong = wanted.wrong();
        for (int f = 0; f < entry.fields().size(); f++) {
            int best = NOWHERE;
            for (String there : entry.fields().get(f)) {
                if (wrong == 0 && there.equals(word)) {
                    return 3 * f;
                } else if (wrong == 0 && there.startsWith(word)) {
                    best = Math.min(best, 3 * f + 1);
                } else if (wrong > 0 && isNear(there, word, wrong)) {
                    best = Math.min(best, 3 * f + 10 * Nearest.distance(word, there));
                } else if (wrong > 0 && f < NAMES && soundsAlike(there, word)) {
                    best = Math.min(best, 3 * f + BY_EAR);
                }
            }
            if (best != NOWHERE) {
                return best;
            }
        }
        return NOWHERE;
    }

    private static boolean isNear(String there, String word, int wrong) {
        return there.length() >= SHORTEST_FORGIVEN
                && Math.abs(there.length() - word.length()) <= wrong
                && Nearest.distance(word, there) <= wrong;
    }

    /** Soundex alone takes "xyzzy" for "axis": most letters may differ, but not nearly all. */
    private static boolean soundsAlike(String there, String word) {
        int longer = Math.max(there.length(), word.length());
        String sound = Soundex.key(word);
        return there.length() >= SHORTEST_FORGIVEN
                && longer - Math.min(there.length(), word.length()) <= BY_EAR_LONGER
                && !sound.isEmpty()
                && sound.equals(Soundex.key(there))
                && Nearest.distance(word, there) <= BY_EAR_OTHER * longer;
    }

    private static List<String> words(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}+|['’]", "");
        return Stream.of(PARTS.split(plain.toLowerCase(Locale.ROOT)))
                .filter(word -> !word.isEmpty())
                .map(word -> DIGITS.getOrDefault(word, word))
                .toList();
    }
}
