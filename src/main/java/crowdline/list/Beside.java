package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.line.Sided;
import crowdline.list.name.Names;
import crowdline.list.piece.GoingOn;
import crowdline.list.piece.Heard;
import crowdline.list.split.Piece;
import crowdline.list.split.Piece.Parting;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Tells whether a piece that names a figure only says something of another. */
final class Beside {
    /** A word for these means one wherever it stands: "slow roll, slow pass, land". */
    private static final Set<String> FLOWN_AS_WELL =
            Set.of("take-off", "landing", "low pass", "steep turn", "half roll");

    private static final Pattern NAMES = Pattern.compile(
            "(?s)(?:.*\\b(?:calls? (?:it|that|this|them)|called|named|known as|i said|says?|we name (?:it|that)|names? it)|it's|its|that's|thats|which is|that is|it"
                    + " is|this is)(?: a| an| the)?\\s+");

    private static final Set<String> YAWING = Set.of("yaw", "pivot", "kick", "rotate");

    private static final Set<String> TURNING = Set.of("rolling", "turning", "spinning");

    /** Degrees. */
    private static final int QUARTER = 90;

    private static final Set<String> YES = Set.of("yes", "yeah", "yep");

    private static final Set<String> CIRCLE = Set.of(
            "a",
            "full",
            "complete",
            "whole",
            "1",
            "circle",
            "turn",
            "once",
            "around",
            "all",
            "the",
            "way",
            "round",
            "degree",
            "on",
            "spot");

    private static final Set<String> UNITS = Set.of("kt", "ft", "mph", "km", "kmh", "metre", "m");

    private static final Set<String> ARTICLES = Set.of("a", "an", "the", "our", "my");

    private static final Set<String> GOES = Set.of("go", "goe", "goes", "break", "left", "right");

    private static final Set<String> DO = Set.of("do", "doing", "fly", "flying", "does");

    private static final Set<String> ENDS = Set.of("take-off", "landing");

    private static final Set<String> LEADING = Set.of(
            "speed", "entry", "for", "of", "height", "time", "the", "nb", "note", "ps", "and", "also", "please", "that",
            "sorry");

    private static final Set<String> IS =
            Set.of("is", "are", "will", "should", "has", "goes", "must", "take", "last", "start", "begin", "turn");

    private static final Set<String> LASTS = Set.of("take", "last", "taking", "lasting");

    private Beside() {}

    /** "Slow roll, rolling to the left": which way it goes round; then the figure takes that in. */
    static boolean isTurning(Draft previous, Heard heard) {
        Draft draft = heard.drafts().get(0);
        Names.Sense before = previous.sense();
        String first = heard.words().get(0).plain();
        boolean isTheSame = (first.equals("i") || first.equals("always")) && Exchanges.isSame(previous, draft);
        boolean turns = heard.drafts().size() == 1
                && heard.piece().parting() != Parting.LINE
                && (isTheSame || (heard.isWeak() && TURNING.contains(first)))
                && draft.saysOnly(Detail.SIDE)
                && draft.notes().isEmpty()
                && before != null
                && Sided.turns(before.figure())
                && !previous.says(Detail.SIDE);
        if (turns) {
            previous.take(draft);
            previous.takeIn(heard.piece().start(), heard.piece().end());
        }
        return turns;
    }

    /** "Barrel roll, yes barrel roll". */
    static boolean isSaidAgain(Draft previous, Heard heard) {
        return heard.drafts().size() == 1
                && YES.contains(heard.words().get(0).plain())
                && Exchanges.isSame(previous, heard.drafts().get(0));
    }

    /** "Pedal turn to the left, full circle": how far it turns; then the figure takes in which way. */
    static boolean isHowFar(Draft previous, Heard heard) {
        Names.Sense before = previous.sense();
        boolean isFar = before != null
                && (before.figure().equals("pedal turn") || before.figure().equals("steep turn"))
                && heard.piece().parting() != Parting.LINE
                && heard.words().stream()
                        .allMatch(word -> CIRCLE.contains(word.plain())
                                || (word.number() != null && word.number() % QUARTER == 0)
                                || (!previous.says(Detail.SIDE)
                                        && Set.of("left", "right").contains(word.plain())));
        Object side = heard.drafts().get(0).said(Detail.SIDE);
        if (isFar && side != null) {
            previous.say(Detail.SIDE, side);
        }
        return isFar;
    }

    /** "I pivot to the right because of the propeller": which way a figure turns, whatever else is said. */
    static boolean isYawing(Heard heard) {
        return heard.drafts().get(0).saysOnly(Detail.SIDE)
                && heard.words().stream().anyMatch(word -> YAWING.contains(word.plain()));
    }

    /** "Second pass, 140 kt with the doors open": a measure ahead of words is that of the figure before. */
    static boolean isMeasuredAhead(Draft previous, Heard heard) {
        List<Word> words = heard.words();
        return previous.isFigure()
                && heard.piece().parting() == Parting.COMMA
                && words.size() > 2
                && words.get(0).number() != null
                && UNITS.contains(words.get(1).plain())
                && words.get(2).plain().equals("with")
                && previous.hasRoomFor(heard.drafts().get(0));
    }

    /** "Seven inverted", "during the turn": a name that other things have too, and something else. */
    static boolean isGuess(Heard heard) {
        Draft draft = heard.drafts().get(0);
        Names.Sense sense = draft.sense();
        return heard.drafts().size() == 1
                && sense != null
                && !isDone(heard)
                && !isLanding(heard)
                && !isARun(draft)
                && (sense.figure().equals("level out")
                        || ((sense.weak() || draft.isOneOfSeveral())
                                && !draft.notes().isEmpty()));
    }

    /** "Rocks its wings and lands", "land in sequence". */
    private static boolean isLanding(Heard heard) {
        Draft draft = heard.drafts().get(0);
        Word last = heard.words().get(heard.words().size() - 1);
        Word first = heard.words().get(0);
        boolean isFirst = first.plain().equals("land") && draft.name().contains(first);
        boolean leads =
                draft.leads() && draft.means("landing") && !first.plain().equals("landing");
        return isFirst || leads || (last.plain().equals("land") && draft.name().contains(last));
    }

    /** A turn in the remarks of a table, "in knife edge": it says how the figure before it is flown. */
    static boolean isRemark(Heard heard) {
        Names.Sense sense = heard.drafts().get(0).sense();
        int in = Set.of("both", "all").contains(heard.words().get(0).plain()) ? 1 : 0;
        boolean isIn = heard.words().size() > in + 1
                && heard.words().get(in).plain().equals("in")
                && !ARTICLES.contains(heard.words().get(in + 1).plain());
        return sense != null
                && (isIn
                        || (heard.piece().parting() == Parting.DASH && sense.weak() && !ENDS.contains(sense.figure())));
    }

    /** "Do the 360 at about 6 g" is no remark. */
    private static boolean isDone(Heard heard) {
        List<Word> name = heard.drafts().get(0).name();
        int at = name.isEmpty() ? -1 : heard.words().indexOf(name.get(0)) - 1;
        while (at >= 0 && ARTICLES.contains(heard.words().get(at).plain())) {
            at--;
        }
        return at >= 0 && DO.contains(heard.words().get(at).plain());
    }

    /** "Some people call it a stall turn", "it's a tumble" behind just that. */
    static boolean isNamedOnceMore(@Nullable Draft last, Heard heard, Text text) {
        List<Word> name = heard.drafts().get(0).name();
        Names.Sense before = last == null ? null : last.sense();
        Names.Sense sense = heard.drafts().get(0).sense();
        if (before == null
                || sense == null
                || name.isEmpty()
                || heard.drafts().size() > 1
                || !before.figure().equals(sense.figure())) {
            return false;
        }
        String ahead = text.folded()
                .substring(
                        heard.piece().from(),
                        Math.max(heard.piece().from(), name.get(0).start()));
        return NAMES.matcher(ahead).matches();
    }

    /** Behind the figure of a line with one: its name again, or a word that means a figure only where there is no other. */
    static boolean isOfTheLine(Draft previous, Heard heard, Style style) {
        Names.Sense before = previous.sense();
        if (before == null) {
            return false;
        }
        boolean isBehind = (style.figureEachLine() || style.isMarked())
                && (heard.piece().parting() == Parting.COMMA || heard.piece().parting() == Parting.DASH);
        return isBehind
                && heard.drafts().stream().allMatch(draft -> {
                    Names.Sense sense = draft.sense();
                    return sense != null
                            && ((heard.drafts().size() == 1
                                            && !draft.saysAnything()
                                            && style.figureEachLine()
                                            && sense.figure().equals(before.figure()))
                                    || (sense.weak()
                                            && !FLOWN_AS_WELL.contains(sense.figure())
                                            && !draft.says(Detail.SECONDS)
                                            && !isARun(draft)));
                });
    }

    /** "Loop, loop, loop" in a line: it is flown as often. */
    static boolean isOnceMore(Draft previous, Heard heard, Style style) {
        boolean isSame = (style.figureEachLine() || style.isMarked())
                && heard.drafts().size() == 1
                && Exchanges.isSame(previous, heard.drafts().get(0))
                && heard.piece().parting() == Parting.COMMA
                && Words.plain(heard.words()).equals(Words.plain(previous.name()));
        if (isSame) {
            double times = previous.said(Detail.COUNT) instanceof Double count ? count : 1;
            previous.unsay(Detail.COUNT);
            previous.say(Detail.COUNT, times + 1);
            previous.takeIn(heard.piece().start(), heard.piece().end());
        }
        return isSame;
    }

    /** "High alpha pass from the left", "450 kt pass": flown for itself, whatever stands ahead of it. */
    private static boolean isARun(Draft draft) {
        return draft.means("low pass") && (draft.says(Detail.HEADING) || draft.says(Detail.ENTRY_KT));
    }

    /** "Turnaround left: humpty" says where. */
    static boolean isWhere(Heard heard, Text text) {
        Draft draft = heard.drafts().get(0);
        Names.Sense sense = draft.sense();
        return sense != null
                && sense.weak()
                && sense.figure().equals("reposition")
                && draft.notes().isEmpty()
                && text.piece(heard.piece().from(), heard.piece().end()).endsWith(":");
    }

    /** "Quarter roll up, hammerhead": it is flown on the line up to what follows. */
    static boolean isQuarterRollUp(Heard heard) {
        return isQuarterRoll(heard)
                && heard.words().stream().anyMatch(word -> word.plain().equals("up"));
    }

    /** "Quarter roll", "three-quarter roll down": it only changes which side is seen. */
    private static boolean isQuarterRoll(Heard heard) {
        return !heard.isFigure()
                && heard.words().get(0).plain().endsWith("quarter")
                && heard.words().stream().anyMatch(word -> word.plain().equals("roll"));
    }

    /** "Quarter roll, level off at 1500", "gear up, climb": it leads to what follows. */
    static boolean isAhead(Heard heard) {
        return isQuarterRoll(heard) || Setting.isAll(heard.words());
    }

    /** "Stall turn, quarter roll up, three-quarter roll down". */
    static boolean isOnALineOf(Draft previous, Heard heard) {
        return isQuarterRoll(heard) && GoingOn.hasLines(previous);
    }

    /**
     * "The roll is to the left", said of a roll that came before.
     *
     * @return the last figure of that name; null if the piece says nothing of one
     */
    static @Nullable Draft saidOf(List<Draft> lines, Heard heard) {
        Draft draft = heard.drafts().get(0);
        List<Word> name = draft.name();
        int behind = name.isEmpty() ? -1 : heard.words().indexOf(name.get(name.size() - 1)) + 1;
        int first = name.isEmpty() ? -1 : heard.words().indexOf(name.get(0));
        boolean isSaid = heard.drafts().size() == 1
                && draft.saysAnything()
                && first >= 0
                && behind < heard.words().size()
                && (first == 0
                        ? Set.of("is", "should")
                                .contains(heard.words().get(behind).plain())
                        : heard.words().get(first - 1).plain().equals("the")
                                || (first == 1 && heard.words().get(0).plain().equals("sorry")))
                && heard.words().subList(0, first).stream().allMatch(word -> LEADING.contains(word.plain()))
                && IS.contains(heard.words().get(behind).plain());
        for (int i = lines.size() - 1; isSaid && i >= 0; i--) {
            if (Exchanges.isSame(lines.get(i), draft)) {
                return lines.get(i);
            }
        }
        return null;
    }

    /** "Loop, everybody loves it" in a list with one figure on a line: nothing is flown after the comma. */
    static boolean isSaidOf(Draft previous, Heard heard, Told told, Style style) {
        return (told.isProse() || (style.figureEachLine() && told.isOne()))
                && previous.isFigure()
                && heard.piece().parting() != Parting.LINE
                && !(heard.isFigure() && heard.piece().parting() == Parting.THEN)
                && (heard.isFigure()
                        || Manner.FLOWN.count(heard.words()) * 2 < heard.words().size());
    }

    /** Whether a piece only says how the figure before it is. */
    static boolean describes(Heard heard, Sentence sentence) {
        if (saysBothWays(heard)) {
            return true;
        }
        boolean isLoad = heard.words().size() == 2
                && heard.words().get(0).number() != null
                && heard.words().get(1).plain().equals("g");
        boolean isBank = heard.words().size() >= 2
                && heard.words().get(0).number() != null
                && heard.words().stream().anyMatch(word -> word.plain().equals("bank"));
        boolean isOfOne = heard.words().size() >= 2
                && heard.words().get(0).number() != null
                && heard.piece().parting() == Parting.COMMA
                && GOES.contains(heard.words().get(1).plain());
        return isLoad
                || isBank
                || isOfOne
                || Setting.isAll(heard.words())
                || heard.words().stream()
                        .allMatch(
                                word -> Prelude.describes(word) || word.plain().equals("together"))
                || heard.words().get(0).plain().equals("quarter")
                || (sentence.pieces().size() < 4 && Manner.QUALIFYING.hasAny(heard.words()))
                || heard.words().stream()
                        .filter(word -> !Manner.FILLER.has(word) || Manner.QUALIFYING.has(word))
                        .findFirst()
                        .filter(Manner.QUALIFYING::has)
                        .isPresent();
    }

    /** "Nat to the left and Isa to the right". */
    private static boolean saysBothWays(Heard heard) {
        return heard.piece().parting() == Parting.COMMA
                && heard.words().stream().anyMatch(word -> word.plain().equals("left"))
                && heard.words().stream().anyMatch(word -> word.plain().equals("right"))
                && !Manner.FLOWN.hasAny(heard.words());
    }

    static boolean isMeasured(Draft draft) {
        return draft.says(Detail.ENTRY_KT)
                || draft.says(Detail.TOP_FT)
                || draft.says(Detail.HEIGHT_FT)
                || draft.says(Detail.SECONDS);
    }

    /** "Which he says to count because it takes ten seconds": how long the figure before it lasts. */
    static boolean isTimeOf(Draft previous, Heard heard) {
        return previous.isFigure()
                && !previous.says(Detail.SECONDS)
                && heard.drafts().get(0).saysOnly(Detail.SECONDS)
                && !Overlong.isOfTheAct(heard.drafts().get(0))
                && heard.words().stream().anyMatch(word -> LASTS.contains(word.plain()));
    }

    /** A line of its own that measures the figure of the one above. */
    static boolean isMeasuredBelow(Draft draft, Piece piece) {
        return !draft.saysOnly(Detail.SMOKE)
                && !draft.says(Detail.HEADING)
                && piece.parting() == Parting.LINE
                && isMeasured(draft);
    }

    /** "Spin. Two turns, then a loop." */
    static boolean isCountOfASpin(Draft draft, Draft last) {
        return draft.says(Detail.COUNT) && last.isSpin() && !last.says(Detail.COUNT);
    }
}
