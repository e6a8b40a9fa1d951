package crowdline.list.piece;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.line.Place;
import crowdline.list.line.Side;
import crowdline.list.name.Names;
import crowdline.list.word.Word;
import crowdline.show.figure.Placing.Heading;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells whether a piece names the figure before it once more, or asks for another of it. */
public final class Again {
    /** Ahead of a side. */
    private static final Set<String> ALIKE =
            Set.of("same", "ditto", "likewise", "again", "repeat", "repeated", "repeating");

    private static final Set<String> AT_ONCE =
            Set.of("and", "then", "straight", "right", "directly", "immediately", "shortly", "just", "soon");

    private static final Pattern FROM_IT =
            Pattern.compile("(?:and |then |straight |directly )*from (?:the|that|thi|my)");

    /** In plain words, of which "second" is "s". */
    private static final Pattern ANOTHER = Pattern.compile(
            "(?:(?:i|we|carry|carrying|straight|straightaway|directly|immediately|at once|on|into|a|the|and|one|1|by|so|do|it's) )*(?:s|third|another|further|more) (?:1|of them|of those|the same)(?: (?:at|on|to|in|from|with|straight|right|after|behind|immediately|directly|the same|just|like|left)\\b.{0,30})?");

    /** In plain words. */
    private static final Set<String> ORDINALS = Set.of("s", "next", "third", "fourth", "last");

    private static final Pattern OTHER_WAY =
            Pattern.compile("(?:.* )?(?:other|opposite) (?:way|side|end|direction)(?: .*)?");

    private Again() {}

    /** "After the loop it is a stall turn": the loop is the one before. */
    public static boolean isAfterIt(List<Draft> lines, Heard heard) {
        Names.Sense before =
                lines.isEmpty() ? null : lines.get(lines.size() - 1).sense();
        Names.Sense again = heard.drafts().get(0).sense();
        return before != null
                && again != null
                && (before.figure().equals(again.figure()) || before.figure().equals("formation " + again.figure()))
                && (heard.words().get(0).plain().equals("after") || isRightAfterIt(heard));
    }

    /** "Straight after lift-off", not "straight after a second loop". */
    private static boolean isRightAfterIt(Heard heard) {
        List<Word> words = heard.words();
        int name =
                words.indexOf(heard.drafts().get(0).name().stream().findFirst().orElse(null));
        int after = name > 0 && words.get(name - 1).plain().equals("the") ? name - 2 : name - 1;
        return after >= 0
                && words.get(after).plain().equals("after")
                && words.subList(0, after).stream().map(Word::plain).allMatch(AT_ONCE::contains);
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
                && (Between.isCameFrom(
                                heard.words(),
                                heard.words().indexOf(again.name().get(0)))
                        || FROM_IT.matcher(heard.words().stream()
                                        .takeWhile(word -> word.start()
                                                < again.name().get(0).start())
                                        .map(Word::plain)
                                        .collect(Collectors.joining(" ")))
                                .matches());
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
                        || ANOTHER.matcher(String.join(" ", words)).matches()
                        || (words.size() > 1 && words.subList(0, 2).equals(List.of("same", "again"))));
        boolean isToTheOtherSide = words.size() > 1
                && ALIKE.contains(words.get(0).equals("the") ? words.get(1) : words.get(0))
                && (Stream.of(Detail.SIDE, Detail.PLACE, Detail.HEADING)
                                .anyMatch(heard.drafts().get(0)::says)
                        || isTheOtherWay(heard));
        return (isSaid || isToTheOtherSide)
                && !lines.isEmpty()
                && lines.get(lines.size() - 1).isFigure();
    }

    /** "Three passes: the first from the left, the second from the right": the next of those that were counted. */
    public static boolean isNextOfSeveral(Draft last, Heard heard) {
        List<Word> words = heard.words();
        if (words.isEmpty() || !isToldWhere(heard.drafts().get(0))) {
            return false;
        }
        int at = words.size() > 1 && words.get(0).plain().equals("the") ? 1 : 0;
        boolean isOneMore = words.get(0).plain().equals("1") && isToldWhere(last);
        return (isOneMore || ORDINALS.contains(words.get(at).plain()))
                && last.isFigure()
                && (GoingOn.isPlural(last) || last.name().isEmpty())
                && last.said(Detail.COUNT) instanceof Double count
                && count > 1;
    }

    private static boolean isToldWhere(Draft draft) {
        return draft.says(Detail.HEADING) || draft.says(Detail.PLACE);
    }

    /** Of several, the last was one; the next is as many as are left. */
    public static void part(Draft last, Draft next) {
        if (last.said(Detail.COUNT) instanceof Double count && count > 2) {
            next.say(Detail.COUNT, count - 1);
        }
        last.unsay(Detail.COUNT);
    }

    private static boolean isTheOtherWay(Heard heard) {
        return OTHER_WAY.matcher(heard.said()).matches();
    }

    /** "Same again the other way": lets a figure face where the last one did not. */
    public static void turn(Draft again, Draft last, Heard heard) {
        if (!isTheOtherWay(heard)) {
            return;
        }
        if (last.said(Detail.SIDE) instanceof Side side) {
            again.say(Detail.SIDE, side == Side.LEFT ? Side.RIGHT : Side.LEFT);
        } else if (last.said(Detail.HEADING) instanceof Heading heading
                && (heading == Heading.LEFT || heading == Heading.RIGHT)) {
            again.say(Detail.HEADING, heading == Heading.LEFT ? Heading.RIGHT : Heading.LEFT);
        } else if (last.said(Detail.PLACE) instanceof Place place && place != Place.CENTRE) {
            again.say(Detail.PLACE, place == Place.LEFT_END ? Place.RIGHT_END : Place.LEFT_END);
        }
    }

    /** Keeps the words of the first of several drafts, which only names the last line once more: the next has them, else that line. */
    public static void keep(List<Draft> drafts, Draft last) {
        if (drafts.size() > 1) {
            drafts.get(1).beginAt(drafts.get(0).start());
        } else {
            drafts.get(0).eachSpan(last::takeIn);
        }
    }

    /** "Half roll, hold it for five seconds": so long it flies on its back. */
    public static boolean isHeldInverted(Draft previous, Heard heard) {
        Names.Sense before = previous.sense();
        return before != null
                && before.figure().equals("half roll")
                && heard.drafts().get(0).says(Detail.SECONDS)
                && Set.of("hold", "holding", "held", "stay", "staying")
                        .contains(heard.words().get(0).plain());
    }
}
