package crowdline.console.prepare.figure;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.SampleTools;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FigureFinderTest {
    private final FigureFinder finder = new FigureFinder(SampleTools.CATALOGUE);

    private List<String> found(String typed) {
        return finder.find(typed).stream().map(CatalogueEntry::name).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"upside down", "Upside-Down", "upside down p", "inverted"})
    void upsideDownFindsWhatIsCalledInverted(String typed) {
        assertThat(found(typed).get(0)).startsWith("inverted");
    }

    @ParameterizedTest
    @CsvSource({"loo, loop", "hammer, stall turn", "spi, spin", "slow r, slow roll", "cub, Cuban eight"})
    void partOfANameOrAnAliasFindsTheFigureFirst(String typed, String first) {
        assertThat(found(typed)).contains(first);
        assertThat(found(typed).indexOf(first)).isLessThan(3);
    }

    @Test
    void whatNothingGoesWithFindsNothing() {
        assertThat(found("zzzz")).isEmpty();
        assertThat(found("x".repeat(5_000))).isEmpty();
    }

    @Test
    void nothingTypedIsTheWholeCatalogue() {
        assertThat(finder.find("  ")).isEqualTo(SampleTools.CATALOGUE.entries());
    }
}
