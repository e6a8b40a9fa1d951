package crowdline.list.name;

import crowdline.list.line.ListLine;
import crowdline.list.line.Sided;
import crowdline.list.word.Manner;
import crowdline.list.word.Rows;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a figure may be called: the names and aliases of a catalogue, and the wordings of {@code wordings.txt}. Words
 * written together, apart or with a hyphen are the same name.
 */
public final class Names {
    /**
     * What a name means.
     *
     * @param figure the catalogue's name
     * @param title how it is called
     * @param weak whether it counts only where nothing else is a figure
     * @param choices what else it may mean; empty if it is sure
     */
    public record Sense(String figure, String title, boolean weak, List<String> choices) {
        /** A figure by its own name, and no other. */
        public static Sense of(String figure) {
            return new Sense(figure, figure, false, List.of());
        }
    }

    /** A sense and how many words say it. */
    public record Named(Sense sense, int words) {}

    private static final String WEAK = "~";
    private static final String ALONE = "^";
    /** Stands behind a number, so that "2 of 2" is not "22". */
    private static final String NUMBER = "#";

    private static final int LONGEST_BEGINNING = 4;
    /** More are degrees. */
    private static final double MOST_ROLLS = 12;

    /** A quarter of what begins with these is a quarter roll; a quarter of anything else is no such figure. */
    private static final Set<String> LINES = Set.of("vertical", "45");

    private static final Set<String> UNITS = Set.of("kt", "ft", "metre", "m", "mph", "kmh", "km", "hp");

    private static final Set<String> DOES =
            Set.of("a", "the", "and", "i", "he", "she", "they", "big", "last", "final", "left", "right", "to");

    private static final Set<String> PARTS = Set.of("half", "quarter", "three-quarter");

    private static final Set<String> POSSESSIVE = Set.of("my", "his", "her", "its", "their", "our", "your");

    private final Set<String> alones = new HashSet<>();
    private final Map<String, Sense> byKey = new HashMap<>();
    private final Bags bags = new Bags();
    private final List<String> figures;
    private final List<String> inNames = new ArrayList<>();
    private final List<String> written = new ArrayList<>();
    private final Joined joined;
    private final Set<String> keys;
    private int longest;

    public Names(Catalogue catalogue) {
        figures = catalogue.entries().stream().map(CatalogueEntry::name).toList();
        Rows.of("wordings.txt").forEach(row -> addWording(row, catalogue));
        for (CatalogueEntry entry : catalogue.entries()) {
            entry.aliases().forEach(alias -> put(alias, new Sense(entry.name(), alias, isWeak(alias), List.of())));
        }
        for (CatalogueEntry entry : catalogue.entries()) {
            inNames.add(entry.name());
            inNames.addAll(entry.aliases());
            put(entry.name(), new Sense(entry.name(), entry.name(), isWeak(entry.name()), List.of()));
        }
        written.forEach(this::putInOneWord);
        keys = Set.copyOf(byKey.keySet());
        putInitials(catalogue);
        joined = new Joined(catalogue);
    }

    /** Which figures are one if they follow each other. */
    public Joined joined() {
        return joined;
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
        boolean alone = called.startsWith(ALONE);
        String figure = meant.get(0);
        String wording = weak || alone ? called.substring(1) : called;
        if (alone) {
            alones.add(key(Words.of(Words.folded(wording))));
        }
        put(wording, new Sense(figure, isSure ? figure : wording, weak, isSure ? List.of() : meant));
    }

    private void put(String name, Sense sense) {
        List<Word> words = Words.of(Words.folded(name));
        String key = key(words);
        written.add(name);
        // "Loop, loop" are two, though "loop the loop" is one; that is told by what stands between.
        List<String> spoken = words.stream()
                .map(Word::plain)
                .filter(plain -> !isSilent(plain))
                .toList();
        boolean isTwice = spoken.size() > 1 && spoken.stream().distinct().count() == 1;
        if (!key.isEmpty() && !isTwice) {
            byKey.put(key, sense);
            bags.put(words, sense);
            longest = Math.max(longest, words.size() + 2);
        }
    }

    /** "S/roll" and "h/bump": an initial, a stroke, and the rest of a name or its initial. */
    private void putInitials(Catalogue catalogue) {
        Map<String, Set<String>> meant = new LinkedHashMap<>();
        for (CatalogueEntry entry : catalogue.entries()) {
            Stream.concat(Stream.of(entry.name()), entry.aliases().stream())
                    .map(name -> Words.of(Words.folded(name)))
                    .filter(words -> words.size() == 2 && words.get(0).number() == null)
                    .forEach(words -> {
                        String first = words.get(0).plain().substring(0, 1) + "/";
                        String second = words.get(1).plain();
                        for (String stroke : isAWord(first.charAt(0)) ? List.of("/") : List.of("/", " ")) {
                            meant.computeIfAbsent(first.charAt(0) + stroke + second, k -> new LinkedHashSet<>())
                                    .add(entry.name());
                        }
                        meant.computeIfAbsent(first + second.charAt(0), k -> new LinkedHashSet<>())
                                .add(entry.name());
                        beginnings(words.get(0).plain())
                                .forEach(beginning -> meant.computeIfAbsent(
                                                beginning + " " + second, k -> new LinkedHashSet<>())
                                        .add(entry.name()));
                    });
        }
        meant.forEach((initials, figures) -> {
            List<Word> words = Words.of(initials);
            if (words.size() < 2 || !initials.startsWith(words.get(0).plain())) {
                return;
            }
            List<String> choices = figures.stream().limit(ListLine.MOST_CHOICES).toList();
            boolean isSure = figures.size() == 1;
            byKey.putIfAbsent(
                    key(words),
                    new Sense(choices.get(0), isSure ? choices.get(0) : initials, false, isSure ? List.of() : choices));
        });
    }

    /** "Sp" and "spl" of "split"; none that is a word. */
    private static Stream<String> beginnings(String word) {
        return IntStream.range(2, Math.min(LONGEST_BEGINNING, word.length() - 1) + 1)
                .mapToObj(length -> word.substring(0, length))
                .filter(beginning -> beginning.chars().allMatch(Character::isLetter)
                        && !Manner.isAny(beginning)
                        && !Words.spellings().contains(beginning));
    }

    /** "I turn round" is no Immelmann turn. */
    private static boolean isAWord(char initial) {
        return initial == 'i' || initial == 'a';
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
            key.append((isSilent(words.get(i).plain()) || isOfTheWings(words, i)) && !isLast ? "" : keyed(words, i));
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

    /** The "his" of "rocks his wings". */
    private static boolean isOfTheWings(List<Word> words, int at) {
        return at + 1 < words.size()
                && POSSESSIVE.contains(words.get(at).plain())
                && Set.of("wing", "nose").contains(words.get(at + 1).plain());
    }

    /** Every name of the catalogue. */
    public List<String> figures() {
        return figures;
    }

    /** What the catalogue calls its figures. */
    List<String> inNames() {
        return inNames;
    }

    /** Names and wordings as they are written. */
    public List<String> wordings() {
        return written;
    }

    /** Names and wordings as they are compared, without initials. */
    Iterable<String> keys() {
        return keys;
    }

    /** The longest name that begins with this word. */
    @Nullable
    public Named at(List<Word> words, int from, boolean weakToo) {
        if (isSilent(words.get(from).plain()) || isUnit(words, from)) {
            return null;
        }
        Named found = null;
        StringBuilder key = new StringBuilder();
        for (int i = from; i < Math.min(words.size(), from + longest); i++) {
            String plain = words.get(i).plain();
            if (!isSilent(plain) && !isOfTheWings(words, i)) {
                key.append(keyed(words, i));
            }
            Sense sense = byKey.get(isSilent(plain) ? key + plain : key.toString());
            if (sense != null
                    && !isMeasured(words, i)
                    && !isOfTheWheels(words, i)
                    && (weakToo || !sense.weak())
                    && (!alones.contains(key.toString()) || isAlone(words, from, i))
                    && (!isPart(words, from) || LINES.contains(words.get(from).plain()))) {
                found = new Named(sense, i + 1 - from);
            }
        }
        return found;
    }

    /** The 360 of "360 kt" is no turn. */
    private static boolean isMeasured(List<Word> words, int last) {
        return words.get(last).number() != null
                && last + 1 < words.size()
                && UNITS.contains(words.get(last + 1).plain());
    }

    /** "Pass with landing gear out." */
    private static boolean isOfTheWheels(List<Word> words, int last) {
        return words.get(last).plain().equals("landing")
                && last + 1 < words.size()
                && Set.of("gear", "light", "flap").contains(words.get(last + 1).plain());
    }

    /** Whether beside these words there is nothing but numbers, and who does it. */
    private static boolean isAlone(List<Word> words, int first, int last) {
        return IntStream.range(0, words.size())
                .allMatch(i -> (first <= i && i <= last)
                        || DOES.contains(words.get(i).plain())
                        || words.get(i).number() != null
                        || Character.isDigit(words.get(i).plain().charAt(0)));
    }

    /** The "s" of "12 s roll" is no initial. */
    private static boolean isUnit(List<Word> words, int at) {
        Word word = words.get(at);
        boolean isShortened = word.end() - word.start() > 1;
        return word.plain().length() == 1
                && Character.isLetter(word.plain().charAt(0))
                && (isShortened || (at > 0 && words.get(at - 1).number() != null));
    }

    private static boolean isPart(List<Word> words, int from) {
        return from > 0 && words.get(from - 1).plain().equals("quarter");
    }

    /** "vertical 1/2 roll up": the count stands within the name. Its own place is {@code from + at}. */
    public record Counted(Sense sense, int words, int at) {}

    /** The longest name that begins with this word and has a count in it; null if there is none. */
    @Nullable
    public Counted aroundACount(List<Word> words, int from) {
        for (int at = from + 1; at < Math.min(words.size() - 1, from + longest); at++) {
            Word count = words.get(at);
            Double number = count.number();
            if (number == null ? !PARTS.contains(count.plain()) : number > MOST_ROLLS) {
                continue;
            }
            List<Word> without = new ArrayList<>(words.subList(from, Math.min(words.size(), from + longest)));
            without.remove(at - from);
            Named named = at(without, 0, false);
            if (named != null
                    && named.words() > at - from
                    && Sided.hasRollsOnALine(named.sense().figure())) {
                return new Counted(named.sense(), named.words() + 1, at - from);
            }
        }
        return null;
    }

    static String keyed(List<Word> words, int i) {
        String plain = words.get(i).plain();
        boolean isNumber = Character.isDigit(plain.charAt(0));
        return onTop(words, i) ? "on" : isNumber ? plain + NUMBER : plain;
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

    /** What all these words together are called, in this order or any other; null if nothing is. */
    @Nullable
    public Sense all(List<Word> words) {
        Sense inOrder = byKey.get(key(words));
        return inOrder != null ? inOrder : bags.of(words, 0, words.size());
    }

    /**
     * The longest name whose words stand here in another order, where the order they stand in leaves one of them over:
     * "half eight Cuban", but not "loop, half roll".
     */
    @Nullable
    public Named anyOrderAt(List<Word> words, int from) {
        if (Bags.isJoining(words.get(from)) || isPart(words, from)) {
            return null;
        }
        Named found = null;
        for (int to = from + 2; to <= Math.min(words.size(), from + longest); to++) {
            // "A pass back" is none on the back.
            boolean isNone = Bags.isJoining(words.get(to - 1))
                    || (words.get(to - 1).plain().equals("back")
                            && words.get(to - 2).plain().equals("pass"));
            Sense sense = isNone ? null : bags.of(words, from, to);
            if (sense != null && !isExplained(words, from, to, sense)) {
                found = new Named(sense, to - from);
            }
        }
        return found;
    }

    /**
     * Whether names in order cover a stretch, or one of them reaches beyond it. "Roll in 4 points" is not two figures,
     * since the one behind is what both are.
     */
    private boolean isExplained(List<Word> words, int from, int to, Sense whole) {
        int i = from;
        boolean isAll = true;
        boolean isNamedWithin = false;
        while (i < to) {
            Named named = at(words, i, false);
            if (named != null && i + named.words() > to) {
                return true;
            }
            isNamedWithin |= named != null && named.sense().figure().equals(whole.figure());
            isAll &= named != null || Bags.isJoining(words.get(i));
            i += named == null ? 1 : named.words();
        }
        return isAll && !isNamedWithin;
    }
}
