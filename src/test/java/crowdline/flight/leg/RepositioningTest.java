package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element;
import org.junit.jupiter.api.Test;

/** Round for the next run, at the height and the speed it has already, so that it is all arcs and lines on paper. */
class RepositioningTest {
    private static final double MPS = 70;
    private static final double BANK_DEG = 50;
    private static final double HEIGHT_M = 300;

    private static FlightState round(int right, double alongM) {
        FlightState from = Rig.level(MPS, HEIGHT_M).facing(new Vec(right, 0, 0), Vec.UP);
        Element.Reposition wanted = new Element.Reposition(alongM, HEIGHT_M / 0.3048, MPS * 3600 / 1852, BANK_DEG, 1);
        return Rig.fly(Rig.dragFree(), from, wanted);
    }

    private static double radiusM() {
        return MPS * MPS / (9.80665 * Math.tan(Math.toRadians(BANK_DEG)));
    }

    /** Where it is back on the display line: a circle and a line that cuts in at 35°. */
    private static double onTheLineM() {
        double cut = Math.toRadians(35);
        double back = 2 * radiusM() / Math.tan(cut) * Math.cos(cut);
        return -radiusM() * Math.sin(cut) - back - radiusM() * Math.sin(cut);
    }

    @Test
    void comesBackOnTheDisplayLineTheOtherWay() {
        FlightState end = round(1, -1600);

        assertThat(end.place().x()).isCloseTo(-1600, within(1e-6));
        assertThat(end.place().y()).isCloseTo(0, within(0.01));
        assertThat(end.place().z()).isCloseTo(HEIGHT_M, within(1e-6));
        assertThat(end.direction().x()).isCloseTo(-1, within(1e-9));
        assertThat(end.up().z()).isCloseTo(1, within(1e-9));
        assertThat(end.speedMps()).isCloseTo(MPS, within(1e-6));
    }

    /** 215° round, the line back over two radii of depth, 35° on to the display line, and along it. */
    @Test
    void takesTheTimeOfItsArcsAndLines() {
        double cut = Math.toRadians(35);
        double length = radiusM() * (Math.PI + 2 * cut) + 2 * radiusM() / Math.tan(cut) + (1600 + onTheLineM());

        assertThat(round(1, -1600).tS()).isCloseTo(length / MPS, within(1e-3));
    }

    @Test
    void flownTheOtherWayItIsTheSameInAMirror() {
        FlightState right = round(1, -1600);
        FlightState left = round(-1, 1600);

        assertThat(left.tS()).isCloseTo(right.tS(), within(1e-9));
        assertThat(left.place().x()).isCloseTo(-right.place().x(), within(1e-6));
        assertThat(left.place().y()).isCloseTo(right.place().y(), within(1e-6));
        assertThat(left.direction().x()).isCloseTo(1, within(1e-9));
    }

    /** The place is nearer than where it would come out, so it flies on before it turns. */
    @Test
    void reachesAPlaceOnTheNearSideOfWhereItWouldComeOut() {
        for (double alongM : new double[] {0, 500, 3000}) {
            FlightState end = round(1, alongM);

            assertThat(end.place().x()).isCloseTo(alongM, within(0.01));
            assertThat(end.place().y()).isCloseTo(0, within(0.01));
            assertThat(end.direction().x()).isCloseTo(-1, within(1e-9));
        }
    }

    /** From any heading, even towards the crowd, it turns away first and never comes nearer than it must. */
    @Test
    void turnsAwayWhicheverWayItPoints() {
        for (int heading = -180; heading < 180; heading += 15) {
            double angle = Math.toRadians(heading);
            double[] nearest = {1000};
            double[] most = {0};
            FlightState from = Rig.level(MPS, HEIGHT_M).facing(new Vec(Math.cos(angle), Math.sin(angle), 0), Vec.UP);
            FlightState end = Rig.fly(
                    Rig.dragFree(),
                    Rig.watched((leg, tS, legS, y) -> {
                        nearest[0] = Math.min(nearest[0], y[1]);
                        most[0] = Math.max(most[0], tS > 10 ? -Math.sin(y[4]) : 0);
                    }),
                    from,
                    new Element.Reposition(0, HEIGHT_M / 0.3048, MPS * 3600 / 1852, BANK_DEG, 1));
            double towards = radiusM() * (1 - Math.cos(Math.min(angle, 0)));

            assertThat(end.place().x()).as("%d", heading).isCloseTo(0, within(0.01));
            assertThat(nearest[0]).as("%d", heading).isGreaterThan(-towards - 0.1);
            assertThat(most[0]).as("%d", heading).isLessThan(Math.sin(Math.toRadians(36)));
        }
    }

    /** The way round is away from the crowd: two radii out, never on the near side of the line. */
    @Test
    void goesRoundAwayFromTheCrowd() {
        double[] nearFar = {0, 0};
        FlightState from = Rig.level(MPS, HEIGHT_M);
        Rig.fly(
                Rig.dragFree(),
                Rig.watched((leg, tS, legS, y) -> {
                    nearFar[0] = Math.min(nearFar[0], y[1]);
                    nearFar[1] = Math.max(nearFar[1], y[1]);
                }),
                from,
                new Element.Reposition(-1600, HEIGHT_M / 0.3048, MPS * 3600 / 1852, BANK_DEG, 1));

        assertThat(nearFar[0]).isGreaterThan(-0.1);
        assertThat(nearFar[1]).isCloseTo(2 * radiusM(), within(0.1));
    }
}
