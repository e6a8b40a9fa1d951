package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.Wind;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.flight.shape.Shaped;
import crowdline.flight.shape.Shaper;
import crowdline.show.figure.Element;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Paths held over the ground against a steady wind. The A-axis points east. */
class HeldTest {
    private static final double KT = 1852.0 / 3600;
    private static final double WIND_MPS = 20 * KT;

    private static Forces dragFree(double fromDeg, double kt) {
        return new Forces(Rig.body(500, 9, 0, 0), Rig.VACUUM, Wind.steady(fromDeg, kt, 90));
    }

    /** Closed form: the part of the airspeed that is left along the track, √(V² − w²). */
    @Test
    void acrossTheWindTheTrackIsStraightAndTheAirspeedKept() {
        FlightState end = Rig.fly(dragFree(180, 20), Rig.level(60, 300), Rig.line(Element.Until.SECONDS, 10));
        assertThat(end.place().x()).isCloseTo(10 * Math.sqrt(60 * 60 - WIND_MPS * WIND_MPS), within(1e-6));
        assertThat(end.place().y()).isCloseTo(0, within(1e-9));
        assertThat(end.speedMps()).isCloseTo(60, within(1e-9));
    }

    @Test
    void alongTheWindItAddsToTheAirspeed() {
        FlightState end = Rig.fly(dragFree(270, 20), Rig.level(60, 300), Rig.line(Element.Until.SECONDS, 10));
        assertThat(end.place().x()).isCloseTo(10 * (60 + WIND_MPS), within(1e-6));
    }

    /** Held all the way round, a circle of one radius ends where it began, whatever the wind. */
    @Test
    void aRoundLoopClosesInAnyWind() {
        for (double from : new double[] {0, 45, 90, 180, 270}) {
            FlightState end = Rig.fly(dragFree(from, 15), Rig.level(90, 300), Rig.pullRound(360, 120));
            assertThat(end.place().minus(new Vec(0, 0, 300)).length())
                    .as("%.0f", from)
                    .isLessThan(0.01);
        }
    }

    /** Slower than the wind across, no nose into the wind holds the track: it is carried. */
    @Test
    void slowerThanTheWindItIsCarried() {
        double[] rates = new double[3];
        Forces forces = dragFree(180, 40);
        forces.hold(new double[] {0, 0, 300}, 10, 1, 0, 0, rates);
        assertThat(rates[1]).isCloseTo(40 * KT, within(1e-9));
    }

    /** The rolls of a line sit in its middle, whatever the kind, though it slows down on the way up. */
    @Test
    void aRollSitsInTheMiddleOfItsLine() throws CannotFly {
        Element.Line line = new Element.Line(
                Element.Until.RADII,
                3,
                List.of(new Element.Roll(Element.RollStyle.AILERON, Element.Side.LEFT, 360, null, 0, 0.5, 1)),
                1);
        Element.Arc up = new Element.Arc(Element.Way.PULL, null, 45.0, Element.Size.USUAL, 0, 1);
        Forces forces = Rig.seaLevel(Rig.monoplane());
        FlightState at = Rig.level(160 * KT, 300);
        Shaped shaped = new Shaper(forces, Rig.monoplane()).shape(List.of(up, line), at);
        double[] metres = new double[shaped.elements().size()];
        for (int i = 0; i < metres.length; i++) {
            FlightState then = Rig.fly(forces, at, shaped.elements().get(i));
            metres[i] = then.place().minus(at.place()).length();
            at = then;
        }
        assertThat(metres).hasSize(4);
        assertThat(metres[1]).isCloseTo(metres[3], within(0.5)).isGreaterThan(50);
    }
}
