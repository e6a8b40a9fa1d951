package crowdline.console.incident;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PartsTest {
    private static final String LONG =
            "Please stay where you are. Keep the roads and gates clear, so that those who have work to do can do it."
                    + " The display director will tell us more.";

    @Test
    void aParagraphThatFitsIsOnePart() {
        assertThat(Parts.of("  Please stay\n where you are. ", words -> true))
                .containsExactly("Please stay where you are.");
    }

    @Test
    void partsEndWithASentenceWhereThatIsNearTheirEvenLength() {
        assertThat(Parts.of(LONG, words -> words.length() <= 90))
                .containsExactly(
                        "Please stay where you are. Keep the roads and gates clear,",
                        "so that those who have work to do can do it. The display director will tell us more.");
        assertThat(Parts.of("One two three four. Five six seven eight nine.", words -> words.length() <= 30))
                .containsExactly("One two three four.", "Five six seven eight nine.");
    }

    /** Nobody can read out "the flying" and then "has stopped" as one sentence. */
    @Test
    void aPartEndsAtACommaRatherThanWithinAClause() {
        String stopped =
                "Ladies and gentlemen, the flying has stopped for the moment. Please stay where you are, behind the"
                        + " rope, and keep your children with you.";
        assertThat(Parts.of(stopped, words -> words.length() <= 45))
                .containsExactly(
                        "Ladies and gentlemen,",
                        "the flying has stopped for the moment.",
                        "Please stay where you are, behind the rope,",
                        "and keep your children with you.");
    }

    @Test
    void noWordIsLostAndEveryPartFitsAtAnyRoom() {
        long seed = 12;
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            List<String> words = new ArrayList<>();
            int count = 1 + random.nextInt(120);
            for (int w = 0; w < count; w++) {
                words.add("x".repeat(1 + random.nextInt(12)) + (random.nextInt(6) == 0 ? "." : ""));
            }
            String paragraph = String.join(" ", words);
            int room = 14 + random.nextInt(200);
            List<String> parts = Parts.of(paragraph, w -> w.length() <= room);
            assertThat(String.join(" ", parts)).isEqualTo(paragraph);
            assertThat(parts).as("seed %s, room %s", seed, room).allMatch(p -> p.length() <= room);
        }
    }

    @Test
    void aWordLongerThanTheRoomIsBrokenWithAHyphenWithinNoLetter() {
        assertThat(Parts.of("aa bbbbbbbb cc", words -> words.length() <= 4))
                .containsExactly("aa", "bbb-", "bbb-", "bb", "cc");
        String glider = "\ud83d\udee9";
        assertThat(LongWords.of(glider.repeat(5), words -> words.length() <= 4))
                .containsExactly(glider + "-", glider + "-", glider + "-", glider.repeat(2));
        assertThat(LongWords.of("abc d", words -> false)).containsExactly("a-", "bc", "d");
    }

    /** A page nobody would write must not hold the window up. */
    @Test
    void aVeryLongParagraphIsLaidOutOnlyInPieces() {
        long[] letters = {0};
        String paragraph = "word and word. ".repeat(7000).strip();
        Parts.of(paragraph, words -> {
            letters[0] += words.length();
            return words.length() <= 100;
        });
        assertThat(letters[0]).isLessThan(4L * paragraph.length());
    }
}
