package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.body.Rig;
import crowdline.measure.Units;
import crowdline.show.DayAir;
import crowdline.show.check.Severity;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CloudFindingTest {
    @Test
    void figureThatTopsInTheCloudIsNamedWithBothHeights() {
        double topFt = Units.ftFromM(fly(null).figures().get(0).highestM());
        List<FlightFinding> found = inCloud(fly(1800.0));
        assertThat(topFt).isGreaterThan(1800);
        assertThat(found).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.WARNING);
            assertThat(f.message())
                    .startsWith(String.format("loop tops at %,.0f ft; the cloud base of the day is 1,800 ft.", topFt));
        });
    }

    @Test
    void figureUnderTheCloudAndACloudlessDayGiveNoFinding() {
        assertThat(inCloud(fly(5000.0))).isEmpty();
        assertThat(inCloud(fly(null))).isEmpty();
    }

    private static List<FlightFinding> inCloud(Flight flight) {
        return flight.findings().stream()
                .filter(f -> f.code().equals("in-cloud"))
                .toList();
    }

    private static Flight fly(@Nullable Double cloudBaseFt) {
        DayAir air = new DayAir(1013.25, 15, 0, 0, cloudBaseFt);
        return Rig.predictor(CatalogueFile.shipped(), 1500, 125, air, Figure.of("loop", "loop"))
                .predict();
    }
}
