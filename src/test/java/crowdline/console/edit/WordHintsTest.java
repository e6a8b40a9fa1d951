package crowdline.console.edit;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.speech.Readability;
import crowdline.storage.CatalogueFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WordHintsTest {

    @Test
    void figureNamesAreTradeWordsButNotThoseEveryFamilyKnows() {
        Map<String, String> words = WordHints.tradeWords(CatalogueFile.shipped().entries());
        assertThat(words).containsKeys("humpty bump", "hammerhead", "avalanche", "rudder");
        assertThat(words).doesNotContainKeys("loop", "landing", "slow roll");
        assertThat(words.get("stall turn")).doesNotEndWith(".").matches("\\p{Ll}.*");
    }

    @Test
    void scoresAreSaidForABlockAndNotForALine() {
        assertThat(WordHints.inWords(Optional.of(new Readability(1, 3, 3)))).isEmpty();
        // 206.835 - 1.015 * 10 - 84.6 * 1.3 = 86.7
        assertThat(WordHints.inWords(Optional.of(new Readability(10, 100, 130))))
                .isEqualTo("All together reads easy, as in conversation (87).");
        assertThat(List.of(WordHints.inWords(Optional.empty()))).containsExactly("");
    }
}
