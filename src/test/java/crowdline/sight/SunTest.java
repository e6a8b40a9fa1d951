package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.Venue;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Objects;
import java.util.SplittableRandom;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunTest {
    /**
     * Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302, revised January 2008, appendix A.5: zenith 50.11162°
     * with refraction, azimuth 194.34024°.
     */
    @Test
    void sunStandsWhereTheNrelExampleHasIt() {
        Instant at = ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7))
                .toInstant();
        Sun sun = Sun.at(39.742476, -105.1786, at);
        assertThat(sun.azimuthDeg()).isCloseTo(194.34024, within(0.02));
        assertThat(sun.altitudeDeg()).isCloseTo(90 - 50.11162, within(0.02));
    }

    /** An independent implementation of the same algorithm, over the inhabited earth and this century. */
    @Test
    void sunAgreesWithTheSolarPositionAlgorithmAnywhereAndAnyTime() {
        SplittableRandom random = new SplittableRandom(20270612);
        for (int i = 0; i < 1000; i++) {
            double lat = random.nextDouble(-66, 70);
            double lon = random.nextDouble(-180, 180);
            ZonedDateTime at = ZonedDateTime.of(2015, 1, 1, 0, 0, 0, 0, ZoneOffset.UTC)
                    .plusSeconds(random.nextLong(25L * 365 * 86400));
            Sun sun = Sun.at(lat, lon, at.toInstant());
            SolarPosition judge =
                    SPA.calculateSolarPosition(at, lat, lon, 0, DeltaT.estimate(at.toLocalDate()), 1010, 10);
            if (judge.zenithAngle() < 88) {
                double off = apart(sun.azimuthDeg(), sun.altitudeDeg(), judge.azimuth(), 90 - judge.zenithAngle());
                assertThat(off)
                        .as("seed 20270612, case %d: %s %s %s", i, lat, lon, at)
                        .isLessThan(0.02);
            }
        }
    }

    /** By vectors, not by the formula of the class under test. */
    private static double apart(double azimuth1, double up1, double azimuth2, double up2) {
        double[] a = direction(azimuth1, up1);
        double[] b = direction(azimuth2, up2);
        double chord = Math.sqrt(Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
        return Math.toDegrees(2 * Math.asin(Math.min(chord / 2, 1)));
    }

    private static double[] direction(double azimuthDeg, double upDeg) {
        double azimuth = Math.toRadians(azimuthDeg);
        double up = Math.toRadians(upDeg);
        return new double[] {Math.sin(azimuth) * Math.cos(up), Math.cos(azimuth) * Math.cos(up), Math.sin(up)};
    }

    @Test
    void straightOutIsNinetyDegreesLeftOfTheAxis() {
        // The A-axis runs west, so straight out is south, and the sun in the south-west is half right.
        Sun sun = new Sun(225, 20);
        assertThat(sun.degreesFrom(new Sighting(45, 20, 500), 270)).isCloseTo(0, within(1e-5));
        assertThat(sun.degreesFrom(new Sighting(-45, 20, 500), 270)).isGreaterThan(80);
    }

    @Test
    void angleToTheSunIsTheOneBetweenTheDirections() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 500; i++) {
            Sun sun = new Sun(random.nextDouble(360), random.nextDouble(-10, 90));
            Sighting look = new Sighting(random.nextDouble(-180, 180), random.nextDouble(90), 500);
            double axis = random.nextDouble(360);
            double bearing = axis - 90 + look.rightDeg();
            assertThat(sun.degreesFrom(look, axis))
                    .isCloseTo(apart(sun.azimuthDeg(), sun.altitudeDeg(), bearing, look.upDeg()), within(1e-4));
        }
    }

    @Test
    void aircraftNearTheSunIsFlaggedAndOneFartherOffIsNot() {
        Sun sun = new Sun(0, 30);
        assertThat(Glare.of(sun, new Sighting(0, 44, 500), 90).intoSun()).isTrue();
        assertThat(Glare.of(sun, new Sighting(0, 46, 500), 90).intoSun()).isFalse();
        assertThat(Glare.of(sun, new Sighting(20, 30, 500), 90).intoSun()).isFalse();
    }

    @Test
    void sunBelowTheHorizonDazzlesNobody() {
        assertThat(Glare.of(new Sun(0, -1), new Sighting(0, 3, 500), 90).intoSun())
                .isFalse();
    }

    private static Venue venue(double lat, double lon, String zone) {
        return new Venue("Nowhere", lat, lon, 0, 90, 200, ZoneId.of(zone), Venue.Limits.NONE);
    }

    /**
     * United States Naval Observatory rows in universal time, as kept among the tests of the solarpositioning library;
     * rounded to a minute there.
     */
    @ParameterizedTest
    @CsvSource({
        "61.2167, -149.8667, 2020-01-05, 18:11, 19:11, 00:57, 01:58",
        "61.2167, -149.8667, 2020-03-15, 15:31, 16:14, 04:01, 04:44",
        "-36.8333, 174.8, 2023-01-05, 16:38, , , 08:14",
        "1.2833, 103.8333, 2023-01-05, 22:46, , , 11:34"
    })
    void daylightAgreesWithTheObservatory(
            double lat,
            double lon,
            LocalDate day,
            String dawn,
            @Nullable String sunrise,
            @Nullable String sunset,
            String dusk) {
        Daylight light = Daylight.of(venue(lat, lon, "UTC"), day);
        assertMinute(light.dawn(), dawn);
        assertMinute(light.sunrise(), sunrise);
        assertMinute(light.sunset(), sunset);
        assertMinute(light.dusk(), dusk);
    }

    /** From the NOAA calculator, as kept among the tests of the solarpositioning library. */
    @ParameterizedTest
    @CsvSource({"-36.8406, 174.74, 2015-06-17, +12:00, 07:32, 17:11", "52.33, 13.3, 2015-10-25, +01:00, 06:49, 16:52"})
    void sunriseAndSunsetAgreeWithTheCalculator(
            double lat, double lon, LocalDate day, String zone, String sunrise, String sunset) {
        Daylight light = Daylight.of(venue(lat, lon, zone), day);
        assertMinute(light.sunrise(), sunrise);
        assertMinute(light.sunset(), sunset);
    }

    /**
     * The NREL tester prints 17:20:19, which is the evening before by local time; the sun sets at 17:18:52 (spherical
     * formula and solarpositioning 2.0.9).
     */
    @Test
    void sunsetOfTheNrelExampleIsThatOfTheLocalEvening() {
        Daylight light = Daylight.of(venue(39.742476, -105.1786, "-07:00"), LocalDate.of(2003, 10, 17));
        assertMinute(light.sunrise(), "06:13");
        assertMinute(light.sunset(), "17:19");
        assertThat(Objects.requireNonNull(light.sunset()).toLocalTime()).isBefore(LocalTime.of(17, 20));
    }

    @Test
    void midsummerInTheFarNorthHasNoSunset() {
        Daylight light = Daylight.of(venue(75, 20, "UTC"), LocalDate.of(2027, 6, 21));
        assertThat(light).isEqualTo(new Daylight(null, null, null, null));
    }

    private static void assertMinute(@Nullable ZonedDateTime found, @Nullable String expected) {
        if (expected != null) {
            double minutes = Objects.requireNonNull(found).toLocalTime().toSecondOfDay() / 60.0;
            double wanted = LocalTime.parse(expected).toSecondOfDay() / 60.0;
            assertThat(minutes).isCloseTo(wanted, within(1.0));
        }
    }
}
