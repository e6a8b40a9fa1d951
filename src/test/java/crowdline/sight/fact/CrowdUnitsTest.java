package crowdline.sight.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.measure.Units;
import crowdline.show.CrowdUnits;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.InCrowdUnits;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A crowd that measures in kilometres hears no mile and no foot. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CrowdUnitsTest {
    private final List<CrowdFact> facts = new ArrayList<>();

    @BeforeAll
    void computeThem() {
        Catalogue catalogue = CatalogueFile.shipped();
        for (CatalogueEntry entry : catalogue.entries()) {
            for (double kt : new double[] {70, 145}) {
                facts.addAll(Flown.catalogued(catalogue, entry.name(), Flown.biplane(), 2500, kt, CrowdUnits.METRIC));
            }
        }
    }

    @Test
    void noMileAndNoFootIsSaid() {
        assertThat(facts).hasSizeGreaterThan(100);
        assertThat(facts)
                .allSatisfy(fact -> assertThat(fact.text() + " " + fact.shortText())
                        .doesNotContainPattern("\\b(miles?|feet|foot)\\b")
                        .doesNotContain("motorway limit"));
        assertThat(facts).anyMatch(fact -> fact.text().contains("kilometres an hour"));
        assertThat(facts).anyMatch(fact -> fact.text().contains("metres up"));
    }

    /** Exact by definition: 1 kt is 1.852 km/h; the mile has 1,609.344 m, the foot 0.3048 m (international). */
    @ParameterizedTest
    @CsvSource({"100, 115 mph, 185 km/h", "150, 175 mph, 280 km/h", "62, 70 mph, 115 km/h"})
    void speedStandsBesideKnots(double kt, String mph, String kmh) {
        double mps = Units.mpsFromKt(kt);
        assertThat(InCrowdUnits.speed(mps, CrowdUnits.MILES)).isEqualTo(mph);
        assertThat(InCrowdUnits.speed(mps, CrowdUnits.METRIC)).isEqualTo(kmh);
        assertThat(Units.kmhFromMps(mps)).isCloseTo(kt * 1.852, within(1e-9));
    }

    @Test
    void heightStandsBesideFeet() {
        assertThat(InCrowdUnits.height(Units.mFromFt(1200), CrowdUnits.MILES)).isEqualTo("1,200 feet");
        assertThat(InCrowdUnits.height(Units.mFromFt(1200), CrowdUnits.METRIC)).isEqualTo("370 m");
    }
}
