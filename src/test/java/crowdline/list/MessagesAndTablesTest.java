package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands around the figures of messages and tables is none itself. */
class MessagesAndTablesTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<String> figures(FigureList list) {
        return list.lines().stream()
                .map(line -> line.figure() == null ? line.title() : line.figure())
                .toList();
    }

    private static FigureList read(String text) {
        return READER.read(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[14:0%d] %s: ", "[29/11/2026, 14:0%d:12] %s: ", "29.11.26, 14:0%d - %s: "})
    void ofATalkOnlyWhatTheSenderSaysIsFlown(String head) {
        FigureList list = read(head.formatted(1, "Pip Roll") + "take-off\n" + head.formatted(2, "Pip Roll")
                + "2 loops\n" + head.formatted(3, "Commentary") + "a spin as well?\n" + head.formatted(4, "Pip Roll")
                + "stall turn\n");

        assertThat(figures(list)).containsExactly("take-off", "loop", "stall turn");
        assertThat(list.lines().get(1).count()).isEqualTo(2);
        assertThat(list.lines().get(1).text()).isEqualTo("2 loops");
        assertThat(String.join("\n", list.notes())).contains("a spin as well?").contains("Pip Roll");
    }

    /** Whoever flies may stand ahead of a colon behind the time, and nothing of that is lost. */
    @Test
    void aTimeAndWhoFliesAreNoTalk() {
        assertThat(figures(
                        read("00:00 all: run-in\n00:40 front: loop\n01:20 front: barrel roll\n02:00 rear: slow roll")))
                .containsExactly("run-in", "loop", "barrel roll", "slow roll");
    }

    @Test
    void columnsOfWhoAndRemarksNameNoFigure() {
        FigureList list = read("""
                seq;who;what;where;ft;kt;notes
                1;both;run in;from left;500;240;knife edge to the crowd
                2;1;cuban eight;centre;400;270;
                3;2;slow roll;L to R;200;230;"like a loop, but flat"
                4;both;break;centre;300;;
                """);

        assertThat(figures(list)).containsExactly("run-in", "Cuban eight", "slow roll", "break");
        assertThat(list.lines()).extracting(ListLine::count).containsOnlyNulls();
        assertThat(list.lines().get(0).note()).contains("knife edge to the crowd");
        assertThat(list.lines().get(1).entryKt()).isEqualTo(270);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TUSKER 1 SLOW ROLL. TUSKER 2 FOUR POINT ROLL 140 KT. REJOIN. LAND | slow roll ; four-point roll ;"
                        + " join-up ; landing",
                "ARRIVE FROM CROWD REAR 360 KT. LOOP. WING-OVER | run-in ; loop ; wing-over",
                "Loop, stall turn right end with quarter roll up, slow roll | loop ; stall turn ; slow roll",
                "A loop, and off the bottom of the loop into a half Cuban, then landing | loop ; half Cuban ; landing",
                "take-off, loop out of take-off, stall turn | take-off ; loop ; stall turn",
                "I begin with a loop - no, forgive me, I begin with a spin. Then a slow roll. | spin ; slow roll",
                "Loop, a stall turn, some call it a hammerhead, slow roll | loop ; stall turn ; slow roll",
                "Loop. Stall turn. Slow roll. Duration 9:40 brakes off to touchdown | loop ; stall turn ; slow roll",
                "- Loop\\n- Torque roll, she goes backwards\\n- Slow roll\\n- Spin, three turns to count | loop ; torque roll ; slow roll ; spin",
                "- Wingover left, wingover right\\n- Loop\\n- Slow roll\\n- Spin | wing-over ; wing-over ; loop ; slow roll ; spin",
                "Loop\\n~~stall turn~~ humpty\\nslow roll | loop ; humpty bump ; slow roll",
                "Looping with flick in the summit (the Avalanche)\\nRoll over and down (a split S) | avalanche ; split S",
                "Same as last year but the spin is out.\\n\\nRun in.\\nLoop.\\nHalf Cuban.\\nSlow roll.\\nStall turn. | run-in ; loop ; half Cuban ; slow roll ; stall turn",
                "Loop\\nPass with landing gear out\\nNo music in the spin\\nSlow roll | loop ; low pass ; slow roll",
                "*** SKY DAY ***\\n\\nLoop\\nSlow roll\\nSpin | loop ; slow roll ; spin",
                "square loop, in reality it has round corners, please do not laugh\\ninverted flight\\nloop\\nspin\\nslow roll | square loop ; inverted pass ; loop ; spin ; slow roll",
                "Loop, slow roll, delete spin, stall turn | loop ; slow roll ; stall turn",
            })
    void onlyWhatIsFlownIsRead(String text, String flown) {
        assertThat(String.join(" ; ", figures(read(text.replace("\\n", "\n"))))).isEqualTo(flown);
    }

    @Test
    void whatIsAnsweredBelowTheListIsNotFlown() {
        assertThat(figures(read("""
                        loop, slow roll, spin, stall turn, half Cuban, landing

                        On 9 Jul, Tamsin wrote:
                        > is it the usual, loop roll heart and home?
                        """)))
                .containsExactly("loop", "slow roll", "spin", "stall turn", "half Cuban", "landing");
    }

    @Test
    void aTableMayHeadItsColumnsInOtherWords() {
        FigureList list = read("""
                No\tTime\tManoeuvre\tHeight ft\tNotes for commentary
                1\t00:00\tTake off in pair\t0\tlike last year's loop
                2\t01:10\tRun-in\t300\tsmoke ON
                3\t01:25\tSlow roll\t300\twas: half Cuban
                """);

        assertThat(figures(list)).containsExactly("take-off", "run-in", "slow roll");
        assertThat(list.lines().get(2).heightFt()).isEqualTo(300);
    }

    @Test
    void capitalsAreAGuessThatIsAskedAbout() {
        FigureList list = read("T/O, hold level\nST, L\nLoop\nBR L-R\nLanding");

        assertThat(figures(list)).containsExactly("take-off", "stall turn", "loop", "barrel roll", "landing");
        assertThat(list.lines().get(1).sure()).isFalse();
        assertThat(list.lines().get(1).choices()).startsWith("stall turn").contains("steep turn");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Loop\nTumble\t0?\nSpin\nSlow roll", "Loop, 0\nHover, 0\nSpin 0\nSlow roll 0 kt"})
    void aZeroIsNoCountAndNothingIsThrown(String text) {
        assertThat(read(text).lines()).hasSize(4).extracting(ListLine::count).containsOnlyNulls();
    }

    @Test
    void theHeadOfASheetIsNoFigure() {
        assertThat(figures(read("""
                        Tilly Ravensholme / biplane "Butterbean"
                        Quillfield fete, 2.40 pm, 4 mins

                        take off
                        loop
                        stall turn
                        landing
                        """))).containsExactly("take-off", "loop", "stall turn", "landing");
    }
}
