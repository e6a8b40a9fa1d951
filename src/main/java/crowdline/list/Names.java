package crowdline.list;

import crowdline.show.Catalogue;
import crowdline.show.CatalogueEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a figure may be called: the names and aliases of a catalogue, and the wordings of {@code wordings.txt}. Words
 * written together, apart or with a hyphen are the same name.
 */
final class Names {
    /**
     * What a name means.
     *
     * @param figure the catalogue's name
     * @param title how it is called
     * @param weak whether it counts only where nothing else is a figure
     * @param choices what else it may mean; empty if it is sure
     */
    record Sense(String figure, String title, boolean weak, List<String> choices) {}

    /** A sense and how many words say it. */
    record Named(Sense sense, int words) {}

    private static final String WEAK = "~";

    private final Map<String, Sense> byKey = new HashMap<>();
    private final List<String> figures;
    private final List<String> written = new ArrayList<>();
    private int longest;

    Names(Catalogue catalogue) {
        figures = catalogue.entries().stream().map(CatalogueEntry::name).toList();
        Rows.of("wordings.txt").forEach(row -> addWording(row, catalogue));
        for (CatalogueEntry entry : catalogue.entries()) {
            entry.aliases().forEach(alias -> put(alias, new Sense(entry.name(), alias, isWeak(alias), List.of())));
        }
        for (CatalogueEntry entry : catalogue.entries()) {
            put(entry.name(), new Sense(entry.name(), entry.name(), isWeak(entry.name()), List.of()));
        }
        written.forEach(this::putInOneWord);
    }

    private boolean isWeak(String name) {
        Sense wording = byKey.get(key(Words.of(Words.folded(name))));
        return wording != null && wording.weak();
    }

    private void addWording(String row, Catalogue catalogue) {
        boolean isSure = row.contains(" = ");
        int middle = row.indexOf(isSure ? " = " : " ? ");
        String called = row.substring(0, middle);
        List<String> meant = List.of(row.substring(middle + 3).split(" / ")).stream()
                .flatMap(name -> catalogue.find(name).stream())
                .map(CatalogueEntry::name)
                .toList();
        if (meant.isEmpty()) {
            return;
        }
        boolean weak = called.startsWith(WEAK);
        String figure = meant.get(0);
        String wording = weak ? called.substring(1) : called;
        put(wording, new Sense(figure, isSure ? figure : wording, weak, isSure ? List.of() : meant));
    }

    private void put(String name, Sense sense) {
        List<Word> words = Words.of(Words.folded(name));
        String key = key(words);
        written.add(name);
        if (!key.isEmpty()) {
            byKey.put(key, sense);
            longest = Math.max(longest, words.size() + 2);
        }
    }

    /** "lazyeight", though "eight" alone is a number. */
    private void putInOneWord(String name) {
        String word = Words.plain(Words.folded(name).replaceAll("[^a-z]", ""));
        Sense sense = byKey.get(key(Words.of(Words.folded(name))));
        if (sense != null && word.length() > 5 && name.chars().noneMatch(Character::isDigit)) {
            byKey.putIfAbsent(word, sense);
        }
    }

    /** What is silent within a name is not at its end: "take of". */
    private static String key(List<Word> words) {
        StringBuilder key = new StringBuilder();
        for (int i = 0; i < words.size(); i++) {
            boolean isLast = i == words.size() - 1;
            key.append(isSilent(words.get(i).plain()) && !isLast ? "" : keyed(words, i));
        }
        return key.toString();
    }

    private static boolean isSilent(String plain) {
        return plain.equals("a")
                || plain.equals("an")
                || plain.equals("the")
                || plain.equals("of")
                || plain.equals("it");
    }

    /** Every name of the catalogue. */
    List<String> figures() {
        return figures;
    }

    /** Names and wordings as they are written. */
    List<String> wordings() {
        return written;
    }

    /** Names and wordings as they are compared. */
    Iterable<String> keys() {
        return byKey.keySet();
    }

    /** The longest name that begins with this word. */
    @Nullable
    Named at(List<Word> words, int from, boolean weakToo) {
        boolean isPart = from > 0 && words.get(from - 1).plain().equals("quarter");
        if (isPart || isSilent(words.get(from).plain())) {
            return null;
        }
        Named found = null;
        StringBuilder key = new StringBuilder();
        for (int i = from; i < Math.min(words.size(), from + longest); i++) {
            String plain = words.get(i).plain();
            if (!isSilent(plain)) {
                key.append(keyed(words, i));
            }
            Sense sense = byKey.get(isSilent(plain) ? key + plain : key.toString());
            if (sense != null && (weakToo || !sense.weak())) {
                found = new Named(sense, i + 1 - from);
            }
        }
        return found;
    }

    private static String keyed(List<Word> words, int i) {
        return onTop(words, i) ? "on" : words.get(i).plain();
    }

    /** "at the top" and "over the top" are "on top". */
    private static boolean onTop(List<Word> words, int i) {
        String plain = words.get(i).plain();
        if (!plain.equals("at") && !plain.equals("over")) {
            return false;
        }
        int next = i + 1;
        while (next < words.size() && isSilent(words.get(next).plain())) {
            next++;
        }
        return next < words.size() && words.get(next).plain().equals("top");
    }

    /** What all these words together are called, or null. */
    @Nullable
    Sense all(List<Word> words) {
        return byKey.get(key(words));
    }
}
