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

    /** @param flown figures with a hyphen for each space, parted by spaces */
    private static void assertFlown(String text, String flown) {
        Flown.assertFlown(figures(text), flown);
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
        assertFlown(told, flown);
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

        Flown.assertFlown(
                list.lines().stream().map(line -> String.valueOf(line.figure())).toList(), flown);
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

    @Test
    void numbersThatRunThroughALineCountItsFigures() {
        List<ListLine> lines = READER.read(
                        "the order is 1 takeoff 2 loop 3 half cuban 4 stall turn left 5 spin 3 turns 6 landing")
                .lines();

        assertThat(lines)
                .extracting(ListLine::figure)
                .containsExactly("take-off", "loop", "half Cuban", "stall turn", "spin", "landing");
        assertThat(lines).extracting(ListLine::count).containsExactly(null, null, null, null, 3.0, null);
        assertThat(READER.read("1 loop, 2 rolls, 1 spin").lines().get(1).count())
                .isEqualTo(2);
    }

    @Test
    void linesMayBeCountedByLettersAlone() {
        assertThat(figures("A   climb\nB   loop\nC   slow roll\nD   spin"))
                .containsExactly("climb", "loop", "slow roll", "spin");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "loop, then a roll, the slow one | loop slow-roll",
                "loop and then that roll where he stops eight times | loop eight-point-roll",
                "loop, then a baril roll | loop barrel-roll",
                "loop. Next a low past from the left | loop low-pass",
                "loop. She comes back low and fast, about 250 knots | loop low-pass",
                "loop and last but not least the spin | loop spin",
                "loop\\nroll\\nsame again but left | loop aileron-roll aileron-roll",
                "Parachute display, club day\\nfreefall\\ncanopy landing | freefall canopy-landing",
                "It cannot fly inverted. Loop, roll. | loop aileron-roll",
                "I used to do the spin but now it's a loop, then a roll | loop aileron-roll",
                "Then Bill does: loop, roll | loop aileron-roll",
                "Second half: spin, loop | spin loop",
                "1.loop 2.roll 3.spin | loop aileron-roll spin",
                "loop, turn round at the left with a humpty, then a roll | loop humpty-bump aileron-roll",
                "loop. Turn round at the right, stall turn. Roll. | loop stall-turn aileron-roll",
                "loop with a flick, stall turn | avalanche stall-turn",
                "stall turn / half roll and some seconds upside down / spin | stall-turn half-roll spin"
            })
    void whatPeopleSayInOtherWordsIsReadToo(String told, String flown) {
        assertFlown(told.replace("\\n", "\n"), flown);
    }

    @Test
    void whatIsSaidLaterOfAFigureIsSaidOfIt() {
        List<ListLine> lines = READER.read(
                        "Loop then roll. NB the roll is to the left. Then spin. The loop will be at 140 kt.")
                .lines();

        assertThat(lines).extracting(ListLine::figure).containsExactly("loop", "aileron roll", "spin");
        assertThat(lines.get(0).entryKt()).isEqualTo(140);
        assertThat(lines.get(1).side()).isEqualTo(Side.LEFT);
    }

    @Test
    void aLineThatStandsFurtherInIsSaidOfTheOneBeforeIt() {
        List<ListLine> lines = READER.read(
                        "loop\n  at the centre, 140 kt\nslow roll\n  from the right\nspin\n  3 turns")
                .lines();

        assertThat(lines).hasSize(3);
        assertThat(lines.get(0).place()).isEqualTo(Place.CENTRE);
        assertThat(String.valueOf(lines.get(1).heading())).isEqualTo("LEFT");
        assertThat(lines.get(2).count()).isEqualTo(3);
    }

    @Test
    void theEndAheadOfAColonIsWhereTheNextIsFlown() {
        List<ListLine> lines = READER.read("loop\nturnaround left: humpty bump\nturnaround right: stall turn\nland")
                .lines();

        assertThat(lines).extracting(ListLine::figure).containsExactly("loop", "humpty bump", "stall turn", "landing");
        assertThat(lines.get(1).place()).isEqualTo(Place.LEFT_END);
        assertThat(lines.get(2).place()).isEqualTo(Place.RIGHT_END);
    }

    @Test
    void aFigureThatIsLeftOutByItsNameIsNotFlown() {
        String list = "1 vertical roll\n2 humpty\n3 torque roll\n4 flat spin, 4 turns\n5 land\n";

        assertThat(figures(
                        "As last time except that the humpty becomes a tailslide and there's no torque roll:\n" + list))
                .containsExactly("vertical roll up", "tail slide", "flat spin", "landing");
        assertThat(figures("PS: no spin on Friday\n" + list)).contains("flat spin");
        assertThat(figures(list + "\nIf it rains there's no flat spin.\n")).contains("flat spin");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "climb to a thousand feet | climb, height 1000",
                "low pass from behind, 420 kts | low pass, flies away, entry 420",
                "inverted pass away | inverted pass, flies away",
                "Vrille, 2 tours | spin, count 2",
                "Trudeln, drei Umdrehungen | spin, count 3",
                "loop from 140 | loop, entry 140"
            })
    void whatIsSaidOfAFigureIsReadInTheseWordsToo(String text, String said) {
        assertThat(Spelt.said(READER.read(text))).isEqualTo(said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Thanks for having us.", "Many thanks for your note.", "Best wishes for the day."})
    void whoGivesThanksAheadOfAListHasSignedNothingYet(String thanks) {
        assertThat(figures(thanks + "\n\n1. Roll\n2. Loop\n3. Spin\n\nRosa"))
                .containsExactly("aileron roll", "loop", "spin");
        assertThat(figures(thanks + "\n\nRoll\nLoop\nSpin\n\nRosa")).containsExactly("aileron roll", "loop", "spin");
    }

    @Test
    void whatTheAircraftCanDoIsNoPartOfANumberedList() {
        assertThat(figures(
                        "1. Loop\n2. Slow roll\n3. Spin\n4. Low pass\n\nThe engine's fuel injected so it runs upside down.\n"
                                + "The engine stops in a tail slide now and then."))
                .containsExactly("loop", "slow roll", "spin", "low pass");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Facts:",
                "About the pilot",
                "A few facts for the commentator:",
                "DID YOU KNOW?",
                "Talking points"
            })
    void whatStandsUnderAHeadingThatTellsIsNotFlown(String heading) {
        String sheet =
                heading + "\n- first solo at 17\n- the roll of honour has her name\n- she won the Tallow Cup in 2016\n";

        assertThat(figures("* loop\n* stall turn\n* spin\n* low pass\n\n" + sheet))
                .containsExactly("loop", "stall turn", "spin", "low pass");
        assertThat(figures(sheet + "\n* loop\n* stall turn\n* spin\n* low pass\n"))
                .containsExactly("loop", "stall turn", "spin", "low pass");
        assertThat(figures(sheet + "\nSequence:\nloop, stall turn, spin"))
                .containsExactly("loop", "stall turn", "spin");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spin, two or three turns | 3",
                "4 or 5 turn spin | 5",
                "spin two turns maybe three | 2",
                "spin, two turns, or perhaps three turns | 2",
                "spin, 3 turns, perhaps 4 | 3"
            })
    void ofTwoCountsOneIsTakenAndAskedFor(String text, double count) {
        List<ListLine> lines = READER.read("loop\n" + text + "\nlow pass").lines();

        assertThat(lines).hasSize(3);
        assertThat(lines.get(1).figure()).isEqualTo("spin");
        assertThat(lines.get(1).count()).isEqualTo(count);
        assertThat(lines.get(1).sure()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "recover low and do knife edge along the line | level-out knife-edge-pass",
                "loop and then a barrel roll along the display line | loop barrel-roll",
                "Solo display, Cpt. Inge Orrestad~~loop, low pass | loop low-pass",
                "TOW TO 3500 AGL~RELEASE~1 LOOP~2 CHANDELLE~3 SPIN~4 LANDING | tow tow-release loop chandelle spin landing"
            })
    void nothingIsLostOrMadeUpByWhatStandsBeside(String told, String flown) {
        assertFlown(told.replace('~', '\n'), flown);
    }

    @Test
    void inAColumnOfRemarksNothingIsFlown() {
        String table = """
                Serial | Manoeuvre | From | Speed | Remarks
                1 | Take-off | R | - | 10 s between
                2 | Opposition pass | L | 250 | head-on cross at datum
                3 | Loop | L | 230 | a barrel roll if the cloud is low
                4 | Break | R | 240 |
                """;

        assertThat(figures(table)).containsExactly("take-off", "opposition pass", "loop", "break");
        assertThat(READER.read(table).lines().get(0).seconds()).isNull();
    }

    @Test
    void wordsOfAListInCapitalsAreShownInSmallLetters() {
        assertThat(READER.read("LOOP\nSPIN\nBANNER PICK-UP\nLOW PASS").lines())
                .extracting(ListLine::title)
                .contains("banner pick-up");
        assertThat(READER.read("Loop\nSpin\nBanner pick-up\nLow pass").lines())
                .extracting(ListLine::title)
                .contains("Banner pick-up");
    }
}
