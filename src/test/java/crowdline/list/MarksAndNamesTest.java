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

    @Test
    void aNumberBehindAPointRollCountsItsPoints() {
        List<ListLine> lines = read("loop", "point roll - 8", "point roll - 4", "two 4 point rolls", "landing");

        assertFlown(lines, "loop eight-point-roll four-point-roll four-point-roll landing");
        assertThat(lines).extracting(ListLine::count).containsExactly(null, null, null, 2.0, null);
    }

    @Test
    void keysOfATelephoneAreMarks() {
        List<ListLine> lines = read("1\u20e3 loop", "2\ufe0f\u20e3 spin", "3\u20e3 slow roll", "4\u20e3 landing");

        assertFlown(lines, "loop spin slow-roll landing");
        assertThat(lines).extracting(ListLine::count).containsOnlyNulls();
        assertThat(lines).extracting(ListLine::note).containsOnlyNulls();
    }

    @Test
    void countsWithinLinesGoOnFromLineToLine() {
        List<ListLine> lines = read(
                "here goes: 1 loop 2 wingover L 3 barrel roll 4 1/2 cuban R end",
                "more: 5 derry 6 aileron roll x2 7 dirty 140 kt R-L",
                "last: 8 loop 9 land");

        assertFlown(lines, "loop wing-over barrel-roll half-Cuban Derry-turn aileron-roll low-pass loop landing");
        assertThat(lines.get(0).count()).isNull();
        assertThat(lines.get(5).count()).isEqualTo(2.0);
        assertThat(lines.get(7).count()).isNull();
    }

    @Test
    void aTalkWithItsDaysIsATalk() {
        List<ListLine> lines = read(
                "[Fri 18:02] Nell: is this the commentary?",
                "[Fri 18:05] Rolf: It is! Can you do an outside loop?",
                "[Fri 18:07] Nell: loop",
                "[Fri 18:08] Nell: tailslide",
                "[Fri 18:09] Nell: land");

        assertFlown(lines, "loop tail-slide landing");
    }

    @Test
    void paragraphsAroundALettersListAreNotFlown() {
        FigureList list = listed(
                "1. Ref your signal of 2 June. Same crew.",
                "2. Met forecast is few at 5,000.",
                "3. Full programme, in order:",
                "   (a) pull to loop;",
                "   (b) slow roll, right to left, 280 kts;",
                "   (c) wing over at left-hand end;",
                "   (d) erect spin, four turns.",
                "4. Aircraft does not land here.",
                "5. No birds in the display line, please.");

        assertFlown(list.lines(), "loop slow-roll wing-over spin");
        assertThat(list.notes().toString()).contains("Met forecast").contains("does not land");
    }

    @Test
    void aReasonIsNotFlown() {
        assertFlown(
                read(
                        "I take off, then a loop, to the left because it rolls better to the left, then a spin, and land."),
                "take-off loop spin landing");
        assertFlown(
                read("I take off and climb to 2,000 ft, while the biplane lands, then a loop, a spin, and I land."),
                "take-off climb loop spin landing");
    }

    @Test
    void aListThatIsToBeForgottenIsNotFlown() {
        List<ListLine> lines = read(
                "For practice I just do loop, roll, stall turn, spin. Forget that list. Here is the real one:",
                "",
                "low pass",
                "slow roll",
                "barrel roll",
                "lazy eight",
                "landing");

        assertFlown(lines, "low-pass slow-roll barrel-roll lazy-eight landing");
    }

    @Test
    void fuelAndBeautyAreNotFlown() {
        assertFlown(
                read(
                        "We burn 210 litres an hour and need 300 before we go home.",
                        "Then it's a loop, a thing of beauty, a spin and a slow roll, and I leave without landing."),
                "loop spin slow-roll");
    }

    @Test
    void whatIsPutBetweenTwoFliesTheWayThatIsSaid() {
        ListLine roll = read(
                        "loop",
                        "tail slide",
                        "knife edge pass",
                        "landing",
                        "I forgot, between tail slide and knife edge theres an 8 point roll, r to l")
                .get(2);

        assertThat(roll.figure()).isEqualTo("eight-point roll");
        assertThat(roll.heading()).isEqualTo(Heading.LEFT);
    }

    @Test
    void afterThatIsTheNextAndAfterTheIsTheOneBefore() {
        assertFlown(
                read(
                        "Loop. After that inverted pass, ten seconds. After the inverted pass I do a humpty bump, then land."),
                "loop inverted-pass humpty-bump landing");
        assertFlown(
                read("A stall turn. After that inverted pass, ten seconds. Push up, outside loop."
                        + " After the inverted pass I roll out and do a humpty bump. Then land."),
                "stall-turn inverted-pass outside-loop half-roll humpty-bump landing");
    }

    /** A question at the end of a list asks about its last figure. */
    @Test
    void aListThatEndsInAQuestionIsFlown() {
        List<ListLine> lines = read(
                "ann: what do you fly then?",
                "ben: 1) lift + pirouette in the hover 2) fast dash to the right at 60 3) wingover 4) loop 100kt 5) roll"
                        + " 6) back flip??",
                "ann: did the authority approve back flip?",
                "ben: nope",
                "ann: smoke?",
                "ben: yes",
                "ben: 7) land");

        assertThat(lines).extracting(ListLine::figure).contains("take-off", "wing-over", "loop", "landing");
    }

    @Test
    void lightsAheadOfAFigureAreItsOwn() {
        assertFlown(
                read("lights on, climb from the left", "loop", "lights off, spin", "landing"),
                "climb loop spin landing");
    }

    @Test
    void namesThatAreTurnedRoundInATableAreOne() {
        List<ListLine> lines = read(
                "No;Figure;Qty;Side;Entry kt",
                "1;Loop;1;centre;160",
                "2;Roll, flick;1;centre;110",
                "3;Roll, barrel;1;L to R;150",
                "4;Pass, inverted;1;R to L;150",
                "5;Landing;1;;");

        assertFlown(lines, "loop flick-roll barrel-roll inverted-pass landing");
    }

    /** In a list with commas they are two. */
    @Test
    void whatStandsBesideARollInAListIsAnother() {
        assertFlown(
                read("loop, roll, barrel roll, roll, flick, landing"),
                "loop aileron-roll barrel-roll aileron-roll flick-roll landing");
    }

    @Test
    void ranksOfPassesAreNoWords() {
        List<ListLine> lines = read(
                "1st pass: straight and level, from the right, so everybody gets their picture",
                "2nd pass: from the left, smoke on",
                "3rd pass: from the right, wing waggle",
                "Then home.");

        assertFlown(lines, "low-pass low-pass low-pass wing-rock landing");
        assertThat(lines)
                .extracting(ListLine::heading)
                .containsExactly(Heading.LEFT, Heading.RIGHT, Heading.LEFT, null, null);
    }

    @Test
    void rightAsAWordOfItsOwnIsNoSide() {
        ListLine turn = read("We take off. Then a stall turn. Right. Now a loop, a spin, and I land.")
                .get(1);

        assertThat(turn.side()).isNull();
        assertThat(turn.place()).isNull();
    }
}
