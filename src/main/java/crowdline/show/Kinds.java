package crowdline.show;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of aircraft that are known by name or alias, whatever the case of the letters. */
public final class Kinds {
    private static final int MOST_NEAREST = 3;

    private final List<Kind> all;
    private final Map<String, Kind> byName = new LinkedHashMap<>();

    /**
     * @throws IllegalArgumentException if two kinds claim the same name or alias
     */
    public Kinds(List<Kind> all) {
        this.all = List.copyOf(all);
        for (Kind kind : this.all) {
            for (String name : kind.names()) {
                Kind other = byName.putIfAbsent(Catalogue.key(name), kind);
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
        return Optional.ofNullable(byName.get(Catalogue.key(name)));
    }

    /**
     * The kind of a name or alias.
     *
     * @throws IllegalArgumentException if there is none, with the nearest names
     */
    public Kind named(String name) {
        return find(name).orElseThrow(() -> new IllegalArgumentException(unknown(name)));
    }

    private String unknown(String name) {
        List<String> nearest = nearest(name);
        return "there is no kind " + At.quoted(name)
                + (nearest.isEmpty()
                        ? "; the kinds are " + all.stream().map(Kind::name).collect(Collectors.joining(", "))
                        : "; nearest: " + String.join(", ", nearest));
    }

    /** At most three kinds with words in common or nearly so, the nearest first; none if no word is like any of theirs. */
    public List<String> nearest(String given) {
        List<String> words = List.of(Catalogue.key(given).split(" "));
        Map<Kind, Likeness> likeness = new LinkedHashMap<>();
        for (Kind kind : all) {
            Likeness like = kind.names().stream()
                    .map(name -> Likeness.of(words, List.of(Catalogue.key(name).split(" "))))
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
                if (Nearest.to(given.get(i), name).isPresent()) {
                    shared++;
                    first = i;
                }
            }
            return new Likeness(shared, first, Math.max(0, name.size() - shared));
        }
    }
}
