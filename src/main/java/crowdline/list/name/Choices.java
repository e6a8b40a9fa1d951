package crowdline.list.name;

import crowdline.list.line.ListLine;
import crowdline.list.word.Manner;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds the figures that share words with what somebody wrote. */
public final class Choices {
    private final Map<String, List<String>> byWord = new HashMap<>();
    private final Map<String, List<String>> byInitials = new HashMap<>();
    private final Spelling spelling;

    public Choices(List<String> figures, Spelling spelling) {
        this.spelling = spelling;
        for (String figure : figures) {
            String initials = Words.of(Words.folded(figure)).stream()
                    .map(word -> word.plain().substring(0, 1))
                    .collect(Collectors.joining());
            if (initials.length() > 1) {
                byInitials.computeIfAbsent(initials, i -> new ArrayList<>()).add(figure);
            }
            for (Word word : Words.of(Words.folded(figure))) {
                if (!Manner.FILLER.has(word)) {
                    byWord.computeIfAbsent(word.plain(), w -> new ArrayList<>()).add(figure);
                }
            }
        }
    }

    /** Those that share most, and of them the shortest first; {@link ListLine#MOST_CHOICES} at most. */
    public List<String> nearest(String words) {
        Map<String, Double> shared = new LinkedHashMap<>();
        for (Word word : Words.of(Words.folded(words.substring(0, Math.min(words.length(), 80))))) {
            String plain = byWord.containsKey(word.plain())
                    ? word.plain()
                    : byInitials.containsKey(word.plain())
                            ? word.plain()
                            : spelling.nearest(word).orElse(word.plain());
            List<String> figures = byWord.getOrDefault(plain, byInitials.getOrDefault(plain, List.of()));
            figures.forEach(figure -> shared.merge(figure, 1.0 / figures.size() + 1, Double::sum));
        }
        return shared.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.comparingInt(String::length))))
                .limit(ListLine.MOST_CHOICES)
                .map(Map.Entry::getKey)
                .toList();
    }
}
