package crowdline.show.aircraft;

import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Written;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The kinds of aircraft that are known by name or alias, whatever the case of the letters. */
public final class Kinds {
    /** The kind of those under parachutes. */
    public static final String PARACHUTISTS = "parachutists";

    public static final String HELICOPTER = "helicopter";
    public static final String FORMATION = "formation";
    public static final String FLY_PAST = "fly-past";

    static final int MOST_TOGETHER = 100;

    private static final int MOST_NEAREST = 3;
    private static final Pattern OF = Pattern.compile("(.*\\S)\\s+of\\s+([0-9]{1,4}|[a-z]+)", Pattern.CASE_INSENSITIVE);
    private static final List<String> NUMBERS =
            List.of("two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    /**
     * A kind that was named, perhaps with how many they are.
     *
     * @param number such as 4 in "formation of 4", or null if none was said
     */
    public record Named(Kind kind, @Nullable Integer number) {}

    private final List<Kind> all;
    private final Map<String, Kind> byName = new LinkedHashMap<>();

    /**
     * @throws IllegalArgumentException if two kinds claim the same name or alias
     */
    public Kinds(List<Kind> all) {
        this.all = List.copyOf(all);
        for (Kind kind : this.all) {
            for (String name : kind.names()) {
                Kind other = byName.putIfAbsent(Written.key(name), kind);
                if (other != null) {
                    throw new IllegalArgumentException(
                            "the kind name " + name + " is claimed by " + other.name() + " and by " + kind.name());
                }
            }
        }
    }

    /** Every kind, those that fly figures first. */
    public List<Kind> all() {
        return all;
    }

    /** The kind of a name or alias. */
    public Optional<Kind> find(String name) {
        return Optional.ofNullable(byName.get(Written.key(name)));
    }

    /**
     * The kind of a name or alias.
     *
     * @throws IllegalArgumentException if there is none, with the nearest names
     */
    public Kind named(String name) {
        return find(name).orElseThrow(() -> new IllegalArgumentException(unknown(name)));
    }

    /**
     * The kind of a name or alias, with how many they are where the name ends in "of 4" or "of four".
     *
     * @throws IllegalArgumentException if there is none, with the nearest names, or if several make no sense
     */
    public Named counted(String name) {
        Optional<Kind> alone = find(name);
        Matcher of = OF.matcher(name.strip());
        if (alone.isPresent() || !of.matches()) {
            return new Named(named(name), null);
        }
        Kind kind = named(of.group(1));
        if (kind.flies()) {
            throw new IllegalArgumentException("a kind of " + Written.quoted(name) + " is more than one " + kind.name()
                    + "; name a formation instead");
        }
        String number = of.group(2).toLowerCase(Locale.ROOT);
        int word = NUMBERS.indexOf(number);
        if (word < 0 && !Character.isDigit(number.charAt(0))) {
            throw new IllegalArgumentException(
                    "how many is in " + Written.quoted(name) + "? Write a number, such as " + kind.name() + " of 4");
        }
        return new Named(kind, word >= 0 ? word + 2 : Integer.parseInt(number));
    }

    /** That there is no kind of that name, with the nearest names. */
    public String unknown(String name) {
        List<String> nearest = nearest(name);
        return "there is no kind " + Written.quoted(name)
                + (nearest.isEmpty()
                        ? "; the kinds are " + all.stream().map(Kind::name).collect(Collectors.joining(", "))
                        : "; nearest: " + String.join(", ", nearest));
    }

    /** At most three kinds with words in common or nearly so, the nearest first; none if no word is like any of theirs. */
    public List<String> nearest(String given) {
        List<String> words = List.of(Written.key(given).split(" "));
        Map<Kind, Likeness> likeness = new LinkedHashMap<>();
        for (Kind kind : all) {
            Likeness like = kind.names().stream()
                    .map(name -> Likeness.of(words, List.of(Written.key(name).split(" "))))
                    .max(Likeness.ORDER)
                    .orElse(Likeness.NONE);
            if (like.shared() > 0) {
                likeness.put(kind, like);
            }
        }
        List<Kind> found = new ArrayList<>(likeness.keySet());
        found.sort(Comparator.comparing(
                (Kind kind) -> likeness.getOrDefault(kind, Likeness.NONE), Likeness.ORDER.reversed()));
        return found.stream().limit(MOST_NEAREST).map(Kind::name).toList();
    }

    /** How many of the given words a name has, which is the first of them, and how many more it has. */
    private record Likeness(int shared, int first, int more) {
        static final Likeness NONE = new Likeness(0, 0, 0);
        static final Comparator<Likeness> ORDER = Comparator.comparingInt(Likeness::shared)
                .thenComparing(Comparator.comparingInt(Likeness::first).reversed())
                .thenComparing(Comparator.comparingInt(Likeness::more).reversed());

        static Likeness of(List<String> given, List<String> name) {
            int shared = 0;
            int first = given.size();
            for (int i = given.size() - 1; i >= 0; i--) {
                if (isLike(given.get(i), name)) {
                    shared++;
                    first = i;
                }
            }
            return new Likeness(shared, first, Math.max(0, name.size() - shared));
        }

        /** Spelt nearly so, or the beginning of one. */
        private static boolean isLike(String given, List<String> words) {
            return Nearest.to(given, words).isPresent()
                    || (given.length() > 2 && words.stream().anyMatch(word -> word.startsWith(given)));
        }
    }
}
