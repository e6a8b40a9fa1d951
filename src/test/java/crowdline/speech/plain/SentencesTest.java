package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SentencesTest {

    private final Sentences sentences = new Sentences();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            The engine makes 180 hp. It is flown by one pilot. | 2
            Watch the top of the loop, e.g. the float. Then down! | 2
            It carries 1.5 tonnes at 3 p.m. today. | 1
            Approx. 200 m.p.h. at the bottom. | 1
            No. 3 joins the others. | 1
            Nos. 3 and 4 join. Then no. 5. | 2
            Will it stop? No. It goes on. | 3
            He plays the piano. She flies. | 2
            Pull Up. Then Go. Now roll. | 3
            It pulls 6 G. Now watch. | 2
            So do I. Now watch. | 2
            Flown by J. R. Quillan of the U.S. team. | 1
            Wait for it… Now! | 2
            Flt. Lt. Quillan and Gen. Oriel fly. | 1
            "Mr." is short. (Mr. Quillan says so.) | 2
            She pulls 6.5 g... and holds it. | 1
            Mr. Quillan flies at 3 p.m. The crowd waits. | 2
            "Look up!" she says. It rolls. | 2
            Flown by Dr. Quillan. | 1
            No full stop | 1
            ... | 0
            '' | 0
            """)
    void sentencesAreCountedAsAReaderWould(String text, int count) {
        assertThat(sentences.in(text)).hasSize(count);
    }

    @Test
    void spansPointIntoTheText() {
        String text = "  Up. \n Over and down!  ";
        assertThat(sentences.in(text).stream().map(s -> s.in(text))).containsExactly("Up.", "Over and down!");
    }

    @Test
    void wordsStayWhole() {
        String text = "A well-judged, half-and-half turn: don't blink at 1.5 g!";
        assertThat(sentences.wordsIn(text).stream().map(s -> s.in(text)))
                .containsExactly("A", "well-judged", "half-and-half", "turn", "don't", "blink", "at", "1.5", "g");
    }
}
