package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Questions that were put to a pilot, and answered: "Is there a loop? No." What is only asked is not flown. */
final class Interview {
    /** Fewer questions are the pilot's own: "Torque roll?" */
    private static final int LEAST_ASKED = 3;
    /** What is asked in fewer words as well: "Slow roll, 8 s?" */
    private static final int LONGEST_OWN = 3;
    /** What has more parts lists them, though the last is in doubt. */
    private static final int MOST_ASKED = 5;

    private static final Pattern YES = Pattern.compile(
            "[\\s\\-–—>*]*(?:a: |answer: )?(?:yes|yep|yeah|yup|aye|correct|right|exactly|indeed|of course|sure|that's (?:it|right))\\b.*",
            Pattern.DOTALL);

    private static final Pattern WHERE = Pattern.compile("\\b(?:which (?:end|side)|where)\\b");

    /** "Stall turn at which end?": it is flown, whatever the answer. */
    private static final Pattern PRESUPPOSES = Pattern.compile(
            "\\b(?:which|what (?:speed|height|end|side|direction)|how (?:many|high|low|fast|long|often)|where)\\b");

    private static final Pattern HOW_MANY = Pattern.compile("\\bhow (?:many|often)\\b");

    private static final Pattern ASKED = Pattern.compile(
            "(?:\\W|q:|question:)*(?:q\\d{1,2}|anything|next|which|what|how|where|when|who|any|is|are|do|does|and)\\b");

    private final Text text;
    private final List<Sentence> sentences;
    private final List<List<Heard>> heard;
    private final boolean isOne;
    /** What the last question was put of. */
    private @Nullable Draft meant;

    private Interview(Text text, List<Sentence> sentences, List<List<Heard>> heard, boolean isOne) {
        this.text = text;
        this.sentences = sentences;
        this.heard = heard;
        this.isOne = isOne;
    }

    static Interview of(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        long asked = sentences.stream().filter(sentence -> asks(text, sentence)).count();
        return new Interview(text, sentences, heard, asked >= LEAST_ASKED);
    }

    /** Whether a sentence only asks: nobody says yes to it in the next. */
    boolean isAsked(int at) {
        return isOne && asks(text, sentences.get(at)) && !isSaidYes(at);
    }

    private boolean isSaidYes(int at) {
        int next = next(at);
        return next < sentences.size()
                && YES.matcher(sentences.get(next).said(text)).matches();
    }

    /** The next sentence that says anything; how many there are if none does. */
    private int next(int at) {
        int next = at + 1;
        while (next < sentences.size() && sentences.get(next).said(text).isEmpty()) {
            next++;
        }
        return next;
    }

    private int before(int at) {
        int before = at - 1;
        while (before > 0 && sentences.get(before).said(text).isEmpty()) {
            before--;
        }
        return before;
    }

    /** "And the stall turn, is that still in it?" "Yes": what one figure is asked for, and no other sentence flies. */
    private boolean isConfirmed(int at) {
        List<Draft> asked = heard.get(at).stream()
                .filter(Heard::isFigure)
                .flatMap(piece -> piece.drafts().stream())
                .toList();
        return asks(text, sentences.get(at))
                && isSaidYes(at)
                && asked.size() == 1
                && heard.get(next(at)).stream().noneMatch(Heard::isFigure);
    }

    /** "Slow roll - which way?" "Left": what is asked of one figure is said of it. */
    private boolean isPresupposed(int at) {
        List<Draft> asked = heard.get(at).stream()
                .filter(Heard::isFigure)
                .flatMap(piece -> piece.drafts().stream())
                .toList();
        boolean isOfOne = PRESUPPOSES.matcher(sentences.get(at).said(text)).find();
        int next = next(at);
        return asks(text, sentences.get(at))
                && asked.size() == 1
                && (isOfOne || asked.get(0).isOneOfSeveral())
                && next < sentences.size()
                && !asks(text, sentences.get(next))
                && sentences.get(next).line() != sentences.get(at).line()
                && heard.get(next).stream().noneMatch(Heard::isFigure);
    }

    /** Whether a sentence without a figure answers the one before it, or goes on talking. */
    boolean isAnswer(int at) {
        boolean isTold = heard.get(at).stream().allMatch(piece -> !piece.isFigure() && !piece.isDetail());
        boolean isOnTheLine =
                at > 0 && sentences.get(at - 1).line() == sentences.get(at).line();
        return heard.get(at).stream().noneMatch(Heard::isFigure)
                && at > 0
                && ((isOne && (asks(text, sentences.get(before(at))) || (isTold && isOnTheLine && isAnswer(at - 1))))
                        || isAskedByAnother(at));
    }

    /** "What's the entry speed for that?" in a talk by messages. */
    private boolean isAskedByAnother(int at) {
        int before = before(at);
        while (before > 0
                && sentences.get(before).aside()
                && sentences.get(before).line() == sentences.get(at).line()) {
            before--;
        }
        return sentences.get(before).aside()
                && !sentences.get(at).aside()
                && sentences.get(before).said(text).endsWith("?")
                && heard.get(at).get(0).drafts().get(0).saysAnything();
    }

    /** Lets the last figure say what an answer says of it; false if it says nothing of one. */
    boolean takes(int at, Assembly assembly) {
        if (isOne && isPresupposed(at)) {
            Draft asked = heard.get(at).stream()
                    .filter(Heard::isFigure)
                    .map(piece -> piece.drafts().get(0))
                    .findFirst()
                    .orElseThrow();
            meant = assembly.lines().stream()
                    .filter(line -> Exchanges.isSame(line, asked))
                    .findFirst()
                    .orElse(null);
            if (meant == null) {
                heard.get(at).stream()
                        .filter(piece -> !piece.isFigure())
                        .forEach(piece -> assembly.addNote(
                                piece.piece().start(), piece.piece().end()));
                heard.get(at).stream().filter(Heard::isFigure).forEach(assembly::put);
                meant = asked;
                return true;
            }
            return false;
        }
        if (isOne && !sentences.get(at).numbered() && isConfirmed(at)) {
            heard.get(at).stream().filter(Heard::isFigure).forEach(assembly::put);
            heard.get(at).stream()
                    .filter(piece -> !piece.isFigure())
                    .forEach(piece -> assembly.addNote(
                            piece.piece().start(), piece.piece().end()));
            return true;
        }
        boolean says = isAnswer(at)
                && !sentences.get(at).aside()
                && !assembly.lines().isEmpty()
                && assembly.lines().get(assembly.lines().size() - 1).isFigure()
                && heard.get(at).stream()
                        .anyMatch(piece ->
                                piece.drafts().get(0).saysAnything() || (meant != null && Attached.isCount(piece)));
        if (says) {
            boolean isWhere =
                    WHERE.matcher(sentences.get(before(at)).said(text)).find();
            Draft of = meant != null && assembly.lines().contains(meant)
                    ? meant
                    : assembly.lines().get(assembly.lines().size() - 1);
            if (HOW_MANY.matcher(sentences.get(before(at)).said(text)).find()) {
                Attached.count(of, heard.get(at).get(0));
            }
            Attached.to(of, sentences.get(at), heard.get(at), text, isWhere);
        }
        if (!sentences.get(at).said(text).isEmpty()) {
            meant = null;
        }
        return says;
    }

    private static boolean asks(Text text, Sentence sentence) {
        long words = sentence.pieces().stream()
                .mapToLong(piece -> text.words(piece.from(), piece.to()).size())
                .sum();
        String said = sentence.said(text);
        return said.endsWith("?")
                && sentence.pieces().size() <= MOST_ASKED
                && (words > LONGEST_OWN || ASKED.matcher(said).lookingAt());
    }
}
