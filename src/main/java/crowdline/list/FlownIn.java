package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Heard;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** In which sentences of a text each figure stands. */
final class FlownIn {
    /** As many are enough to be sure of another. */
    private static final int ENOUGH = 2;

    private final Map<String, Set<Integer>> sentences = new HashMap<>();

    /** @param heard the pieces of each sentence */
    FlownIn(List<List<Heard>> heard) {
        for (int i = 0; i < heard.size(); i++) {
            for (Heard piece : heard.get(i)) {
                for (Draft draft : piece.drafts()) {
                    add(draft.sense(), i);
                }
            }
        }
    }

    private void add(Names.@Nullable Sense sense, int sentence) {
        if (sense != null) {
            Set<Integer> in = sentences.computeIfAbsent(sense.figure(), figure -> new HashSet<>());
            if (in.size() < ENOUGH) {
                in.add(sentence);
            }
        }
    }

    /** Whether another sentence flies a figure. */
    boolean isElsewhere(Draft figure, int but) {
        Names.Sense sense = figure.sense();
        return sense != null
                && sentences.getOrDefault(sense.figure(), Set.of()).stream().anyMatch(sentence -> sentence != but);
    }
}
