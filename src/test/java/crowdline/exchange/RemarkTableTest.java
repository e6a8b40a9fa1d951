package crowdline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.edit.act.CannotBe;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemarkTableTest {
    private static final Path PASTED = Path.of("pasted cells");

    private Show show;

    @BeforeEach
    void open() throws ShowFileException {
        show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/wrackenholt-evening.json"))
                .show());
    }

    private String act() {
        return show.acts().get(0).title();
    }

    private List<RemarkRow> rows(String text) throws ShowFileException {
        return RemarkTable.read(PASTED, text, show).rows();
    }

    @Test
    void whatIsGivenIsTakenAgainAsItIs() throws ShowFileException, CannotBe {
        RemarkTable.Reading reading = RemarkTable.read(PASTED, RemarkTable.of(show), show);
        assertThat(reading.rows()).hasSize((int) show.everyRemark().count()).allMatch(RemarkRow::known);
        assertThat(RemarkTable.take(reading).of(show).show()).isEqualTo(show);
    }

    @Test
    void wordsChangedInASpreadsheetChangeTheRemark() throws ShowFileException, CannotBe {
        Remark first = show.acts().get(0).figures().get(0).remarks().get(0);
        Show changed = RemarkTable.take(RemarkTable.read(PASTED, "id;text\n" + first.id() + ";Other words.\n", show))
                .of(show)
                .show();
        Remark now = changed.acts().get(0).figures().get(0).remarks().get(0);
        assertThat(now.text()).isEqualTo("Other words.");
        assertThat(now.kind()).isEqualTo(first.kind());
        assertThat(now.shortText()).as("no such column").isEqualTo(first.shortText());
        assertThat(now.weight()).isEqualTo(first.weight());
    }

    @Test
    void newRemarksGoToTheirActsAndFigures() throws ShowFileException, CannotBe {
        String figure = show.acts().get(0).figures().get(1).shownName();
        RemarkTable.Reading reading = RemarkTable.read(
                PASTED,
                "act,figure,kind,text,at,earliest,once\n" + "\"" + act().toUpperCase(java.util.Locale.ROOT) + "\","
                        + figure + ",Explanation,See it hang.,over the top,\"-1,5\",yes\n,,duty,Mind the rope.,,,\n",
                show);
        assertThat(reading.rows()).extracting(RemarkRow::known).containsExactly(false, false);
        Show taken = RemarkTable.take(reading).of(show).show();
        List<Remark> remarks = taken.acts().get(0).figures().get(1).remarks();
        Remark last = remarks.get(remarks.size() - 1);
        assertThat(last.kind()).isEqualTo(RemarkKind.EXPLANATION);
        assertThat(last.once()).isTrue();
        assertThat(last.earliestS()).isEqualTo(-1.5);
        assertThat(Objects.requireNonNull(last.at()).kind()).isEqualTo(MomentKind.OVER_THE_TOP);
        assertThat(taken.remarks()).extracting(Remark::text).contains("Mind the rope.");
        assertThat(taken.everyRemark().map(Remark::id)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        act,text          | Nobody,Hello.                | The show has no act “Nobody”
        figure,text       | loop,Hello.                  | The row names a figure and no act; write the act too
        kind,text         | callz,Hello.                 | There is no kind “callz”; did you mean "call"?
        kind,text         | call,                        | The row has no words; it is passed over
        kind,text         | call,=1+1                    | “=1+1” is a formula
        at,text           | nowhere,Hello.               | There is no moment “nowhere”
        weight,text       | heavy,Hello.                 | “heavy” is no number; write one such as 2.5
        weight,text       | 0,Hello.                     | weight
        """)
    void rowThatCannotBeTakenSaysWhy(String head, String row, String why) throws ShowFileException {
        RemarkRow read = rows(head + "\n" + row + "\n").get(0);
        assertThat(read.remark()).isNull();
        assertThat(read.said()).singleElement().asString().contains(why);
    }

    @Test
    void noneToTakeIsRefused() throws ShowFileException {
        RemarkTable.Reading reading = RemarkTable.read(PASTED, "kind,text\ncall,\n", show);
        assertThatThrownBy(() -> RemarkTable.take(reading).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessage("None of the rows can be taken; each says why");
    }

    @Test
    void wordsNeedAColumn() {
        assertThatThrownBy(() -> rows("act,figure\na,b\n")).hasMessageContaining("no column of words was recognised");
    }

    @Test
    void speakersAreGivenAndTakenByName() throws ShowFileException, CannotBe {
        show = show.withSpeakers(
                new Speakers(List.of(new Speaker("Ann", false), new Speaker("Ben, the other", false))));
        Remark first = show.acts().get(0).figures().get(0).remarks().get(0);
        Show taken = RemarkTable.take(RemarkTable.read(
                        PASTED, "id;text;speaker\n" + first.id() + ";" + first.text() + ";ben, the other\n", show))
                .of(show)
                .show();
        assertThat(taken.acts().get(0).figures().get(0).remarks().get(0)).isEqualTo(first.saidBy("Ben, the other"));
        show = taken;
        assertThat(RemarkTable.take(RemarkTable.read(PASTED, RemarkTable.of(show), show))
                        .of(show)
                        .show())
                .isEqualTo(show);
        assertThat(rows("id;text\n" + first.id() + ";Other words.\n"))
                .extracting(row -> Objects.requireNonNull(row.remark()).speaker())
                .as("no such column")
                .containsExactly("Ben, the other");
        assertThat(rows("text,said by\nHello there.,Bem the other\n").get(0).said())
                .singleElement()
                .asString()
                .contains("Nobody called \u201cBem the other\u201d speaks")
                .contains("Ben, the other");
    }

    @Test
    void anotherLanguageIsGivenAndTakenWithItsSpeaker() throws ShowFileException, CannotBe {
        show = show.withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Claire", false))));
        Remark first = show.acts().get(0).figures().get(0).remarks().get(0);
        String row = first.id() + ";\"" + first.text() + "\";";
        Show taken = RemarkTable.take(RemarkTable.read(
                        PASTED,
                        "id;text;language;translation;interpreter\n" + row + "fr;Regardez, maintenant.;claire\n",
                        show))
                .of(show)
                .show();
        Remark now = taken.acts().get(0).figures().get(0).remarks().get(0);
        assertThat(now).isEqualTo(first.translated(new Translation("fr", "Regardez, maintenant.", "Claire")));
        show = taken;
        assertThat(RemarkTable.take(RemarkTable.read(PASTED, RemarkTable.of(show), show))
                        .of(show)
                        .show())
                .isEqualTo(show);
        assertThat(rows("text;translation\nHello there.;Bonjour.\n").get(0).said())
                .singleElement()
                .asString()
                .contains("does not say in which");
        assertThat(rows("text;language;translation\nHello there.;French it is;Bonjour.\n")
                        .get(0)
                        .remark())
                .isNull();
    }

    @Test
    void wordsInAnotherLanguageAreOlderWhereTheTableChangesTheTextAlone() throws ShowFileException, CannotBe {
        Remark first = show.acts().get(0).figures().get(0).remarks().get(0);
        Translation french = new Translation("fr", "Regardez, maintenant.", "Regardez.", null, false);
        show = show.withAct(show.acts()
                .get(0)
                .withFigures(
                        show.acts().get(0).figures().stream()
                                .map(f -> f.withRemarks(f.remarks().stream()
                                        .map(r -> r.id().equals(first.id()) ? r.translated(french) : r)
                                        .toList()))
                                .toList(),
                        show.acts().get(0).remarks()));
        String heads = "id;text;language;translation;short translation;translation older\n" + first.id() + ";";
        String same = "\"" + first.text() + "\"";
        assertThat(taken(heads + same + ";fr;Regardez, maintenant.;Regardez.;")).isEqualTo(french);
        assertThat(taken(heads + "Other words.;fr;Regardez, maintenant.;Regardez.;"))
                .isEqualTo(french.older(true));
        assertThat(taken(heads + same + ";fr;Regardez, maintenant.;Regardez.;yes"))
                .isEqualTo(french.older(true));
        assertThat(taken(heads + "Other words.;fr;D'autres mots.;Autres.;yes"))
                .isEqualTo(new Translation("fr", "D'autres mots.", "Autres.", null, false));
        assertThat(taken("id;text\n" + first.id() + ";Other words."))
                .as("no such columns")
                .isEqualTo(french.older(true));
    }

    private @Nullable Translation taken(String table) throws ShowFileException, CannotBe {
        return RemarkTable.take(RemarkTable.read(PASTED, table + "\n", show))
                .of(show)
                .show()
                .acts()
                .get(0)
                .figures()
                .get(0)
                .remarks()
                .get(0)
                .translation();
    }
}
