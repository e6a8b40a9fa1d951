package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.piece.LeftOver;
import crowdline.list.split.Piece.Parting;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Tells of a sentence that talks whether what it names is flown: "Then a lazy eight while everybody listens". */
final class Telling {
    /** Who flies, or when. */
    private static final Set<String> FLIES = Set.of(
            "i",
            "i'll",
            "ill",
            "we",
            "we'll",
            "she",
            "he",
            "they",
            "both",
            "shall",
            "everybody",
            "everyone",
            "there",
            "there's",
            "then",
            "next",
            "after",
            "first",
            "finally",
            "last");

    /** "Ruan does a loop." */
    private static final Set<String> DOES = Set.of("do", "doe", "fly", "perform", "make");

    /** Of more figures, only some are. */
    private static final int MOST_LEFT_OUT = 2;

    private static final Pattern LEFT_OUT =
            Pattern.compile("(?s).*\\b(?:(?:left|leave|leaving|taken|took|take) (?:it |them |that |this )?out\\b(?!"
                    + " (?:of|to|over|from|on|the))|not (?:flying|doing|going to)|(?:gave|given|give) (?:it|them|that)"
                    + " up|scrubbed|scrapped|cancelled).*");

    private Telling() {}

    /** Whether one of its figures is: nothing but words that join, or that say who flies, stands ahead of its name. */
    static boolean isFlown(List<Heard> pieces, Text text, Sentence sentence) {
        String folded = text.folded().substring(sentence.start(), sentence.end());
        return !pieces.get(0).beginsWith(Manner.HEADING)
                && !folded.stripTrailing().endsWith("?")
                && !(pieces.stream().filter(Heard::isFigure).count() <= MOST_LEFT_OUT
                        && LEFT_OUT.matcher(folded).matches())
                && pieces.stream().anyMatch(Telling::leadsToAFigure);
    }

    private static boolean leadsToAFigure(Heard piece) {
        List<Word> name = piece.drafts().get(0).name();
        if (!piece.isFigure() || name.isEmpty()) {
            return false;
        }
        int begin = name.get(0).start();
        List<Word> ahead =
                piece.words().stream().filter(word -> word.start() < begin).toList();
        boolean says = piece.piece().parting() == Parting.THEN
                || ahead.stream()
                        .anyMatch(word -> FLIES.contains(word.plain())
                                || (!word.equals(ahead.get(0)) && DOES.contains(word.plain())));
        return ahead.stream().allMatch(Telling::leads)
                || (says
                        && (!piece.isWeak() || piece.drafts().get(0).means("landing"))
                        && ahead.stream().noneMatch(word -> Denial.isIn(word)));
    }

    private static boolean leads(Word word) {
        return !Denial.isIn(word)
                && (word.number() != null
                        || LeftOver.isSilent(word)
                        || Manner.isAny(word.plain())
                        || !Character.isLetter(word.plain().charAt(0)));
    }
}
