package crowdline.console.words;

import crowdline.console.paint.Mark;
import crowdline.speech.plain.SpeechFinding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the Words place shows.
 *
 * @param places where remarks belong
 * @param place which of them is chosen
 * @param remarks the remarks there
 * @param remark which of them is chosen, -1 for none
 * @param page the chosen remark
 * @param drafts how many first drafts there are still in the act of the place, or in the whole show where that is chosen
 * @param facts what was computed about the place
 */
public record WordsView(
        List<PlaceView> places,
        int place,
        List<RemarkRow> remarks,
        int remark,
        Optional<RemarkPage> page,
        int drafts,
        FactsView facts) {
    public WordsView {
        places = List.copyOf(places);
        remarks = List.copyOf(remarks);
    }

    /**
     * A place remarks belong to.
     *
     * @param number which figure of the act's first variant it is, from 1, as the places of the day number it; empty for
     *     any other place
     * @param depth 0 for the show, 1 for an act, 2 for a figure
     * @param remarks how many it has
     */
    public record PlaceView(String number, String name, int depth, int remarks) {}

    /**
     * A remark in the list.
     *
     * @param draft that it is a first draft, or older in its other language; null if a person has seen all of it
     */
    public record RemarkRow(
            String kind,
            String text,
            Mark verdict,
            @Nullable Mark draft) {}

    /**
     * The remark being written.
     *
     * @param draft as typed
     * @param firstDraft that nobody has read it yet; null if it is a person's own words
     * @param spoken what will be said
     * @param verdict how long it takes against the time there is
     * @param shortVerdict the same for the short form, or null
     * @param room what time there is, in a sentence
     * @param planned where the plan has it, in a sentence; empty if not known yet
     * @param problems what cannot be used as typed
     * @param findings what listeners may not follow, in the order of the text
     * @param reads how all remarks of the place's act read together, in a sentence; empty if there are too few
     * @param inFigure whether it belongs to a figure, so that earliest and latest mean something
     * @param moments what there is to see in its figure, in words, in order
     * @param speakers the names of those who speak at the show
     * @param notes what is to be known of some of them, by name
     * @param other how long the other language takes and when it is said; null if there is none
     * @param acceptable whether something in it waits for a person to say that it will do
     */
    public record RemarkPage(
            RemarkDraft draft,
            @Nullable Mark firstDraft,
            String spoken,
            Mark verdict,
            @Nullable Mark shortVerdict,
            String room,
            String planned,
            List<String> problems,
            List<SpeechFinding> findings,
            String reads,
            boolean inFigure,
            List<String> moments,
            List<String> speakers,
            Map<String, String> notes,
            @Nullable Mark other,
            boolean acceptable) {

        public RemarkPage {
            moments = List.copyOf(moments);
            speakers = List.copyOf(speakers);
            notes = Map.copyOf(notes);
            problems = List.copyOf(problems);
            findings = List.copyOf(findings);
        }
    }
}
