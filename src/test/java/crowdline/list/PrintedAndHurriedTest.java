package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.list.word.MailHead;
import crowdline.show.figure.Placing.Heading;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages on which words are parted at the ends of lines, tables of axes, and lists that somebody typed in a hurry. */
class PrintedAndHurriedTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> read(String text) {
        return READER.read(text).lines();
    }

    private static void assertFlown(String text, String flown) {
        Flown.assertFlown(read(text), flown);
    }

    @Test
    void aWordThatAPagePartsIsOneWord() {
        assertFlown(
                "After take-off a bar-\nrel roll, then a half Cu-\nban, a hes-  \n> itation roll and a tail-\nslide.",
                "take-off barrel-roll half-Cuban four-point-roll tail-slide");
    }

    /** "Stall-turn" is two words with a hyphen, "four-point" too; a line with a capital is one of its own. */
    @Test
    void twoWordsKeepTheirHyphen() {
        assertFlown(
                "loop, stall-\nturn, four-\npoint roll, slow roll-\nSpin",
                "loop stall-turn four-point-roll slow-roll spin");
    }

    @Test
    void aCopiedPageMayHaveSoftHyphens() {
        assertFlown("bar\u00adrel roll, ava\u00adlanche", "barrel-roll avalanche");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lop | loop",
                "lop 160 kt | loop",
                "pas from teh left 165mph | low-pass",
                "rn in L 250 kt | run-in",
                "lw pas | low-pass",
                "stal turn | stall-turn",
            })
    void aLetterIsLostInAHurry(String written, String figure) {
        assertFlown("spin\n" + written + "\nslow roll", "spin " + figure + " slow-roll");
    }

    /** A word of everyday English is none by a chance likeness, and a lost letter is confirmed. */
    @Test
    void noFigureIsMadeOfAnyWord() {
        assertFlown("spin\nlook\nslow roll", "spin look slow-roll");
        assertFlown("freefall 40 s, star", "freefall star");
        assertThat(read("spin\nlop\nslow roll").get(1).sure()).isFalse();
    }

    @Test
    void lettersOfAxesAreNoFigures() {
        List<ListLine> lines = read("""
                01 | A -> right | Loop, 290 km/h
                02 | A | Half Cuban
                03 | A <- left | Slow roll
                04 | B away | Humpty bump
                05 | A | Spin
                """);

        Flown.assertFlown(lines.stream().map(ListLine::figure).toList(), "loop half-Cuban slow-roll humpty-bump spin");
        assertThat(lines).extracting(ListLine::heading).startsWith(Heading.RIGHT, null, Heading.LEFT);
    }

    @Test
    void whatStandsAheadOfATableIsNotFlown() {
        assertFlown("""
                pilot,Ada Quillan
                aircraft,"Merrow-Lund Tern 200, turn and roll"
                seq,manoeuvre,count,speed_kmh
                1,Loop,1,300
                2,Slow roll,1,270
                3,Spin,3,
                4,Barrel roll,1,260
                """, "loop slow-roll spin barrel-roll");
    }

    @Test
    void anAnsweredLetterChangesItsListThoughItsLinesAreBroken() {
        assertFlown("""
                > spin
                > slow roll
                > half Cuban
                > oh and one thing more, could you please add a stall turn after the
                > slow roll
                """, "spin slow-roll stall-turn half-Cuban");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "inverted flat spin?? no. Flat spin",
                "Slow roll? No. Flat spin",
                "Slow roll. No wait. Flat spin",
            })
    void aNoOfItsOwnTakesBackTheFigureBeforeIt(String written) {
        assertFlown("loop\n" + written + "\nhalf Cuban", "loop flat-spin half-Cuban");
    }

    @Test
    void whoBreaksOffGoesOnBehindHisSorry() {
        List<ListLine> lines = read("loop\nFourth pass: bomb... sorry, low pass, R-L, 180 kts.\nhalf Cuban");

        Flown.assertFlown(lines.stream().map(ListLine::figure).toList(), "loop low-pass half-Cuban");
        assertThat(lines.get(1).entryKt()).isEqualTo(180);
    }

    @Test
    void nobodyTakesOffTwiceByNamingIt() {
        assertFlown("Take-off. Straight after lift-off a half roll. Loop", "take-off half-roll loop");
        assertFlown("Loop, then straight after a second loop", "loop loop");
    }

    @Test
    void aTouchAndGoStandsInTheListThoughItsRunwayIsNamed() {
        List<ListLine> lines = read("Low pass.\nTouch and go, runway 24, 130 kts.\nWing rock.");

        assertThat(lines)
                .extracting(ListLine::title)
                .containsExactly("low pass", "Touch and go, runway 24", "wing rock");
        assertThat(lines.get(1).sure()).isFalse();
    }

    @Test
    void whatIsShownUnderCanopiesIsNoOpening() {
        assertFlown(
                "Jump\nCanopies open\nunder canopy 3 min with flags\nLandings", "jump canopy-descent canopy-landing");
        assertFlown(
                "Jump\nCanopies open\nunder canopy, stack of four\nunder canopy, spirals\nLandings",
                "jump canopy-descent canopy-stack canopy-descent canopy-landing");
        assertFlown(
                "Exit\nFreefall\nTwo-stack\nwhich turns into a downplane\nLandings\nThe plane comes home, low pass\nPlane lands",
                "jump freefall canopy-stack downplane canopy-landing low-pass landing");
        assertFlown(
                "Exit\nTwo-stack\nDownplane\nbreaks at 500 ft\nLandings on the cross",
                "jump canopy-stack downplane break canopy-landing");
        assertFlown("Exit\nTwo-stack\nand they land", "jump canopy-stack canopy-landing");
    }

    /** "(4)" says how many fly it. */
    @Test
    void aNumberInBracketsIsThatOfTheAircraftOfATeam() {
        List<ListLine> lines = read("""
                Team of 6 aircraft
                Loop (4) in diamond
                Barrel roll (4) in diamond
                """);

        assertThat(lines).extracting(ListLine::figure).containsExactly("formation loop", "formation roll");
        assertThat(lines).extracting(ListLine::count).containsOnlyNulls();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Dee, one change.", "Hi Dee, one change.", "Just the usual then.", "Ok so final answer."})
    void whatALetterSaysOfItselfIsNotFlown(String ahead) {
        assertFlown(ahead + "\nspin, loop, half Cuban", "spin loop half-Cuban");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Subj: running order",
                "> Cc: Ada",
                "On 3 May Ada wrote:",
                "Sent from my phone",
                "Hi Ada,",
                "Many thanks, Bo",
                "Kind regards",
            })
    void headsAndGreetingsAreCourtesies(String written) {
        assertThat(MailHead.isCourtesy(written)).isTrue();
        assertThat(MailHead.isCourtesy("no spin " + written)).isFalse();
    }
}
