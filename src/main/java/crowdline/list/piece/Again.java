package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.word.Word;
import java.util.List;

/** Tells whether a piece names the figure before it once more, or asks for another of it. */
public final class Again {
    private Again() {}

    /** "After the loop it is a stall turn": the loop is the one before. */
    public static boolean isAfterIt(List<Draft> lines, Heard heard) {
        Names.Sense before =
                lines.isEmpty() ? null : lines.get(lines.size() - 1).sense();
        Names.Sense again = heard.drafts().get(0).sense();
        return before != null
                && again != null
                && (before.figure().equals(again.figure()) || before.figure().equals("formation " + again.figure()))
                && heard.words().get(0).plain().equals("after");
    }

    /** "Loop, and off the bottom of the loop into a half Cuban": it was flown before. */
    public static boolean isOutOfIt(List<Draft> lines, Heard heard) {
        Names.Sense before =
                lines.isEmpty() ? null : lines.get(lines.size() - 1).sense();
        Draft again = heard.drafts().get(0);
        Names.Sense sense = again.sense();
        return before != null
                && sense != null
                && before.figure().equals(sense.figure())
                && !again.name().isEmpty()
                && Between.isCameFrom(
                        heard.words(), heard.words().indexOf(again.name().get(0)));
    }

    /** "Loop. Another one straight after." */
    public static boolean isAnother(List<Draft> lines, Heard heard) {
        List<String> words = heard.words().stream()
                .map(Word::plain)
                .filter(word -> !word.equals("and") && !word.equals("then"))
                .toList();
        boolean isSaid = !words.isEmpty()
                && (words.get(0).equals("another")
                        || words.equals(List.of("again"))
                        || (words.size() > 1 && words.subList(0, 2).equals(List.of("same", "again"))));
        return isSaid && !lines.isEmpty() && lines.get(lines.size() - 1).isFigure();
    }

    /** Keeps the words of the first of several drafts, which only names the last line once more: the next has them, else that line. */
    public static void keep(List<Draft> drafts, Draft last) {
        if (drafts.size() > 1) {
            drafts.get(1).beginAt(drafts.get(0).start());
        } else {
            drafts.get(0).eachSpan(last::takeIn);
        }
    }
}
