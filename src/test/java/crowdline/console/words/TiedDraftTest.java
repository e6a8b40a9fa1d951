package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A remark tied to moments, as it is written. */
class TiedDraftTest {
    private static final MomentName BEGINS = MomentName.first(MomentKind.SPIN_BEGINS);
    private static final MomentName STOPS = new MomentName(MomentKind.SPIN_STOPS, 2);
    private static final Remark TIED =
            new Remark("spin", RemarkKind.FACT, "Round it goes.", null, BEGINS, STOPS, 1.0, -2.0, 1, false, false);

    @Test
    void whatItIsTiedToStandsInTheDraftAndIsReadFromIt() {
        RemarkDraft draft = RemarkDraft.of(TIED);
        assertThat(draft.at()).isEqualTo("the spin begins");
        assertThat(draft.until()).isEqualTo("the spin stops 2");
        assertThat(draft.read(Remark.of("spin", RemarkKind.CALL, "Old.")).remark())
                .isEqualTo(TIED);
    }

    @Test
    void timesAgainstTwoMomentsMayLieAnyWayRound() {
        RemarkDraft draft = RemarkDraft.of(TIED);
        assertThat(draft.read(TIED).problems()).isEmpty();
        RemarkDraft untied =
                new RemarkDraft(RemarkKind.FACT, "Round.", "", "1", "", "", "1", "-2", false, "", OtherDraft.NONE);
        assertThat(untied.read(TIED).problems()).singleElement().asString().contains("must come after");
    }

    @Test
    void anAsideLeavesItTied() {
        RemarkDraft with = RemarkDraft.of(TIED).withAside(5, "as they say");
        assertThat(with.at()).isEqualTo("the spin begins");
        assertThat(with.until()).isEqualTo("the spin stops 2");
    }

    @Test
    void theBoxOffersWhatThereIsAndKeepsWhatIsNotThere() {
        ChoiceBox box = new ChoiceBox("Moment", "the start of the figure", "not in this figure");
        box.show("", List.of("begins", "over the top"));
        assertThat(box.getItemCount()).isEqualTo(3);
        assertThat(box.chosen()).isEmpty();
        box.setSelectedItem("over the top");
        assertThat(box.chosen()).isEqualTo("over the top");
        box.show("pivots", List.of("begins", "over the top"));
        assertThat(box.chosen()).isEqualTo("pivots");
        assertThat(box.getItemCount()).isEqualTo(4);
    }
}
