package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands right above, beside and below a list, and is part of it or not. */
class AroundTheListTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    /** @param flown figures with a hyphen for each space, parted by spaces */
    private static void assertFlown(String told, String flown) {
        Flown.assertFlown(
                READER.read(told.replace('~', '\n')).lines().stream()
                        .map(ListLine::figure)
                        .toList(),
                flown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Takeoff - rwy 24~Left hand climbing turn~1) Loop~2) Spin~3) Roll~4) Low pass | take-off chandelle loop spin aileron-roll low-pass",
                "My loop day~~1) Loop~2) Spin~3) Roll~4) Low pass | loop spin aileron-roll low-pass",
                "- turn back, high alpha pass from the left~- descend, 450 kt pass R to L~- loop~- spin | reposition low-pass dive low-pass loop spin",
                "- loop~- spin~- barrel roll~- break, land in sequence | loop spin barrel-roll break landing"
            })
    void whatIsFlownIsFoundWhereverItStands(String told, String flown) {
        assertFlown(told, flown);
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 min tops.", "About five minutes max", "6 mins at most"})
    void howLongItTakesAtMostIsNoFigure(String length) {
        FigureList list = READER.read("loop, stall turn, spin.\n" + length);

        assertThat(list.lines()).hasSize(3);
        assertThat(list.lines()).extracting(ListLine::seconds).containsOnlyNulls();
    }

    @Test
    void thatItIsTheSameAsOnAnotherDayIsNoFigure() {
        assertThat(READER.read("Same as Thursday but shorter\nloop\nspin\nlow pass")
                        .lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "spin", "low pass");
    }

    @Test
    void turnsInASentenceOfTheirOwnAreThoseOfTheSpinBefore() {
        ListLine spin = READER.read("Loop, then a spin. 2 turns\nand then a low pass")
                .lines()
                .get(1);

        assertThat(spin.figure()).isEqualTo("spin");
        assertThat(spin.count()).isEqualTo(2);
    }

    @Test
    void alongAllOfTheLineIsWhereAndNoFigure() {
        assertThat(READER.read("loop\nknife edge to the left, full length of the display line\nspin")
                        .lines())
                .hasSize(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Fast pass 400 kts & pull up for circuit to land | low-pass landing",
                "An upward roll, followed by a stall turn | vertical-roll-up stall-turn",
                "A roll off the top of a loop | half-loop-with-roll-out-on-top",
                "loop, spin, low pass~total 6:45 brakes off to touchdown | loop spin low-pass"
            })
    void noFigureIsLostBesideAnotherNorMadeOfALength(String told, String flown) {
        assertFlown(told, flown);
    }

    @Test
    void threeOfThemAreThree() {
        ListLine rolls = READER.read("Loop\nAileron rolls, 3 of them in a row, in front of the crowd\nSpin")
                .lines()
                .get(1);

        assertThat(rolls.figure()).isEqualTo("aileron roll");
        assertThat(rolls.count()).isEqualTo(3);
    }

    /** A landing was made of Howe, and a loop of Loopey. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Cheers, Petra Lindqvist-Howe",
                "Kind regards, Petra Home",
                "Thanks, Bob Loopey",
                "Many thanks, Bryony Lande"
            })
    void whoeverSignsOnTheListsOwnLineIsNoFigure(String signs) {
        assertFlown("Loop, slow roll, stall turn. " + signs, "loop slow-roll stall-turn");
    }

    @Test
    void aFigureBehindThanksIsFlown() {
        assertFlown("Loop, slow roll. Thanks, Sam. Spin, landing", "loop slow-roll spin landing");
    }
}
