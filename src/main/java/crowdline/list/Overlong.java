package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Heard;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Times that no figure takes: of "roll, 6 mins" the minutes are those of something else. */
final class Overlong {
    /** Seconds, by judgement: the longest spins and rolling turns of displays take half of it. */
    private static final double MOST = 120;

    private static final double MINUTE = 60;

    /** They last as long as one likes. */
    private static final Set<String> LASTING = Set.of(
            "take-off",
            "landing",
            "climb",
            "spiral climb",
            "reposition",
            "low pass",
            "formation pass",
            "join-up",
            "changing shape",
            "run-in",
            "hover",
            "nose-in circle",
            "backwards flight",
            "sideways flight",
            "pedal turn",
            "steep turn",
            "jump",
            "freefall",
            "canopy descent",
            "canopy stack",
            "canopy landing");

    /** Seconds: an act takes as long, by judgement. */
    private static final double ACT = 180;

    private static final Pattern LENGTH = Pattern.compile(
            "(?s)\\W*(?:(?:the|my|our|your|it|that|all|whole|total|in|about|so|and|entire|this|they say) )*"
                    + "(?:routine|display|show|act|thing|lot|programme|program|sequence|flight|duration|time|length|total|it|that|all in|all up|altogether|in all|all|everything)\\b"
                    + "[^.\\n]{0,30}?\\b(?:minutes?|mins?)\\b[^.\\n]{0,40}\\W*");

    /** "Five min tops". */
    private static final Pattern AT_MOST = Pattern.compile(
            "\\W*(?:(?:it's|it is|about|around|roughly|that's)\\W*)*[\\w.½-]+(?: and a half)? ?(?:minutes?|mins?),? (?:tops|max|maximum|at (?:the )?most|or so|or thereabouts)\\W*");

    private static final String SO_LONG =
            "\\W*(?:(?:it's|it is|about|around|roughly|approx\\w*|some|total|all in|in all|reckon|allow)\\W*)*[\\w.½-]+(?: and a half)?";

    /** "About nine minutes from exit to last landing". */
    private static final Pattern FROM_TO =
            Pattern.compile(SO_LONG + " (?:minutes?|mins?),? from [^.\\n]{2,30} (?:to|until|till) [^.\\n]{2,30}\\W*");

    /** "Approx 9'". */
    private static final Pattern PRIME = Pattern.compile(
            "\\W*(?:(?:approx\\w*|about|around|roughly|ca|circa|total|all|in|duration|length|time|the|whole|thing|act)\\W+)+\\d{1,2}(?:[.,]5)? ?['′’]\\W*");

    /** "Eight-ish minutes from release": how long it is from there to its end. */
    private static final Pattern FROM = Pattern.compile(
            SO_LONG
                    + "(?: ?ish)? (?:minutes?|mins?),? (?:from|after) (?:the )?(?:release|brakes off|take-?off|wheels up|start|exit|first figure)\\W*");

    /** Letters: a longer sentence says more. */
    private static final int LONGEST = 120;

    private Overlong() {}

    /** Whether a sentence only says how long it is from one figure to another, which is no figure. */
    static boolean isFromTo(String sentence) {
        return sentence.length() < LONGEST && FROM_TO.matcher(sentence.strip()).matches();
    }

    /** "Seven and a half minutes", with nothing else: so long takes all of it. */
    static boolean isOfTheAct(Draft draft) {
        return draft.saysOnly(Detail.SECONDS) && draft.said(Detail.SECONDS) instanceof Double time && time >= ACT;
    }

    /** "Glider, Ada Quillan, 13.40, seven minutes", ahead of all that is flown. */
    static boolean headsTheAct(List<Heard> pieces) {
        return pieces.stream().noneMatch(Heard::isFigure)
                && pieces.stream()
                        .anyMatch(piece ->
                                piece.drafts().get(0).said(Detail.SECONDS) instanceof Double time && time > ACT);
    }

    /** Whether a sentence says how long the act is, and nothing else. */
    static boolean isAll(List<Heard> pieces) {
        return pieces.size() == 1
                && pieces.get(0).isDetail()
                && isOfTheAct(pieces.get(0).drafts().get(0));
    }

    /** "All in, six and a half minutes", "the whole routine runs nine minutes". */
    static boolean saysHowLongTheActIs(String sentence) {
        String said = sentence.strip();
        return LENGTH.matcher(said).matches()
                || AT_MOST.matcher(said).matches()
                || (said.length() < LONGEST && PRIME.matcher(said).matches())
                || (said.length() < LONGEST && FROM.matcher(said).matches())
                || isFromTo(sentence);
    }

    /** Takes such a time from the figures that have one; what to ask of each. */
    static List<String> leaveOut(List<Draft> drafts, Text text) {
        List<String> asked = new ArrayList<>();
        for (Draft draft : drafts) {
            Names.Sense sense = draft.sense();
            Object seconds = draft.said(Detail.SECONDS);
            Object count = draft.said(Detail.COUNT);
            if (seconds instanceof Double time && time >= ACT && (draft.means("landing") || draft.means("take-off"))) {
                draft.unsay(Detail.SECONDS);
                continue;
            }
            double times = count instanceof Double number ? Math.max(1, number) : 1;
            if (sense != null
                    && seconds instanceof Double time
                    && time > MOST * times
                    && !LASTING.contains(sense.figure())) {
                draft.unsay(Detail.SECONDS);
                draft.doubt();
                String minutes = String.format(Locale.UK, "%.0f min", time / MINUTE);
                draft.note(minutes);
                asked.add("\"" + draft.written(text).replaceAll("\\s+", " ") + "\" would be one figure of " + minutes
                        + "; no time was taken from it, so say what it means");
            }
        }
        return asked;
    }
}
