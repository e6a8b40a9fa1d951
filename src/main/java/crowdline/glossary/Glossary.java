package crowdline.glossary;

import crowdline.show.Term;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The figures and the words that are explained, found by name, by any word in their texts, and where they are mentioned. */
public final class Glossary {
    /** Shorter names, "g" or "dz", stand for too much else to be looked for in a text. */
    private static final int SHORTEST_MENTIONED = 3;

    private final List<Explained> items;
    private final Map<String, Explained> byName = new LinkedHashMap<>();
    /** The names that are looked for in texts, the longest first, by their first {@link #SHORTEST_MENTIONED} letters. */
    private final Map<String, List<Named>> longestFirst;

    private final TextSearch<Explained> search;

    /**
     * A name that is looked for in texts.
     *
     * @param rank its place among all of them, the longest first
     */
    private record Named(String key, Explained item, int rank) {}

    /** Where a name stands in a text. */
    private record Mention(Named named, int from, int to) {}

    private Glossary(List<Explained> items) {
        this.items = items;
        items.forEach(item -> byName.putIfAbsent(Written.key(item.name()), item));
        items.forEach(item -> item.aliases().forEach(alias -> byName.putIfAbsent(Written.key(alias), item)));
        longestFirst = longestFirst(byName);
        search = new TextSearch<>(items.stream()
                .map(item -> new TextSearch.Searched<>(item, item.name(), item.aliases(), item.group(), item.texts()))
                .toList());
    }

    private static Map<String, List<Named>> longestFirst(Map<String, Explained> byName) {
        List<Map.Entry<String, Explained>> inOrder = byName.entrySet().stream()
                .filter(named -> named.getKey().length() >= SHORTEST_MENTIONED)
                .sorted(Comparator.comparing(named -> -named.getKey().length()))
                .toList();
        Map<String, List<Named>> byLetters = new HashMap<>();
        for (int i = 0; i < inOrder.size(); i++) {
            String key = inOrder.get(i).getKey();
            byLetters
                    .computeIfAbsent(key.substring(0, SHORTEST_MENTIONED), letters -> new ArrayList<>())
                    .add(new Named(key, inOrder.get(i).getValue(), i));
        }
        return byLetters;
    }

    /**
     * The glossary of a catalogue and a list of terms. Where both claim a name, the figure has it.
     *
     * @param catalogue with the show's own figures in it
     * @param terms of the program
     * @param own the show's own; one with the name of another takes its place
     */
    public static Glossary of(Catalogue catalogue, List<Term> terms, List<Term> own) {
        Map<String, Term> known = new LinkedHashMap<>();
        terms.forEach(term -> known.put(Written.key(term.name()), term));
        own.forEach(term -> known.put(Written.key(term.name()), term));
        Stream<Explained> figures = catalogue.entries().stream().map(Explained.OfFigure::new);
        Stream<Explained> words = known.values().stream().map(Explained.OfTerm::new);
        return new Glossary(Stream.concat(figures, words)
                .sorted(Comparator.comparing(item -> Written.key(item.name())))
                .toList());
    }

    /** Everything, in the order of the alphabet. */
    public List<Explained> items() {
        return items;
    }

    public List<CatalogueEntry> figures() {
        return items.stream()
                .filter(Explained.OfFigure.class::isInstance)
                .map(item -> ((Explained.OfFigure) item).entry())
                .toList();
    }

    public List<Term> terms() {
        return items.stream()
                .filter(Explained.OfTerm.class::isInstance)
                .map(item -> ((Explained.OfTerm) item).term())
                .toList();
    }

    /** What has this name or alias, whatever the case of its letters and the hyphens in it. */
    public Optional<Explained> find(String name) {
        return Optional.ofNullable(byName.get(Written.key(name)));
    }

    /** Every name and alias, as keys in lower case. */
    public List<String> names() {
        return Collections.unmodifiableList(new ArrayList<>(byName.keySet()));
    }

    /** What has these words in its names or texts, the best first; see {@link TextSearch}. All of it for no words. */
    public List<Explained> search(String words) {
        return search.find(words);
    }

    /**
     * The figure somebody meant who wrote its name or another name of it: a letter in four may be wrong, missing, or swapped
     * with its neighbour. Nothing where it may be one of several.
     */
    public Optional<CatalogueEntry> figureCalled(String written) {
        return search.called(written, Explained.OfFigure.class::isInstance)
                .map(found -> ((Explained.OfFigure) found).entry());
    }

    /**
     * What else of the glossary is mentioned in the texts of one thing, or named there to read next: that which is named
     * first, then in the order of the texts, a longer name before a shorter one inside it.
     */
    public List<Explained> mentionedIn(Explained item) {
        List<Explained> found = new ArrayList<>();
        if (item instanceof Explained.OfTerm term) {
            term.term().see().forEach(name -> find(name).ifPresent(found::add));
        }
        for (String text : item.texts()) {
            found.addAll(mentionedIn(text));
        }
        return found.stream()
                .filter(other -> !Written.key(other.name()).equals(Written.key(item.name())))
                .distinct()
                .toList();
    }

    /** What of the glossary is mentioned in a text, in its order. Whole words only, whether or not there are several of it. */
    public List<Explained> mentionedIn(String text) {
        String plain = Written.key(text);
        Map<Integer, Explained> at = new LinkedHashMap<>();
        boolean[] taken = new boolean[plain.length()];
        for (Mention mention : mentions(plain)) {
            if (!taken[mention.from()] && !taken[mention.to() - 1]) {
                at.put(mention.from(), mention.named().item());
                Arrays.fill(taken, mention.from(), mention.to(), true);
            }
        }
        return at.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
    }

    /** Every name that stands in a text, also inside another, the longest first. */
    private List<Mention> mentions(String plain) {
        List<Mention> found = new ArrayList<>();
        for (int from = 0; from + SHORTEST_MENTIONED <= plain.length(); from++) {
            if (from > 0 && isOfWord(plain.codePointBefore(from))) {
                continue;
            }
            String letters = plain.substring(from, from + SHORTEST_MENTIONED);
            for (Named named : longestFirst.getOrDefault(letters, List.of())) {
                if (plain.startsWith(named.key(), from)) {
                    int to = wordEnd(plain, from, named.key().length());
                    if (to > from) {
                        found.add(new Mention(named, from, to));
                    }
                }
            }
        }
        found.sort(Comparator.comparingInt((Mention mention) -> mention.named().rank())
                .thenComparingInt(Mention::from));
        return found;
    }

    /** Where a name that stands at {@code from} ends, with the s of several; {@code from} if a longer word goes on there. */
    private static int wordEnd(String plain, int from, int length) {
        int end = from + length;
        if (end < plain.length() && plain.charAt(end) == 's') {
            end++;
        }
        return end < plain.length() && isOfWord(plain.codePointAt(end)) ? from : end;
    }

    private static boolean isOfWord(int letter) {
        return Character.isLetter(letter) || (letter >= '0' && letter <= '9');
    }
}
