package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.show.CatalogueFile;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RemarkHintsTest {

    @Test
    void figureNamesAreTradeWordsButNotThoseEveryFamilyKnows() {
        Map<String, String> words =
                RemarkHints.tradeWords(CatalogueFile.shipped().entries());
        assertThat(words).containsKeys("humpty bump", "hammerhead", "avalanche", "rudder");
        assertThat(words).doesNotContainKeys("loop", "landing", "slow roll");
        assertThat(words.get("stall turn")).doesNotEndWith(".").matches("\\p{Ll}.*");
    }
}
