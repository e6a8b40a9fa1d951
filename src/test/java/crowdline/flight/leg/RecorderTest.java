package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element.Until;
import java.util.List;
import org.junit.jupiter.api.Test;

class RecorderTest {
    private final Recorder recorder = new Recorder(0.1);

    private static FlightState at(double tS, double alongM, double mps) {
        return new FlightState(tS, new Vec(alongM, -alongM, 300), mps, new Vec(1, 0, 0), Vec.UP);
    }

    private List<Double> times() {
        return recorder.samples().stream()
                .map(s -> Math.round(s.tS() * 1e6) / 1e6)
                .toList();
    }

    @Test
    void coastingIsSampledOnTheGridInAStraightRun() {
        recorder.coast(at(1.05, 0, 40), at(1.55, 10, 50));

        assertThat(times()).containsExactly(1.1, 1.2, 1.3, 1.4, 1.5);
        Sample middle = recorder.samples().get(2);
        assertThat(middle.place().x()).isCloseTo(5, within(1e-6));
        assertThat(middle.place().y()).isCloseTo(-5, within(1e-6));
        assertThat(middle.place().z()).isCloseTo(300, within(1e-6));
        assertThat(middle.speedMps()).isCloseTo(45, within(1e-6));
        assertThat(middle.g()).isEqualTo(1);
    }

    @Test
    void noInstantIsSampledTwice() {
        recorder.coast(at(1, 0, 40), at(1.2, 10, 50));
        recorder.coast(at(1.2, 10, 50), at(1.4, 20, 50));
        recorder.coast(at(1.3, 10, 50), at(1.5, 20, 50));

        assertThat(times()).containsExactly(1.0, 1.1, 1.2, 1.3, 1.4);
    }

    @Test
    void figureThatTakesNoTimeIsNotSampled() {
        recorder.coast(at(1, 0, 40), at(1, 10, 50));

        assertThat(times()).isEmpty();
    }

    @Test
    void flightIsSampledOnTheGridAndNotInBetween() {
        Integrator integrator = new Integrator(0.1, Integrator.FINE, recorder);
        Rig.fly(
                Rig.dragFree(),
                integrator,
                at(0.05, 0, 40),
                Rig.line(Until.SECONDS, 0.3),
                Rig.line(Until.SECONDS, 0.25));

        assertThat(times()).containsExactly(0.1, 0.2, 0.3, 0.4, 0.5, 0.6);
        Sample last = recorder.samples().get(5);
        assertThat(last.place().x()).isCloseTo(0.55 * 40, within(1e-6));
    }
}
