package crowdline.show.bounds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrittenTest {
    @Test
    void aShortTextStaysAsItIs() {
        assertThat(Written.brief("", 5)).isEmpty();
        assertThat(Written.brief("abcde", 5)).isEqualTo("abcde");
    }

    @Test
    void aLongTextIsNoLongerThanAskedWithItsEllipsis() {
        assertThat(Written.brief("abcdef", 5)).isEqualTo("abcd…");
        assertThat(Written.brief("abcdef", 1)).isEqualTo("…");
    }

    /** A letter outside the basic plane is two characters, and half of one is none. */
    @Test
    void noLetterIsCutInTwo() {
        String clef = "\uD834\uDD1E";
        assertThat(Written.brief("abc" + clef + "de", 5)).isEqualTo("abc…");
        assertThat(Written.brief("abc" + clef + "def", 6)).isEqualTo("abc" + clef + "…");
    }

    @Test
    void aQuoteIsAsLongAsASentenceBears() {
        assertThat(Written.quoted("loop")).isEqualTo("\"loop\"");
        assertThat(Written.quoted("x".repeat(41))).isEqualTo('"' + "x".repeat(39) + "…\"");
    }

    @Test
    void namesWithTheSameKeyAreTheSame() {
        assertThat(Written.key("  Slow_Roll -- left ")).isEqualTo("slow roll left");
    }

    @Test
    void aSentenceBeginsWithACapitalWhateverItBeginsWith() {
        assertThat(Written.begun("the act begins")).isEqualTo("The act begins");
        assertThat(Written.begun("élan and 4 more")).isEqualTo("Élan and 4 more");
        assertThat(Written.begun("4 figures")).isEqualTo("4 figures");
        assertThat(Written.begun("")).isEmpty();
    }
}
