package crowdline.list.piece;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.split.Piece.Parting;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;

/** Rolls that are said behind a figure and flown on its lines. */
final class RollsWithin {
    /** Figures with straight lines, on which rolls may be flown. */
    private static final Set<String> WITH_LINES = Set.of(
            "humpty bump",
            "humpty bump with push top",
            "stall turn",
            "tail slide",
            "half Cuban",
            "reverse half Cuban",
            "Cuban eight");

    /** On which part of it a roll is flown, wherever it is said. */
    private static final Set<String> PARTS = Set.of("line", "downline", "upline", "way");

    /** A line on the ground is none of a figure. */
    private static final Set<String> GROUND = Set.of("centre", "crowd", "display", "show", "runway", "flight", "along");

    /** The same, said behind the roll. */
    private static final Set<String> LINES = Set.of("up", "down", "out");

    /** A line up or down a slope, for the rolls on it. */
    private static final String SLOPING = "45 degree";

    private static final String PULL = "pull to vertical";

    private RollsWithin() {}

    /** Whether a figure has straight lines, up or down, for what is said of a roll on them. */
    static boolean mayBeIn(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense != null && WITH_LINES.contains(sense.figure());
    }

    /** "Pull up, two rolls": what a count of rolls makes of the pull. */
    static void count(Draft previous, Object count) {
        if (previous.means(PULL)) {
            previous.mean(Names.Sense.of("vertical roll up"));
        }
        previous.say(Detail.COUNT, count);
    }

    /** "Vertical roll", and "two rolls" in the column beside it. */
    static boolean isCount(Draft previous, Names.Sense before, Heard heard) {
        Draft draft = heard.drafts().get(0);
        return (before.figure().startsWith("vertical roll") || before.figure().equals(PULL))
                && draft.means("aileron roll")
                && draft.saysOnly(Detail.COUNT)
                && draft.notes().isEmpty()
                && !previous.says(Detail.COUNT);
    }

    /** "Line up at 45 degrees, 2 x 4 points". */
    static boolean areOnASlope(Names.Sense before, Heard heard) {
        Draft draft = heard.drafts().get(0);
        Names.Sense within = draft.sense();
        return within != null
                && before.figure().startsWith(SLOPING)
                && heard.piece().parting() == Parting.COMMA
                && (within.figure().contains("roll") || within.figure().contains("flick"));
    }

    /** "Humpty, full roll on the way up" and "rolling 360, 4 rolls": these rolls are no figure of their own. */
    static boolean areFlown(Names.Sense before, Heard heard) {
        Draft draft = heard.drafts().get(0);
        Names.Sense within = draft.sense();
        if (within == null || !within.figure().contains("roll")) {
            return false;
        }
        return before.figure().equals("rolling turn")
                ? within.figure().equals("aileron roll") && draft.says(Detail.COUNT)
                : WITH_LINES.contains(before.figure()) && isOnALine(heard.words(), draft.name());
    }

    /** "On the way down a half roll" and "half roll down", but not "coming down from it a slow roll". */
    private static boolean isOnALine(List<Word> words, List<Word> roll) {
        int name = roll.isEmpty() ? 0 : roll.get(0).start();
        for (int i = 0; i < words.size(); i++) {
            String plain = words.get(i).plain();
            boolean isUpsideDown = i > 0 && words.get(i - 1).plain().equals("upside");
            boolean isGround = i > 0 && GROUND.contains(words.get(i - 1).plain());
            if ((PARTS.contains(plain) && !isGround)
                    || (LINES.contains(plain) && !isUpsideDown && words.get(i).start() > name)) {
                return true;
            }
        }
        return false;
    }
}
