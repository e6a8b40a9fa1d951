package crowdline.list.name;

import crowdline.list.name.Names.Sense;
import crowdline.list.word.Word;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Names by their words in any order. Where two figures have the same words, the order matters, and neither is found. */
final class Bags {
    private static final Set<String> JOINING = Set.of("a", "an", "the", "of", "it", "in", "with", "by", "on");

    /** A sense, or null where the words are those of several. */
    private final Map<String, @Nullable Sense> byWords = new HashMap<>();

    /** Whether a word only joins the words of a name. */
    static boolean isJoining(Word word) {
        return JOINING.contains(word.plain());
    }

    void put(List<Word> words, Sense sense) {
        String key = key(words, 0, words.size());
        boolean isOut = !words.isEmpty() && words.get(0).plain().equals("out");
        if (isOut || sense.weak() || !sense.choices().isEmpty() || key.indexOf(' ') < 0) {
            return;
        }
        Sense before = byWords.get(key);
        boolean isOther =
                byWords.containsKey(key) && (before == null || !before.figure().equals(sense.figure()));
        byWords.put(key, isOther ? null : sense);
    }

    @Nullable
    Sense of(List<Word> words, int from, int to) {
        return byWords.get(key(words, from, to));
    }

    private static String key(List<Word> words, int from, int to) {
        return IntStream.range(from, to)
                .filter(i -> !isJoining(words.get(i)))
                .mapToObj(i -> Names.keyed(words, i))
                .sorted()
                .collect(Collectors.joining(" "));
    }
}
