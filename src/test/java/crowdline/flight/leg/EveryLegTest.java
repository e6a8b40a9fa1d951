package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.SpinKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Newton's second law for every way of moving: what a leg shows (thrust, drag, load felt, attitude) must be what bends and
 * speeds up the path that its rates describe. No source but the law: m a = thrust + drag + lift + weight.
 */
class EveryLegTest {
    private static final double G = Units.G_MPS2;
    /** Central differences over two ten-thousandths of a second. */
    private static final double STEP_S = 1e-4;

    private static final Offset<Double> NEAR = within(1e-5);

    /**
     * A leg, and what its coordinates behind the place are.
     *
     * @param alongTheNose true where they are an airspeed along the nose, false where they are three velocities
     */
    private record Case(String name, Forces forces, Leg leg, boolean alongTheNose) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** One instant of a leg. */
    private record Instant(Look look, Vec velocity, Vec acceleration) {
        Vec nose() {
            return new Vec(look.tx, look.ty, look.tz);
        }

        Vec up() {
            return new Vec(look.ux, look.uy, look.uz);
        }

        /** What all but weight does to each kilogram, m/s². */
        Vec pushed() {
            return acceleration.plus(Vec.UP.times(G));
        }
    }

    private static Forces biplane() {
        return Rig.seaLevel(Rig.biplane());
    }

    private static Forces monoplane() {
        return Rig.seaLevel(Rig.monoplane());
    }

    private static FlightState climbing(double pathDeg, double bankDeg, double speedMps) {
        double path = Math.toRadians(pathDeg);
        double heading = Math.toRadians(25);
        Vec t = new Vec(Math.cos(path) * Math.cos(heading), Math.cos(path) * Math.sin(heading), Math.sin(path));
        Vec upright = Vec.UP.across(t).unit();
        FlightState level = new FlightState(3, new Vec(40, 70, 600), speedMps, t, upright);
        return new FlightState(3, level.place(), speedMps, t, level.rolledUp(Math.toRadians(bankDeg)));
    }

    private static FlightState up(double speedMps) {
        return new FlightState(3, new Vec(40, 70, 600), speedMps, Vec.UP, new Vec(-0.6, -0.8, 0));
    }

    static Stream<Case> bends() {
        double round = Math.toRadians(130);
        return Stream.of(
                bend("pull by load", biplane(), ArcLeg.byLoad(biplane(), climbing(10, 0, 65), round, 1, 3.5, 1)),
                bend("banked pull", biplane(), ArcLeg.byLoad(biplane(), climbing(15, 50, 65), round, 1, 3, 0.7)),
                bend("knife-edge pull", monoplane(), ArcLeg.byLoad(monoplane(), climbing(0, -90, 75), round, 1, 2, 1)),
                bend("banked push", monoplane(), ArcLeg.byLoad(monoplane(), climbing(-5, 120, 75), round, -1, -2, 0.5)),
                bend("round pull", monoplane(), ArcLeg.byRadius(monoplane(), climbing(5, 20, 80), round, 1, 150, 1)),
                bend("round push", monoplane(), ArcLeg.byRadius(monoplane(), climbing(30, 20, 80), round, -1, 200, 1)),
                bend("tightest pull", biplane(), ArcLeg.tightest(biplane(), climbing(0, 30, 60), round, 1, 1)),
                bend("tightest push", biplane(), ArcLeg.tightest(biplane(), climbing(0, 30, 60), round, -1, 1)),
                bend("line up", biplane(), StraightLeg.line(biplane(), climbing(45, 30, 60), 1, 3)),
                bend("line down", biplane(), StraightLeg.line(biplane(), climbing(-60, 170, 50), 0, 3)),
                bend("roll", biplane(), StraightLeg.roll(biplane(), climbing(10, 0, 60), 1, 4, 1.5)),
                bend("level turn", biplane(), turn(-1, 60, 0, 0)),
                bend("wing-over", biplane(), turn(1, 50, 30, 0)),
                bend("rolling turn", monoplane(), turn(1, 45, 0, 2)),
                bend("barrel roll", monoplane(), barrel(-1)),
                bend("climb round", monoplane(), guided(40, 750, 65, 1)),
                bend("descent round", monoplane(), guided(-30, 300, 75, 1)),
                bend("straight back", biplane(), guided(0, 600, 60, 1)),
                bend("hover roll", monoplane(), new HoverLeg(monoplane(), up(15), 3, 1)));
    }

    static Stream<Case> falls() {
        return Stream.of(
                fall("pivot to the right", FallLeg.pivot(biplane(), up(8), 1, 1)),
                fall("pivot to the left", FallLeg.pivot(biplane(), up(8), -1, 0.4)),
                fall("slide on the wheels", FallLeg.slide(biplane(), up(0.2), 1, 0)),
                fall("slide on the canopy", FallLeg.slide(biplane(), up(0.2), -1, 0.5)),
                fall("tumble", FallLeg.tumble(biplane(), climbing(70, 20, 30), 1, 2, 1)),
                fall("tumble to the left", FallLeg.tumble(biplane(), climbing(70, 20, 30), -1, 2, 1)),
                fall("spin", new SpinLeg(biplane(), climbing(5, 0, 25), SpinKind.UPRIGHT, 1, 2)),
                fall("inverted spin", new SpinLeg(biplane(), climbing(-5, 180, 27), SpinKind.INVERTED, -1, 2)),
                fall("flat spin", new SpinLeg(biplane(), climbing(5, 0, 25), SpinKind.FLAT, -1, 2)));
    }

    private static Case bend(String name, Forces forces, Leg leg) {
        return new Case(name, forces, leg, true);
    }

    private static Case fall(String name, Leg leg) {
        return new Case(name, biplane(), leg, false);
    }

    private static Leg turn(int side, double bankDeg, double peakDeg, double rollsPerRad) {
        Forces forces = rollsPerRad == 0 ? biplane() : monoplane();
        FlightState from = climbing(0, 0, 65);
        TurnCurve curve = new TurnCurve(
                from.headingRad(), side, Math.toRadians(bankDeg), Math.PI, Math.toRadians(peakDeg), false);
        return new SteeredLeg(forces, from, curve, Math.PI, rollsPerRad, 1);
    }

    private static Leg barrel(int side) {
        FlightState from = climbing(10, 0, 65);
        return new SteeredLeg(monoplane(), from, new BarrelCurve(from, side, Math.PI / 3), 2 * Math.PI, 0, 1);
    }

    private static Leg guided(double bankDeg, double toM, double toMps, double power) {
        Forces forces = bankDeg == 0 ? biplane() : monoplane();
        GuidedLeg.Aim aim = new GuidedLeg.Aim(toM, toMps, Math.toRadians(bankDeg), power);
        return new GuidedLeg(forces, climbing(8, 0, 70), aim, (t, y) -> t - 6, false);
    }

    /** Every tenth of a second of the leg but its ends, where a corner may be. */
    private static List<Instant> instants(Case c) {
        List<Instant> seen = new ArrayList<>();
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            if (legS > 0) {
                seen.add(instant(c, legS, y.clone()));
            }
        };
        Integrator.Result result = new Integrator(0.1, Integrator.FINE, watcher).fly(c.leg, 0.05);
        assertThat(result.outcome()).isEqualTo(Integrator.Outcome.FLOWN);
        assertThat(seen).hasSizeGreaterThan(10);
        return seen.subList(0, seen.size() - 1);
    }

    private static Instant instant(Case c, double legS, double[] y) {
        double[] dy = new double[y.length];
        c.leg.rates(legS, y, dy);
        Vec before = velocity(c, legS - STEP_S, moved(y, dy, -STEP_S));
        Vec after = velocity(c, legS + STEP_S, moved(y, dy, STEP_S));
        Look look = new Look();
        look.load(99, 99);
        c.leg.look(legS, y, look);
        return new Instant(
                look, new Vec(dy[0], dy[1], dy[2]), after.plus(before.times(-1)).times(1 / (2 * STEP_S)));
    }

    private static double[] moved(double[] y, double[] dy, double seconds) {
        double[] moved = y.clone();
        for (int i = 0; i < y.length; i++) {
            moved[i] += seconds * dy[i];
        }
        return moved;
    }

    private static Vec velocity(Case c, double legS, double[] y) {
        if (!c.alongTheNose) {
            return new Vec(y[3], y[4], y[5]);
        }
        Look look = new Look();
        c.leg.look(legS, y, look);
        return new Vec(look.tx, look.ty, look.tz).times(y[3]);
    }

    @ParameterizedTest
    @MethodSource({"bends", "falls"})
    void noseAndUpAreUnitVectorsAtARightAngle(Case c) {
        for (Instant i : instants(c)) {
            assertThat(i.nose().length()).isCloseTo(1, within(1e-9));
            assertThat(i.up().length()).isCloseTo(1, within(1e-9));
            assertThat(i.nose().dot(i.up())).isCloseTo(0, within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("bends")
    void goesWhereTheNosePointsAsFastAsShown(Case c) {
        for (Instant i : instants(c)) {
            same(i.velocity, i.nose().times(i.look.speedMps));
        }
    }

    @ParameterizedTest
    @MethodSource("falls")
    void fallsAsFastAsShown(Case c) {
        for (Instant i : instants(c)) {
            assertThat(i.look.speedMps).isCloseTo(i.velocity.length(), NEAR);
        }
    }

    /** Along the nose: m a = thrust − drag − weight's part. */
    @ParameterizedTest
    @MethodSource("bends")
    void thrustAndDragShownAreWhatChangesTheSpeed(Case c) {
        double massKg = c.forces.body.massKg();
        for (Instant i : instants(c)) {
            assertThat(i.pushed().dot(i.nose())).isCloseTo((i.look.thrustN - i.look.dragN) / massKg, NEAR);
        }
    }

    /** Across the path: the load felt is what bends it, together with what holds the weight. */
    @ParameterizedTest
    @MethodSource("bends")
    void loadFeltIsWhatBendsThePath(Case c) {
        for (Instant i : instants(c)) {
            assertThat(i.pushed().dot(i.up())).isCloseTo(G * i.look.g, within(1e-4));
        }
    }

    /**
     * A parabolic drag polar (Anderson, Aircraft Performance and Design, ch. 2): D = q S CD0 + k L² / (q S). L is all that
     * acts across the path, to the side as well, but never more than the wing has.
     */
    @ParameterizedTest
    @MethodSource("bends")
    void dragIsThatOfAllTheLift(Case c) {
        Body body = c.forces.body;
        for (Instant i : instants(c)) {
            double qs = 0.5 * 1.225 * i.look.speedMps * i.look.speedMps * body.areaM2();
            double across = body.massKg() * i.pushed().across(i.nose()).length();
            double lift = Math.min(across, qs * body.clMaxUpright());
            assertThat(i.look.dragN).isCloseTo(qs * body.cd0() + body.k() * lift * lift / qs, within(0.1));
        }
    }

    /** In a fall all forces are thrust along the nose and drag against the motion. */
    @ParameterizedTest
    @MethodSource("falls")
    void thrustAndDragShownAreWhatMovesAFall(Case c) {
        double massKg = c.forces.body.massKg();
        for (Instant i : instants(c)) {
            Vec drag = i.velocity.unit().times(-i.look.dragN / massKg);
            same(i.pushed(), i.nose().times(i.look.thrustN / massKg).plus(drag));
        }
    }

    @ParameterizedTest
    @MethodSource("bends")
    void thrustIsThePropellersOfThatSpeed(Case c) {
        for (Instant i : instants(c)) {
            double idle = c.forces.body.drive().thrustN(i.look.speedMps, 1.225, 0);
            double most = c.forces.body.drive().thrustN(i.look.speedMps, 1.225, 1);
            assertThat(i.look.thrustN).isBetween(idle - 1e-6, most + 1e-6);
        }
    }

    private static void same(Vec seen, Vec expected) {
        assertThat(seen.x()).isCloseTo(expected.x(), NEAR);
        assertThat(seen.y()).isCloseTo(expected.y(), NEAR);
        assertThat(seen.z()).isCloseTo(expected.z(), NEAR);
    }
}
