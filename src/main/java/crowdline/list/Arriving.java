package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.line.Place;
import crowdline.list.name.Names;
import crowdline.list.word.Text;
import crowdline.list.word.Words;
import crowdline.show.figure.Placing.Heading;
import java.util.Set;
import java.util.regex.Pattern;

/** What begins an act comes from the end that is named with it: "dive in left", "I come in high on the left and dive". */
final class Arriving {
    private static final Set<String> FIGURES = Set.of("dive", "run-in");

    /** Then it is flown there. */
    private static final Pattern AT = Pattern.compile("\\b(?:at|end|over)\\b");

    /** Then it goes there. */
    private static final Pattern AWAY = Pattern.compile("\\b(?:away|out|off|towards?)\\b");

    private Arriving() {}

    /** Lets it face the other way. */
    static void turn(Draft draft, Text text) {
        Names.Sense sense = draft.sense();
        if (sense != null
                && FIGURES.contains(sense.figure())
                && !draft.says(Detail.HEADING)
                && draft.said(Detail.PLACE) instanceof Place place
                && place != Place.CENTRE
                && !AT.matcher(Words.folded(draft.written(text))).find()) {
            draft.unsay(Detail.PLACE);
            boolean isAway = AWAY.matcher(Words.folded(draft.written(text))).find();
            draft.say(Detail.HEADING, (place == Place.LEFT_END) == isAway ? Heading.LEFT : Heading.RIGHT);
        }
    }
}
