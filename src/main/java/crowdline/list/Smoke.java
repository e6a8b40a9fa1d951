package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Heard;
import crowdline.list.word.Words;
import java.util.List;
import java.util.Set;

/** "Smoke on from the loop" behind a list that has a loop: it says when, and no second one is flown. */
final class Smoke {
    /** "About 9 min. Smoke on for everything but the spin." */
    private static final Set<String> AHEAD = Set.of("about", "min", "s", "and", "with", "the");

    private Smoke() {}

    /** Whether a piece only says when there is smoke; the figure it names, which was listed before, has it then. */
    static boolean isTold(List<Draft> listed, Heard heard) {
        Names.Sense sense = heard.drafts().get(0).sense();
        List<String> words = Words.plain(heard.words());
        int smoke = words.indexOf("smoke");
        boolean isSaid = smoke >= 0
                && heard.words().subList(0, smoke).stream()
                        .allMatch(word -> word.number() != null || AHEAD.contains(word.plain()));
        if (sense == null || !isSaid || !words.contains("the")) {
            return false;
        }
        boolean isOff = words.contains("off") || words.contains("out");
        boolean isExcept = words.contains("but") || words.contains("except");
        for (Draft line : listed) {
            Names.Sense before = line.sense();
            if (before != null && before.figure().equals(sense.figure())) {
                line.say(Detail.SMOKE, isOff == isExcept);
                return true;
            }
        }
        return false;
    }
}
