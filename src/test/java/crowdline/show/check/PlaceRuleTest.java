package crowdline.show.check;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.catalogue.Catalogue;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Latitudes and longitudes against the clock of the venue. */
class PlaceRuleTest {
    private static List<String> found(double lat, double lon, String zone) {
        Show show = new Show(
                "day",
                LocalDate.of(2027, 6, 12),
                new Venue("field", lat, lon, 0, 0, 200, ZoneId.of(zone), Venue.Limits.NONE),
                DayAir.STANDARD,
                List.of(),
                List.of(),
                List.of(),
                List.of());
        List<String> found = new ArrayList<>();
        new PlaceRule().check(show, new Catalogue(List.of()), finding -> found.add(finding.message()));
        return found;
    }

    @ParameterizedTest
    @CsvSource({
        "51.5, -0.1, Europe/London",
        "64.1, -21.9, Atlantic/Reykjavik",
        "40.4, -3.7, Europe/Madrid",
        "43.8, 87.6, Asia/Shanghai",
        "39.5, 76.0, Asia/Shanghai",
        "-33.9, 151.2, Australia/Sydney",
        "-43.5, 172.6, Pacific/Auckland",
        "1.9, -157.4, Pacific/Kiritimati",
        "64.7, 177.5, Asia/Anadyr",
        "52.0, 1.0, UTC",
        "-20.0, 140.0, UTC"
    })
    void placesWhereTheyAreGiveNoFinding(double lat, double lon, String zone) {
        assertThat(found(lat, lon, zone)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, 51.5, Europe/London, were the two swapped?",
        "3.1, 54.6, Europe/London, were the two swapped?",
        "-51.5, -0.1, Europe/London, is it latDeg 51.5?",
        "33.9, 151.2, Australia/Sydney, is it latDeg -33.9?",
        "40.7, 74.0, America/New_York, is it lonDeg -74?",
        "52, 100, Europe/Paris, check all three"
    })
    void aSlipIsNamed(double lat, double lon, String zone, String slip) {
        assertThat(found(lat, lon, zone)).singleElement().asString().contains(slip);
    }
}
