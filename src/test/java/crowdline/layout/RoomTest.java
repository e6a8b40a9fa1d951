package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Venue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An area that does not do as a whole is told of once, with the smallest that would. */
class RoomTest {
    private static final String BIPLANE = "light aerobatic biplane";

    @Test
    void aCeilingBelowTheBaseIsSaidOnceAndNotAtEveryFigure() {
        LaidOut laid = LayoutTest.laid(
                BIPLANE, new Venue.Limits(1_500.0, 1_000.0, null, null), a("low pass"), a("loop"), a("stall turn"));

        assertThat(laid.findings())
                .extracting(LaidOut.Finding::message)
                .containsExactly(
                        "the ceiling, 1,000 ft, is not above the base, 1,500 ft: this act needs a ceiling of 2,610 ft");
    }

    @Test
    void anAreaTooShortForTheKindIsSaidOnceWithWhatWouldDo() {
        LaidOut laid = LayoutTest.laid(
                "fast jet", new Venue.Limits(500.0, null, 300.0, null), a("low pass"), a("loop"), a("steep turn"));

        assertThat(laid.findings())
                .extracting(LaidOut.Finding::message)
                .filteredOn(message -> message.contains("the display area ends at 300 m: this act needs "))
                .hasSize(1);
    }

    @Test
    void anAreaThatDoesIsNotSpokenOf() {
        LaidOut laid = LayoutTest.laid(
                BIPLANE, new Venue.Limits(500.0, 4_000.0, 2_000.0, null), a("low pass"), a("loop"), a("stall turn"));

        assertThat(laid.findings()).isEmpty();
    }

    /** It reached 10 to 170 m further than the area and said so; begun so much sooner it does not. */
    @ParameterizedTest
    @CsvSource({
        "large biplane, chandelle, low pass, 1000",
        "jet trainer, Cuban eight, slow roll, 3000",
        "jet trainer, lazy eight, split S, 3000",
        "piston fighter, low pass, reverse half Cuban, 2000"
    })
    void whatReachesALittleTooFarIsBegunSooner(String kind, String first, String second, double halfM) {
        LaidOut laid =
                LayoutTest.laid(kind, new Venue.Limits(300.0, null, halfM, null), a(first).toRight(true), a(second));

        assertThat(laid.findings()).isEmpty();
    }
}
