package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.line.Place;
import crowdline.list.line.Side;
import crowdline.list.line.Sided;
import crowdline.list.name.Names;
import crowdline.list.word.Text;
import crowdline.show.figure.Placing.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Makes two of a figure that is flown twice, once at each end or to each side: "stall turn at both ends", "barrel roll left, then right". */
final class BothEnds {
    private static final String SIDE =
            "(?:(?:one|1|first|once)(?: (?:turn|full turn|time|all the way))?(?: round)? )?(?:(?:to|at|on|from|towards?) )?(?:the )?";

    private static final Pattern TWICE = Pattern.compile(
            "\\b(?<ends>(?:one |1 |once )?(?:at |on |from )?(?:each|both|opposite) (?:ends?|sides?)\\b(?! of))"
                    + "|\\b(?<ways>(?:one |1 |once )?(?:in )?(?:each|both) (?:ways?|directions?)\\b)"
                    + "|\\b(?<turns>one way,? (?:and |then ){1,2}(?:back )?the other(?: way)?\\b)"
                    + "|\\b" + SIDE + "(?<first>left|right)(?: hand)?(?<end>(?: end| side)?),?\\s?"
                    + "(?<also>(?:(?:/|&|\\+|and|then) ?(?:then )?(?:another |again )?|(?:while|whilst) \\w+ (?:do|does|fly|flies) (?:one|another|it|the same) |(?=(?:one|once|another|1)\\b)(?:another )?)"
                    + SIDE
                    + "(?<second>left|right)(?: hand)?(?: end| side)?)\\b(?! (?:end|side) (?:of|to)\\b)");

    private static final Pattern SEVERAL = Pattern.compile(
            "\\b(?:synchro\\w*|synchroni[sz]ed|(?:we|they|us|pull|go|fly) both|both (?:of|pull|fly|go)|pair of us|together|same time|each of us|simultaneous\\w*)\\b");

    /** Flown by several, or to both sides by itself. */
    private static final Set<String> ONCE = Set.of(
            "synchro split",
            "break",
            "bomb burst",
            "opposition pass",
            "mirror pass",
            "opposite rolls",
            "lazy eight",
            "changing shape",
            "formation pass",
            "formation loop",
            "formation roll",
            "join-up",
            "wing rock",
            "take-off",
            "landing",
            "run-in",
            "climb",
            "reposition",
            "bow");

    /** "Two rolls, one left, one right" and "two rolls, left then right", not "two rolls left and right", nor "two left, then one right". */
    private static final Pattern ONE_EACH = Pattern.compile(
            "(?:(?:one|1|once)\\b.*|(?:(?!\\b(?:one|1|once)\\b).)*\\bthen\\b(?!.*\\b(?:one|1|once)\\b).*)");

    private static final int TWO = 2;

    private BothEnds() {}

    /** The drafts, with a further one behind each that is flown twice. */
    static List<Draft> of(List<Draft> drafts, Text text) {
        List<Draft> all = new ArrayList<>(drafts.size());
        for (Draft draft : drafts) {
            all.add(draft);
            Draft second = second(draft, text);
            if (second != null) {
                all.add(second);
            }
        }
        return all;
    }

    private static @Nullable Draft second(Draft draft, Text text) {
        apart(draft, text);
        Names.Sense sense = draft.sense();
        if (sense == null || draft.name().isEmpty() || ONCE.contains(sense.figure())) {
            return null;
        }
        int behind = draft.name().get(draft.name().size() - 1).end();
        int end = draft.end();
        if (behind >= end) {
            return null;
        }
        Matcher twice = TWICE.matcher(text.folded()).region(behind, end);
        if (!twice.find() || isOfAnother(text, behind, twice.start())) {
            return null;
        }
        Double count = (Double) draft.said(Detail.COUNT);
        boolean isEnds = twice.group("ends") != null || !"".equals(end(twice));
        if (isEnds && twice.group().endsWith("sides") && Sided.fliesAlong(sense.figure())) {
            return null;
        }
        boolean isTwo = count != null && count == TWO;
        if (isTwo
                && !isEnds
                && (twice.group("first") == null
                        || !ONE_EACH.matcher(twice.group().strip()).matches())) {
            return null;
        }
        if (twice.group("second") != null && twice.group("second").equals(twice.group("first"))) {
            return null;
        }
        int cut = twice.group("also") == null ? twice.start() : twice.start("also");
        Draft second = draft.splitAt(cut);
        if (second == null) {
            return null;
        }
        second.mean(sense, draft.name());
        draft.copyTo(second, Set.of(Detail.ENTRY_KT, Detail.SECONDS, Detail.HEIGHT_FT));
        if (!isTwo) {
            draft.copyTo(second, Set.of(Detail.COUNT));
        } else {
            draft.unsay(Detail.COUNT);
        }
        for (Detail where : List.of(Detail.PLACE, Detail.SIDE, Detail.HEADING)) {
            draft.unsay(where);
        }
        boolean isLeftFirst = !"right".equals(twice.group("first"));
        say(draft, sense.figure(), isEnds, isLeftFirst);
        say(second, sense.figure(), isEnds, !isLeftFirst);
        draft.dropNotes(note ->
                TWICE.matcher(note.toLowerCase(java.util.Locale.UK)).find() || note.matches("(?i)(?:one|and|1| )+"));
        return second;
    }

    /** "Two wing-overs, one at each end" are two, and no lazy eight. */
    private static void apart(Draft draft, Text text) {
        if (draft.means("lazy eight") && draft.name().get(0).number() != null) {
            int behind = draft.name().get(draft.name().size() - 1).end();
            Matcher twice = TWICE.matcher(text.folded()).region(behind, Math.max(behind, draft.end()));
            if (twice.find() && (twice.group("ends") != null || !"".equals(end(twice)))) {
                draft.mean(Names.Sense.of("wing-over"), draft.name());
                draft.say(Detail.COUNT, (double) TWO);
            }
        }
    }

    private static String end(Matcher twice) {
        String end = twice.group("end");
        return end == null ? "" : end;
    }

    /** Whether another line stands between, or several fly it, one at each end. */
    private static boolean isOfAnother(Text text, int from, int to) {
        String folded = text.folded();
        int begin = folded.lastIndexOf('\n', from - 1) + 1;
        int end = folded.indexOf('\n', to);
        return folded.substring(from, to).indexOf('\n') >= 0
                || SEVERAL.matcher(folded)
                        .region(begin, end < 0 ? folded.length() : end)
                        .find();
    }

    private static void say(Draft draft, String figure, boolean isEnds, boolean isLeft) {
        if (isEnds || (!Sided.turns(figure) && !Sided.fliesAlong(figure))) {
            draft.say(Detail.PLACE, isLeft ? Place.LEFT_END : Place.RIGHT_END);
        } else if (figure.equals("sideways flight")) {
            draft.say(Detail.HEADING, isLeft ? Heading.LEFT : Heading.RIGHT);
        } else if (Sided.fliesAlong(figure)) {
            // The first of two ways begins where the crowd begins to read.
            draft.say(Detail.HEADING, isLeft ? Heading.RIGHT : Heading.LEFT);
        } else {
            draft.say(Detail.SIDE, isLeft ? Side.LEFT : Side.RIGHT);
        }
    }
}
