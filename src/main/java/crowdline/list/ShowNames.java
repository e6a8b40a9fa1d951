package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.word.Called;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;

/** Names that a show gives its figures: "the Corkscrew (three rolls going up)" is titled so, and is what the bracket says. */
final class ShowNames {
    private static final Set<String> NO_NAMES = Set.of(
            "arrival",
            "departure",
            "start",
            "middle",
            "finish",
            "finale",
            "figure",
            "part",
            "entry",
            "exit",
            "note",
            "solo",
            "lead",
            "leader",
            "pair",
            "all",
            "both",
            "height",
            "speed",
            "base",
            "time",
            "music",
            "smoke",
            "display",
            "sequence",
            "pass",
            "turn");

    private ShowNames() {}

    /** Reads a stretch of a text. */
    interface Reading {
        List<Draft> read(Text text, int from, int to);
    }

    /** Whether a name is one: it is no sure figure itself, and what stands behind it is. */
    static boolean isOne(Text text, Called called, Reading reading) {
        List<Word> words = text.words(called.from(), called.to());
        boolean isOther = words.isEmpty()
                || words.stream()
                        .anyMatch(word -> word.number() != null
                                || NO_NAMES.contains(word.plain())
                                || Manner.HEADING.has(word)
                                || Manner.COLUMN.has(word)
                                || (!called.isQuoted() && Manner.GREETING.has(word)));
        return !isOther
                && !isSure(reading.read(text, called.from(), called.to()))
                && isSaid(reading.read(text, called.meantFrom(), called.meantTo()));
    }

    private static boolean isSure(List<Draft> drafts) {
        Names.Sense sense = drafts.get(0).sense();
        return sense != null
                && !sense.weak()
                && sense.choices().isEmpty()
                && drafts.get(0).notes().isEmpty();
    }

    private static boolean isSaid(List<Draft> drafts) {
        return drafts.stream().anyMatch(Draft::isFigure);
    }

    /** Calls the figures so. */
    static void give(List<Draft> drafts, Text text) {
        for (Called called : text.names()) {
            drafts.stream()
                    .filter(draft -> !draft.name().isEmpty()
                            && draft.name().get(0).start() >= called.to()
                            && draft.name().get(0).start() < called.meantTo())
                    .findFirst()
                    .ifPresent(draft -> draft.call(called.name()));
        }
    }
}
