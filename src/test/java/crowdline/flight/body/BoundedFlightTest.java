package crowdline.flight.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import crowdline.flight.Predictor;
import crowdline.flight.air.Wind;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.Integrator;
import crowdline.flight.leg.Recorder;
import crowdline.show.figure.Element;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Numbers out of all proportion end the prediction with a sentence, in a moment and in little memory. */
@Timeout(value = 5, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class BoundedFlightTest {
    private static String whyNot(Body body, double speedMps, Element element) {
        Forces forces = new Forces(body, Rig.SEA_LEVEL, Wind.CALM);
        Recorder recorder = new Recorder(Predictor.SAMPLE_S);
        ElementFlyer flyer =
                new ElementFlyer(forces, new Integrator(Predictor.SAMPLE_S, Integrator.FINE, recorder), Variation.NONE);
        CannotFly refused = catchThrowableOfType(CannotFly.class, () -> flyer.fly(element, Rig.level(speedMps, 500)));
        assertThat(recorder.samples().size()).isLessThan(80_000);
        return refused.why();
    }

    @Test
    void aWingOfAThousandHectaresIsNotComputed() {
        assertThat(whyNot(Rig.body(700, 1e7, 0.03, 0.06), 77, Rig.line(Element.Until.SECONDS, 20)))
                .isEqualTo(
                        "cannot be computed in the line, as its numbers are out of all proportion; crowdline check says"
                                + " which");
    }

    /** The engine of a ship on a kite as large as a field: every number of it is finite, and each step a fraction of a millisecond. */
    @Test
    void whatTakesMoreStepsThanAnyAircraftIsGivenUp() {
        Body kite = Rig.body(20, 2_000, 1, 0.06, new Propeller(5e7, 15, 1_000, true, Blades.VARIABLE));
        assertThat(whyNot(kite, 40, Rig.line(Element.Until.SECONDS, 600))).startsWith("cannot be computed in the line");
    }

    @Test
    void aSpeedBeyondAllNumbersIsNotComputed() {
        assertThat(whyNot(Rig.body(700, 10, 0.03, 0.06), 1e200, Rig.line(Element.Until.SECONDS, 20)))
                .startsWith("cannot be computed in the line");
    }

    @Test
    void aHundredSlowRollsEndWhereAnActIsTooLongToBePredicted() {
        // A hundred rolls in a hundred and eighty stops each, a minute long.
        Element rolls = new Element.Roll(Element.RollStyle.HESITATION, Element.Side.LEFT, 36_000, null, 180, 59, 1);
        assertThat(whyNot(Rig.body(700, 10, 0, 0), 77, rolls))
                .isEqualTo("begins after 120 minutes, which is as long as an act is predicted for");
    }

    @Test
    void aTimedFigureOfDaysFillsNoMemory() {
        Recorder recorder = new Recorder(Predictor.SAMPLE_S);
        FlightState from = Rig.level(50, 100);
        recorder.coast(from, new FlightState(1e9, from.place(), 50, from.direction(), from.up()));
        assertThat(recorder.samples().size()).isLessThan(80_000);
    }
}
