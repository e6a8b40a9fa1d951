package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures at both ends, units given once, lists for two days, changes by letter, answers between the lines, names of a show. */
class AsPeopleChangeTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static final String LETTERED = """
            A) Take-off
            B) Loop
            C) Avalanche
            D) Slow roll
            E) Spin 1.5
            F) Landing
            """;

    private static String said(String text) {
        return READER.read(text).lines().stream().map(Spelt::said).collect(Collectors.joining(" ; "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stall turn at each end | stall turn, place left end ; stall turn, place right end",
                "two half Cubans, one at each end | half Cuban, place left end ; half Cuban, place right end",
                "barrel roll, left then right | barrel roll, side left ; barrel roll, side right",
                "steep turn right and left | steep turn, side right ; steep turn, side left",
                "fly-past each way | low pass, flies right ; low pass, flies left",
                "slow roll to the right, same to the left | slow roll, side right ; slow roll, side left",
                "stall turn right end, again at the other end | stall turn, place right end ; stall turn, place left end",
                "split left and right | synchro split",
                "synchronised stall turns at both ends | stall turn, note \"synchronised, at both ends\"",
                "knife edge, both sides | knife edge pass, note \"both sides\"",
                "low pass, left to right | low pass, flies right"
            })
    void whatIsFlownTwiceIsTwoLines(String text, String lines) {
        assertThat(said(text)).isEqualTo(lines);
    }

    @Test
    void noWordIsLostWhereALineBecomesTwo() {
        assertThat(READER.read("stall turn at each end, smoke on").lines())
                .extracting(line -> line.text())
                .containsExactly("stall turn", "at each end, smoke on");
    }

    /** 140 mph are 121.7 kt and 230 km/h are 124.2 kt, by the international mile and nautical mile. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "All speeds are in mph.\\nloop 140\\nslow roll, 120\\nstall turn left | 122 104 null",
                "ok here goes (all mph)\\ndive 160 from left\\nloop 150 | 139 130",
                "dive to 230 km/h\\nloop with 200\\nslow roll 180 | 124 108 97",
                "run-in 160 kts\\npass 420 L-R\\nloop | 160 420 null",
                "pass 420 L-R\\nknife edge 350 L-R\\ninverted pass 300 R-L | 420 350 300",
                "run-in 140 kts\\nsteep turn 360\\npass at 200 | 140 null null",
                "dive 150 mph\\nhalf roll 180\\nloop, base 300 | 130 null null"
            })
    void aUnitIsGivenOnce(String text, String knots) {
        assertThat(READER.read(text.replace("\\n", "\n")).lines().stream()
                        .map(line -> line.entryKt() == null ? "null" : String.format("%.0f", line.entryKt()))
                        .collect(Collectors.joining(" ")))
                .isEqualTo(knots);
    }

    @Test
    void ofTwoListsTheFirstIsTakenAndTheOtherAskedFor() {
        FigureList list = READER.read("""
                SATURDAY
                loop
                slow roll
                landing

                SUNDAY (longer slot)
                spin
                tail slide
                landing
                """);

        assertThat(list.lines()).extracting(line -> line.figure()).containsExactly("loop", "slow roll", "landing");
        assertThat(list.notes()).contains("SATURDAY", "SUNDAY (longer slot)", "spin", "tail slide");
        assertThat(list.findings())
                .extracting(finding -> finding.message())
                .containsExactly(
                        "The text has 2 lists, \"SATURDAY\" and \"SUNDAY (longer slot)\"; the first was taken, so say"
                                + " which is flown, or paste that one alone");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Saturday 14:20\nloop\nslow roll\nspin",
                "First half:\nloop\nroll\nspin\nSecond half:\nloop\nroll\nspin"
            })
    void partsOfOneListAreOne(String text) {
        assertThat(READER.read(text).findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "drop C please | take-off ; loop ; slow roll ; spin, count 1.5 ; landing",
                "Swap B and D. | take-off ; slow roll ; avalanche ; loop ; spin, count 1.5 ; landing",
                "And for E do two turns. | take-off ; loop ; avalanche ; slow roll ; spin, count 2 ; landing",
                "Instead of C I'll do a tail slide | take-off ; loop ; tail slide ; slow roll ; spin, count 1.5 ; landing",
                "leave C out | take-off ; loop ; slow roll ; spin, count 1.5 ; landing",
                "a lunch at the club | take-off ; loop ; avalanche ; slow roll ; spin, count 1.5 ; landing"
            })
    void linesAreChangedByTheirLetters(String change, String lines) {
        assertThat(said(LETTERED + "\n" + change + "\n")).isEqualTo(lines);
    }

    @Test
    void answersBetweenQuotedLinesChangeThem() {
        assertThat(said("""
                > 1. Take off
                > 2. Loop
                now from the left
                > 3. Slow roll
                No, four-point roll this year
                > 4. Stall turn, right end
                ok
                > 5. Spin, 2 turns
                make that 3
                """))
                .isEqualTo("take-off ; loop, flies right ; four-point roll, note \"year\""
                        + " ; stall turn, place right end ; spin, count 3");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"the Lift\" = straight up, two rolls on the way | the Lift | vertical roll up",
                "the Corkscrew (three barrel rolls) | the Corkscrew | barrel roll",
                "\"Thunderclap\": two snap rolls | Thunderclap | flick roll",
                "The Drain - inverted spin, 4 turns | The Drain | inverted spin"
            })
    void whatTheShowCallsAFigureIsItsTitle(String text, String title, String figure) {
        assertThat(READER.read("loop\n" + text + "\nlanding").lines().get(1)).satisfies(line -> {
            assertThat(line.title()).isEqualTo(title);
            assertThat(line.figure()).isEqualTo(figure);
        });
    }

    /** Each would be looked at again by each other. */
    @Timeout(10)
    @ParameterizedTest
    @ValueSource(strings = {"the Aa (", "\"Aa\" = ", "left then right ", "swap A and B. ", "um, "})
    void longTextsAreReadSoon(String again) {
        assertThat(READER.read(again.repeat(4_000)).lines()).isEmpty();
    }

    @Test
    void whoFliesAheadOfAColonIsNoName() {
        assertThat(READER.read("Anna: stall turn\nThe Lead: loop").lines())
                .extracting(line -> line.title())
                .containsExactly("stall turn", "loop");
    }

    @Test
    void minutesOfOneFigureAreAskedFor() {
        FigureList list = READER.read("loop\nroll, 6 mins\n9 min. loop");

        assertThat(list.lines()).extracting(line -> line.seconds()).containsOnlyNulls();
        assertThat(list.findings())
                .extracting(finding -> finding.message())
                .containsExactly(
                        "\"roll, 6 mins\" would be one figure of 6 min; no time was taken from it, so say what it means",
                        "\"9 min. loop\" would be one figure of 9 min; no time was taken from it, so say what it means");
    }

    @Test
    void minutesThatRiseSayWhen() {
        assertThat(READER.read("1 min climb\n3 min loop\n4 min roll\n5 min land")
                        .lines())
                .extracting(line -> line.seconds())
                .containsOnlyNulls();
    }

    @Test
    void pointsBelowAPointSaySomethingOfIt() {
        assertThat(said("""
                - Half Cuban
                    - right-hand end
                    - pull 4 g
                - Stall turn
                    - look for the half roll on the way down
                - Loop
                - Spin
                    - 4 turns
                """))
                .isEqualTo("half Cuban, place right end, note \"pull 4 g\""
                        + " ; stall turn, note \"look for the half roll on the way down\" ; loop ; spin, count 4");
    }

    @Test
    void whatIsAskedAndSaidYesToIsFlown() {
        assertThat(said("""
                Q: How do you start?
                A: Run-in from the left.
                Q: And the stall turn, is that still in there?
                A: Yes, right after that.
                Q: Which end?
                A: Left.
                Q: Do you do the outside loop?
                A: No, I've stopped that. My eyes.
                """)).isEqualTo("run-in, flies right ; stall turn, place left end");
    }

    @Test
    void allOfThemKeepTheirWords() {
        for (String text : List.of(
                LETTERED + "drop C\nfor E do two turns",
                "loop left then right\n\"Lift\" = vertical roll",
                "> 1. Take off\n> 2. Loop\n> 3. Spin\nand a) a roll\nNo, b) a stall turn",
                "Q: How?\nLoop\nQ: What?\nSpin\nQ: And then a) the roll?\nYes\n")) {
            FigureList list = READER.read(text);
            String kept = list.lines().stream().map(line -> line.text()).collect(Collectors.joining(" "))
                    + String.join(" ", list.notes());
            assertThat(text.split("\\W+")).allSatisfy(word -> assertThat(kept).contains(word));
        }
    }

    @Test
    void anOlderListThatIsQuotedIsNotFlown() {
        assertThat(said("""
                On Tue, somebody wrote:
                > loop
                > stall turn L
                > slow roll

                Not quite!
                loop
                barrel roll
                half Cuban
                spin
                Sylvie
                """)).isEqualTo("loop ; barrel roll ; half Cuban ; spin");
    }

    @Test
    void smallLettersNameLinesWhereTheListHasThem() {
        assertThat(
                        said(
                                "a. take off\nb. loop\nc. stall turn R end\nd. slow roll\ne. land\n\nchanges: c becomes a humpty bump\n"))
                .isEqualTo("take-off ; loop ; humpty bump ; slow roll ; landing");
    }

    @Test
    void whatIsSpokenIsReadWithoutItsSounds() {
        assertThat(said("Right, um, so, I take off, yeah, and, er, I climb for, I dunno, a minute. Then, um, a loop."))
                .isEqualTo("take-off ; climb, seconds 60 ; loop");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dive in L 160kt | dive, flies right, entry 160",
                "dive at the far left | dive, place left end",
                "spin, three turns if I am high enough | spin, count 3, note \"if I am high enough\", unsure",
                "1 x spin (3) | spin, count 3",
                "loop. All in, six and a half minutes. | loop, list note \"All in, six and a half minutes.\"",
                "half roll, stays upside down for around 12 seconds, half roll | half roll ; inverted pass, seconds 12 ; half roll",
                "loop, then slow roll, no, sorry, barrel roll | loop ; barrel roll"
            })
    void asItIsMeant(String text, String lines) {
        FigureList list = READER.read(text);

        assertThat(Spelt.said(list).replaceAll(", choices [^;]*", "")).startsWith(lines);
        assertThat(list.lines()).hasSize(lines.split(" ; ").length);
    }

    @Test
    void aTakeOffAheadOfTheNumbersIsFlownAndWingOversAwayAndBackAreNoWay() {
        assertThat(said("""
                Take off towards the church, climb out
                1. Loop
                2. Wingovers away and back
                3. Stall turn
                """))
                .isEqualTo("take-off, note \"towards the church\" ; climb ; loop ; wing-over ; stall turn");
    }

    @Test
    void whoseActItIsIsNoMisspeltFigure() {
        FigureList list = READER.read("Helicopter solo, 6 mins, Bryony Lund\nhover\nbow\nquick stop\n");

        assertThat(Spelt.said(list)).startsWith("hover ; bow ; quick stop");
        assertThat(list.notes()).contains("Helicopter solo, 6 mins, Bryony Lund");
        assertThat(said("hover\nClosing Lading\n")).isEqualTo("hover ; landing");
    }
}
