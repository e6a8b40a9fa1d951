package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.list.line.Place;
import crowdline.show.check.Finding;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a letter says in passing of its figures, of its clock or of itself, and what it says of a list that is not flown. */
class SaidInPassingTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> read(String text) {
        return READER.read(text).lines();
    }

    private static void assertFlown(String text, String flown) {
        Flown.assertFlown(read(text), flown);
    }

    @Test
    void aListForReferenceIsNotTheOneThatIsFlown() {
        FigureList list = READER.read("""
                FULL (for reference)
                loop
                barrel roll
                tail slide
                heart

                FLAT
                1) low pass
                2) steep turn
                3) wing-over
                """);

        assertThat(list.lines()).extracting(ListLine::figure).containsExactly("low pass", "steep turn", "wing-over");
        assertThat(list.findings())
                .extracting(Finding::message)
                .anyMatch(message -> message.contains("\"FLAT\" was taken"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Base is 500 feet except for the slow roll.",
                "Smoke on except for the slow roll.",
                "Smoke on for everything but the slow roll.",
                "abt 9 min. smoke on for everything but the slow roll",
                "Clock starts as she passes the lighthouse and rolls.",
                "Times run from brakes off.",
                "All distances as the crowd sees the roll.",
                "D. R. Quillan",
                "I wrote 160 knots for the first one",
            })
    void whatIsSaidOfAllOfItAddsNothingAndTakesNothingOut(String said) {
        assertFlown(
                "spin\nloop\nslow roll\nhalf Cuban\nwing-over\n\n" + said, "spin loop slow-roll half-Cuban wing-over");
    }

    @Test
    void headsOfMinutesAndPartsAreNotFlown() {
        assertFlown(
                "MINUTE 0\n0:10 loop\nMINUTE 1\n1:05 slow roll\nPART TWO - REJOIN AND FINISH\n1:40 spin\n2:00 land",
                "loop slow-roll spin landing");
    }

    @Test
    void aLineIsOutThoughItsFigureIsNamedBesideItsNumber() {
        assertFlown(
                "1. spin\n2. loop\n3. tail slide\n4. slow roll\n5. half Cuban\n\nNumber 3, the tail slide, is out.",
                "spin loop slow-roll half-Cuban");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "After the slow roll I'm putting in a second stall turn, but at the left end.",
                "btween the slow roll & the half cuban theres a stall turn, left end",
                "Between the slow roll and the half Cuban there's also a stall turn, at the left end.",
            })
    void aFigureIsPutInWithWhatIsSaidBehindIt(String said) {
        List<ListLine> lines = read("spin\nslow roll\nhalf cuban\nloop\n\n" + said);

        Flown.assertFlown(lines.stream().map(ListLine::figure).toList(), "spin slow-roll stall-turn half-Cuban loop");
        assertThat(lines.get(2).place()).isEqualTo(Place.LEFT_END);
    }

    @Test
    void whatUsedToBeIsNotFlownButWhatIsNow() {
        assertFlown(
                "loop\nEnd: used to be an inverted flypast but she coughs, so it's a knife edge instead, R to L.\nspin",
                "loop knife-edge-pass spin");
    }

    @Test
    void theLastOneIsNoFigure() {
        assertFlown("loop\nspin\nLast one: smoke on, pull up, wing rock", "loop spin pull-to-vertical wing-rock");
    }

    @Test
    void whereInTheActItIsSaysNothingOfTheFigure() {
        assertFlown("loop\nfor goodbye: slow roll\nspin", "loop slow-roll spin");
        assertThat(read("loop\nMiddle bit: spin, two turns\nslow roll").get(1).place())
                .isNull();
    }

    /** "2 does a steep turn" says who. */
    @Test
    void aNumberThatDoesSomethingCountsNothing() {
        assertThat(read("4) 2 does a steep turn in front of the crowd").get(0).count())
                .isNull();
        assertThat(read("4) 2 steep turns in front of the crowd").get(0).count())
                .isEqualTo(2);
    }

    @Test
    void horsepowerIsNoTurn() {
        assertFlown("Wee biplane, 180 hp, checked wings.\nloop\nspin\nslow roll", "loop spin slow-roll");
    }

    @Test
    void smokeHasColours() {
        assertFlown("loop. Smoke white.\nspin\nslow roll. Smoke red.", "loop spin slow-roll");
    }

    /** An aeroplane has a canopy, and exits a spin. */
    @Test
    void nobodyJumpsOutOfASpin() {
        assertFlown(
                "loop, slow roll, spin, exits going away from you, humpty at the left, canopy down over the top, half Cuban, avalanche",
                "loop slow-roll spin humpty-bump half-Cuban avalanche");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hover, bow, spot turn 360 deg left, quick stop | hover bow pedal-turn quick-stop",
                "hover, bow, spot turn 360, quick stop | hover bow pedal-turn quick-stop",
                "loop, level pass, spin | loop low-pass spin",
                "loop, inverted pass and last a photo pass, spin | loop inverted-pass low-pass spin",
                "loop, vertical eight-point roll, spin | loop vertical-roll-up spin",
            })
    void aFigureHasOneName(String written, String flown) {
        assertFlown(written, flown);
    }

    @Test
    void aQuarterOfATurnStandsBehindTheTurns() {
        assertThat(read("spin, 2 turns 1/4, to right, 700 m").get(0).count()).isEqualTo(2.25);
        assertThat(read("spin (2 turns) quarter of a minute").get(0).count()).isEqualTo(2);
    }
}
