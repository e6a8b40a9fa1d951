package crowdline.list.name;

import crowdline.list.line.ListLine;
import crowdline.list.word.Manner;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Figures by the capitals that a hurried hand writes for them: "BR" may be a barrel roll. They are guesses, to be confirmed. */
public final class Initials {
    private static final int LEAST_WORDS = 2;

    /** Though it is a word as well. */
    private static final String TAKE_OFF = "TO";

    private final Map<String, Set<String>> meant = new LinkedHashMap<>();

    public Initials(Catalogue catalogue) {
        for (CatalogueEntry entry : catalogue.entries()) {
            List<Word> words = Words.of(Words.folded(entry.name()));
            if (words.size() >= LEAST_WORDS && words.stream().allMatch(word -> word.number() == null)) {
                meant.computeIfAbsent(
                                words.stream()
                                        .map(word -> word.plain().substring(0, 1))
                                        .collect(Collectors.joining()),
                                i -> new LinkedHashSet<>())
                        .add(entry.name());
            }
        }
    }

    /** What a word in capitals may stand for; null if it is any other word, or stands for no figure. */
    public Names.@Nullable Sense of(Word word, String written) {
        String letters = written.substring(word.start(), word.end());
        if (letters.equals(TAKE_OFF)) {
            return Names.Sense.of("take-off");
        }
        Set<String> figures = meant.get(word.plain());
        if (figures == null || !letters.chars().allMatch(Character::isUpperCase) || Manner.isAny(word.plain())) {
            return null;
        }
        List<String> choices = figures.stream().limit(ListLine.MOST_CHOICES).toList();
        return new Names.Sense(choices.get(0), choices.get(0), false, choices);
    }
}
