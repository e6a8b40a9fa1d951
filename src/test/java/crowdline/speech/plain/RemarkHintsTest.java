package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RemarkHintsTest {

    @Test
    void figureNamesAreTradeWordsButNotThoseEveryFamilyKnows() {
        Map<String, String> words =
                RemarkHints.tradeWords(CatalogueFile.shipped().entries());
        assertThat(words).containsKeys("humpty bump", "hammerhead", "avalanche", "rudder");
        assertThat(words).doesNotContainKeys("loop", "landing", "slow roll");
        assertThat(words.get("stall turn")).doesNotEndWith(".").matches("\\p{Ll}.*");
    }

    private static final RemarkPlace ACT = new RemarkPlace("a1", null);
    private static final RemarkPlace LOOP = new RemarkPlace("a1", "f1");
    private static final RemarkPlace STALL_TURN = new RemarkPlace("a1", "f2");

    private final RemarkHints hints = new RemarkHints(
            Map.of("rudder", "the panel on the fin", "stall turn", "it stops and swings round"),
            figure -> Set.of(figure.figure()));
    private Show show = SmallShow.show();

    private void says(RemarkPlace place, Remark... remarks) {
        show = place.with(show, List.of(remarks));
    }

    private List<String> found(RemarkPlace place, Remark remark) {
        return hints.of(show, place, remark, remark.text()).stream()
                .map(f -> remark.text().substring(f.fromChar(), f.toChar()))
                .toList();
    }

    private static Remark fact(String id, String text) {
        return Remark.of(id, RemarkKind.FACT, text);
    }

    @Test
    void wordIsFoundOnlyWhereTheActSaysItFirst() {
        Remark first = fact("1", "Full rudder.");
        Remark second = fact("2", "More rudder.");
        Remark later = fact("3", "The rudder again.");
        says(LOOP, first, second);
        says(STALL_TURN, later);
        assertThat(found(LOOP, first)).containsExactly("rudder");
        assertThat(found(LOOP, second)).as("after it in the same figure").isEmpty();
        assertThat(found(STALL_TURN, later)).as("in a later figure").isEmpty();

        Remark loose = fact("4", "Look at the rudder.");
        says(ACT, loose);
        assertThat(found(ACT, loose))
                .as("figures come after what is said of the act")
                .containsExactly("rudder");
        assertThat(found(LOOP, first)).isEmpty();
    }

    @Test
    void showsOwnRemarksAreJudgedInTheirOrderAndNoActKnowsThem() {
        Remark first = fact("1", "Full rudder.");
        Remark second = fact("2", "More rudder.");
        says(RemarkPlace.SHOW, first, second);
        says(LOOP, second);

        assertThat(found(RemarkPlace.SHOW, first)).containsExactly("rudder");
        assertThat(found(RemarkPlace.SHOW, second)).isEmpty();
        assertThat(found(LOOP, second)).containsExactly("rudder");
    }

    @Test
    void figureWithAnExplanationNeedsNoneOfItsName() {
        Remark call = Remark.of("1", RemarkKind.CALL, "Now a stall turn.");
        says(STALL_TURN, call);
        assertThat(found(STALL_TURN, call)).containsExactly("stall turn");

        says(STALL_TURN, call, Remark.of("2", RemarkKind.EXPLANATION, "It stops up there."));
        assertThat(found(STALL_TURN, call)).isEmpty();
        says(LOOP, fact("3", "Next a stall turn."));
        assertThat(found(LOOP, fact("3", "Next a stall turn.")))
                .as("not yet explained there")
                .containsExactly("stall turn");
    }

    @Test
    void explanationMayNameItsFigure() {
        says(STALL_TURN);

        assertThat(found(STALL_TURN, Remark.of("new", RemarkKind.EXPLANATION, "A stall turn now.")))
                .isEmpty();
        assertThat(found(STALL_TURN, fact("new", "A stall turn now."))).containsExactly("stall turn");
    }

    @Test
    void figureGoesByEveryNameTheCatalogueHasForIt() {
        Figure stall = show.acts().get(0).figures().get(1);
        Catalogue known = new Catalogue(CatalogueFile.shipped().entries());

        assertThat(RemarkHints.namesOf(stall, known)).contains("stall turn", "Stall turn", "hammerhead");
    }
}
