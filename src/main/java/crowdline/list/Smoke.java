package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Heard;
import crowdline.list.word.Words;
import java.util.List;

/** "Smoke on from the loop" behind a list that has a loop: it says when, and no second one is flown. */
final class Smoke {
    private Smoke() {}

    /** Whether a piece only says when there is smoke; the figure it names, which was listed before, has it then. */
    static boolean isTold(List<Draft> listed, Heard heard) {
        Names.Sense sense = heard.drafts().get(0).sense();
        List<String> words = Words.plain(heard.words());
        if (sense == null || !words.get(0).equals("smoke") || !words.contains("the")) {
            return false;
        }
        for (Draft line : listed) {
            Names.Sense before = line.sense();
            if (before != null && before.figure().equals(sense.figure())) {
                line.say(Detail.SMOKE, !words.contains("off") && !words.contains("out"));
                return true;
            }
        }
        return false;
    }
}
