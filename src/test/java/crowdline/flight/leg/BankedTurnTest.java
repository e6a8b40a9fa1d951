package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Attitude;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.ReversalWay;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Turns that begin and end banked, and the roll from one bank to the other. Level turns in balance: n = 1 / cos φ and
 * r = v² / (g tan φ), Pilot's Handbook of Aeronautical Knowledge, FAA-H-8083-25, chapter 5. No drag, 200° of roll a second.
 */
class BankedTurnTest {
    private static final double G = 9.80665;
    private static final double MPS = 80;
    private static final double ROLL_DEG_PER_S = 200;
    private static final Offset<Double> CLOSE = within(1e-4);

    private final Forces forces = Rig.dragFree();

    /** One look on the way. */
    private record Seen(double tS, double bankDeg, double g, double headingDeg) {}

    private static FlightState level() {
        return Rig.level(MPS, 500);
    }

    private static Element turn(Side side, double degrees, double bankDeg, boolean endsBanked) {
        return new Element.Turn(side, degrees, bankDeg, 0, false, 0, endsBanked, 1);
    }

    private List<Seen> seen(FlightState from, Element... elements) {
        List<Seen> seen = new ArrayList<>();
        Look look = new Look();
        Rig.fly(
                forces,
                Rig.watched((leg, tS, legS, y) -> {
                    leg.look(legS, y, look);
                    Attitude lies = Attitude.of(new Vec(look.tx, look.ty, look.tz), new Vec(look.ux, look.uy, look.uz));
                    seen.add(new Seen(tS, lies.bankDeg(), look.g, Math.toDegrees(Math.atan2(look.ty, look.tx))));
                }),
                from,
                elements);
        return seen;
    }

    @ParameterizedTest
    @CsvSource({"30, 1.1547", "45, 1.4142", "60, 2", "75, 3.8637"})
    void itEndsInItsBankWithTheLoadOfTheHandbook(double bankDeg, double loadG) {
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            FlightState end = Rig.fly(forces, level(), turn(side, 90, bankDeg, true));
            double signed = side == Side.RIGHT ? bankDeg : -bankDeg;
            assertThat(Attitude.of(end).bankDeg()).isCloseTo(signed, CLOSE);
            List<Seen> seen = seen(level(), turn(side, 90, bankDeg, true));
            Seen last = seen.get(seen.size() - 1);
            assertThat(last.g()).isCloseTo(loadG, CLOSE);
            assertThat(last.bankDeg()).isCloseTo(signed, CLOSE);
        }
    }

    /** Half a circle leads two radii to the side, whether the wings are level at its ends or banked. */
    @ParameterizedTest
    @CsvSource({"30", "60", "75"})
    void itsRadiusIsThatOfTheHandbook(double bankDeg) {
        double radiusM = MPS * MPS / (G * Math.tan(Math.toRadians(bankDeg)));
        FlightState half = Rig.fly(forces, level(), turn(Side.LEFT, 180, bankDeg, true));
        assertThat(half.place().y()).isCloseTo(2 * radiusM, within(0.01));
        FlightState whole = Rig.fly(forces, half, turn(Side.LEFT, 180, bankDeg, false));
        assertThat(whole.place().y()).isCloseTo(0, within(0.01));
        assertThat(Attitude.of(whole).bankDeg()).isCloseTo(0, CLOSE);
    }

    /** Two halves of a turn are the turn: the second goes on in the bank of the first. */
    @Test
    void aTurnBeginsInTheBankItFinds() {
        List<Seen> seen = seen(Rig.fly(forces, level(), turn(Side.LEFT, 90, 60, true)), turn(Side.LEFT, 90, 60, true));
        assertThat(seen).allSatisfy(s -> {
            assertThat(s.bankDeg()).isCloseTo(-60, CLOSE);
            assertThat(s.g()).isCloseTo(2, CLOSE);
        });
    }

    /** From 20° to 60° it rolls for 0.2 s, and from 60° the other way for 0.6 s. */
    @ParameterizedTest
    @CsvSource({"LEFT, 20, 0.2", "RIGHT, 60, 0.6"})
    void itRollsFromTheBankItFindsIntoItsOwn(Side before, double beforeDeg, double rollsS) {
        FlightState at = Rig.fly(forces, level(), turn(before, 45, beforeDeg, true));
        List<Seen> seen = seen(at, turn(Side.LEFT, 90, 60, true));
        double firstDeg = before == Side.LEFT ? -beforeDeg : beforeDeg;
        assertThat(seen.get(0).bankDeg()).isCloseTo(firstDeg, within(0.5));
        Seen half = seen.stream()
                .filter(s -> s.tS() >= at.tS() + rollsS / 2)
                .findFirst()
                .orElseThrow();
        assertThat(half.bankDeg()).isCloseTo((firstDeg - 60) / 2, within(3.0));
        assertThat(seen)
                .filteredOn(s -> s.tS() > at.tS() + rollsS + 0.02)
                .allSatisfy(s -> assertThat(s.bankDeg()).isCloseTo(-60, CLOSE));
    }

    /** The long way is 360° less twice the bank; it keeps rolling the way it was banked and never comes level. */
    @ParameterizedTest
    @CsvSource({"LEFT, 65, 230", "RIGHT, 65, 230", "LEFT, 30, 300", "RIGHT, 80, 200"})
    void underneathItRollsTheLongWayThroughUpsideDown(Side side, double bankDeg, double rolledDeg) {
        FlightState banked = Rig.fly(forces, level(), turn(side, 60, bankDeg, true));
        Element under = new Element.Reversal(ReversalWay.UNDER, 1);
        FlightState end = Rig.fly(forces, banked, under);

        assertThat(end.tS() - banked.tS()).isCloseTo(rolledDeg / ROLL_DEG_PER_S, within(1e-3));
        assertThat(Attitude.of(end).bankDeg()).isCloseTo(-Attitude.of(banked).bankDeg(), within(1e-3));
        assertThat(end.direction().minus(banked.direction()).length()).isLessThan(1e-9);
        List<Seen> seen = seen(banked, under);
        assertThat(seen).allSatisfy(s -> assertThat(Math.abs(s.bankDeg())).isGreaterThan(bankDeg - 0.1));
        assertThat(seen).anySatisfy(s -> assertThat(Math.abs(s.bankDeg())).isGreaterThan(175));
        Seen soon = seen.get(1);
        assertThat(Math.signum(soon.bankDeg()))
                .isEqualTo(Math.signum(Attitude.of(banked).bankDeg()));
    }

    @ParameterizedTest
    @CsvSource({"LEFT, 65", "RIGHT, 40"})
    void overTheTopItRollsTheShortWayThroughLevel(Side side, double bankDeg) {
        FlightState banked = Rig.fly(forces, level(), turn(side, 60, bankDeg, true));
        Element over = new Element.Reversal(ReversalWay.OVER, 1);
        FlightState end = Rig.fly(forces, banked, over);

        assertThat(end.tS() - banked.tS()).isCloseTo(2 * bankDeg / ROLL_DEG_PER_S, within(1e-3));
        assertThat(Attitude.of(end).bankDeg()).isCloseTo(-Attitude.of(banked).bankDeg(), within(1e-3));
        assertThat(seen(banked, over))
                .allSatisfy(s -> assertThat(Math.abs(s.bankDeg())).isLessThan(bankDeg + 0.1));
    }

    /** The whole of a rolling reversal: heavy one way, under, heavy the other way at once, and out as it came in. */
    @Test
    void fromTurnToTurnUnderneathItLeavesAsItCameIn() {
        Element[] figure = {
            turn(Side.LEFT, 60, 65, true), new Element.Reversal(ReversalWay.UNDER, 1), turn(Side.RIGHT, 60, 65, false)
        };
        FlightState first = Rig.fly(forces, level(), figure[0]);
        FlightState second = Rig.fly(forces, first, figure[1]);
        assertThat(Math.toDegrees(first.headingRad())).isCloseTo(60, CLOSE);
        assertThat(seen(second, figure[2]).get(0).g()).isCloseTo(1 / Math.cos(Math.toRadians(65)), within(1e-2));
        FlightState end = Rig.fly(forces, level(), figure);
        assertThat(end.headingRad()).isCloseTo(0, CLOSE);
        assertThat(end.up().z()).isCloseTo(1, CLOSE);
        double radiusM = MPS * MPS / (G * Math.tan(Math.toRadians(65)));
        double rollM = MPS * 230 / ROLL_DEG_PER_S;
        assertThat(end.place().y()).isCloseTo(radiusM + rollM * Math.sin(Math.PI / 3), within(0.1));
    }

    /** The end of a leg is looked for a little on either side of it. */
    @Test
    void justBeforeItsBeginningAndBehindItsEndTheBankIsThatOfItsEnds() {
        SteeredLeg.Banking found = SteeredLeg.Banking.of(1, 1, true, 0.1, 2);
        assertThat(found.at(-1e-9, 2, 1)).isEqualTo(1);
        assertThat(found.at(2, -1e-9, 1)).isEqualTo(1);
        SteeredLeg.Banking level = SteeredLeg.Banking.of(0, 1, false, 0.1, 2);
        assertThat(level.at(-1e-9, 2, 1)).isZero();
        assertThat(level.at(2, -1e-9, 1)).isZero();
    }

    @Test
    void withLevelWingsThereIsNoOtherBank() {
        ElementFlyer flyer = new ElementFlyer(forces, Rig.unwatched(), Variation.NONE);
        assertThatThrownBy(() -> flyer.fly(new Element.Reversal(ReversalWay.UNDER, 1), level()))
                .isInstanceOf(CannotFly.class)
                .hasMessageContaining("the turn before it has to end banked");
    }
}
