package crowdline.list;

import static crowdline.list.Flown.assertFlown;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.list.line.Place;
import crowdline.show.figure.Placing.Heading;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands ahead of figures and is none, and figures that are told by what is said of them. */
class MarksAndNamesTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> read(String... lines) {
        return listed(lines).lines();
    }

    private static FigureList listed(String... lines) {
        return READER.read(String.join("\n", lines));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.) loop;2.) spin;3.) slow roll;4.) landing",
                "I    loop;II   spin;III  slow roll;IV   landing",
                "(xii) loop;(xiii) spin;(xiv) slow roll;(xv) landing"
            })
    void marksAreNoCounts(String list) {
        List<ListLine> lines = read(list.split(";"));

        assertFlown(lines, "loop spin slow-roll landing");
        assertThat(lines).extracting(ListLine::count).containsOnlyNulls();
    }

    @Test
    void aTenthRomanNumeralGoesOnBehindTheNinth() {
        List<ListLine> lines = read(
                "I loop",
                "II spin",
                "III slow roll",
                "IV loop",
                "V spin",
                "VI loop",
                "VII spin",
                "VIII loop",
                "IX spin",
                "X slow roll",
                "XI landing");

        assertFlown(lines, "loop spin slow-roll loop spin loop spin loop spin slow-roll landing");
    }

    @Test
    void theHourIsNoFigureAndNoSpeed() {
        List<ListLine> lines = read("1600 take-off", "1603 zoogle", "1605 loop", "1608 aileron roll", "1612 landing");

        assertFlown(lines, "take-off zoogle loop aileron-roll landing");
        assertThat(lines).extracting(ListLine::entryKt).containsOnlyNulls();
    }

    @Test
    void whoIsNamedAgainMayFlyBehindADash() {
        List<ListLine> lines = read(
                "Take-off of both",
                "Magpie - loop",
                "Dunnock - slow roll",
                "Magpie - barrel roll",
                "Dunnock - spin",
                "landing");

        assertFlown(lines, "take-off loop slow-roll barrel-roll spin landing");
        assertThat(lines.get(1).note()).isEqualTo("Magpie");
        assertThat(lines.get(4).note()).isEqualTo("Dunnock");
    }

    /** One that is named once may be what is flown. */
    @Test
    void whatIsNamedOnceAheadOfADashIsFlown() {
        assertFlown(
                read("Take-off", "Zoogle - loop", "Slow roll", "Landing"), "take-off Zoogle loop slow-roll landing");
    }

    @Test
    void whoFliesWhatFollowsHeadsIt() {
        List<ListLine> lines =
                read("all nine", "  loop", "  barrel roll", "solo pair", "  slow roll", "  spin", "landing");

        assertThat(lines).extracting(ListLine::figure).doesNotContainNull().hasSize(5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "doors open R-L, 300 ft | low pass | LEFT",
                "the lot hanging out, L-R, 120 kt | low pass | RIGHT",
                "bomber and escorts as a pair, L-R, 200 kt | formation pass | RIGHT"
            })
    void pastTheCrowdAtAHeightOrASpeedIsAPass(String line, String figure, Heading heading) {
        ListLine pass = read("loop", line, "spin", "landing").get(1);

        assertThat(pass.figure()).isEqualTo(figure);
        assertThat(pass.heading()).isEqualTo(heading);
        assertThat(pass.sure()).isFalse();
        assertThat(pass.note()).isNotBlank();
    }

    @Test
    void whatHasNeitherIsItsOwn() {
        assertFlown(read("loop", "zoogle L-R", "spin", "landing"), "loop zoogle spin landing");
    }

    @Test
    void whatCrossesIsFlownByTwo() {
        assertFlown(read("loop", "cross 1+2 v 3+4, 400 kt, 150 ft", "landing"), "loop opposition-pass landing");
    }

    @Test
    void pullingUpToAHeightIsAClimb() {
        List<ListLine> lines = read("low pass", "pull up to 600 ft", "pull up vertical to 2000 ft", "landing");

        assertFlown(lines, "low-pass climb pull-to-vertical landing");
        assertThat(lines.get(1).heightFt()).isEqualTo(600.0);
    }

    @Test
    void passesThatAreCountedByTheirRankAreLinesOfTheirOwn() {
        List<ListLine> lines = read(
                "1st pass  vic of 3, right to left, 800 ft, 170 mph",
                "2nd  bomber alone, bomb doors open, L-R, 300 ft",
                "3rd  wheels + flaps down, slow, R-L, 120 mph",
                "4th  landing");

        assertFlown(lines, "formation-pass low-pass low-pass landing");
        assertThat(lines).extracting(ListLine::heightFt).containsExactly(800.0, 300.0, null, null);
    }

    @Test
    void whatIsCrossedOutIsNotFlown() {
        FigureList list = listed(
                "take-off [crossed out: climbing turn]",
                "loop",
                "(struck out: spin, two turns)",
                "slow roll",
                "landing");

        assertFlown(list.lines(), "take-off loop slow-roll landing");
    }

    @Test
    void lightsDoorsAndYardsAreNoFigures() {
        List<ListLine> lines = read(
                "take-off, lights on",
                "climb, ramp open",
                "loop, together",
                "spin, once round",
                "landing in 300 yards");

        assertFlown(lines, "take-off climb loop spin landing");
        assertThat(lines.get(4).entryKt()).isNull();
    }

    @Test
    void fallingIntoASpinIsTheSpin() {
        assertFlown(read("tumble", "fall into a flat spin, 4 turns", "landing"), "lomcovak flat-spin landing");
    }

    @Test
    void theLeftAndRightOfAShowAreThoseOfAStage() {
        List<ListLine> lines = read("slow roll SL to SR", "knife edge pass SR to SL", "half Cuban SR end", "landing");

        assertThat(lines).extracting(ListLine::heading).containsExactly(Heading.RIGHT, Heading.LEFT, null, null);
        assertThat(lines.get(2).place()).isEqualTo(Place.RIGHT_END);
        assertFlown(read("SR", "loop", "landing"), "slow-roll loop landing");
    }

    @Test
    void aTitleOrACraftIsNoFigure() {
        assertFlown(
                read("Flypast list for the heavy bomber", "low pass R-L", "loop", "spin", "landing"),
                "low-pass loop spin landing");
        assertFlown(read("jump ship: the blue twin", "climb", "exit", "canopy descent"), "climb jump canopy-descent");
    }
}
