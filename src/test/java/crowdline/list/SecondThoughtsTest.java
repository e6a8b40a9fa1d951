package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is changed, asked or flown in other weather behind a list. */
class SecondThoughtsTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static final String NUMBERED = """
            1. Take-off
            2. Loop
            3. Stall turn
            4. Slow roll
            5. Cuban eight
            6. Landing
            """;

    private static List<String> figures(String text) {
        return figures(READER.read(text));
    }

    private static List<String> figures(FigureList list) {
        return list.lines().stream()
                .map(line -> line.figure() == null ? line.title() : line.figure())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "no. 3 is out this year | take-off loop slow-roll Cuban-eight landing",
                "- point 3 falls out, because the motor becomes too warm | take-off loop slow-roll Cuban-eight landing",
                "Please scrap item 3 | take-off loop slow-roll Cuban-eight landing",
                "3 and 4 are out | take-off loop Cuban-eight landing",
                "Swap 3 and 5 | take-off loop Cuban-eight slow-roll stall-turn landing",
                "Points 3 and 5 I have exchanged, first comes the eight | take-off loop Cuban-eight slow-roll stall-turn landing",
                "no. 4 is now a barrel roll | take-off loop stall-turn barrel-roll Cuban-eight landing",
                "after no. 4 add a lazy eight | take-off loop stall-turn slow-roll lazy-eight Cuban-eight landing",
                "Forgot: between 2 and 3 a steep turn | take-off loop steep-turn stall-turn slow-roll Cuban-eight landing",
                "No. 5 comes before 3 | take-off loop Cuban-eight stall-turn slow-roll landing",
                "before no. 6 another spin | take-off loop stall-turn slow-roll Cuban-eight spin landing"
            })
    void linesAreChangedByTheirNumbers(String change, String flown) {
        Flown.assertFlown(figures(NUMBERED + "\n" + change + "\n"), flown);
    }

    /** The list as it stands is the one of a good day. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "If the wind is over 20 kt no. 3 is out",
                "Rolling show: omit item 3",
                "we are 3 and 4 are the dogs",
                "no. 12 is out",
                "after 9 seconds I climb"
            })
    void nothingIsChangedOnAConditionNorByOtherNumbers(String said) {
        assertThat(figures(NUMBERED + "\n" + said + "\n")).contains("stall turn", "slow roll", "Cuban eight");
    }

    @Test
    void whatWasTakenOutIsShownInItsPlace() {
        FigureList list = READER.read(NUMBERED + "\nno. 3 is out\n");

        assertThat(String.join("\n", list.notes())).contains("Stall turn").contains("no. 3 is out");
    }

    @Test
    void whatIsAskedIsNotFlownUnlessSomebodySaysYes() {
        assertThat(figures("""
                Gus: evening all
                Commentary: do you fly a loop?
                Gus: no
                Commentary: a slow roll then?
                Gus: take off
                Gus: low pass
                Gus: steep turn
                """)).contains("take-off", "low pass", "steep turn").doesNotContain("loop", "slow roll");
        assertThat(figures("""
                Do you begin with a loop? Yes, a big one.
                Is there still a tail slide in it? No.
                What comes after all that? Barrel roll, stall turn.
                """)).containsExactly("loop", "barrel roll", "stall turn");
    }

    /** A pilot who is not sure asks in a word or two. */
    @Test
    void aFigureWithAQuestionMarkIsInTheList() {
        assertThat(figures("loop?\nslow roll?\nstall turn?\nspin?")).hasSize(4);
    }

    @Test
    void figuresOfAnotherDayAreNotFlown() {
        String list = "Loop, slow roll, stall turn, barrel roll, spin.\n";

        assertThat(figures(list + "In low cloud I do a wing-over and a steep turn."))
                .hasSize(5);
        assertThat(figures(list + "If it rains: lazy eight only.")).hasSize(5);
        assertThat(figures("Loop, slow roll, stall turn, barrel roll, spin, if the wind allows a tail slide"))
                .hasSize(6);
    }

    @Test
    void aFigureThatOnlySaysWhereAnotherStandsIsNamedOnce() {
        assertThat(figures("loop, spin, slow roll. The stall turn comes straight after the slow roll."))
                .containsExactly("loop", "spin", "slow roll", "stall turn");
        assertThat(figures("loop\nspin\nslow roll\nforgot a barrel roll before the spin"))
                .containsExactly("loop", "barrel roll", "spin", "slow roll");
        assertThat(figures("loop\nspin\nslow roll\noh and a barrel roll between the loop and the spin, forgot"))
                .containsExactly("loop", "barrel roll", "spin", "slow roll");
    }

    @Test
    void whatIsScrappedOrHasGoneIsNotFlown() {
        assertThat(figures("loop, slow roll, spin, no wait, scrap the slow roll, stall turn"))
                .containsExactly("loop", "spin", "stall turn");
        assertThat(figures("loop\nslow roll\nspin\nslow roll has gone since my rib\nstall turn"))
                .containsExactly("loop", "spin", "stall turn");
        assertThat(figures("loop then a slow roll no wait the slow roll I took out it's a stall turn now then a spin"))
                .containsExactly("loop", "stall turn", "spin");
        assertThat(figures("Loop, stall turn, spin. The programme says that I fly a slow roll. I do not, it stops."))
                .containsExactly("loop", "stall turn", "spin");
    }

    @Test
    void theColumnOfAnotherShowAndUnknownColumnsNameNoFigure() {
        FigureList list = READER.read("""
                No;FULL;FLAT (cloud <2000');secs;music;thinking
                1;run in L to R;same;20;strings;strap
                2;cuban eight;barrel roll;35;drum;
                3;stall turn;wing-over;25;;count to 3
                4;-;steep turn;30;;only flat
                5;torque roll;-;20;;NO see note
                6;land;land;;;
                """);

        assertThat(figures(list)).containsExactly("run-in", "Cuban eight", "stall turn", "landing");
        assertThat(list.lines().get(1).seconds()).isEqualTo(35);
    }

    @Test
    void aShortNameWithinALineIsNoMisspeltFigure() {
        assertThat(figures("loop, then a spin by Rolf, and Miss Tarn waves"))
                .startsWith("loop", "spin")
                .doesNotContain("aileron roll", "steep turn");
        assertThat(figures("Slow Rol\nStal Turn")).containsExactly("slow roll", "stall turn");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Add a barrel roll after the loop. | take-off loop barrel-roll stall-turn slow-roll Cuban-eight landing",
                "Oh, and I've put in a barrel roll straight before the slow roll. | take-off loop stall-turn barrel-roll slow-roll Cuban-eight landing",
                "Between the stall turn and the slow roll put in a barrel roll. | take-off loop stall-turn barrel-roll slow-roll Cuban-eight landing",
                "After the stall turn I have added a barrel roll. | take-off loop stall-turn barrel-roll slow-roll Cuban-eight landing"
            })
    void aFigureIsPutInByTheNamesBesideIt(String change, String flown) {
        Flown.assertFlown(figures(NUMBERED + "\n" + change + "\n"), flown);
    }

    @Test
    void whatIsToldInOrderIsNotPutInTwice() {
        Flown.assertFlown(
                figures("I take off and fly a loop. After the loop I add a spin. Then a slow roll and I land."),
                "take-off loop spin slow-roll landing");
    }

    @Test
    void whatIsScrappedMakesRoomForWhatIsFlownInstead() {
        Flown.assertFlown(
                figures(NUMBERED
                        + "\nScrap the stall turn (3), I'm doing a barrel roll there instead. Rest as above.\n"),
                "take-off loop barrel-roll slow-roll Cuban-eight landing");
    }
}
