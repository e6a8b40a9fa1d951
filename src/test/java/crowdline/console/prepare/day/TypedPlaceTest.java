package crowdline.console.prepare.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sixty minutes are a degree, sixty seconds a minute; north and east count up (ISO 6709). */
class TypedPlaceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "51.2, -1.7|51.2|-1.7",
                "51.2 -1.7|51.2|-1.7",
                "51.2;1.7|51.2|1.7",
                "51.2, −1.7|51.2|-1.7",
                "51.2N 1.7W|51.2|-1.7",
                "51.2N1.7W|51.2|-1.7",
                "51.2 n, 1.7 w|51.2|-1.7",
                "N51.2 W1.7|51.2|-1.7",
                "1.7W 51.2N|51.2|-1.7",
                "51.2N 1.7|51.2|1.7",
                "33.9S, 151.2E|-33.9|151.2",
                "51°12'N 1°42'W|51.2|-1.7",
                "51°12'36\"N, 1°42'18\"W|51.21|-1.705",
                "51 12 36 N, 1 42 18 W|51.21|-1.705",
                "N51 12 W1 42|51.2|-1.7",
                "51° 12.6′ N 1° 42.3′ W|51.21|-1.705",
                "0, 0|0|0"
            })
    void placeIsReadAsPeopleWriteIt(String typed, double latDeg, double lonDeg) {
        TypedPlace place = TypedPlace.of(typed).orElseThrow();
        assertThat(place.latDeg()).isCloseTo(latDeg, within(1e-6));
        assertThat(place.lonDeg()).isCloseTo(lonDeg, within(1e-6));
    }

    /** A place with a letter that is passed over would be on the other side of the meridian. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Pellmoor",
                "51.2",
                "51.2N",
                "51.2N 1.7S",
                "51.2E 1.7W",
                "-51.2N 1.7W",
                "51.2Q 1.7W",
                "N51.2N 1.7W",
                "51°72'N 1°42'W",
                "51.5°12'N 1°42'W",
                "51,2 -1,7",
                "51.2, -1.7, 300"
            })
    void whatSaysNoPlaceIsRefused(String typed) {
        assertThat(TypedPlace.of(typed)).isEmpty();
    }

    @Test
    void timeZoneIsFoundInAnyCaseAndByItsCity() {
        assertThat(TypedPlace.zone("europe/london")).hasValue(ZoneId.of("Europe/London"));
        assertThat(TypedPlace.zone("Lisbon")).hasValue(ZoneId.of("Europe/Lisbon"));
        assertThat(TypedPlace.zone("new york")).hasValue(ZoneId.of("America/New_York"));
        assertThat(TypedPlace.zone("UTC")).hasValue(ZoneId.of("UTC"));
        assertThat(TypedPlace.zone("Louisville")).as("there are two").isEmpty();
        assertThat(TypedPlace.zone("Pellmoor")).isEmpty();
        assertThat(TypedPlace.zone("")).isEmpty();
    }
}
