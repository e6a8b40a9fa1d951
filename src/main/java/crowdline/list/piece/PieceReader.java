package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.draft.Sayings;
import crowdline.list.line.ListLine;
import crowdline.list.name.Initials;
import crowdline.list.name.Names;
import crowdline.list.name.Spelling;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Reads one piece of a list: a stretch of text between two commas, line ends, or words such as "then". */
public final class PieceReader {
    /** With these a name may end whose noun stands further on. */
    static final Set<String> MODIFYING = Set.of("flick", "edge", "hesitation", "aileron", "point", "inverted");

    private static final Set<String> DOWN = Set.of("down", "descend", "descending", "descent", "downward");

    private static final Set<String> SLIPPING = Set.of("no", "make", "sorry", "mean", "wait");

    /** So many letters are no other word by chance. */
    private static final int LONG_WORD = 6;

    private final Names names;
    private final Spelling spelling;
    private final Somebody somebody;
    private final Initials initials;
    private final Sayings sayings = new Sayings();
    private final Naming naming;
    private final Misspelt misspelt;

    public PieceReader(Names names, Initials initials, Spelling spelling) {
        this.names = names;
        this.initials = initials;
        this.spelling = spelling;
        somebody = new Somebody(spelling);
        this.naming = new Naming(names, sayings);
        this.misspelt = new Misspelt(spelling, naming);
    }

    /**
     * The figures of a piece, in order; one draft without a figure if there is none.
     *
     * @param text the whole text
     * @param from where the piece begins
     * @param to where it ends, exclusive
     */
    public List<Draft> read(Text text, int from, int to) {
        List<Word> words = text.words(from, to);
        List<Word> spelt = Naming.sidesAhead(countsAhead(IntStream.range(0, words.size())
                .mapToObj(i -> somebody.is(text, words, i) ? words.get(i) : surelySpelt(words.get(i)))
                .toList()));
        List<Found> found = saidOnce(spelt, Arrival.isSaid(text, spelt) ? naming.of(spelt, true) : naming.of(spelt));
        found = found.isEmpty() ? Arrival.of(text, spelt) : withoutAngles(spelt, found);
        if (found.size() > 1) {
            List<Found> named = found.stream()
                    .filter(figure -> !Between.isCameFrom(spelt, figure.from()))
                    .toList();
            found = Slips.without(spelt, named);
            int meant = Slips.meantFrom(spelt, named, found);
            if (meant > 0 && found.size() == 1) {
                int at = spelt.get(meant).start();
                Draft draft = draft(text, spelt.subList(meant, spelt.size()), moved(found, meant), from, to);
                draft.note(text.piece(from, at));
                return List.of(draft);
            }
        }
        if (found.size() == 2 && isOne(spelt, found)) {
            Draft draft = draft(text, spelt, List.of(found.get(1)), from, to);
            draft.orElse(
                    List.of(found.get(1).sense().figure(), found.get(0).sense().figure()));
            return List.of(draft);
        }
        if (found.isEmpty() && !spelt.isEmpty() && text.hasSmallLetters()) {
            Names.Sense meant = initials.of(spelt.get(0), text.written());
            Draft draft = meant == null ? null : draft(text, spelt, List.of(new Found(meant, 0, 1)), from, to);
            if (draft != null && draft.notes().isEmpty()) {
                return List.of(draft);
            }
        }
        if (found.size() < 2) {
            Draft draft = draft(text, spelt, found, from, to);
            Draft guessed = draft.notes().isEmpty() ? null : guessed(text, spelt, draft, from, to);
            return List.of(guessed == null ? draft : guessed);
        }
        List<Draft> drafts = new ArrayList<>();
        int first = 0;
        int begin = from;
        List<Found> own = new ArrayList<>();
        for (Found next : found) {
            if (!own.isEmpty() && Between.isCalled(text, spelt.get(own.get(0).from()), spelt.get(next.from()))) {
                boolean isSame = own.get(0).sense().figure().equals(next.sense().figure());
                own = new ArrayList<>(List.of(isSame ? own.get(0) : next));
                continue;
            }
            if (!own.isEmpty()
                    && !own.get(0).sense().figure().equals(next.sense().figure())
                    && Between.isExplainedBy(text, spelt, own.get(0), next)) {
                own = new ArrayList<>(List.of(next));
                continue;
            }
            if (!own.isEmpty()
                    && !Between.isAddition(spelt, first, own, next)
                    && !Between.isInBrackets(text, spelt.get(own.get(0).from()), spelt.get(next.from()))) {
                int cut = Between.cut(spelt, own.get(own.size() - 1).to(), next.from());
                int cutAt = spelt.get(cut).start();
                drafts.add(draft(text, spelt.subList(first, cut), moved(own, first), begin, cutAt));
                own.clear();
                first = cut;
                begin = cutAt;
            }
            own.add(next);
        }
        drafts.add(draft(text, spelt.subList(first, spelt.size()), moved(own, first), begin, to));
        return drafts;
    }

    /** "Barrel roll barrel roll to the left", behind a slip: a name of several words said twice in one breath is said once. */
    private static List<Found> saidOnce(List<Word> words, List<Found> found) {
        List<Found> once = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            Found next = i + 1 < found.size() ? found.get(i + 1) : null;
            boolean isSaidAgain = next != null
                    && next.from() == found.get(i).to()
                    && next.to() - next.from() > 1
                    && words.subList(0, next.from()).stream().anyMatch(word -> SLIPPING.contains(word.plain()))
                    && next.plain(words).equals(found.get(i).plain(words));
            if (!isSaidAgain) {
                once.add(found.get(i));
            }
        }
        return once;
    }

    /** "Spot turn 360 degrees": how far it turns is no second one. */
    private static List<Found> withoutAngles(List<Word> words, List<Found> found) {
        List<Found> turns = new ArrayList<>();
        for (Found next : found) {
            Found before = turns.isEmpty() ? null : turns.get(turns.size() - 1);
            boolean isAngle = before != null
                    && before.to() == next.from()
                    && before.sense().figure().endsWith(" turn")
                    && words.subList(next.from(), next.to()).stream()
                            .allMatch(word ->
                                    word.number() != null || word.plain().equals("degree"));
            if (!isAngle) {
                turns.add(next);
            }
        }
        return turns;
    }

    /** "vertical 1/2 roll up" as "1/2 vertical roll up". */
    private List<Word> countsAhead(List<Word> words) {
        List<Word> moved = new ArrayList<>(words);
        for (int i = 0; i < moved.size(); i++) {
            Names.Counted counted = names.aroundACount(moved, i);
            if (counted != null) {
                Word count = moved.remove(i + counted.at());
                moved.add(i, count.standingAt(moved.get(i).start()));
                i += counted.words() - 1;
            }
        }
        return moved;
    }

    private Word surelySpelt(Word word) {
        return spelling.isEveryday(word)
                ? word
                : spelling.nearest(word).map(word::spelt).orElse(word);
    }

    /** Words of everyday English are taken for misspelt figures only where nothing else is left of the piece. */
    private @Nullable Draft guessed(Text text, List<Word> words, Draft read, int from, int to) {
        Misspelt.Guess guess = misspelt.guess(text, words, read);
        if (guess == null) {
            return null;
        }
        Draft draft = draft(text, guess.words(), List.of(guess.found()), from, to);
        if (guess.isDoubtful()) {
            draft.doubt();
        }
        return draft.notes().isEmpty() ? draft : null;
    }

    /** "Flick spin": the first has no noun of its own, so that it may say how the second is flown. */
    private static boolean isOne(List<Word> words, List<Found> found) {
        Found first = found.get(0);
        String last = words.get(first.to() - 1).plain();
        return first.to() == found.get(1).from()
                && MODIFYING.contains(last)
                && !words.get(found.get(1).from()).plain().equals(last);
    }

    private static List<Found> moved(List<Found> found, int by) {
        return found.stream()
                .map(f -> new Found(f.sense(), f.from() - by, f.to() - by))
                .toList();
    }

    private Draft draft(Text text, List<Word> words, List<Found> found, int from, int to) {
        Draft draft = new Draft(from, to);
        List<String> plain = new ArrayList<>(Words.plain(words));
        boolean[] taken = new boolean[words.size()];
        int extras = words.size();
        if (!found.isEmpty()) {
            Found main = found.get(0);
            draft.mean(main.sense(), words.subList(main.from(), main.to()));
            if (words.subList(0, main.from()).stream()
                    .allMatch(word -> LeftOver.isJoining(word) || word.number() != null)) {
                draft.lead();
            }
            Points points = Points.of(words, main.from(), main.to());
            if (points != null) {
                draft.mean(points.sense(), words.subList(main.from(), main.to()));
                plain.set(points.at(), "points");
                if (points.at() > 1 && plain.get(points.at() - 1).equals("of")) {
                    plain.set(points.at() - 2, "points");
                }
            }
            for (int i = main.from(); i < main.to(); i++) {
                taken[i] = true;
                plain.set(i, i == main.from() ? Sayings.FIGURE : "·");
            }
            for (Found again : found.subList(1, found.size())) {
                boolean isStroke = Between.NAMING_AGAIN.contains(
                        words.get(again.from() - 1).plain());
                if (again.sense().figure().equals(main.sense().figure())
                        && (isStroke || Between.isInBrackets(text, words.get(main.from()), words.get(again.from())))) {
                    Arrays.fill(taken, again.from(), again.to(), true);
                    Collections.fill(plain.subList(again.from(), again.to()), "·");
                }
            }
            if (found.size() > 1) {
                extras = found.subList(1, found.size()).stream()
                        .filter(other -> !taken[other.from()])
                        .findFirst()
                        .map(other -> Between.additionsFrom(words, main.to(), other.from()))
                        .orElse(extras);
                alternatives(draft, words, found, main);
            }
        }
        if (found.isEmpty()) {
            SmokeNames.keep(plain);
        } else {
            Condition.hide(words, found.get(0).to(), plain);
        }
        boolean[] said = Corrections.say(sayings, draft, words, plain, found, extras);
        for (int i = 0; i < said.length; i++) {
            taken[i] |= said[i] || (isTurn(draft) && words.get(i).plain().equals("turn"));
        }
        if (found.isEmpty()) {
            LeftOver.whole(text, words, taken).forEach(draft::note);
        } else {
            LeftOver.of(text, words, taken).forEach(draft::note);
        }
        completeName(draft);
        if (!found.isEmpty() && !draft.notes().isEmpty()) {
            doubtTheName(draft, words, taken, found.get(0));
        }
        return draft;
    }

    /** "Barrel loop": what stands right beside a figure's name, and is not understood, may make it another. */
    private void doubtTheName(Draft draft, List<Word> words, boolean[] taken, Found main) {
        int before = main.from() - 1;
        boolean isBeside =
                before >= 0 && !taken[before] && (isOfAName(words.get(before)) || isUnknown(words.get(before)));
        if (isBeside) {
            draft.doubtName(words.get(before).plain());
        }
        boolean isUp = main.sense().figure().contains(" up");
        if (isUp && words.stream().anyMatch(word -> DOWN.contains(word.plain()))) {
            draft.doubtName("down");
        }
        doubtByFarWords(draft, words, taken, main);
        int after = main.to();
        if (after < words.size()
                && !taken[after]
                && isOfAName(words.get(after))
                && !Manner.QUALIFYING.has(words.get(after))) {
            draft.doubtName(words.get(after).plain());
        }
    }

    /** "Rolls the aircraft slowly": a word further off makes another figure of it, if it is said of it. */
    private void doubtByFarWords(Draft draft, List<Word> words, boolean[] taken, Found main) {
        for (int i = 0; i < words.size(); i++) {
            if (!taken[i] && !LeftOver.isSilent(words.get(i))) {
                List<Word> both = new ArrayList<>(words.subList(main.from(), main.to()));
                both.add(words.get(i));
                Names.Sense sense = names.all(both);
                if (sense != null && !sense.figure().equals(main.sense().figure())) {
                    draft.orElse(List.of(main.sense().figure(), sense.figure()));
                }
            }
        }
    }

    private boolean isOfAName(Word word) {
        return spelling.isOfAName(word) && !LeftOver.isSilent(word) && !Manner.DESCRIBING.has(word);
    }

    private boolean isUnknown(Word word) {
        return word.number() == null
                && word.plain().length() < LONG_WORD
                && Character.isLetter(word.plain().charAt(0))
                && (word.plain().length() <= 2 || !spelling.isEveryday(word))
                && !spelling.isKnown(word)
                && !Manner.isAny(word.plain());
    }

    private static boolean isTurn(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense != null && sense.figure().endsWith(" turn");
    }

    /** In "tail slide right end, wheels up" the name is in two places. */
    private void completeName(Draft draft) {
        Names.Sense begun = draft.sense();
        if (begun != null && draft.notes().size() == 1) {
            Names.Sense whole = names.all(
                    Words.of(Words.folded(begun.title() + " " + draft.notes().get(0))));
            if (whole != null) {
                draft.mean(whole);
            }
            if (whole != null || isInTheName(begun.figure(), draft.notes().get(0))) {
                draft.forgetNotes();
            }
        }
    }

    /** "Steep 360" is a steep turn, whatever else it may be called. */
    private static boolean isInTheName(String figure, String note) {
        Set<String> name = new HashSet<>();
        Words.of(Words.folded(figure)).forEach(word -> name.add(word.plain()));
        return Words.of(Words.folded(note)).stream().allMatch(word -> name.contains(word.plain()));
    }

    private static void alternatives(Draft draft, List<Word> words, List<Found> found, Found main) {
        List<String> figures = new ArrayList<>(List.of(main.sense().figure()));
        int after = main.to();
        for (Found other : found.subList(1, found.size())) {
            boolean or = words.subList(after, other.from()).stream()
                    .anyMatch(word -> word.plain().equals("or"));
            if (or
                    && figures.size() < ListLine.MOST_CHOICES
                    && !figures.contains(other.sense().figure())) {
                figures.add(other.sense().figure());
            }
            after = other.to();
        }
        if (figures.size() > 1) {
            draft.orElse(List.copyOf(figures));
        }
    }
}
