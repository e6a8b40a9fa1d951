package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.glossary.GlossaryHost.Belief;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the position says orders what was found, and is said as what the position says. */
class BeliefsTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final Beliefs BELIEFS =
            new Beliefs(List.of(new Belief("stall turn", 0.62), new Belief("loop", 0.21), new Belief("spin", 0.1)));

    private static CatalogueEntry entry(String name) {
        return CATALOGUE.find(name).orElseThrow();
    }

    @Test
    void theLikeliestComesFirstAndTheRestStays() {
        assertThat(BELIEFS.inOrder(List.of(entry("chandelle"), entry("loop"), entry("slow roll"), entry("stall turn"))))
                .extracting(CatalogueEntry::name)
                .containsExactly("stall turn", "loop", "chandelle", "slow roll");
    }

    @Test
    void itIsSaidThatThePositionSaysIt() {
        assertThat(BELIEFS.said()).isEqualTo("By its position: stall turn, about 6 in 10; loop, about 2 in 10");
        assertThat(BELIEFS.of("loop")).isEqualTo("By its position about 2 in 10. ");
        assertThat(BELIEFS.of("chandelle")).isEmpty();
        assertThat(new Beliefs(List.of(new Belief("loop", 0.97))).said())
                .isEqualTo("By its position: loop, almost certainly");
    }

    @Test
    void withoutAReceiverNothingIsSaidAndNothingMoves() {
        Beliefs none = new Beliefs(List.of());
        assertThat(none.said()).isEmpty();
        assertThat(none.of("loop")).isEmpty();
        assertThat(none.inOrder(List.of(entry("loop"), entry("spin"))))
                .extracting(CatalogueEntry::name)
                .containsExactly("loop", "spin");
    }
}
