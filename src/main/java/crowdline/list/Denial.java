package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Heard;
import crowdline.list.split.Piece;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Tells which of the figures that are named are not flown: "same as last year, except no tumble". */
final class Denial {
    private static final Set<String> NOT = Set.of(
            "if",
            "unless",
            "instead",
            "without",
            "leave",
            "no",
            "not",
            "never",
            "don't",
            "won't",
            "dont",
            "wont",
            "can't",
            "cannot",
            "isn't",
            "aren't",
            "didn't",
            "doesn't",
            "isnt",
            "had",
            "was",
            "were",
            "used",
            "mentioned",
            "about",
            "or",
            "than",
            "cancel",
            "cancelled",
            "omit",
            "drop",
            "delete",
            "skip",
            "whether",
            "hope",
            "could",
            "should",
            "wanted",
            "meant",
            "planned",
            "tried",
            "told",
            "said",
            "asked",
            "questions",
            "question");

    /** What stands right ahead of the name of what is not flown. */
    private static final Set<String> RIGHT_AHEAD = Set.of(
            "no",
            "not",
            "never",
            "nothing",
            "without",
            "except",
            "omit",
            "skip",
            "delete",
            "scrap",
            "scratch",
            "scrapped",
            "cancel",
            "forget",
            "ditch",
            "bin");

    /** What takes a figure back that was named before. */
    private static final Set<String> CANCELS = Set.of(
            "scrap",
            "scratch",
            "scrapped",
            "cancel",
            "delete",
            "forget",
            "ditch",
            "bin",
            "omit",
            "leave",
            "drop",
            "cut");

    /** Behind which somebody begins anew: "no wait, it's a loop". */
    private static final Set<String> ANEW = Set.of("it's", "wait", "sorry", "mean", "make", "actually");

    /** "Leave out the spin." */
    private static final Set<String> OUT = Set.of("leave", "leaving", "left", "miss", "cut", "drop");

    /** "Please delete this." */
    private static final String TO_DELETE =
            "(?:please |pls )?(?:delete|remove|scrub|scrap|omit|skip|cut)(?: (?:it|(?:thi|that)(?: one)?))?(?: please| pls)?"
                    + "|no (?:that's|it's) (?:the|an) ?other .*|no forget(?: .*)?";

    /** What stands beside a figure that is not flown, with the reason behind it or without. */
    private static final String CANCELLED = "(?:cancelled|deleted|scrapped|scrubbed)";

    /** In plain words, of which "this" is one without its last letter. */
    private static final Pattern TAKEN_BACK =
            Pattern.compile("(?:that's |it's |is |now |but |we're |i'm )?(?:not (?:thi|today|now|any"
                    + " ?more|flown|flying|doing|included|in|for)\\b.*|not|" + CANCELLED
                    + "(?: .*)?|dropped|skipped|omitted|removed|struck"
                    + " out|left out|taken out)|"
                    + TO_DELETE);

    /** Behind the name of what is not flown. */
    private static final Pattern GONE = Pattern.compile(
            "(?:(?:that|which|what) .{0,60}? )?(?:(?:is|are|has been|have been|was|were|'s) (?:now )?(?:off|out|gone|cut|cancelled|scrapped|dropped|deleted|struck out|crossed out|taken"
                    + " out)|(?:has|have) gone|stays out|(?:i(?:'ve| have)? )?(?:took|taken|left|cut) (?:it )?out|(?:will|does|do) not be|won't be|(?:is|are) not flown|(?:was|were) only|no longer|i (?:want|wanted|would like) to do but|out as)\\b(?! (?:of|to|over|the|at|on)\\b).*|"
                    + CANCELLED + "\\b.*"
                    + "|" + TO_DELETE);

    /** In a column of remarks. */
    private static final Pattern STRUCK = Pattern.compile(
            "no(?:$| (?:see|longer|more|not|never)\\b.*)"
                    + "|(?:del|deleted|out|off|cancelled|scrubbed|scrapped|withdrawn|not flown|not used)(?:$| (?:this|see|until|by|since|never|\\d).*)");

    private static final Pattern ALL = Pattern.compile(
            "(?:please |so |but |now )*(?:forget|ignore|disregard|scrap|bin|delete) (?:all )?(?:(?:that|this|the|my) (?:list|sequence|lot|routine|programme|one above)|the above|everything above|all of (?:that|the above))\\b.{0,40}",
            Pattern.DOTALL);

    private static final Pattern NO = Pattern.compile(
            "(?:but )?(?:i|we) (?:do not|don't|won't|will not|never do|no longer do)(?: fly| do)?(?: it| that| this)?(?: any ?more)?"
                    + "|(?:no )?(?:i'm|we're|i am|we are) not (?:doing|flying) (?:it|that|thi)(?: one| any ?more)?");

    /** Where one figure is named and another meant. */
    private static final Pattern SLIP = Pattern.compile(
            "(?:no|sorry|soz|no sorry|oops?|(?:scratch|strike|scrap|forget|delete) (?:all )?that|(?:no )?hang on(?: no)?|i mean|correction|rather|wait|no wait|(?:no )?forgive me|(?:no )?my mistake)");

    /** Ahead of what corrects a thing said before. */
    private static final Pattern CORRECTS = Pattern.compile(
            "(?:no|sorry|soz|i mean|make (?:that|it)|rather|actually|correction|it should be|should be|that's wrong) .*");

    /** Ahead of what was flown once, or cannot be. */
    private static final Pattern NEVER = Pattern.compile(
            "(?:.* )?(?:not yet|(?:i|we|he|she)(?:'ve| have|'s| has)? (?:did|flew|done|flown) (?:some |about |over )?\\d{2,}|here (?:was|wa)(?: (?:a|an|the))*|used to(?: (?:do|fly|have|be|finish|start|with|a|the))*|(?:cannot|can't|cant|never|doesn't|does not)(?: (?:do|fly|go|be|perform|a|an|any|the))*)");

    /** "We have dropped the heart." */
    private static final Pattern DROPPED = Pattern.compile(
            "(?:.* )?(?:i|we|they|he|she|team|leader)(?: have| has|'ve|'s)? (?:now |also |just )?(?:dropped|scrapped|deleted|cancelled|removed|binned|ditched)(?: (?:the|a|an|our|my|that))*");

    private static final Set<String> SLIPPING = Set.of(
            "no",
            "sorry",
            "soz",
            "i",
            "mean",
            "rather",
            "actually",
            "correction",
            "should",
            "it",
            "be",
            "that",
            "wait",
            "of",
            "course");

    private static final Set<String> MORE = Set.of("another", "second", "more", "again");

    /** "No, before those there's a loop": nothing is taken back. */
    private static final Set<String> WHERE = Set.of("before", "after", "between", "ahead");

    private Denial() {}

    static boolean isIn(Word word) {
        return NOT.contains(word.plain());
    }

    /**
     * "So no tail slide": a figure that is named and not flown.
     *
     * @param isProse whether it stands in a sentence that talks, where a denial may stand anywhere ahead of the name
     */
    static boolean isDenied(Heard piece, boolean isProse) {
        List<Word> name = piece.drafts().get(0).name();
        if (!piece.isFigure() || name.isEmpty() || piece.drafts().size() > 1) {
            return false;
        }
        List<Word> all = aheadOf(name, piece);
        int begin = all.size();
        while (begin > 0 && !ANEW.contains(all.get(begin - 1).plain())) {
            begin--;
        }
        List<Word> ahead = all.subList(begin, all.size());
        boolean isNever = NEVER.matcher(String.join(" ", Words.plain(ahead))).matches();
        if (isNever || isDropped(piece) || isTakenBackBehind(piece, name)) {
            return true;
        }
        boolean isOfAll =
                !ahead.isEmpty() && ahead.get(0).plain().equals("no") && ahead.size() > 1 && !isFormation(ahead.get(1));
        return isOfAll || (isProse ? ahead.stream().anyMatch(Denial::isIn) : isRightAhead(ahead));
    }

    /** "Scrap the loop", "the loop has gone": one that was named before. */
    static boolean cancels(Heard piece) {
        boolean isNoMore = piece.words().size() > 2
                && piece.words().get(0).plain().equals("no")
                && piece.words().get(1).plain().equals("more");
        return isNoMore
                || CANCELS.contains(piece.words().get(0).plain())
                || isDropped(piece)
                || isTakenBackBehind(piece, piece.drafts().get(0).name());
    }

    /** The figure that was named last of those that a piece cancels; null if there is none. */
    static @Nullable Draft lastOf(List<Draft> lines, Heard cancelling) {
        Names.Sense sense = cancelling.drafts().get(0).sense();
        for (int i = lines.size() - 1; i >= 0 && sense != null; i--) {
            Names.Sense named = lines.get(i).sense();
            if (named != null && named.title().equals(sense.title())) {
                return lines.get(i);
            }
        }
        return null;
    }

    /** The words ahead of a figure's name; all of them if the piece has none. */
    private static List<Word> aheadOf(List<Word> name, Heard piece) {
        return piece.words().stream()
                .filter(word -> name.isEmpty() || word.start() < name.get(0).start())
                .toList();
    }

    private static boolean isDropped(Heard piece) {
        List<Word> ahead = aheadOf(piece.drafts().get(0).name(), piece);
        return DROPPED.matcher(String.join(" ", Words.plain(ahead))).matches();
    }

    private static boolean isTakenBackBehind(Heard piece, List<Word> name) {
        String behind = piece.words().stream()
                .filter(word -> !name.isEmpty()
                        && word.start() > name.get(name.size() - 1).start())
                .map(Word::plain)
                .collect(Collectors.joining(" "));
        return GONE.matcher(behind).matches();
    }

    /** "No 2 slow roll": who flies. */
    private static boolean isFormation(Word behindNo) {
        return behindNo.number() != null;
    }

    private static boolean isRightAhead(List<Word> ahead) {
        int at = ahead.size() - 1;
        while (at >= 0
                && Set.of("the", "a", "an", "any", "more")
                        .contains(ahead.get(at).plain())) {
            at--;
        }
        if (at < 0) {
            return false;
        }
        boolean isOut = at > 0
                && ahead.get(at).plain().equals("out")
                && OUT.contains(ahead.get(at - 1).plain());
        return isOut || RIGHT_AHEAD.contains(ahead.get(at).plain());
    }

    /** Whether a piece says that what was named is not meant: "no", "forgive me". */
    static boolean isSlip(Heard piece) {
        return SLIP.matcher(said(piece)).matches();
    }

    /**
     * Whether a piece takes back the figure before it: "not this year", or "sorry" with another figure behind it.
     *
     * @param isFigureNext whether the next piece is a figure
     */
    static boolean takesBack(Heard piece, boolean isFigureNext) {
        String said = said(piece);
        boolean isCounted = !piece.words().isEmpty() && piece.words().get(0).number() != null;
        return (!isCounted && TAKEN_BACK.matcher(said).matches())
                || (isFigureNext && SLIP.matcher(said).matches());
    }

    /**
     * Whether a piece corrects what was said of the figure before it: "make that left".
     *
     * @param isBehindASlip whether "no" or the like stands right ahead of it
     */
    static boolean corrects(Heard piece, boolean isBehindASlip) {
        boolean isDetail = !piece.isFigure()
                && piece.drafts().get(0).saysAnything()
                && piece.drafts().get(0).notes().stream()
                        .flatMap(note -> Words.of(Words.folded(note)).stream())
                        .allMatch(word -> SLIPPING.contains(word.plain()));
        return isDetail && (isBehindASlip || CORRECTS.matcher(said(piece)).matches());
    }

    /** Whether a remark beside a figure says that it is not flown: "NO, see note". */
    static boolean strikes(Heard remark) {
        return STRUCK.matcher(said(remark)).matches();
    }

    /** "Because it rolls better to the left", "while the biplane lands": named behind a comma, and not flown. */
    static boolean isReason(Heard piece) {
        List<Word> words = piece.words();
        List<Word> name = piece.drafts().get(0).name();
        boolean isOfAnother =
                words.get(0).plain().equals("while") && piece.drafts().get(0).means("landing");
        return piece.piece().parting() != Piece.Parting.LINE
                && !name.isEmpty()
                && (isOfAnother
                        || (aheadOf(name, piece).stream()
                                        .anyMatch(word -> word.plain().equals("because"))
                                && words.stream().noneMatch(word -> MORE.contains(word.plain()))));
    }

    /** "Forget that list": nothing above is flown. */
    static boolean isOfAll(String said) {
        return ALL.matcher(said).matches();
    }

    /** "The booklet says a slow roll. I do not." */
    static boolean saysNo(Heard piece) {
        return NO.matcher(said(piece)).matches();
    }

    /** Whether a figure follows, at once or behind more words that take the last one back. */
    static boolean isFigureNext(List<Heard> pieces, int at) {
        int next = at + 1;
        if (isSlip(pieces.get(at))) {
            while (next < pieces.size()
                    && (isSlip(pieces.get(next)) || pieces.get(next).isSilent())) {
                next++;
            }
        }
        return next < pieces.size()
                && pieces.get(next).isFigure()
                && !(isSlip(pieces.get(at))
                        && WHERE.contains(pieces.get(next).words().get(0).plain()))
                && !isDenied(pieces.get(next), false);
    }

    private static String said(Heard piece) {
        return piece.words().stream()
                .filter(word -> Character.isLetter(word.plain().charAt(0)))
                .map(Word::plain)
                .collect(Collectors.joining(" "));
    }
}
