package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.draft.Sayings;
import crowdline.list.name.Names;
import crowdline.list.word.Manner;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Finds the names of figures in the words of a piece. */
final class Naming {
    /** What may stand ahead of the last figure of a piece. */
    private static final Set<String> JOINING = Set.of("and", "/");

    /** Ahead of a change that is none of a formation's shape. */
    private static final Set<String> CHANGING = Set.of(
            "a", "the", "my", "more", "another", "last", "late", "any", "no", "other", "minute", "further", "only");

    private static final Set<String> TURNING = Set.of("climbing", "descending", "rolling", "level", "climb");

    private static final Set<String> SIDES = Set.of("left", "right");

    private static final Set<String> JUMPERS = Set.of(
            "leader", "master", "team", "display", "plane", "aircraft", "zone", "suit", "details", "detail", "show");

    private static final Set<String> NO_ROLLS = Set.of("toilet", "loo", "tissue", "paper", "drum", "bog", "bacon");

    /** "A rolling show" has no loops. */
    private static final Set<String> SHOWS = Set.of("show", "display", "programme", "routine");

    private static final Set<String> FOR = Set.of("for", "about", "around", "roughly", "some", "nearly");

    private static final Set<String> PARTS = Set.of("half", "quarter", "three-quarter");

    private final Names names;
    private final Sayings sayings;

    Naming(Names names, Sayings sayings) {
        this.names = names;
        this.sayings = sayings;
    }

    /** The figures named in these words, in order; those by a weak name only where there is no other. */
    List<Found> of(List<Word> words) {
        List<Found> strong = of(words, false);
        return strong.isEmpty() && !isDetail(words) ? of(words, true) : strong;
    }

    /** "Climbing left turn" as "left climbing turn". */
    static List<Word> sidesAhead(List<Word> words) {
        List<Word> moved = new ArrayList<>(words);
        for (int i = 0; i + 2 < moved.size(); i++) {
            if (TURNING.contains(moved.get(i).plain())
                    && SIDES.contains(moved.get(i + 1).plain())
                    && moved.get(i + 2).plain().equals("turn")) {
                Word side = moved.remove(i + 1);
                moved.add(i, side.standingAt(moved.get(i).start()));
            }
        }
        return moved;
    }

    /** "Break and land on the grass", "roll and roll and loop". */
    private static boolean isAtTheEnd(List<Word> words, int next) {
        boolean isLand = words.get(next - 1).plain().equals("land");
        return words.get(next).plain().equals("and") || isLand;
    }

    /** "2 turns" are those of a spin. */
    private static boolean isCountOfTurns(List<Word> words, int at) {
        Double number = at == 0 ? null : words.get(at - 1).number();
        return words.get(at).plain().equals("turn") && number != null && number <= 20;
    }

    /** "Fly through to a half Cuban" is no pass. */
    private static boolean isFlyingThrough(List<Word> words, int at, Names.Named named) {
        int next = at + named.words();
        return words.get(next - 1).plain().equals("through")
                && next + 1 < words.size()
                && Set.of("to", "for").contains(words.get(next).plain());
    }

    /** "Toilet roll", "drum roll". */
    private static boolean isNoRoll(List<Word> words, int at) {
        boolean isShow =
                at + 1 < words.size() && SHOWS.contains(words.get(at + 1).plain());
        return words.get(at).plain().startsWith("roll")
                && (isShow || (at > 0 && NO_ROLLS.contains(words.get(at - 1).plain())));
    }

    /** "Jump leader": somebody. */
    private static boolean isOfJumpers(List<Word> words, int at) {
        return words.get(at).plain().equals("jump")
                && at + 1 < words.size()
                && JUMPERS.contains(words.get(at + 1).plain());
    }

    /** "One pass straight and level": nobody levels out. */
    private static boolean isStraightAndLevel(List<Word> words, int at) {
        return at > 1
                && words.get(at).plain().equals("level")
                && words.get(at - 1).plain().equals("and")
                && words.get(at - 2).plain().equals("straight");
    }

    /** "One more change to what I sent". */
    private static boolean isAChange(List<Word> words, int at) {
        Word before = at == 0 ? null : words.get(at - 1);
        return before != null
                && words.get(at).plain().equals("change")
                && (before.number() != null || Manner.DESCRIBING.has(before) || CHANGING.contains(before.plain()));
    }

    /** Whether every word says something of a figure that stands elsewhere. */
    private boolean isDetail(List<Word> words) {
        Draft draft = new Draft(0, 0);
        boolean[] taken = sayings.take(draft, Words.plain(words), words.size());
        for (int i = 0; i < taken.length; i++) {
            if (!taken[i] && !LeftOver.isSilent(words.get(i))) {
                return false;
            }
        }
        return draft.saysAnything();
    }

    /** The figures named in these words, in order. */
    List<Found> of(List<Word> words, boolean weakToo) {
        List<Found> found = new ArrayList<>();
        int i = 0;
        while (i < words.size()) {
            boolean isLast = !found.isEmpty()
                    && (JOINING.contains(words.get(i - 1).plain())
                            || (found.get(found.size() - 1).to() == i
                                    && words.get(i).plain().equals("land")));
            List<Word> ofAName = words.subList(0, Between.beforeHowItEnds(words, i));
            Names.Named named =
                    names.at(ofAName, i, weakToo || isLast || isPullingUp(words, i) || isTimedInverted(words, i));
            Names.Named anyOrder = names.anyOrderAt(ofAName, i);
            if (anyOrder != null && (named == null || anyOrder.words() > named.words())) {
                named = anyOrder;
            }
            if (named != null
                    && ((weakToo && isCountOfTurns(words, i))
                            || isFlyingThrough(words, i, named)
                            || isOfJumpers(words, i)
                            || isNoRoll(words, i)
                            || isStraightAndLevel(words, i)
                            || isAChange(words, i))) {
                named = null;
            }
            if (named != null
                    && named.sense().weak()
                    && !weakToo
                    && i + named.words() < words.size()
                    && !(isLast && isAtTheEnd(words, i + named.words()))
                    && !isPullingUp(words, i)
                    && !isTimedInverted(words, i)) {
                named = null;
            }
            if (named != null) {
                int begin = GoingOn.isWayBack(found, named.sense(), words, i)
                        ? found.remove(found.size() - 1).from()
                        : i;
                boolean isOnceMore = weakToo
                        && named.sense().weak()
                        && !found.isEmpty()
                        && found.get(found.size() - 1).sense().weak()
                        && found.get(found.size() - 1)
                                .sense()
                                .figure()
                                .equals(named.sense().figure())
                        && words.subList(found.get(found.size() - 1).to(), i).stream()
                                .noneMatch(word -> word.plain().equals("and"));
                if (!isOnceMore) {
                    found.add(new Found(named.sense(), begin, i + named.words()));
                }
                i += named.words();
            } else {
                i++;
            }
        }
        return found;
    }

    /** "I come back inverted for about ten seconds, half roll": it is flown. */
    private static boolean isTimedInverted(List<Word> words, int at) {
        if (!words.get(at).plain().equals("inverted")) {
            return false;
        }
        int next = at + 1;
        while (next < words.size() && FOR.contains(words.get(next).plain())) {
            next++;
        }
        return next > at + 1
                && next + 1 < words.size()
                && words.get(next).number() != null
                && words.get(next + 1).plain().equals("s");
    }

    /** "Pull up and stall turn", "pull up half roll": both are figures, though to pull up begins many a one. */
    private static boolean isPullingUp(List<Word> words, int at) {
        return at == 0
                && words.size() > 3
                && words.get(0).plain().startsWith("pull")
                && words.get(1).plain().equals("up")
                && (words.get(2).plain().equals("and")
                        || PARTS.contains(words.get(2).plain()));
    }
}
