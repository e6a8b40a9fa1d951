package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a postscript says of the figures of a plain list, in many wordings. */
class AfterthoughtsTest {
    private static final String LIST = "take-off\nloop\nslow roll\nspin\nlanding\n\n";

    private static List<ListLine> lines(String below) {
        return new ListReader(CatalogueFile.shipped()).read(LIST + below).lines();
    }

    /** With nothing that tells where the list ends. */
    private static List<String> open(String below) {
        return new ListReader(CatalogueFile.shipped())
                .read("loop\nslow roll\nspin\n\n" + below + "\nwing rock").lines().stream()
                        .map(line -> Objects.requireNonNullElse(line.figure(), "own: " + line.title()))
                        .toList();
    }

    private static List<String> figures(String below) {
        return lines(below).stream()
                .map(line -> Objects.requireNonNullElse(line.figure(), "own: " + line.title()))
                .toList();
    }

    private static ListLine line(String below, int index) {
        return lines(below).get(index);
    }

    private static void assertReads(String below, String expected) {
        assertThat(figures(below))
                .as(below)
                .containsExactlyElementsOf(Arrays.stream(expected.split(", ")).toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "PS: between the loop and the slow roll I do a tail slide.",
                "PS between loop and slow roll: tail slide",
                "PS. I forgot the tail slide between the loop and the slow roll.",
                "After the loop I do a tail slide, I forgot.",
                "PS: put a tail slide in after the loop",
                "PS. there should be a tail slide after the loop",
                "P.S. tail slide goes in after the loop",
                "I left out the tail slide, it comes after the loop",
                "PS. Stick a tail slide in between the loop and the slow roll would you",
                "ps tail slide before the slow roll",
                "Oh, and I forgot: between the loop and the slow roll I put in a tail slide if the engine is behaving."
            })
    void aFigureComesInWhereverItIsPut(String below) {
        assertReads(below, "take-off, loop, tail slide, slow roll, spin, landing");
    }

    @Test
    void whatIsPutInOnAConditionIsAGuessAndKeepsWhatIsSaidOfIt() {
        assertThat(line("PS after the loop I put in a tail slide if the engine is behaving", 2)
                        .sure())
                .isFalse();
        assertThat(line("PS after the loop comes a tail slide", 2).sure()).isTrue();
        assertThat(line("PS. There is also to be a flat spin, of two turns, after the loop.", 2)
                        .count())
                .isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "P.S. Forget what I said about the spin, my doctor says so.",
                "PS no spin, the engine doesn't like it",
                "PS: spin is off",
                "PS. I'm leaving the spin out after all",
                "PS: the doctor says no spinning for a fortnight, so no spin",
                "PS scrap the spin",
                "PS. I shan't be doing the spin",
                "PS. On second thoughts I'll leave the spin for another day",
                "PS. We've decided against the spin",
                "PS. You can cross out the spin",
                "PS. Please take the spin off the list",
                "PS. the spin won't happen",
                "PS. Spin: delete",
                "PS. My insurance doesn't cover the spin so that's out",
                "PS. Not the spin, I've changed my mind",
                "And I shan't be doing the spin."
            })
    void aFigureIsNotFlownHoweverThatIsSaid(String below) {
        assertReads(below, "take-off, loop, slow roll, landing");
    }

    @Test
    void onlyWhatIsTakenOutGoes() {
        assertReads("PS the loop and the spin are out", "take-off, slow roll, landing");
        assertReads(
                "PS I'd rather fly the slow roll well, and then land off it",
                "take-off, loop, slow roll, spin, landing");
        assertThat(new ListReader(CatalogueFile.shipped())
                        .read("loop at 900 ft\nslow roll\nloop at 500 ft\nlanding\n\nPS. Forget the second loop.")
                        .lines())
                .extracting(ListLine::heightFt)
                .containsExactly(900.0, null, null);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PS. Strike the spin and put a quarter clover there instead, same place in the order. | quarter clover",
                "PS. I've been practising, so make the spin a flat spin. | flat spin",
                "PS: quarter clover instead of the spin | quarter clover",
                "PS: quarter clover replacing spin | quarter clover",
                "PS: spin: instead there is a quarter clover | quarter clover",
                "PS: spin should be quarter clover | quarter clover",
                "PS. The spin becomes a tail slide. | tail slide",
                "PS. the spin is out, tail slide comes in | tail slide",
                "PS. I shan't spin, I'll tail slide instead | tail slide",
                "PS. not the spin but a tail slide | tail slide"
            })
    void anotherIsFlownInItsPlace(String below, String now) {
        assertReads(below, "take-off, loop, slow roll, " + now + ", landing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "PS no tail slide after the loop",
                "I forgot to say that the loop after the slow roll is for my mum",
                "P.S. The loop before the slow roll is a big one",
                "PS. the spin is my favourite",
                "PS. I'm not happy with the spin but it stays",
                "PS. Please say something about the spin",
                "And if cloud is below 1500 feet leave out the spin and the slow roll, I shall do two steep turns instead.",
                "If it's windy I won't do the spin but a tail slide",
                "PS: no spin on Friday, my daughter is aboard.",
                "low show: delete loop, spin",
                "PS say: \"not a loop, not a spin, just the wrong way up\""
            })
    void whatIsOnlyToldOrFlownAnotherTimeChangesNothing(String below) {
        assertReads(below, "take-off, loop, slow roll, spin, landing");
    }

    @Test
    void whatIsToldOfAFigureIsTakenOver() {
        assertThat(line("PS. the slow roll is at 600 ft", 2).heightFt()).isEqualTo(600);
        assertReads("PS. the slow roll is at 600 ft", "take-off, loop, slow roll, spin, landing");
    }

    @Test
    void moreOfTheSameIsFlownToo() {
        assertReads("PS. and a loop to finish", "take-off, loop, slow roll, spin, landing, loop");
        assertReads("PS. then another loop", "take-off, loop, slow roll, spin, landing, loop");
    }

    /** The name of the second is its own. */
    @Test
    void aLoopAndARollOffTheTopAreTwoFigures() {
        assertThat(new ListReader(CatalogueFile.shipped())
                        .read("loop, roll off the top, spin")
                        .lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "half loop with roll out on top", "spin");
        assertThat(new ListReader(CatalogueFile.shipped()).read("roll, aileron").lines())
                .extracting(ListLine::figure)
                .containsExactly("aileron roll");
    }

    @Test
    void aPostscriptAndWhatWasForgottenAreSaidOfTheListWhereNothingElseEndsIt() {
        assertThat(open("PS. I shan't be doing the spin.")).containsExactly("loop", "slow roll", "wing rock");
        assertThat(open("PS. the spin is my favourite.")).containsExactly("loop", "slow roll", "spin", "wing rock");
        assertThat(open("I forgot the tail slide, it comes after the loop."))
                .containsExactly("loop", "tail slide", "slow roll", "spin", "wing rock");
    }

    @Test
    void ofSeveralTheOneThatIsSaidGoes() {
        assertThat(new ListReader(CatalogueFile.shipped())
                        .read(
                                "loop at 900 ft\nslow roll\nloop at 500 ft\nlanding\n\nPS. I shan't be doing the first loop.")
                        .lines())
                .extracting(ListLine::heightFt)
                .containsExactly(null, 500.0, null);
        assertReads("PS: I shan't be doing the spin but I love the loop.", "take-off, loop, slow roll, landing");
    }
}
