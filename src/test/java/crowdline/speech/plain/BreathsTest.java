package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BreathsTest {

    @Test
    void breaksAtSentencesAndCommasFirst() {
        assertThat(Breaths.lines("Look high on the right. The smoke shows you the path.", 34))
                .containsExactly("Look high on the right.", "The smoke shows you the path.");
        assertThat(Breaths.lines("Four stops, four flicks of the wrist, and the wings are level again.", 40))
                .containsExactly("Four stops, four flicks of the wrist,", "and the wings are level again.");
    }

    @Test
    void thenBeforeConjunctionsAndPrepositions() {
        assertThat(Breaths.lines("It turns three times in four seconds.", 28))
                .containsExactly("It turns three times", "in four seconds.");
    }

    @Test
    void keepsANumberWithItsUnitAndATitleWithItsName() {
        for (int width = 12; width < 40; width++) {
            assertThat(Breaths.lines("The engine of Dr. Quillan has 300 hp and a roar.", width))
                    .noneMatch(line -> line.endsWith("300") || line.endsWith("Dr.") || line.endsWith(" a"));
        }
    }

    /** Two sentences in one line are worse than a line more, wherever the stop stands. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "It rolls. It falls.",
                "It rolls! It falls.",
                "It rolls? It falls.",
                "It rolls… It falls.",
                "\"It rolls.\" It falls.",
                "(It rolls.) It falls.",
                "‘It rolls!’ It falls."
            })
    void sentencesHaveLinesOfTheirOwn(String text) {
        assertThat(Breaths.lines(text, text.length() + 1)).hasSize(2).last().isEqualTo("It falls.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It rolls… it falls.",
                "It rolls and falls.",
                "For Mr. Quillan.",
                "This is No. 3 here.",
                "It rolls, It falls."
            })
    void whatIsNoEndOfASentenceStaysInTheLine(String text) {
        assertThat(Breaths.lines(text, text.length() + 1)).hasSize(1);
    }

    @Test
    void lineBreaksAtAPauseRatherThanAJointAndAtAJointRatherThanAnywhere() {
        assertThat(Breaths.lines("The smoke goes on; the crowd looks up", 24))
                .containsExactly("The smoke goes on;", "the crowd looks up");
        assertThat(Breaths.lines("The smoke stays (and the crowd looks up)", 27))
                .containsExactly("The smoke stays", "(and the crowd looks up)");
        assertThat(Breaths.lines("The smoke waits... the crowd looks up", 24))
                .containsExactly("The smoke waits...", "the crowd looks up");
    }

    @Test
    void dashIsNotTornFromWhatIsBeforeIt() {
        for (int width = 12; width < 30; width++) {
            assertThat(Breaths.lines("The smoke goes up high – the crowd looks up", width))
                    .noneMatch(line -> line.startsWith("–"));
        }
    }

    @Test
    void shortRemarkStaysOneLine() {
        assertThat(Breaths.lines("Now he rolls.", 28)).containsExactly("Now he rolls.");
    }

    @Test
    void nothingGivesNoLine() {
        assertThat(Breaths.lines("", 28)).isEmpty();
        assertThat(Breaths.lines(" \n ", 28)).isEmpty();
    }

    @Test
    void noLineIsTooLongAndNoWordIsLost() {
        Random random = new Random(7);
        String[] words = {
            "loop,", "and", "the", "smoke.", "Over", "300", "hp", "a", "rolls", "–", "(twice)", "🛩️", "up!"
        };
        for (int i = 0; i < 2_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(30);
            for (int j = 0; j < length; j++) {
                text.append(words[random.nextInt(words.length)]).append(random.nextInt(5) == 0 ? " \n" : " ");
            }
            int width = Breaths.LEAST_CHARS + random.nextInt(40);
            var lines = Breaths.lines(text.toString(), width);
            assertThat(lines).allMatch(line -> line.codePointCount(0, line.length()) <= width);
            assertThat(String.join(" ", lines))
                    .isEqualTo(text.toString().strip().replaceAll("\\s+", " "));
        }
    }

    @Test
    void anInitialOrATitleEndsNoLine() {
        assertThat(Breaths.lines("Please welcome W. Ffolliott, in a helicopter. First, a hover.", 60))
                .containsExactly("Please welcome W. Ffolliott, in a helicopter.", "First, a hover.");
        for (int width = 20; width < 70; width++) {
            assertThat(Breaths.lines(
                            "Here comes Capt. J. R. Quillan, of the St. Wilfrid's team, in a big old trainer.", width))
                    .as("%d characters", width)
                    .noneMatch(line -> line.matches(".*\\b(Capt|J|R|St)\\."));
        }
        assertThat(Breaths.lines("In the pull he feels about 6 G. Look at the wing.", 40))
                .containsExactly("In the pull he feels about 6 G.", "Look at the wing.");
    }

    @Test
    void wordLongerThanALineIsCut() {
        assertThat(Breaths.lines("x".repeat(20), 8)).containsExactly("xxxxxxxx", "xxxxxxxx", "xxxx");
    }

    @Test
    void tooNarrowLinesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Breaths.lines("loop", 7))
                .withMessageContaining("8 or more");
    }
}
