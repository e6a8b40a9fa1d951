package crowdline.list.piece;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.draft.Formations;
import crowdline.list.draft.Measured;
import crowdline.list.line.ListLine;
import crowdline.list.line.Sided;
import crowdline.list.name.Joined;
import crowdline.list.name.Names;
import crowdline.list.split.Piece.Parting;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Tells whether a piece goes on with the figure before it, and lets that figure take it in. */
public final class GoingOn {
    /** More turns or rolls need a word beside their number. */
    private static final double MOST_BARE_COUNT = 12;
    /** As many of a figure that does not turn, where a bare number might as well be seconds. */
    private static final double MOST_SURE_COUNT = 4;
    /** No figure is flown as often. */
    private static final double LEAST_ANGLE = 90;

    /** "Low pass, 360": a turn, and no speed without its unit. */
    private static final double CIRCLE = 360;

    private static final Set<String> LEVEL = Set.of("straight", "and", "level", "wing", "flight");

    /** What leads back the way the aircraft came. */
    private static final Set<String> TURNING_BACK = Set.of(
            "wing-over",
            "stall turn",
            "half Cuban",
            "reverse half Cuban",
            "half loop with roll out on top",
            "chandelle",
            "humpty bump",
            "humpty bump with push top",
            "quarter clover");

    /** Stands between a turn back and what it is flown by. */
    private static final Set<String> WHERE = Set.of(
            "a",
            "the",
            "at",
            "on",
            "left",
            "right",
            "end",
            "hand",
            "far",
            "side",
            "crowd",
            "there",
            "leftend",
            "rightend");

    /** What a half roll at the end of inverted flight leads to. */
    private static final List<String> UPRIGHT = List.of("out", "upright", "off");

    private static final Set<String> TOPS = Set.of("top", "apex", "summit");

    static final Set<String> BY_MEANS_OF = Set.of("with", "by", "via", "through", "using");

    private static final Set<String> ABOUT =
            Set.of("about", "around", "roughly", "circas", "approximately", "approx", "say", "at");

    /** What a comma stands for. */
    private static final Word AND = new Word("and", 0, 0, null);

    private final Names names;
    private final Text text;

    public GoingOn(Names names, Text text) {
        this.names = names;
        this.text = text;
    }

    /** "tail slide, wheels up" is one name. */
    public boolean isRestOf(Draft previous, Heard heard) {
        Names.Sense before = previous.sense();
        if (before == null) {
            return isRestOfAName(previous, heard);
        }
        if (heard.words().isEmpty()
                || heard.drafts().size() > 1
                || (heard.piece().parting() == Parting.LINE && !isNumber(heard.words()))) {
            return false;
        }
        if (NamedAgain.isTheOneThat(previous, heard, names, text)) {
            return takenIn(previous, heard);
        }
        if (isAngleOf(before, heard)) {
            previous.take(heard.drafts().get(0));
            return takenIn(previous, heard);
        }
        if (!heard.isFigure() && Formations.isShape(previous, heard.words())) {
            return takenIn(previous, heard);
        }
        if (RollsWithin.isCount(previous, before, heard)) {
            RollsWithin.count(
                    previous, Objects.requireNonNull(heard.drafts().get(0).said(Detail.COUNT)));
            return takenIn(previous, heard);
        }
        if (RollsWithin.areFlown(before, heard)) {
            return noted(previous, heard);
        }
        if (NamedAgain.isBracketed(before, heard, text)) {
            previous.take(heard.drafts().get(0));
            return takenIn(previous, heard);
        }
        if (isExplained(previous, before, heard)) {
            return takenIn(previous, heard);
        }
        if (isLevel(before, heard) || isWhatFor(before, heard)) {
            previous.note(text.piece(heard.piece().from(), heard.piece().to()));
            return takenIn(previous, heard);
        }
        boolean isTurn = heard.piece().parting() == Parting.COMMA
                && isNumber(heard.words())
                && Double.valueOf(CIRCLE).equals(heard.words().get(0).number());
        if (!isTurn && isNumberOf(previous, before, heard.words())) {
            return takenIn(previous, heard);
        }
        List<Word> both = joined(previous.name(), heard.words());
        Names.Sense sense = whole(previous.name(), heard.words());
        if (sense == null && !previous.name().isEmpty()) {
            sense = names.all(joined(Words.of(Words.folded(before.figure())), heard.words()));
        }
        List<Word> named = nameIn(heard);
        boolean isNameOnly = sense == null && !named.isEmpty();
        if (isNameOnly) {
            both = joined(previous.name(), named);
            sense = whole(previous.name(), named);
        }
        if (sense == null && RollsWithin.areOnASlope(before, heard)) {
            return noted(previous, heard);
        }
        if (before.figure().equals("inverted pass")
                && heard.drafts().get(0).means("half roll")
                && UPRIGHT.stream().anyMatch(Words.plain(heard.words())::contains)) {
            return false;
        }
        boolean isHowItArrives =
                before.figure().equals("run-in") && heard.words().stream().allMatch(Manner.DESCRIBING::has);
        if (sense == null
                || isHowItArrives
                || (heard.isFigure()
                        && before.choices().isEmpty()
                        && !heard.isWeak()
                        && !isGuess(heard)
                        && !isNamedAgain(before, heard, sense)
                        && !isOnTopOf(before, heard, sense)
                        && !sense.figure().startsWith(before.figure() + " ")
                        && !NamedAgain.isHeadOf(previous, heard, sense))) {
            return false;
        }
        previous.mean(sense, both);
        if (isNameOnly) {
            Draft draft = heard.drafts().get(0);
            if (!heard.isFigure()) {
                draft.forgetNotes();
            }
            previous.take(draft);
        }
        return takenIn(previous, heard);
    }

    /** Whether a figure has straight lines on which a roll may be flown. */
    public static boolean hasLines(Draft draft) {
        return RollsWithin.mayBeIn(draft);
    }

    /** What two stretches are called together; a comma between them may stand for "and". */
    private Names.@Nullable Sense whole(List<Word> first, List<Word> second) {
        Names.Sense sense = names.all(joined(first, second));
        if (sense == null) {
            sense = names.all(joined(joined(first, List.of(AND)), second));
        }
        List<Word> naming = second.stream()
                .filter(word -> !Manner.DESCRIBING.has(word) && !Manner.LABEL.has(word))
                .toList();
        return sense != null || naming.isEmpty() ? sense : names.all(joined(first, naming));
    }

    private static List<Word> joined(List<Word> first, List<Word> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    /** The words of a piece that name a figure, or may name one; none if they are all its words, or if it is only weak. */
    private static List<Word> nameIn(Heard heard) {
        Draft draft = heard.drafts().get(0);
        if (heard.isFigure()) {
            return heard.isWeak() ? List.of() : draft.name();
        }
        // A load is part of no name, whether its "g" stands beside it or at the head of its column.
        boolean isLoad = heard.words().stream().anyMatch(word -> word.plain().equals("g"));
        return draft.notes().size() == 1 && !isLoad
                ? Words.of(Words.folded(draft.notes().get(0)))
                : List.of();
    }

    /** "Wing-over - reposition to the right": what it is flown for. */
    private static boolean isWhatFor(Names.Sense before, Heard heard) {
        Names.Sense again = heard.drafts().get(0).sense();
        return again != null
                && again.figure().equals("reposition")
                && heard.piece().parting() == Parting.DASH
                && TURNING_BACK.contains(before.figure());
    }

    /** "I turn round with a stall turn": the last figure found is flown by this one. */
    static boolean isWayBack(List<Found> found, Names.Sense next, List<Word> words, int at) {
        if (found.isEmpty() || !TURNING_BACK.contains(next.figure())) {
            return false;
        }
        Found last = found.get(found.size() - 1);
        List<String> between = Words.plain(words.subList(last.to(), at));
        boolean isRegrouping = words.get(last.from()).plain().startsWith("regroup");
        return (isRegrouping || last.sense().figure().equals("reposition"))
                && between.stream().anyMatch(BY_MEANS_OF::contains)
                && between.stream().allMatch(word -> BY_MEANS_OF.contains(word) || WHERE.contains(word));
    }

    /** "Double snap, level": it is flown so, and nobody levels out. */
    private static boolean isLevel(Names.Sense before, Heard heard) {
        return (Sided.fliesAlong(before.figure())
                        || before.figure().contains("roll")
                        || before.figure().contains("flick"))
                && heard.words().stream().allMatch(word -> LEVEL.contains(word.plain()))
                && heard.words().stream().anyMatch(word -> word.plain().equals("level"));
    }

    /** "The avalanche, a loop with a flick on top": what the same figure is in other words. */
    private boolean isExplained(Draft previous, Names.Sense before, Heard heard) {
        Draft draft = heard.drafts().get(0);
        Names.Sense again = draft.sense();
        boolean isSame = again != null && again.figure().equals(before.figure());
        if (isSame
                && heard.isWeak()
                && text.written()
                        .startsWith("ing", Math.max(0, draft.name().get(0).end() - 3))) {
            return true;
        }
        return isSame
                && !Words.plain(draft.name()).equals(Words.plain(previous.name()))
                && ((Set.of("a", "an", "that", "which", "ie")
                                        .contains(heard.words().get(0).plain())
                                && draft.name().size() > previous.name().size())
                        || (heard.words().get(0).plain().equals("the")
                                && heard.piece().parting() == Parting.COMMA));
    }

    /** It is flown within the figure, in a way that nobody drew. */
    private boolean noted(Draft previous, Heard heard) {
        previous.note(text.piece(heard.piece().from(), heard.piece().to()));
        previous.doubt();
        return takenIn(previous, heard);
    }

    private static boolean takenIn(Draft previous, Heard heard) {
        previous.takeIn(heard.piece().start(), heard.piece().end());
        return true;
    }

    /** "Tight turn, 360 degrees": how far it turns is no second one. */
    private static boolean isAngleOf(Names.Sense before, Heard heard) {
        Names.Sense again = heard.drafts().get(0).sense();
        Double number = heard.words().get(0).number();
        return again != null && again.figure().equals(before.figure()) && number != null && number >= LEAST_ANGLE;
    }

    /** "Eight, lazy": neither is a name. */
    private boolean isRestOfAName(Draft previous, Heard heard) {
        List<Word> named = heard.isFigure() ? heard.drafts().get(0).name() : heard.words();
        if (previous.notes().size() != 1 || named.isEmpty() || heard.piece().parting() == Parting.LINE) {
            return false;
        }
        List<Word> both = joined(Words.of(Words.folded(previous.notes().get(0))), named);
        Names.Sense sense = names.all(both);
        Names.Sense own = heard.drafts().get(0).sense();
        if (sense == null || (own != null && !own.figure().equals(sense.figure()))) {
            return false;
        }
        previous.mean(sense, both);
        previous.forgetNotes();
        if (heard.isFigure()) {
            previous.take(heard.drafts().get(0));
        }
        return takenIn(previous, heard);
    }

    private static boolean isNumber(List<Word> words) {
        return words.size() == 1 && words.get(0).number() != null;
    }

    /** A number alone says how often the figure before it turns, or how fast or how high it begins. */
    private static boolean isNumberOf(Draft previous, Names.Sense before, List<Word> said) {
        List<Word> words = ABOUT.contains(said.get(0).plain()) ? said.subList(1, said.size()) : said;
        Double number = words.isEmpty() ? null : words.get(0).number();
        if (number == null || !isNumber(words) || number > ListLine.MOST_FT) {
            return false;
        }
        boolean turns = Sided.turns(before.figure());
        Detail detail = number <= (turns || isPlural(previous) ? MOST_BARE_COUNT : MOST_SURE_COUNT)
                ? Detail.COUNT
                : number >= Measured.LEAST_BARE_FT
                        ? Detail.HEIGHT_FT
                        : number >= Measured.LEAST_BARE_KT && !Sided.isAngle(before.figure(), number)
                                ? Detail.ENTRY_KT
                                : null;
        return detail != null && !previous.says(detail) && Measured.number(previous, detail, number);
    }

    private static boolean isGuess(Heard heard) {
        Names.Sense sense = heard.drafts().get(0).sense();
        return sense != null && !sense.choices().isEmpty();
    }

    static boolean isPlural(Draft draft) {
        List<Word> name = draft.name();
        Word last = name.isEmpty() ? null : name.get(name.size() - 1);
        return last != null && last.end() - last.start() > last.plain().length();
    }

    /** "Hesitation roll - 8 points": what stands behind the dash is the same figure by its exact name. */
    private static boolean isNamedAgain(Names.Sense before, Heard heard, Names.Sense both) {
        Names.Sense again = heard.drafts().get(0).sense();
        return again != null
                && again.figure().equals(both.figure())
                && (heard.piece().parting() == Parting.DASH
                        || before.figure().equals(both.figure())
                        || (before.title().equals("hesitation roll") && isPoints(heard.words())));
    }

    /** "Loop + flick on top": what is flown on top of a figure makes another of it. */
    private static boolean isOnTopOf(Names.Sense before, Heard heard, Names.Sense both) {
        return !both.figure().equals(before.figure())
                && heard.drafts().get(0).means("flick roll")
                && heard.words().stream().anyMatch(word -> TOPS.contains(word.plain()));
    }

    /** "8 pt". */
    private static boolean isPoints(List<Word> words) {
        return words.stream()
                .allMatch(word -> word.number() != null || word.plain().equals("point"));
    }

    /** "Full roll" is one roll. */
    private static boolean isFull(Draft roll) {
        return !roll.name().isEmpty() && roll.name().get(0).plain().equals("full");
    }

    /** "Pull up, stall turn": one becomes the other. */
    public boolean isBeginningOf(Draft begun, Draft next, boolean isEnd) {
        Names.Sense first = begun.sense();
        Names.Sense second = next.sense();
        if (first == null || second == null || !begun.hasRoomFor(next)) {
            return false;
        }
        if (NamedAgain.isTurningRound(begun) && TURNING_BACK.contains(second.figure())) {
            begun.mean(second, next.name());
            begun.take(next);
            next.eachSpan(begun::takeIn);
            return true;
        }
        Joined.Whole whole = names.joined().of(first.figure(), second.figure());
        if (whole == null || (whole.onlyAtTheEnd() && !isEnd)) {
            return false;
        }
        boolean isSame = whole.figure().equals(second.figure());
        begun.mean(isSame ? second : Names.Sense.of(whole.figure()));
        begun.take(next);
        Double rolls = isFull(next) && Sided.hasRollsOnALine(whole.figure()) ? Double.valueOf(1) : whole.rolls();
        if (rolls != null && !begun.says(Detail.COUNT)) {
            begun.say(Detail.COUNT, rolls);
        }
        next.eachSpan(begun::takeIn);
        return true;
    }
}
