package crowdline.list.word;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What single words say of how a text is meant: whether somebody greets, tells, doubts, or lists. */
public enum Manner {
    /** Joins a list and says nothing. */
    FILLER,
    /** Belongs to whole sentences. */
    SENTENCE,
    /** Says that something may not be flown. */
    DOUBT,
    /** Says that something may be flown. */
    SOFT_DOUBT,
    GREETING,
    PARTING,
    HEADING,
    /** Says how a figure is, not which. */
    DESCRIBING,
    /** Belongs to a figure that stands before it. */
    QUALIFYING,
    /** Of something flown. */
    FLOWN,
    /** Says which thing is said of a figure, ahead of it. */
    LABEL,
    /** Heads a column of a table. */
    COLUMN;

    private static final Map<Manner, Set<String>> WORDS = read();

    private static Map<Manner, Set<String>> read() {
        Map<Manner, Set<String>> words = new HashMap<>();
        for (String row : Rows.of("manner.txt")) {
            int end = row.indexOf(' ');
            Set<String> set = new HashSet<>();
            Words.of(row.substring(end)).forEach(word -> set.add(word.plain()));
            words.put(valueOf(row.substring(0, end).toUpperCase(java.util.Locale.ROOT)), Set.copyOf(set));
        }
        return Map.copyOf(words);
    }

    /** Whether a word says anything of how a text is meant. */
    public static boolean isAny(String plain) {
        return WORDS.values().stream().anyMatch(words -> words.contains(plain));
    }

    public boolean has(String plain) {
        return WORDS.getOrDefault(this, Set.of()).contains(plain);
    }

    public boolean has(Word word) {
        return has(word.plain());
    }

    public boolean hasAny(List<Word> words) {
        return words.stream().anyMatch(this::has);
    }

    public long count(List<Word> words) {
        return words.stream().filter(this::has).count();
    }
}
