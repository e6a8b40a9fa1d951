package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who of several flies what, answers to questions, several changes in one sentence, lists for other weather, and what is said beside a figure. */
class AsPeopleAnswerTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static String said(String text) {
        return READER.read(text).lines().stream().map(Spelt::said).collect(Collectors.joining(" ; "));
    }

    private static String figures(String text) {
        return READER.read(text).lines().stream()
                .map(line -> line.figure() == null ? "-" : line.figure())
                .collect(Collectors.joining(" ; "));
    }

    @Test
    void whoFliesALineIsNotedWithIt() {
        assertThat(READER.read("""
                        Both: fly-past from the left
                        Merle: loop
                        Corin: slow roll
                        Merle: stall turn left end
                        """).lines())
                .extracting(ListLine::figure, ListLine::note)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("formation pass", "Both"),
                        org.assertj.core.groups.Tuple.tuple("loop", "Merle"),
                        org.assertj.core.groups.Tuple.tuple("slow roll", "Corin"),
                        org.assertj.core.groups.Tuple.tuple("stall turn", "Merle"));
    }

    @Test
    void aGreetingToATeamMakesNoFormation() {
        assertThat(figures("Hello team: loop, slow roll, land")).isEqualTo("loop ; slow roll ; landing");
    }

    @Test
    void whatOneFliesWhileAnotherFliesIsTwoFigures() {
        assertThat(
                        figures(
                                "Loop\nCorin does a stall turn while I do a slow roll along the crowd line\nSpin 2 turns\nLand"))
                .isEqualTo("loop ; stall turn ; slow roll ; spin ; landing");
    }

    @Test
    void aTeamThatIsTogetherFliesTogether() {
        assertThat(figures("""
                        Formation of four, lead Merle Ashdown
                        Box loop 230 kts
                        Reform, barrel roll right
                        Bomb burst
                        No 4 barrel roll
                        Rejoin
                        """))
                .isEqualTo("formation loop ; join-up ; formation roll ; bomb burst ; barrel roll ; join-up");
    }

    @Test
    void aFigureThatIsAskedAboutIsFlownAsTheAnswerSays() {
        assertThat(said("""
                        > Which way is the slow roll?
                        Right.
                        > And the stall turn, at which end?
                        Right end, pivot left
                        > How many turns in the spin?
                        Four
                        > How high is the last pass?
                        150 ft
                        """))
                .isEqualTo(
                        "slow roll, side right, note \"way is\" ; stall turn, place right end, side left"
                                + " ; spin, count 4, note \"How many turns\", unsure ; low pass, height 150, note \"How high is the last\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Number 2 is to the left not the right, and 3 and 4 are the other way round. And number 5 from the right please.|loop ; stall turn, side left ; slow roll ; barrel roll ; low pass, flies left ; landing",
                "No 2 is to the left, no 5 from the left.|loop ; stall turn, side left ; barrel roll ; slow roll ; low pass, flies right ; landing",
                "2 should be a half Cuban. Drop 3, and after 4 put in a spin, two turns.|loop ; half Cuban ; slow roll ; spin, count 2 ; low pass ; landing",
                "If the wind is strong number 2 is a half Cuban.|loop ; stall turn, side right ; barrel roll ; slow roll ; low pass ; landing",
            })
    void eachChangeOfASentenceIsMade(String changes, String lines) {
        assertThat(said("""
                        1. Loop
                        2. Stall turn right
                        3. Barrel roll
                        4. Slow roll
                        5. Low pass
                        6. Landing

                        """ + changes)).isEqualTo(lines);
    }

    @Test
    void changesByLetterMayFollowAnAfter() {
        assertThat(figures("""
                        a) loop
                        b) two-point roll
                        c) half Cuban
                        d) rolling turn
                        e) landing

                        PS b should be 4 points. And drop d, no height for it. Oh, and after c put in a knife edge pass.
                        """)).isEqualTo("loop ; four-point roll ; half Cuban ; knife edge pass ; landing");
    }

    @Test
    void ofListsForHighAndLowCloudTheFirstIsTaken() {
        assertThat(figures("""
                        FULL (base above 2200 ft)
                        Loop
                        Stall turn
                        Spin

                        FLAT (below 1200)
                        Wing-over
                        Aileron roll
                        Low pass
                        """)).isEqualTo("loop ; stall turn ; spin");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Loop\\t130 in|loop, entry 130",
                "Stall turn\\tleft end\\tyaw right|stall turn, place left end, side right",
                "slow roll, rolling to the left|slow roll, side left",
                "knife edge, 150ish|knife edge pass, entry 150",
                "Trudeln 1,5 Umdrehungen links|spin, count 1.5, side left",
                "steep turn to the right in front of the tent|steep turn, place centre, side right, note \"tent\"",
                "max rate turn left, 5 g|steep turn, side left, note \"5 g\"",
                "one pass straight and level|low pass, count 1",
                "Loop, then a slow roll no actually make that a barrel roll, then land|loop ; barrel roll, note \"a slow roll no actually make that\", unsure ; landing",
            })
    void whatStandsBesideAFigureIsSaidOfIt(String text, String lines) {
        assertThat(said(text.replace("\\t", "\t"))).isEqualTo(lines);
    }

    @Test
    void whoLandsLastLandsWithTheOthers() {
        assertThat(figures("""
                        Exit at 5000
                        Freefall 10 s
                        Under canopy
                        Flag jumper
                        Landings in front of the crowd one by one
                        Orla lands last
                        """))
                .isEqualTo("jump ; freefall ; canopy descent ; - ; canopy landing"
                        .replace("jump", figures("Exit at 5000")));
    }

    @Test
    void whatIsSaidOfTheActIsNoFigure() {
        assertThat(figures("""
                        Act length 6:30.
                        Flown by Wg Cdr (ret'd) Merle Ashdown.
                        take off, 40 s
                        loop 12 s
                        land

                        Six and a half minutes.
                        """)).isEqualTo("take-off ; loop ; landing");
        assertThat(figures(
                        "A gentle loop to begin with (90 knots is all she will give me), then a slow roll, then land"))
                .isEqualTo("loop ; slow roll ; landing");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Please swap the avalanche and the slow roll.|loop ; slow roll ; spin ; avalanche ; tail slide ; landing",
                "The avalanche and the slow roll are the other way round.|loop ; slow roll ; spin ; avalanche ; tail slide ; landing",
                "Swap the spin for a flick roll and the tail slide for a torque roll.|loop ; avalanche ; flick roll ; slow roll ; torque roll ; landing",
                "If it rains swap the avalanche and the slow roll.|loop ; avalanche ; spin ; slow roll ; tail slide ; landing",
            })
    void figuresChangePlacesByTheirNames(String change, String figures) {
        assertThat(figures("Loop\nAvalanche\nSpin\nSlow roll\nTail slide\nLanding\n\n" + change))
                .isEqualTo(figures);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1. Take 0ff;take-off",
                "2. l00p;loop",
                "Low pass, 25O mph;low pass, entry 217",
                "50ft pass;low pass, height 50",
                "Slow roll, 10 sec;slow roll, seconds 10",
            })
    void signsThatAScannerTookForOthersAreMended(String text, String lines) {
        assertThat(said(text)).isEqualTo(lines);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Loop, two wing-overs, one at each end, land|loop ; wing-over ; wing-over ; landing",
                "Loop, two wing-overs, land|loop ; lazy eight ; landing",
                "Loop. I regroup with a half Cuban. Slow roll. Land.|loop ; half Cuban ; slow roll ; landing",
                "Loop, low pass, 360, land|loop ; low pass ; steep turn ; landing",
                "Pair display: split, 1 left 2 right, loop, land|synchro split ; loop ; landing",
                "Exit at 5000, opening at 3000 ft, landing on the cross|jump ; canopy descent ; canopy landing",
                "4 canopies, exit 6500 ft, freefall, landing|jump ; freefall ; canopy landing",
                "Jump leader: Orla. Exit 5000 ft, freefall 20 s, open at 3000|jump ; freefall ; canopy descent",
                "Loop, then I come back inverted for about ten seconds half roll back, land|loop ; inverted pass ; half roll ; landing",
                "Loop, we break, Nat to the left and Isa to the right, join up|loop ; break ; join-up",
                "Loop, a tight turn of 360 degrees to the left, land|loop ; steep turn ; landing",
                "Loop, slow roll, tail slide no longer, land|loop ; slow roll ; landing",
                "Hesitation roll, flight fast 600 km/h, loop|four-point roll ; low pass ; loop",
            })
    void whatPeopleMeanIsFlown(String text, String figures) {
        assertThat(figures(text)).isEqualTo(figures);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Loop, one spin, 2 turns, I spin to the right, land|loop ; spin, count 2, side right ; landing",
                "Spin, two turns - no, one and a half, loop, land|spin, count 1.5 ; loop ; landing",
                "pass de gauche a droite 250 km/h|low pass, flies right, entry 135, note \"de\"",
                "stall turn, your left|stall turn, place left end",
                "two rolls, left then right|aileron roll, side left ; aileron roll, side right",
            })
    void whatIsSaidOnceMoreIsSaidOfTheSame(String text, String lines) {
        assertThat(said(text)).isEqualTo(lines);
    }

    @Test
    void whatIsCalledOnTheRadioIsNotFlown() {
        assertThat(figures("""
                        "Finch in" - run in from the left
                        "Spin, spin" - 1.5 turn spin right
                        "Recovered" - barrel roll
                        "Last pass" - low fly-by
                        """)).isEqualTo("run-in ; spin ; barrel roll ; low pass");
    }

    @Test
    void anAnswerToOneOfTwoFiguresIsSaidOfThatOne() {
        assertThat(said("""
                        > Loop to start?
                        Yes, 140 kt
                        > slow roll to the left
                        ok
                        > spin 3 turns
                        only 2
                        > low pass and land
                        fine, low pass from the right
                        """))
                .isEqualTo("loop, entry 140 ; slow roll, side left ; spin, count 2 ; low pass, flies left ; landing");
    }

    @Test
    void whatIsSaidOfAFigureAheadOfTheListIsSaidOfIt() {
        assertThat(said("""
                        The slow roll is to the right, and I start it at 150 kts.

                        Loop
                        Barrel roll
                        Slow roll
                        Half Cuban
                        Land
                        """)).isEqualTo("loop ; barrel roll ; slow roll, side right, entry 150 ; half Cuban ; landing");
    }

    @Test
    void whatIsOutGivesItsPlaceToWhatIsFlown() {
        assertThat(figures("Loop\nSquare loop\nSpin\nLand\n\nThe square loop is out, it's a normal loop."))
                .isEqualTo("loop ; loop ; spin ; landing");
    }

    @Test
    void oneAtTheOtherEndIsAnother() {
        assertThat(said("She does a stall turn at the left end while I do one at the right end"))
                .isEqualTo("stall turn, place left end, note \"while I do one\" ; stall turn, place right end");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"rolling left turn|rolling turn, side left", "level right turn|steep turn, side right"})
    void aSideMayStandWithinAName(String text, String line) {
        assertThat(said(text)).isEqualTo(line);
    }
}
