package crowdline.draft;

import crowdline.show.Show;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What the show says already: no sentence is told twice, and so no joke is. */
final class SaidBefore {
    private final Set<String> keys = new HashSet<>();

    SaidBefore(Show show) {
        show.everyRemark().forEach(r -> {
            take(r.text());
            String shorter = r.shortText();
            if (shorter != null) {
                take(shorter);
            }
        });
    }

    /** Whether no sentence of the text was said. */
    boolean isNew(String text) {
        List<String> found = Sentences.of(text).stream().map(Sentences::key).toList();
        return new HashSet<>(found).size() == found.size() && found.stream().noneMatch(keys::contains);
    }

    /** What of a text was not said yet, as far as the first sentence that was; empty if that is nothing. */
    String newPart(String text) {
        List<String> parts = Sentences.of(text).stream().takeWhile(this::isNew).toList();
        return String.join(" ", parts);
    }

    /** The sentences of a text that were not said yet. */
    String rest(String text) {
        return Sentences.of(text).stream().filter(this::isNew).collect(Collectors.joining(" "));
    }

    void take(String text) {
        Sentences.of(text).forEach(s -> keys.add(Sentences.key(s)));
    }
}
