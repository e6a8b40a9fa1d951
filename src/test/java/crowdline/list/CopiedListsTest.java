package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.list.line.Place;
import crowdline.list.line.Side;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists that were copied out of something else: a spreadsheet, a printed page, a form, a letter that was answered. */
class CopiedListsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> read(String... lines) {
        return READER.read(String.join("\n", lines)).lines();
    }

    private static void assertFlown(List<ListLine> lines, String flown) {
        Flown.assertFlown(lines.stream().map(ListLine::figure).toList(), flown);
    }

    /** Cells with commas stand in quotes: RFC 4180, section 2, 6. */
    @Test
    void aSpreadsheetPartsItsCellsByCommas() {
        List<ListLine> lines = read(
                "No,Figure,Dir,Speed km/h,Height m,Sec",
                "1,\"Slow roll, to the left\",L>R,300,200,9",
                "2,Loop,,280,150,18",
                "3,\"Spin, three turns\",,,900,20",
                "4,\"Low pass\",R>L,330,50,14");

        assertFlown(lines, "slow-roll loop spin low-pass");
        assertThat(lines).extracting(ListLine::entryKt).containsExactly(162.0, 151.0, null, 178.0);
        assertThat(lines).extracting(ListLine::heightFt).containsExactly(656.0, 492.0, 2953.0, 164.0);
        assertThat(lines).extracting(ListLine::seconds).containsExactly(9.0, 18.0, 20.0, 14.0);
        assertThat(lines.get(2).count()).isEqualTo(3);
    }

    @Test
    void metresAreHeardFromTheHeadOfAColumn() {
        List<ListLine> lines = read(
                "No   Element          v (km/h)   h (m AGL)",
                "1    Loop             200        900",
                "2    Half Cuban       220        750",
                "3    Stall turn       190        600");

        assertThat(lines).extracting(ListLine::heightFt).containsExactly(2953.0, 2461.0, 1969.0);
        assertThat(lines).extracting(ListLine::entryKt).containsExactly(108.0, 119.0, 103.0);
    }

    @Test
    void aColumnOfLoadsCountsNothing() {
        List<ListLine> lines = read(
                "#   Manoeuvre        kt    ft AGL   Gs",
                "1   Loop             450   500      5",
                "2   Slow roll        350   600      1",
                "3   Derry turn       400   500      4");

        assertThat(lines).extracting(ListLine::count).containsOnlyNulls();
        assertThat(lines).extracting(ListLine::heightFt).containsExactly(500.0, 600.0, 500.0);
    }

    @Test
    void underSideAStallTurnTurnsAndALoopStandsThere() {
        List<ListLine> lines =
                read("Figure\tSide\tSpeed", "Stall turn\tright\t140", "Loop\tleft\t150", "Spin\tleft\t60");

        assertThat(lines.get(0).side()).isEqualTo(Side.RIGHT);
        assertThat(lines.get(1).place()).isEqualTo(Place.LEFT_END);
        assertThat(lines.get(2).side()).isEqualTo(Side.LEFT);
    }

    @Test
    void aPageEndsInTheMiddleOfASentence() {
        List<ListLine> lines = read(
                "He opens with a loop, then flies a slow roll and at the",
                "",
                "COMMENTARY NOTES - ORLEY MEADOW DAY            Page 12 of 40",
                "-------------------------------------------------",
                "",
                "left end a stall turn. Then comes a barrel roll.");

        assertFlown(lines, "loop slow-roll stall-turn barrel-roll");
        assertThat(lines.get(2).place()).isEqualTo(Place.LEFT_END);
    }

    @Test
    void lettersThatReferToADrawingAreNoFigures() {
        assertFlown(
                read(
                        "It begins with a loop (a), then a slow roll (b), a stall turn (c) on the left, a barrel roll (d) and a"
                                + " spin (e)."),
                "loop slow-roll stall-turn barrel-roll spin");
    }

    @Test
    void whatAFormAsksIsNotFlown() {
        assertFlown(
                read(
                        "1. Pilot(s):     Una Farrow. Tug: Max Orley in the Ox",
                        "2. Aircraft:     Sorrel 21, red and white",
                        "3. Slot length:  9 min incl. tow",
                        "4. Display in your own words:",
                        "Loop, stall turn to the left, barrel roll, spin of three turns and a low pass.",
                        "5. Minimum height:  100 ft, 15 ft for the flypast",
                        "6. What should people look out for?"),
                "loop stall-turn barrel-roll spin low-pass");
    }

    @Test
    void anAnsweredLetterIsReadAsItWraps() {
        List<ListLine> lines = read(
                "Use this one please.",
                "",
                "> Dee - one change to what I sent. I've swapped the Derry turn and the",
                "> four-point roll, and I've dropped the lazy eight altogether.",
                "> The rest stands as it was.",
                ">",
                ">> As promised: loop at datum, barrel roll going left, lazy eight, then a",
                ">> four-point roll from the right, then the Derry turn, half Cuban on the",
                ">> left, 360 steep turn and a low pass.");

        assertFlown(lines, "loop barrel-roll Derry-turn four-point-roll half-Cuban steep-turn low-pass");
    }

    @Test
    void whatStandsBehindALineInBracketsEndsIt() {
        assertFlown(
                read(
                        "stall turn to the left at the right hand end",
                        "[here I might cut if the wind is bad or the slot is late, listen for me]",
                        "reverse half Cuban on the right",
                        "low pass"),
                "stall-turn reverse-half-Cuban low-pass");
    }

    @Test
    void semicolonsPartFiguresOfWhichCommasTellMore() {
        List<ListLine> lines = read(
                "Run-in from the left, 300 kt; then loop, top at 900 m; barrel roll big, from right to"
                        + " left; flight inverted, 8 seconds; pass with gear and flaps, 120 kt; fast pass, 380 kt; landing.");

        assertFlown(lines, "run-in loop barrel-roll inverted-pass low-pass low-pass landing");
        assertThat(lines.get(4).entryKt()).isEqualTo(120);
        assertThat(lines.get(5).entryKt()).isEqualTo(380);
    }

    @Test
    void aShowForOtherWeatherBehindTheListIsAnother() {
        assertFlown(
                read(
                        "TALL (cloud above 3,000):",
                        "Loop. Stall turn. Spin, three turns. Barrel roll. Low pass. Land.",
                        "",
                        "SHORT (1,000 and up): it's rolls, a rolling turn, knife edge, low pass, land."),
                "loop stall-turn spin barrel-roll low-pass landing");
        assertFlown(
                read(
                        "Loop, stall turn, spin, barrel roll, low pass and land.",
                        "The rolling show replaces the loop with aileron rolls. The flat show consists of steep turns."),
                "loop stall-turn spin barrel-roll low-pass landing");
    }

    @Test
    void headingsWithMarksAreNotFlown() {
        assertFlown(
                read("## Phase 1 - arrival", "- loop", "- stall turn", "## Phase 2 - break", "- spin", "- low pass"),
                "loop stall-turn spin low-pass");
    }

    @Test
    void aTalkSaysOnLinesOfTheirOwnWhoWroteWhatAndWhen() {
        assertFlown(
                read(
                        "orley_pa  8:02",
                        "is there a list? a loop again?",
                        "",
                        "mika.v  8:05",
                        "arrival from behind you. then a loop, stall turn on the left",
                        "",
                        "orley_pa  8:06",
                        "and the tail slide?",
                        "",
                        "mika.v  8:07",
                        "barrel roll, spin 3 turns, then land"),
                "run-in loop stall-turn barrel-roll spin landing");
    }

    @Test
    void whatIsCalledOnTheRadioIsNotFlown() {
        assertFlown(
                read(
                        "\"Smoke on... Go!\"",
                        "Arrival in Vic, from behind the crowd",
                        "\"Pulling up... Now!\"  loop",
                        "\"Rolling left... and rolling... Go!\" barrel roll",
                        "\"BREAK... BREAK... Go!\" bomb burst, all seven"),
                "run-in loop barrel-roll bomb-burst");
    }

    @Test
    void aWatchThatRunsInAParagraphSaysWhenFiguresBegin() {
        List<ListLine> lines =
                read("0:10 he takes off, burner on. At 0:25 he pulls up, a half loop with roll out, 400 kt."
                        + " 0:55 a knife edge pass, right to left. 1:25 he turns back with a wing-over. At 1:50 comes a loop. 2:20 a"
                        + " barrel roll at 1000 ft. 2:50 he lands.");

        assertFlown(
                lines, "take-off half-loop-with-roll-out-on-top knife-edge-pass wing-over loop barrel-roll landing");
        assertThat(lines).extracting(ListLine::seconds).containsOnlyNulls();
        assertThat(lines).allMatch(ListLine::sure);
        assertThat(lines.get(1).entryKt()).isEqualTo(400);
        assertThat(lines.get(5).heightFt()).isEqualTo(1000);
    }

    @Test
    void aCommaBetweenTwoCellsIsNoDecimal() {
        List<ListLine> lines = read(
                "time,manoeuvre,axis,kts,G",
                "0:00,Loop,A,280,4.5",
                "0:24,360 turn tight,A,240,5",
                "0:50,Split S,A,150,4",
                "1:10,Slow roll,A,260,1");

        assertThat(lines).extracting(ListLine::entryKt).containsExactly(280.0, 240.0, 150.0, 260.0);
        assertThat(lines).extracting(ListLine::beginsS).containsExactly(0.0, 24.0, 50.0, 70.0);
    }

    @Test
    void ofShowsSideBySideTheFullOneIsFlown() {
        assertFlown(
                read(
                        "FULL                      | LOW             | FLAT",
                        "--------------------------+-----------------+-----------",
                        "Loop           170 kt ctr | Pass     160 kt | Pass",
                        "Half Cuban     165 R end  | Slow roll       | Turn 360 L",
                        "Barrel roll    150 R-L    | Stall turn  130 | Slow pass",
                        "Spin 3t L      3,000' ctr | Inverted pass   |"),
                "loop half-Cuban barrel-roll spin");
    }

    @Test
    void aFormMayMarkItsLinesByLettersWithColons() {
        assertFlown(
                read(
                        "Operator:     Orley Lift Museum",
                        "Type:         four-engined transport",
                        "Captain:      Bo Landau",
                        "Max bank:     45 deg",
                        "",
                        "Sequence:",
                        "  a: Run-in from the north, 220 kt",
                        "  b: Pass, doors open, R to L",
                        "  c: Steep turn to the right, 70 s",
                        "  d: Wing rock, direction north"),
                "run-in low-pass steep-turn wing-rock");
    }

    @Test
    void linesMayBeMarkedByTheAlphabetOfTheRadio() {
        assertFlown(
                read(
                        "ALPHA. SHORT TAKEOFF.",
                        "BRAVO. SQUARE LOOP. 400 KT.",
                        "CHARLIE. KNIFE EDGE PASS R TO L.",
                        "DELTA. SPLIT S."),
                "take-off square-loop knife-edge-pass split-S");
    }

    @Test
    void aRowIsNoHeadOfThoseBelowIt() {
        List<ListLine> lines = read(
                "0:00\tFormation pass\tboth\tfrom left\tsmoke on",
                "0:25\tLoop\tboth\tcentre\t130 mph",
                "0:50\tQuarter clover\tboth\tright\t",
                "1:15\tBomb burst\tboth\tcentre\tsplit",
                "1:35\tOpposition pass\tboth\tcentre\t200 ft",
                "1:55\tBarrel roll\tRed 1\tL-R\t125 mph");

        assertFlown(lines, "formation-pass loop quarter-clover bomb-burst opposition-pass barrel-roll");
        assertThat(lines).extracting(ListLine::beginsS).containsExactly(0.0, 25.0, 50.0, 75.0, 95.0, 115.0);
    }

    @Test
    void aLetterAheadOfARowMovesNoColumn() {
        List<ListLine> lines = read(
                "     FIGURE            KTS    G     HT",
                " A   Loop              420    4     -",
                " B   Split S           220    4.5   5000ft entry",
                " C   Derry turn        300    3     -",
                " D   Half Cuban        340    4     600ft");

        assertThat(lines).extracting(ListLine::entryKt).containsExactly(420.0, 220.0, 300.0, 340.0);
        assertThat(lines).extracting(ListLine::heightFt).containsExactly(null, 5000.0, null, 600.0);
        assertThat(lines).extracting(ListLine::count).containsOnlyNulls();
    }

    @Test
    void secondsFromTheExitAreNoSpeeds() {
        List<ListLine> lines = read(
                "T-10  Run-in, 6000 ft",
                "T+0   Exit, all six",
                "T+5   Freefall, 15 seconds",
                "T+120 Canopies open at 600 ft",
                "T+200 Landing");

        assertThat(lines).extracting(ListLine::entryKt).containsOnlyNulls();
        assertThat(lines.get(1).beginsS()).isEqualTo(0);
        assertThat(lines.get(3).beginsS()).isEqualTo(120);
    }
}
