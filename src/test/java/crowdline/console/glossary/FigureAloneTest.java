package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.SideView;
import crowdline.sight.SideView.Spot;
import crowdline.sight.picture.Flown;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What every figure must look like, from the trade's own words for it; common practice, no source. */
class FigureAloneTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final FigureAlone DRAWING = new FigureAlone(CATALOGUE);

    private static List<Spot> spots(String name) {
        Flown flown = DRAWING.fly(CATALOGUE.find(name).orElseThrow()).flown();
        return SideView.of(flown, OptionalDouble.empty()).stretches().get(0).spots();
    }

    private static double heightM(String name) {
        double low = spots(name).stream().mapToDouble(Spot::heightM).min().orElse(0);
        return spots(name).stream().mapToDouble(Spot::heightM).max().orElse(0) - low;
    }

    private static Spot last(String name) {
        return spots(name).get(spots(name).size() - 1);
    }

    @Test
    void everyFigureIsDrawnAndWhatIsNotComputedSaysSo() {
        assertThat(GlossaryView.drawn(CATALOGUE, List.of()).entries())
                .hasSizeGreaterThan(80)
                .allSatisfy(e -> assertThat(e.flown().isEmpty()).as(e.name()).isFalse())
                .filteredOn(e -> e.flown().company().sketched())
                .extracting(GlossaryView.EntryView::name)
                .containsExactlyInAnyOrderElementsOf(CATALOGUE.entries().stream()
                        .filter(entry -> entry.elements().isEmpty())
                        .map(CatalogueEntry::name)
                        .toList());
    }

    @Test
    void loopComesBackToWhereItBegan() {
        assertThat(heightM("loop")).isGreaterThan(80);
        assertThat(Math.abs(last("loop").heightM() - spots("loop").get(0).heightM()))
                .isLessThan(0.25 * heightM("loop"));
    }

    @Test
    void splitSEndsLowerAndGoesBack() {
        List<Spot> spots = spots("split S");
        assertThat(last("split S").heightM()).isLessThan(spots.get(0).heightM() - 60);
        assertThat(last("split S").alongM())
                .isLessThan(spots.get(spots.size() - 2).alongM());
    }

    @Test
    void slowRollIsALevelLineFromTheSide() {
        assertThat(heightM("slow roll")).isLessThan(15);
    }

    @Test
    void nothingIsDrawnUnderTheGround() {
        assertThat(GlossaryView.drawn(CATALOGUE, List.of()).entries())
                .flatExtracting(e -> e.flown().poses())
                .allMatch(p -> p.place().z() > 0);
    }
}
