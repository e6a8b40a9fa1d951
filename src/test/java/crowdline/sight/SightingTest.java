package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SightingTest {
    private static final double LINE_M = 200;

    private static Sighting at(double x, double y, double z) {
        return Sighting.of(new Vec(x, y, z), LINE_M);
    }

    @Test
    void datumIsStraightAheadAtTheDistanceOfTheDisplayLine() {
        Sighting datum = at(0, 0, 0);
        assertThat(datum).isEqualTo(new Sighting(0, 0, 200));
        assertThat(datum.clock()).isEqualTo(12);
        assertThat(datum.words()).isEqualTo("low straight ahead, about twelve o'clock");
    }

    @Test
    void placeAsFarRightAsTheLineIsOffLiesHalfwayToTheRight() {
        Sighting right = at(200, 0, 0);
        assertThat(right.rightDeg()).isCloseTo(45, within(1e-12));
        assertThat(right.slantM()).isCloseTo(200 * Math.sqrt(2), within(1e-9));
    }

    @Test
    void heightOfThreeFourFiveTriangleIsSeenAtItsAngle() {
        Sighting up = at(0, 200, 300);
        assertThat(up.slantM()).isCloseTo(500, within(1e-9));
        assertThat(up.upDeg()).isCloseTo(36.8699, within(1e-4)); // atan(3/4)
        assertThat(up.fistsUp()).isCloseTo(3.68699, within(1e-5));
    }

    /** The hour hand's direction from twelve is thirty degrees an hour. */
    @ParameterizedTest
    @CsvSource({"0,12", "14,12", "16,1", "30,1", "60,2", "90,3", "120,4", "180,6", "-180,6", "-30,11", "-60,10", "-90,9"
    })
    void clockCountsThirtyDegreesAnHour(double rightDeg, int hour) {
        assertThat(new Sighting(rightDeg, 10, 500).clock()).isEqualTo(hour);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "400 | 0 | 60 | low to your right, about two o'clock",
                "-400 | 0 | 300 | well up to your left, about ten o'clock",
                "120 | 50 | 400 | high, a little to your right, about one o'clock",
                "300 | -100 | 600 | high to your right, about two o'clock",
                "-900 | 0 | 30 | low, far to your left, about nine o'clock",
                "0 | -500 | 30 | low straight behind you, about six o'clock",
                "100 | -300 | 20 | low behind you on the right, about five o'clock",
                "20 | -180 | 500 | almost overhead"
            })
    void wordsSayHowHighAndWhichSide(double x, double y, double z, String words) {
        assertThat(at(x, y, z).words()).isEqualTo(words);
    }

    @Test
    void placeAtTheEyeHasNumbersAllTheSame() {
        Sighting eye = at(0, -LINE_M, 0);
        assertThat(eye.slantM()).isZero();
        assertThat(eye.rightDeg()).isZero();
        assertThat(eye.upDeg()).isZero();
    }

    /** 2 atan(7.5 / 2d) in degrees, computed apart; the sun and the full moon are about half a degree. */
    @ParameterizedTest
    @CsvSource({"150, 2.86", "230, 1.87", "450, 0.955", "1000, 0.430", "1500, 0.286"})
    void spanOfSevenAndAHalfMetresLooksSmallerTheFartherItIs(double slantM, double degrees) {
        assertThat(ApparentSize.of(7.5, slantM).degrees()).isCloseTo(degrees, within(0.005));
    }

    @Test
    void sizesAreLikenedToTheNearestThing() {
        assertThat(new ApparentSize(0.5).like()).isEqualTo("the full moon");
        assertThat(new ApparentSize(0.01).like()).isEqualTo("a match head at arm's length");
        assertThat(new ApparentSize(1.1).like()).isEqualTo("a little finger at arm's length");
        assertThat(new ApparentSize(9).like()).isEqualTo("a fist at arm's length");
        assertThat(new ApparentSize(0).like()).isNotBlank();
    }

    /** The coin's width over the arm's length that the table states. */
    @Test
    void poundCoinAtArmsLengthIsTwoDegrees() {
        assertThat(ApparentSize.of(0.02343, 0.65).degrees()).isCloseTo(Everyday.POUND_COIN.value(), within(0.1));
    }

    @Test
    void everyComparisonHasItsUnitAndItsSource() {
        assertThat(Everyday.values()).allSatisfy(thing -> {
            assertThat(thing.value()).isPositive();
            assertThat(thing.unit()).isNotBlank();
            assertThat(thing.source()).hasSizeGreaterThan(8);
        });
    }
}
