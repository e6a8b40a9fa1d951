package crowdline.show.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.show.check.ShowRulesTest;
import java.util.List;
import org.junit.jupiter.api.Test;

class CatalogueTest {
    private static final CatalogueEntry LOOP = ShowRulesTest.entry("loop", List.of("looping"), List.of());
    private static final CatalogueEntry STALL_TURN =
            ShowRulesTest.entry("stall turn", List.of("hammerhead", "stall-turn"), List.of());
    private static final Catalogue SHIPPED = new Catalogue(List.of(LOOP, STALL_TURN));

    @Test
    void namesAreFoundWhateverTheirCaseAndSpacing() {
        assertThat(SHIPPED.find(" Stall_TURN ")).contains(STALL_TURN);
        assertThat(SHIPPED.find("LOOPING")).contains(LOOP);
        assertThat(SHIPPED.find("roll")).isEmpty();
    }

    @Test
    void twoShippedEntriesCannotShareAName() {
        assertThatThrownBy(() -> new Catalogue(List.of(LOOP, ShowRulesTest.entry("ring", List.of("Loop"), List.of()))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the catalogue name Loop is claimed by loop and by ring");
    }

    @Test
    void ownEntryTakesThePlaceOfAShippedOneAndOfItsAliases() {
        CatalogueEntry own = ShowRulesTest.entry("Stall Turn", List.of("wing fall"), List.of());
        Catalogue both = SHIPPED.with(List.of(own));
        assertThat(both.entries()).containsExactly(own, LOOP);
        assertThat(both.find("stall turn")).contains(own);
        assertThat(both.find("hammerhead")).contains(own);
        assertThat(both.find("wing fall")).contains(own);
    }

    @Test
    void ownNameWinsOverAShippedAliasAndLeavesTheRest() {
        CatalogueEntry own = ShowRulesTest.entry("hammerhead", List.of(), List.of());
        Catalogue both = SHIPPED.with(List.of(own));
        assertThat(both.find("hammerhead")).contains(own);
        assertThat(both.find("stall turn")).contains(STALL_TURN);
        assertThat(both.entries()).containsExactly(own, LOOP, STALL_TURN);
    }

    @Test
    void ownAliasWinsOverAShippedName() {
        CatalogueEntry own = ShowRulesTest.entry("wheel", List.of("loop", "hammerhead"), List.of());
        Catalogue both = SHIPPED.with(List.of(own));
        assertThat(both.find("loop")).contains(own);
        assertThat(both.find("hammerhead")).contains(own);
        assertThat(both.find("looping")).contains(LOOP);
    }

    @Test
    void ownEntriesThatShareANameDoNotThrow() {
        CatalogueEntry first = ShowRulesTest.entry("wheel", List.of(), List.of());
        CatalogueEntry second = ShowRulesTest.entry("Wheel", List.of("ring"), List.of());
        Catalogue both = SHIPPED.with(List.of(first, second));
        assertThat(both.find("wheel")).contains(first);
    }
}
