package crowdline.storage.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Expected hashes: FIPS 180-4 examples of NIST, for "abc" and for the empty message. */
class Sha256Test {
    @Test
    void hashesArePublishedOnes() {
        assertThat(Sha256.of("abc".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(Sha256.of(new byte[0]))
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void nameHasTheFirstDigits() {
        assertThat(Sha256.ofName("abc")).isEqualTo("ba7816bf8f01");
    }
}
