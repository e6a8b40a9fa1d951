package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.draft.Measured;
import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Lets a figure take in a sentence that says something of it and flies nothing. */
final class Attached {
    /** No spin has more turns. */
    private static final double MOST_COUNT = 12;

    private Attached() {}

    /** What it says holds instead of what was said before; its words are noted. */
    static void to(Draft figure, Sentence sentence, List<Heard> pieces, Text text) {
        to(figure, sentence, pieces, text, false);
    }

    /** @param isWhere whether a side is an end, as of an answer to "which end?" */
    static void to(Draft figure, Sentence sentence, List<Heard> pieces, Text text, boolean isWhere) {
        boolean isSaid = false;
        for (Heard piece : pieces) {
            if (!piece.isFigure() && piece.drafts().get(0).saysAnything()) {
                Draft said = piece.drafts().get(0);
                said.forgetNotes();
                if (isWhere && !isSaid) {
                    figure.takeWhere(said);
                } else if (isSaid) {
                    for (Detail detail : Detail.values()) {
                        if (said.says(detail)) {
                            figure.unsay(detail);
                        }
                    }
                    figure.take(said);
                } else {
                    figure.correct(said);
                }
                isSaid = true;
            } else if (figure.says(Detail.COUNT) && number(piece) != null) {
                figure.unsay(Detail.COUNT);
                Measured.number(figure, Detail.COUNT, Objects.requireNonNull(number(piece)));
            } else if (!piece.isSilent() && !piece.words().stream().allMatch(Manner.GREETING::has)) {
                figure.remark(text.piece(piece.piece().from(), piece.piece().to()));
            }
        }
        figure.takeIn(sentence.start(), sentence.end());
    }

    /** Lets a figure take the number that an answer to "how many?" begins with. */
    static void count(Draft figure, Heard answer) {
        if (isCount(answer)) {
            figure.unsay(Detail.COUNT);
            Measured.number(figure, Detail.COUNT, Objects.requireNonNull(number(answer)));
        }
    }

    /** "Make that three". */
    static boolean isMade(Heard piece) {
        return piece.words().size() > 2
                && piece.words().get(0).plain().equals("make")
                && Set.of("that", "it").contains(piece.words().get(1).plain());
    }

    static boolean isCount(Heard piece) {
        return !piece.isFigure() && !piece.drafts().get(0).saysAnything() && number(piece) != null;
    }

    /** Of "make that 3". */
    private static @Nullable Double number(Heard piece) {
        List<Double> numbers = piece.words().stream()
                .map(Word::number)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .toList();
        return numbers.size() == 1 && numbers.get(0) <= MOST_COUNT ? numbers.get(0) : null;
    }
}
