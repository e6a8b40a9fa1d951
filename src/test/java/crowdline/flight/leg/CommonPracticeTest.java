package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.FlickKind;
import crowdline.show.figure.Element.RollStyle;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.SlideKind;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.SpinKind;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What display pilots know, and what must come out of the model. Common practice, no source, unless one is named. */
class CommonPracticeTest {
    private static final double G = Units.G_MPS2;

    private record Seen(double tS, double z, double speedMps, double g, double energyM, double thrustN, double tz) {}

    private static List<Seen> watch(Forces forces, FlightState from, Element... elements) {
        List<Seen> seen = new ArrayList<>();
        Look look = new Look();
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            leg.look(legS, y, look);
            seen.add(new Seen(
                    tS,
                    y[2],
                    look.speedMps,
                    look.g,
                    y[2] + look.speedMps * look.speedMps / (2 * G),
                    look.thrustN,
                    look.tz));
        };
        Rig.fly(forces, Rig.watched(watcher), from, elements);
        return seen;
    }

    private static FlightState level(double kt) {
        return Rig.level(Units.mpsFromKt(kt), 500);
    }

    private static FlightState up(double kt) {
        return new FlightState(0, new Vec(0, 0, 500), Units.mpsFromKt(kt), Vec.UP, new Vec(-1, 0, 0));
    }

    private static Element.Roll roll(RollStyle style, double degrees, @Nullable Double seconds) {
        return new Element.Roll(style, Side.LEFT, degrees, seconds, 4, 0.5, 1);
    }

    @Test
    void flickIsQuickerRoundThanAnAileronRoll() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        double flick = Rig.fly(forces, level(85), new Element.Flick(FlickKind.POSITIVE, Side.LEFT, 360, 1))
                .tS();
        double aileron =
                Rig.fly(forces, level(85), roll(RollStyle.AILERON, 360, null)).tS();
        assertThat(flick).isLessThan(aileron / 1.5);
    }

    @Test
    void slowRollFeelsOneNothingMinusOneNothingOne() {
        List<Seen> seen = watch(Rig.seaLevel(Rig.biplane()), level(130), roll(RollStyle.SLOW, 360, 8.0));
        double[] expected = {1, 0, -1, 0, 1};
        for (int i = 0; i < 5; i++) {
            double t = 2.0 * i;
            Seen nearest = seen.stream()
                    .min((a, b) -> Double.compare(Math.abs(a.tS() - t), Math.abs(b.tS() - t)))
                    .orElseThrow();
            assertThat(nearest.g()).as("at %s s", t).isCloseTo(expected[i], within(0.06));
        }
    }

    @Test
    void torqueRollTurnsAgainstThePropeller() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        FlightState end = Rig.fly(forces, up(30), new Element.HoverRoll(0.6, 1));
        // Clockwise propeller: the aircraft rolls left, so its up turns from −X towards its left wing, which is +Y
        // here.
        Vec left = up(30).rightWing().times(-1);
        assertThat(end.up().dot(left)).isPositive();
    }

    @Test
    void torqueRollGoesRoundAtAPlausibleRate() {
        Look look = new Look();
        HoverLeg leg = new HoverLeg(Rig.seaLevel(Rig.biplane()), up(20), 4, 1);
        double[] y = leg.start();
        Integrator.Result result = Rig.watched((l, tS, legS, yy) -> System.arraycopy(yy, 0, y, 0, 6))
                .fly(leg, 0);
        leg.look(4, y, look);
        assertThat(result.outcome()).isEqualTo(Integrator.Outcome.FLOWN);
        assertThat(Math.abs(Math.toDegrees(y[5]))).isBetween(60.0, 300.0);
    }

    @Test
    void tailSlideRunsBackACoupleOfLengths() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        double[] slid = {0, 0};
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            slid[0] = Math.max(slid[0], y[2]);
            if (leg instanceof FallLeg && y[6] < Math.PI / 2) {
                slid[1] = Math.max(slid[1], slid[0] - y[2]);
            }
        };
        Rig.fly(forces, Rig.watched(watcher), up(20), new Element.Slide(SlideKind.WHEELS_DOWN, 0));
        assertThat(slid[1] / forces.body.lengthM()).isBetween(1.0, 4.0);
    }

    @Test
    void stallTurnTopsOutNearNoSpeed() {
        List<Seen> seen = watch(Rig.seaLevel(Rig.biplane()), up(110), new Element.Pivot(Side.LEFT, 1));
        Seen top = seen.stream().max((a, b) -> Double.compare(a.z(), b.z())).orElseThrow();
        assertThat(Units.ktFromMps(top.speedMps())).isLessThan(25);
    }

    @Test
    void outsideHalfLoopIsNegativeAllTheWayRound() {
        List<Seen> seen = watch(
                Rig.seaLevel(Rig.monoplane()),
                level(150),
                new Element.Arc(Element.Way.PUSH, 180.0, null, Element.Size.LOAD_G, -3, 1));
        assertThat(seen).isNotEmpty().allSatisfy(s -> assertThat(s.g()).isNegative());
    }

    @Test
    void lightWeightAndMuchPowerTurnIntoHeight() {
        double plain = climbM(Variation.NONE);
        assertThat(climbM(new Variation(0.9, 1, 1, 1, 1, 1, 0, 0, 0))).isGreaterThan(plain);
        assertThat(climbM(new Variation(1, 1.1, 1, 1, 1, 1, 0, 0, 0))).isGreaterThan(plain);
        assertThat(climbM(new Variation(1, 1, 1.1, 1, 1, 1, 0, 0, 0))).isLessThan(plain);
    }

    private static double climbM(Variation variation) {
        Forces forces = new Forces(Body.of(Rig.biplane(), variation), Rig.SEA_LEVEL, Wind.CALM);
        return Rig.fly(forces, up(150), Rig.line(Until.KNOTS, 20)).place().z();
    }

    /**
     * A two-seat monoplane of 300 hp climbs 2,500 ft straight up from 200 kt before running out of energy (AOPA Pilot,
     * July 1995, "Aerial Sports Car"); within 15 %.
     */
    @Test
    void strongMonoplaneClimbsAsHighAsPublished() {
        FlightState top = Rig.fly(Rig.seaLevel(Rig.monoplane()), up(200), Rig.line(Until.KNOTS, 5));
        assertThat(Units.ftFromM(top.place().z() - 500)).isCloseTo(2500, Percentage.withPercentage(15));
    }

    /**
     * Airplane Flying Handbook, FAA-H-8083-3C, p. 5-23: the first turn of a spin costs a light trainer "approximately"
     * 1,000 ft with its recovery, each one more about half that. Recovered here by diving to 100 kt and pulling 2.5 g.
     */
    @Test
    void spinCostsWhatTheHandbookSays() {
        FlightState recovered = Rig.fly(
                Rig.seaLevel(Rig.trainer()),
                stalled(),
                spin(1),
                new Element.Line(Until.KNOTS, 100, 0),
                new Element.Arc(Element.Way.PULL, null, 0.0, Element.Size.LOAD_G, 2.5, 0));
        assertThat(lostFt(recovered)).isCloseTo(1000, Percentage.withPercentage(20));
        assertThat(spinLossFt(3) - spinLossFt(2)).isBetween(400.0, 600.0);
        assertThat(spinLossFt(4) - spinLossFt(3)).isBetween(400.0, 600.0);
    }

    private static FlightState stalled() {
        return Rig.level(Units.mpsFromKt(50), 1500);
    }

    private static Element spin(double turns) {
        return new Element.Spin(SpinKind.UPRIGHT, Side.LEFT, turns, 0);
    }

    private static double spinLossFt(double turns) {
        return lostFt(Rig.fly(Rig.seaLevel(Rig.trainer()), stalled(), spin(turns)));
    }

    private static double lostFt(FlightState end) {
        return Units.ftFromM(1500 - end.place().z());
    }

    /** Pilot's Handbook of Aeronautical Knowledge, FAA-H-8083-25C, p. 5-34: 60° of bank is 2 g in a level turn. */
    @Test
    void sixtyDegreesOfBankIsTwoG() {
        double most =
                watch(Rig.seaLevel(Rig.monoplane()), level(120), new Element.Turn(Side.LEFT, 90, 60, 0, 0, 1)).stream()
                        .mapToDouble(Seen::g)
                        .max()
                        .orElseThrow();
        assertThat(most).isCloseTo(2, within(0.001));
    }

    /** The same handbook, p. 5-38: 120 kt and 30° turn 360° in 68.6 s; within 0.4 %. */
    @Test
    void levelTurnTakesTheHandbooksTime() {
        Forces steady = new Forces(Rig.body(500, 9, 0, 0), Rig.VACUUM, Wind.CALM);
        TurnCurve curve = new TurnCurve(0, -1, Math.toRadians(30), 2 * Math.PI, 0, false);
        SteeredLeg leg = new SteeredLeg(steady, level(120), curve, 2 * Math.PI, 0, 0);
        double seconds = Rig.unwatched().fly(new Longer(leg), 0).moment().tS();
        assertThat(seconds).isCloseTo(68.6, Percentage.withPercentage(0.4));
    }

    /** A leg that may last longer than a figure's would. */
    private record Longer(Leg leg) implements Leg {
        @Override
        public double[] start() {
            return leg.start();
        }

        @Override
        public void rates(double t, double[] y, double[] dy) {
            leg.rates(t, y, dy);
        }

        @Override
        public double end(double t, double[] y) {
            return leg.end(t, y);
        }

        @Override
        public void look(double t, double[] y, Look look) {
            leg.look(t, y, look);
        }

        @Override
        public FlightState after(double tS, double t, double[] y) {
            return leg.after(tS, t, y);
        }

        @Override
        public double longestS() {
            return 200;
        }
    }

    /** Energy height never rises faster than thrust times speed over weight, whatever is flown. */
    @Test
    void energyNeverRisesFasterThanThrustAllows() {
        Element[] act = {
            Rig.pullG(360, 3.5),
            roll(RollStyle.SLOW, 360, 6.0),
            Rig.pullG(90, 4),
            Rig.line(Until.KNOTS, 50),
            new Element.Pivot(Side.RIGHT, 1),
            Rig.line(Until.KNOTS, 110),
            Rig.pullG(90, 4),
            new Element.Flick(FlickKind.POSITIVE, Side.LEFT, 360, 1),
            roll(RollStyle.BARREL, 360, null),
            new Element.Turn(Side.AWAY, 180, 50, 20, 0, 1),
            Rig.line(Until.SECONDS, 4),
            Rig.pullG(90, 4),
            Rig.line(Until.KNOTS, 40),
            new Element.HoverRoll(2, 1),
            new Element.Slide(SlideKind.WHEELS_UP, 0),
            Rig.line(Until.KNOTS, 110)
        };
        Forces forces = Rig.seaLevel(Rig.biplane());
        List<Seen> seen = watch(forces, level(140), act);
        for (int i = 1; i < seen.size(); i++) {
            Seen a = seen.get(i - 1);
            Seen b = seen.get(i);
            double dt = b.tS() - a.tS();
            double most = Math.max(a.thrustN() * a.speedMps(), b.thrustN() * b.speedMps()) / forces.body.weightN() * dt;
            assertThat(b.energyM() - a.energyM()).as("at %.2f s", b.tS()).isLessThanOrEqualTo(most + 0.02);
        }
    }

    @Test
    void loopFromFortyKnotsIsToldToBeImpossible() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        ElementFlyer flyer = new ElementFlyer(forces, Rig.unwatched(), Variation.NONE);
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> flyer.fly(Rig.pullG(360, 3.5), level(40)))
                .isInstanceOf(CannotFly.class)
                .hasMessageContaining("runs out of speed in the pull");
    }
}
