package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Block;
import crowdline.sheet.page.Counting;
import crowdline.show.Act;
import crowdline.show.Gaps;
import crowdline.show.Interpreting;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import java.util.List;
import org.junit.jupiter.api.Test;

class InterpreterCardsTest {
    /** "Look to the right." */
    private static final String ARABIC =
            "\u0627\u0646\u0638\u0631\u0648\u0627 \u0625\u0644\u0649 \u0627\u0644\u064a\u0645\u064a\u0646.";

    private static Show show(Interpreting when, boolean away) {
        Show show = PaperShows.of(2);
        Act act = show.acts().get(0);
        Figure first = act.figures().get(0);
        List<Remark> remarks = List.of(
                first.remarks().get(0).translated(new Translation("fr", "Voici le premier passage.", "Claire")),
                Remark.of("look", RemarkKind.EXPLANATION, "Look up to the right.")
                        .translated(new Translation("ar", ARABIC, "Claire")));
        return show.withAct(act.withFigures(
                        List.of(first.withRemarks(remarks), act.figures().get(1)), act.remarks()))
                .withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Claire", away)), when));
    }

    private static List<Block> blocks(Show show) throws NothingOnPaper {
        return Paper.of(SheetKind.INTERPRETER, PaperShows.wanted(show, false), Counting.UNHEARD).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .toList();
    }

    private static List<Ink.Words> words(List<Block> blocks, String name) {
        return blocks.stream()
                .filter(block -> block.name().startsWith(name))
                .flatMap(block -> block.inks().stream())
                .filter(Ink.Words.class::isInstance)
                .map(Ink.Words.class::cast)
                .toList();
    }

    @Test
    void eachCardHasWhatComesBeforeAndTheWordsInLargeType() throws NothingOnPaper {
        List<Block> blocks = blocks(show(Interpreting.AFTER, false));
        assertThat(words(blocks, "kind"))
                .extracting(Ink.Words::text)
                .anyMatch(t -> t.startsWith("French \u00b7 Claire"));
        assertThat(words(blocks, "first")).extracting(Ink.Words::text).contains("After: Here comes pass 1.");
        assertThat(words(blocks, "other call0"))
                .allSatisfy(w -> assertThat(w.sizePx()).isEqualTo(CueCards.WORDS_PT));
        assertThat(words(blocks(show(Interpreting.BESIDE, false)), "first"))
                .extracting(Ink.Words::text)
                .contains("With: Here comes pass 1.");
    }

    @Test
    void whatIsWrittenFromTheRightEndsAtTheRight() throws NothingOnPaper {
        List<Ink.Words> arabic = words(blocks(show(Interpreting.AFTER, false)), "other look");
        assertThat(arabic).isNotEmpty().allMatch(w -> w.anchor() == Ink.Anchor.END);
        assertThat(words(blocks(show(Interpreting.AFTER, false)), "other call0"))
                .allMatch(w -> w.anchor() == Ink.Anchor.START);
    }

    @Test
    void withoutAnInterpreterThereIsNothingToPrint() {
        for (Show none : List.of(show(Interpreting.AFTER, true), PaperShows.of(2))) {
            assertThatThrownBy(() -> blocks(none))
                    .isInstanceOf(NothingOnPaper.class)
                    .hasMessageContaining("another language");
        }
    }

    @Test
    void whatIsSaidBetweenTheActsHasACardToo() throws NothingOnPaper {
        Show show = show(Interpreting.AFTER, false);
        Remark thanks = Remark.of("thanks", RemarkKind.DUTY, "Thank you all for coming.")
                .translated(new Translation("fr", "Merci \u00e0 tous.", "Claire"));
        List<Block> blocks = blocks(show.withActs(show.acts(), List.of(thanks)));
        assertThat(words(blocks, "name")).extracting(Ink.Words::text).contains("At any time of the day");
        assertThat(words(blocks, "other thanks")).extracting(Ink.Words::text).contains("Merci \u00e0 tous.");
        assertThat(words(blocks, "kind thanks")).extracting(Ink.Words::text).contains("French \u00b7 Claire");
    }

    @Test
    void aPartOfAPieceHasACardAndOlderWordsSaySo() throws NothingOnPaper {
        Show show = show(Interpreting.AFTER, false);
        Piece piece = new Piece(
                "tower",
                "The tower",
                null,
                List.of(new Piece.Part(
                        "Who are you?", 30, null, new Translation("fr", "Qui ?", "Claire").older(true))));
        List<Block> blocks = blocks(show.withGaps(new Gaps(50, List.of(piece))));
        assertThat(words(blocks, "other tower (1)")).extracting(Ink.Words::text).contains("Qui ?");
        assertThat(words(blocks, "note tower (1)")).extracting(Ink.Words::text).contains("Older than the text");
        assertThat(words(blocks, "note")).as("nothing else is").hasSize(1);
    }

    @Test
    void whatMayBeSaidInShortHasItsShortWordsToo() throws NothingOnPaper {
        Remark thanks = Remark.of("thanks", RemarkKind.DUTY, "Thank you all for coming.")
                .worded("Thank you all for coming.", "Thank you.")
                .translated(new Translation("fr", "Merci \u00e0 tous.", "Merci.", "Claire", false));
        Show show = show(Interpreting.AFTER, false);
        List<Block> blocks = blocks(show.withActs(show.acts(), List.of(thanks)));
        assertThat(words(blocks, "short thanks")).extracting(Ink.Words::text).contains("In short, after: Thank you.");
        assertThat(words(blocks, "other short thanks"))
                .extracting(Ink.Words::text)
                .contains("Merci.");
    }
}
