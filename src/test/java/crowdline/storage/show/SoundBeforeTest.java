package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading a show whose content was found sound before. */
class SoundBeforeTest {
    @Test
    void soundContentGivesTheShowTheFullReadingGives() {
        byte[] content = Fixture.FULL.getBytes(StandardCharsets.UTF_8);

        assertThat(ShowFile.soundBefore(content)).contains(Fixture.read(content).show());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{}",
                "{\"crowdline\": 99}",
                "{\"crowdline\": 1}",
                "{\"crowdline\": 1, \"crowdline\": 1}"
            })
    void contentThatIsNoShowGivesNone(String text) {
        assertThat(ShowFile.soundBefore(text.getBytes(StandardCharsets.UTF_8))).isEmpty();
    }

    @Test
    void contentThatIsNotTextGivesNone() {
        assertThat(ShowFile.soundBefore(new byte[] {(byte) 0xFF, (byte) 0xFE, 0}))
                .isEmpty();
    }
}
