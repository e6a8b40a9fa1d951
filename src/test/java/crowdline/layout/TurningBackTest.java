package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Sliders;
import crowdline.storage.show.KindsFile;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who has speed to spare pulls up into the turn back: it is tighter and sooner over than an even one. */
class TurningBackTest {
    private static final double HEIGHT_M = 100;

    private static FigureTrial trial(String kind) {
        return new FigureTrial(KindsFile.shipped().named(kind).airframe("a", "A", Sliders.TYPICAL), Air.STANDARD);
    }

    private static double rollsMps(String kind) {
        return Units.mpsFromKt(trial(kind).usual().rollKt());
    }

    /** From the middle back to it as it rolls, at one height. */
    private static Piece back(String kind, double faster, double ceilingM) {
        FigureTrial trial = trial(kind);
        double mps = rollsMps(kind);
        Climbing climbing = Climbing.of(trial, HEIGHT_M);
        Straight straight = new Straight(trial, climbing, Double.POSITIVE_INFINITY);
        TurningBack turning = new TurningBack(trial, climbing, straight, new Runs(climbing), ceilingM);
        Entry to = new Entry(0, 0, HEIGHT_M, mps, 0.8 * mps, 1.2 * mps, false);
        FlightState at = FlightState.along(new Vec(0, 0, HEIGHT_M), faster * mps, true);
        return Objects.requireNonNull(turning.back(at, to));
    }

    private static double highestM(String kind, Piece piece) {
        return trial(kind).fly(piece.elements(), piece.from()).box().highestM();
    }

    @ParameterizedTest
    @CsvSource({"large biplane, 5", "old trainer, 5", "aerobatic two-seater, 2"})
    void itIsBackSoonerOverAClimb(String kind, double soonerS) {
        Piece even = back(kind, 1.1, HEIGHT_M);
        Piece climb = back(kind, 1.1, Double.POSITIVE_INFINITY);

        assertThat(even.transit()).isEqualTo(Transit.TURNS_BACK);
        assertThat(climb.transit()).isEqualTo(Transit.TURNS_UP);
        assertThat(climb.seconds()).isLessThan(even.seconds() - soonerS);
        assertThat(highestM(kind, climb)).isGreaterThan(HEIGHT_M + 50);
    }

    @ParameterizedTest
    @ValueSource(strings = {"large biplane", "old trainer", "aerobatic two-seater", "light aerobatic biplane"})
    void itComesOutOnItsLineAsHighAndAsFastAsItIsWanted(String kind) {
        for (double faster = 1; faster < 1.4; faster += 0.05) {
            FlightState out = back(kind, faster, Double.POSITIVE_INFINITY).to();

            assertThat(out.toRight()).isFalse();
            assertThat(out.place().x()).isCloseTo(0, within(Joining.NEAR_M));
            assertThat(out.place().y()).isCloseTo(0, within(40.0));
            assertThat(out.place().z()).isBetween(HEIGHT_M - Fit.LEVEL_M, HEIGHT_M + 12);
            assertThat(out.speedMps()).isGreaterThan(0.95 * rollsMps(kind));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {140, 170})
    void aCeilingIsNotClimbedThrough(double ceilingM) {
        assertThat(highestM("large biplane", back("large biplane", 1.2, ceilingM)))
                .isLessThan(ceilingM);
    }

    @Test
    void thatOfTheDirectorIsTheOneThatCounts() {
        Venue.Limits under = new Venue.Limits(300.0, 500.0, null, null);
        LaidOut laid = LayoutTest.laid(
                "large biplane",
                under,
                a("slow roll").toRight(true),
                a("slow roll").toRight(false));

        assertThat(laid.pieces())
                .filteredOn(Piece::turns)
                .isNotEmpty()
                .allMatch(piece -> highestM("large biplane", piece) < Units.mFromFt(500));
    }

    @Test
    void aGliderKeepsTheHeightThatAClimbWouldCost() {
        for (double faster = 1; faster < 1.6; faster += 0.1) {
            assertThat(back("aerobatic glider", faster, Double.POSITIVE_INFINITY)
                            .transit())
                    .isEqualTo(Transit.TURNS_BACK);
        }
    }

    /** By an even turn its engine alone had to win the speed. */
    @Test
    void anActTurnsBackOverAClimbForMoreSpeed() {
        LaidOut laid = LayoutTest.laid(
                "large biplane", a("slow roll").toRight(true), a("loop").toRight(false));

        assertThat(laid.pieces()).extracting(Piece::transit).contains(Transit.TURNS_UP);
    }
}
