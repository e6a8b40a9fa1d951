package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Tells whether a piece names the figure before it in other words. */
final class NamedAgain {
    /** What a figure of its own ends with: "loop, roll off the top" are two. */
    private static final Set<String> HEADS = Set.of("loop", "roll", "turn", "spin", "pass", "flick", "eight");

    private NamedAgain() {}

    /** "A roll, the slow one": which of them it is. */
    static boolean isTheOneThat(Draft previous, Heard heard, Names names, Text text) {
        List<Word> words = heard.words();
        for (int i = 1; i < words.size(); i++) {
            boolean isOne = text.folded().startsWith("one", words.get(i).start())
                    && words.get(0).plain().equals("the")
                    && words.get(i - 1).plain().length() > 1
                    && !heard.isFigure();
            List<Word> both = isOne
                    ? Stream.concat(Stream.of(words.get(i - 1)), previous.name().stream())
                            .toList()
                    : List.of();
            Names.Sense sense = isOne ? names.all(both) : null;
            if (sense != null) {
                previous.mean(sense, both);
                return true;
            }
        }
        return false;
    }

    /** "Vrille, 3 turns (spin)": its name once more. */
    static boolean isBracketed(Names.Sense before, Heard heard, Text text) {
        Draft draft = heard.drafts().get(0);
        Names.Sense again = draft.sense();
        if (again == null
                || !again.figure().equals(before.figure())
                || draft.name().isEmpty()) {
            return false;
        }
        int begin = draft.name().get(0).start();
        int end = draft.name().get(draft.name().size() - 1).end();
        String folded = text.folded();
        return begin > heard.piece().from()
                && folded.charAt(begin - 1) == '('
                && end < folded.length()
                && folded.charAt(end) == ')';
    }

    /** "Turn round at the right, stall turn." */
    static boolean isTurningRound(Draft begun) {
        Names.Sense sense = begun.sense();
        return sense != null
                && sense.figure().equals("reposition")
                && begun.name().size() == 2
                && begun.name().get(0).plain().startsWith("turn")
                && Set.of("round", "around").contains(begun.name().get(1).plain());
    }

    /** "Roll, aileron" and "roll, 4 point": the first word is what the second says which of. */
    static boolean isHeadOf(Draft previous, Heard heard, Names.Sense both) {
        Names.Sense second = heard.drafts().get(0).sense();
        return previous.name().size() == 1
                && previous.startsALine()
                && second != null
                && second.figure().equals(both.figure())
                && !heard.words().contains(previous.name().get(0))
                && !(HEADS.contains(previous.name().get(0).plain())
                        && !GoingOn.BY_MEANS_OF.contains(heard.words().get(0).plain())
                        && heard.words().stream().anyMatch(word -> HEADS.contains(word.plain())));
    }
}
