package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.act;
import static crowdline.edit.act.Edited.id;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.Predictor;
import crowdline.measure.Units;
import crowdline.show.Show;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PinnedSpeedTest {
    private final Figures figures = new Figures(CATALOGUE);

    private Edit pinned(Show show, String figure, double kt) {
        return figures.pin("solo", id(show, figure), new Pin.Speed(kt));
    }

    @ParameterizedTest
    @CsvSource({"slow roll, 175", "low pass, 170"})
    void aSpeedTooNearToTheGreatestIsRefused(String figure, double kt) throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> pinned(show, figure, kt).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageMatching(
                        "(Slow roll|Low pass) goes beyond 1\\d\\d kt, as near its never-exceed speed as this"
                                + " aircraft is flown, so it is only given a time; ask the pilot about it.");
    }

    @ParameterizedTest
    @CsvSource({"slow roll, 200", "low pass, 300"})
    void aSpeedNoAircraftOfTheKindHasIsRefused(String figure, double kt) throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> pinned(show, figure, kt).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageMatching(
                        "(Slow roll|Low pass) is given " + (int) kt + " kt, and nothing is flown faster than 1\\d\\d kt"
                                + " in this aircraft; give it less, or leave its speed open.");
    }

    @ParameterizedTest
    @CsvSource({"slow roll, 30", "low pass, 45"})
    void aSpeedAtWhichTheWingDoesNotCarryItIsRefused(String figure, double kt) throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> pinned(show, figure, kt).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageMatching("(Slow roll|Low pass) is given " + (int) kt
                        + " kt, and below (49|50) kt the wing of this aircraft"
                        + " does not carry it; give it more, or leave its speed open.");
    }

    @ParameterizedTest
    @CsvSource({"loop, 120", "stall turn, 135", "low pass, 120", "slow roll, 90", "spin, 90"})
    void aSpeedThatCanBeHadIsHad(String figure, double kt) throws CannotBe {
        Show show = Edited.solo();
        Show told = pinned(show, figure, kt).of(show).show();
        double mps = new Predictor(
                        told, CATALOGUE, act(told), act(told).variants().get(0))
                .predict()
                .figure(id(told, figure))
                .orElseThrow()
                .entryMps();
        assertThat(Units.ktFromMps(mps)).isCloseTo(kt, within(5.0));
    }
}
