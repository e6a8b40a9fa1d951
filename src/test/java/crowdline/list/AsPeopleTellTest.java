package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.list.line.Place;
import crowdline.list.line.Side;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists that are told: from their end, with corrections on the way, among facts that nobody flies. */
class AsPeopleTellTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<String> figures(String text) {
        return READER.read(text).lines().stream()
                .map(line -> line.figure() == null ? line.title() : line.figure())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "I finish with a low pass. Before that comes the spin. I open with a loop and a slow roll. | loop slow-roll spin low-pass",
                "The last one is a spin, before that a stall turn, before that a loop. | loop stall-turn spin",
                "We end with a tail slide, and before the tail slide a barrel roll. We start with a loop. | loop barrel-roll tail-slide",
                "Loop, barrel roll, slow roll, spin. Oh, and before that a lazy eight. | loop barrel-roll slow-roll lazy-eight spin",
                "I start with a loop, then a slow roll, and finish with a spin. | loop slow-roll spin"
            })
    void whatIsToldFromItsEndIsFlownFromItsBeginning(String told, String flown) {
        assertThat(figures(told)).extracting(figure -> figure.replace(' ', '-')).containsExactly(flown.split(" "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "stall turn right - no, make that left",
                "stall turn right, sorry, left",
                "stall turn right no sorry left",
                "stall turn to the right, correction, to the left"
            })
    void theSecondSideIsMeantWhereTheFirstIsTakenBack(String text) {
        ListLine line = READER.read("loop\n" + text + "\nspin").lines().get(1);

        assertThat(line.side()).isEqualTo(Side.LEFT);
        assertThat(line.sure()).isTrue();
    }

    @Test
    void aCorrectedEndSpeedOrCountIsTheOneThatHolds() {
        List<ListLine> lines = READER.read(
                        "stall turn at the left end, no, right end; loop at 140, sorry, 150 kt; spin two turns no wait three turns")
                .lines();

        assertThat(lines.get(0).place()).isEqualTo(Place.RIGHT_END);
        assertThat(lines.get(1).entryKt()).isEqualTo(150);
        assertThat(lines.get(2).count()).isEqualTo(3);
    }

    /** The "eight" of the figure that was taken back made it eight. */
    @Test
    void nothingThatWasTakenBackIsSaidOfWhatIsMeant() {
        ListLine line = READER.read("loop, then a half cuban eight no wait a full cuban eight, then a slow roll")
                .lines()
                .get(1);

        assertThat(line.figure()).isEqualTo("Cuban eight");
        assertThat(line.count()).isNull();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "swap the spin for a tail slide | loop tail-slide landing",
                "Instead of the spin we do a barrel roll | loop barrel-roll landing",
                "A flick roll instead of the loop. | flick-roll spin landing",
                "The loop is now a square loop | square-loop spin landing"
            })
    void aFigureTakesTheOneThatIsNamedsPlace(String change, String flown) {
        FigureList list = READER.read("loop\nspin\nland\n\n" + change + "\n");

        assertThat(list.lines())
                .extracting(line -> String.valueOf(line.figure()).replace(' ', '-'))
                .containsExactly(flown.split(" "));
        assertThat(String.join("\n", list.notes())).contains(change.replaceFirst("\\.$", ""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ceiling 1200 ft",
                "Weight 1500 lb",
                "Wind 10 kt from the left",
                "Engine 300 hp",
                "Top speed 200 kt",
                "G limits +6 -3",
                "Minimum height 300 ft",
                "Fuel 40 litres"
            })
    void aFactOfTheDayOrTheAircraftIsANote(String fact) {
        FigureList list = READER.read(fact + "\nloop\nslow roll\nspin");

        assertThat(list.lines()).extracting(ListLine::figure).containsExactly("loop", "slow roll", "spin");
        assertThat(list.lines()).allSatisfy(line -> {
            assertThat(line.heightFt()).isNull();
            assertThat(line.entryKt()).isNull();
        });
        assertThat(list.notes()).contains(fact);
    }

    @Test
    void ofTheMinutesOfABriefingOnlyTheListIsFlown() {
        FigureList list = READER.read("""
                1. Weather: fair, cloud 4000 ft, wind light.
                2. Loop, half Cuban, slow roll, stall turn, spin, land.
                3. The grass strip stays clear.
                4. Tea at four.
                """);

        assertThat(list.lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "half Cuban", "slow roll", "stall turn", "spin", "landing");
        assertThat(String.join("\n", list.notes()))
                .contains("Weather")
                .contains("grass strip")
                .contains("Tea");
    }

    @Test
    void whoFliesAPartIsNoFigure() {
        FigureList list = READER.read("Me (blue one): loop, spin.\nBoth together: opposition pass, land.");

        assertThat(list.lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "spin", "opposition pass", "landing");
        assertThat(list.notes()).contains("Me (blue one):", "Both together:");
    }

    @Test
    void aParagraphThatWasBrokenWithinItsPhrasesIsReadAsOne() {
        assertThat(
                        figures(
                                "take-off, dive in from the\nleft, loop, half\nCuban, stall turn at the\nright end, low\npass."))
                .containsExactly("take-off", "dive", "loop", "half Cuban", "stall turn", "low pass");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"2nd loop | loop", "then there's the spin | spin", "steep turn 360 deg, 100 kt | steep turn"})
    void noCountIsMadeOfARankAWordOrAnAngle(String text, String figure) {
        assertThat(READER.read("slow roll\n" + text).lines()).hasSize(2).last().satisfies(line -> {
            assertThat(line.figure()).isEqualTo(figure);
            assertThat(line.count()).isNull();
        });
    }

    /** The way ahead of a colon was said of the figure before it, and the second way of a line of the figure after it. */
    @Test
    void aWayIsSaidOfTheFigureItStandsBeside() {
        List<ListLine> lines = READER.read(
                        "centre: spin, 2 turns; from right: fast pass\nloop, left to right, right to left\nslow roll")
                .lines();

        assertThat(lines.get(0).heading()).isNull();
        assertThat(String.valueOf(lines.get(1).heading())).isEqualTo("LEFT");
        assertThat(lines.get(2).sure()).isFalse();
        assertThat(lines.get(3).heading()).isNull();
    }
}
