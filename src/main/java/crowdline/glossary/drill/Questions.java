package crowdline.glossary.drill;

import crowdline.glossary.Explained;
import crowdline.glossary.Glossary;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.picture.Flown;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/** Makes questions about figures. Wrong answers are what a figure is mixed up with, then what looks most like it. */
public final class Questions {
    /** Names to choose from. */
    public static final int CHOICES = 4;
    /** The family of what several aircraft fly together. */
    private final Map<String, CatalogueEntry> figures = new HashMap<>();

    private final Map<String, Flown> flown;
    private final Map<String, Likeness> looks = new HashMap<>();
    private final Map<String, Set<String>> mixUps = new HashMap<>();
    private final Glossary glossary;

    /** @param flown the figures as they are flown, by name; one that is not in it is only explained */
    public Questions(Glossary glossary, Map<String, Flown> flown) {
        this.glossary = glossary;
        this.flown = Map.copyOf(flown);
        for (CatalogueEntry figure : glossary.figures()) {
            figures.put(figure.name(), figure);
            looks.put(figure.name(), new Likeness(flownOf(figure.name())));
        }
        for (CatalogueEntry figure : glossary.figures()) {
            for (Explained other : glossary.mentionedIn(figure.mixUps())) {
                if (other instanceof Explained.OfFigure && !other.name().equals(figure.name())) {
                    mixUps.computeIfAbsent(figure.name(), f -> new LinkedHashSet<>())
                            .add(other.name());
                    mixUps.computeIfAbsent(other.name(), f -> new LinkedHashSet<>())
                            .add(figure.name());
                }
            }
        }
    }

    private Flown flownOf(String name) {
        return flown.getOrDefault(name, Flown.NONE);
    }

    /** The names of the figures that can be asked about, in the order of the alphabet. */
    public List<String> figures() {
        return figures.keySet().stream().sorted().toList();
    }

    /** Without what there is to see in words, which would tell the answer. */
    private Flown silent(String name) {
        return flownOf(name).silent();
    }

    /** What can be asked about a figure; nothing about one that is unknown. */
    public List<Question.Kind> kinds(String figure) {
        List<Question.Kind> kinds = new ArrayList<>();
        if (figures.containsKey(figure)) {
            if (others(figure).size() >= CHOICES - 1) {
                kinds.add(Question.Kind.NAME);
                kinds.add(Question.Kind.WRITE);
            }
            if (!mistaken(figure).isEmpty()) {
                kinds.add(Question.Kind.APART);
            }
            kinds.add(Question.Kind.EXPLAIN);
            if (Loads.of(flownOf(figure)).isPresent()) {
                kinds.add(Question.Kind.LOADS);
            }
        }
        return kinds;
    }

    /**
     * A question about a figure.
     *
     * @param kind one of {@link #kinds}
     * @param random for the order of the answers, and for one of several that would do
     */
    public Question ask(String figure, Question.Kind kind, Random random) {
        if (!kinds(figure).contains(kind)) {
            throw new IllegalArgumentException("cannot ask " + kind + " about " + figure);
        }
        return switch (kind) {
            case NAME ->
                named(
                        kind,
                        figure,
                        "Which figure is this?",
                        others(figure).stream().limit(CHOICES - 1L).toList(),
                        random);
            case WRITE ->
                new Question(
                        kind,
                        figure,
                        "Which figure is this? Write its name.",
                        silent(figure),
                        List.of(figure),
                        0,
                        entry(figure).lookFor());
            case APART -> {
                List<String> mistaken = mistaken(figure);
                yield named(
                        kind,
                        figure,
                        "Which of the two is this?",
                        List.of(mistaken.get(random.nextInt(mistaken.size()))),
                        random);
            }
            case EXPLAIN ->
                new Question(
                        kind,
                        figure,
                        "Say aloud what it is, and what to look for: " + figure,
                        Flown.NONE,
                        List.of("I said all of it", "I said some of it", "I did not know it"),
                        -1,
                        text(figure));
            case LOADS -> Loads.of(flownOf(figure)).orElseThrow().ask(figure, silent(figure), random);
        };
    }

    /** Whether what was written names a figure, or one that looks the same. */
    public boolean isNamed(String figure, String written) {
        return glossary.figureCalled(written)
                .map(CatalogueEntry::name)
                .filter(called -> called.equals(figure)
                        || (!flownOf(called).isEmpty() && look(figure).looksTheSame(look(called))))
                .isPresent();
    }

    private Question named(Question.Kind kind, String figure, String asks, List<String> wrong, Random random) {
        List<String> names = new ArrayList<>(wrong);
        names.add(figure);
        Collections.shuffle(names, random);
        CatalogueEntry entry = entry(figure);
        return new Question(
                kind,
                figure,
                asks,
                silent(figure),
                names,
                names.indexOf(figure),
                kind == Question.Kind.APART && !entry.mixUps().isBlank() ? entry.mixUps() : entry.lookFor());
    }

    private String text(String figure) {
        CatalogueEntry entry = entry(figure);
        return entry.whatItIs() + " " + entry.lookFor();
    }

    private CatalogueEntry entry(String figure) {
        CatalogueEntry entry = figures.get(figure);
        if (entry == null) {
            throw new IllegalArgumentException("no figure " + figure);
        }
        return entry;
    }

    private Likeness look(String figure) {
        return looks.getOrDefault(figure, new Likeness(Flown.NONE));
    }

    /** What a figure is mixed up with and can be told from by looking. */
    private List<String> mistaken(String figure) {
        return flownOf(figure).isEmpty()
                ? List.of()
                : mixUps.getOrDefault(figure, Set.of()).stream()
                        .filter(other -> canBeToldApart(figure, other))
                        .toList();
    }

    /** Wrong answers, the most tempting first; none if the figure is not flown. */
    private List<String> others(String figure) {
        if (flownOf(figure).isEmpty()) {
            return List.of();
        }
        Likeness own = look(figure);
        Stream<String> nearestFirst = figures.keySet().stream()
                .filter(other -> !other.equals(figure) && !flownOf(other).isEmpty())
                .map(other -> new Other(other, own.to(look(other))))
                .filter(other -> !Likeness.isTheSame(other.apart()))
                .sorted(Comparator.comparingDouble(Other::apart).thenComparing(Other::name))
                .map(Other::name);
        return Stream.concat(mistaken(figure).stream(), nearestFirst).distinct().toList();
    }

    /** A figure and how unlike the one that is asked about it looks. */
    private record Other(String name, double apart) {}

    private boolean canBeToldApart(String figure, String other) {
        return !flownOf(other).isEmpty() && !look(figure).looksTheSame(look(other));
    }
}
