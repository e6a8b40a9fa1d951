package crowdline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.edit.act.CannotBe;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TermTableTest {
    private static final Path PASTED = Path.of("pasted cells");
    private static final Term FULL = new Term(
            "crash gate",
            List.of("fire gate", "emergency gate"),
            "place and rules",
            "A gate in the fence, \"always\" free, for fire engines.",
            "Never stand before it.",
            "",
            List.of("crowd line"),
            "common practice");

    private Show show;

    @BeforeEach
    void open() throws ShowFileException {
        show = Objects.requireNonNull(new ShowFile()
                        .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                        .show())
                .withGlossary(List.of(), List.of(FULL, Term.own("=SUM(A1)", "+cmd|' /C calc'!A0")));
    }

    private Show taken(String text) throws ShowFileException, CannotBe {
        return TermTable.take(TermTable.read(PASTED, text, show)).of(show).show();
    }

    @Test
    void whatIsGivenIsTakenAgainAndNoSpreadsheetRunsIt() throws ShowFileException, CannotBe {
        String text = TermTable.of(show);
        assertThat(text).contains("\"'=SUM(A1)\"", "\"'+cmd").doesNotContain(",=", "\n=", "\"=");
        Show again = TermTable.take(TermTable.read(PASTED, text, show.withGlossary(List.of(), List.of())))
                .of(show.withGlossary(List.of(), List.of()))
                .show();
        assertThat(again.terms()).isEqualTo(show.terms());
    }

    @Test
    void headsOfAnyKindAreRecognisedAndKnownWordsAreExplainedAnew() throws ShowFileException, CannotBe {
        Show after =
                taken("Term;Definition\nCrash gate;Where the fire engines come out.\nmarshal;Who waves the bats.\n");
        assertThat(after.terms()).hasSize(3);
        assertThat(after.terms().get(0).name()).isEqualTo("Crash gate");
        assertThat(after.terms().get(0).whatItIs()).isEqualTo("Where the fire engines come out.");
        assertThat(after.terms().get(2)).isEqualTo(Term.own("marshal", "Who waves the bats."));
    }

    @Test
    void rowWithoutAMeaningIsToldAndTheOthersAreTaken() throws ShowFileException, CannotBe {
        String text = "word,meaning\nmarshal,\nbatsman,Who waves the bats.\n";
        List<TermTable.Row> rows = TermTable.read(PASTED, text, show).rows();
        assertThat(rows.get(0).term()).isNull();
        assertThat(rows.get(0).line()).isEqualTo(2);
        assertThat(rows.get(0).said()).contains("whatItIs of marshal");
        assertThat(taken(text).terms())
                .extracting(Term::name)
                .contains("batsman")
                .doesNotContain("marshal");
    }

    @Test
    void cellsWithoutSuchHeadsAreNoWords() {
        assertThatThrownBy(() -> TermTable.read(PASTED, "start,act\n12:00,Lunch\n", show))
                .isInstanceOf(ShowFileException.class)
                .hasMessageContaining("put headings over the columns, such as word, what it is");
    }

    @Test
    void nothingToTakeIsSaid() {
        assertThatThrownBy(() -> taken("word,meaning\n,\nx,\n")).isInstanceOf(CannotBe.class);
    }
}
