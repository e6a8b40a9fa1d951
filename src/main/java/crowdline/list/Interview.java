package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.List;
import java.util.regex.Pattern;

/** Questions that were put to a pilot, and answered: "Is there a loop? No." What is only asked is not flown. */
final class Interview {
    /** Fewer questions are the pilot's own: "Torque roll?" */
    private static final int LEAST_ASKED = 3;
    /** What is asked in fewer words as well: "Slow roll, 8 s?" */
    private static final int LONGEST_OWN = 3;

    private static final Pattern YES = Pattern.compile(
            "[\\s\\-–—>*]*(?:a: |answer: )?(?:yes|yep|yeah|yup|aye|correct|right|exactly|indeed|of course|sure|that's (?:it|right))\\b.*",
            Pattern.DOTALL);

    private final Text text;
    private final List<Sentence> sentences;
    private final List<List<Heard>> heard;
    private final boolean isOne;

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
        boolean isSaidYes = at + 1 < sentences.size()
                && YES.matcher(said(text, sentences.get(at + 1))).matches();
        return isOne && asks(text, sentences.get(at)) && !isSaidYes;
    }

    /** Whether a sentence without a figure answers the one before it. */
    boolean isAnswer(int at) {
        return isOne
                && at > 0
                && asks(text, sentences.get(at - 1))
                && heard.get(at).stream().noneMatch(Heard::isFigure);
    }

    private static boolean asks(Text text, Sentence sentence) {
        long words = sentence.pieces().stream()
                .mapToLong(piece -> text.words(piece.from(), piece.to()).size())
                .sum();
        return words > LONGEST_OWN && said(text, sentence).endsWith("?");
    }

    private static String said(Text text, Sentence sentence) {
        return text.folded().substring(sentence.start(), sentence.end()).strip();
    }
}
