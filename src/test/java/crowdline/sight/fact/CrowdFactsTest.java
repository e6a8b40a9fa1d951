package crowdline.sight.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import crowdline.show.figure.SpinKind;
import crowdline.sight.FlownPath;
import crowdline.sight.fact.CrowdFact.Kind;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of flights whose closed form is known. */
class CrowdFactsTest {
    private static final Vec AHEAD = new Vec(1, 0, 0);
    private static final Vec UP = new Vec(0, 0, 1);
    private static final Vec DOWN = new Vec(0, 0, -1);
    private static final double G = Units.G_MPS2;

    private static CrowdFact fact(List<CrowdFact> facts, Kind kind) {
        return found(facts, kind)
                .orElseThrow(() -> new AssertionError("no " + kind + " among "
                        + facts.stream().map(CrowdFact::id).toList()));
    }

    private static Optional<CrowdFact> found(List<CrowdFact> facts, Kind kind) {
        return facts.stream()
                .filter(f -> f.kind() == kind && Objects.equals(f.figureId(), "it"))
                .findFirst();
    }

    private static CrowdFact ofAct(List<CrowdFact> facts, Kind kind) {
        return facts.stream()
                .filter(f -> f.kind() == kind && f.figureId() == null)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind + " among "
                        + facts.stream().map(CrowdFact::id).toList()));
    }

    /** Without thrust and drag: V²/2g high in V/g seconds. */
    private static Flight verticalLine(double kt) {
        double v = Units.mpsFromKt(kt);
        return Flown.written(v / G, t -> Flown.sample(t, 100 + v * t - G * t * t / 2, v - G * t, UP, AHEAD, 0));
    }

    /** The closed form, V²/2g in feet, for speeds a display is flown at. */
    @ParameterizedTest
    @CsvSource({
        "120, 637, six hundred and fifty",
        "140, 868, eight hundred and fifty",
        "160, 1133, eleven hundred",
        "180, 1434, fourteen hundred",
        "200, 1771, eighteen hundred"
    })
    void verticalLineClimbsAsHighAsItsSpeedCarriesIt(double kt, double ft, String words) {
        CrowdFact climb = fact(Flown.facts(Flown.glider(), verticalLine(kt)), Kind.CLIMB);
        assertThat(climb.number()).isCloseTo(ft, within(1.0));
        assertThat(climb.text()).startsWith("It climbs about " + words + " feet in ");
    }

    @Test
    void busesAreCountedInBusHeights() {
        // 1434 ft are 437.1 m, and 437.1 / 4.4 is 99.3.
        assertThat(fact(Flown.facts(Flown.glider(), verticalLine(180)), Kind.CLIMB)
                        .text())
                .contains("about a hundred double-decker buses");
    }

    @Test
    void everythingFloatsOnALineThatIsOnlyThrown() {
        CrowdFact floating = fact(Flown.facts(Flown.glider(), verticalLine(160)), Kind.FLOATING);
        assertThat(floating.number()).isCloseTo(8.39, within(0.25)); // V/g
        assertThat(floating.text()).contains("about eight seconds");
    }

    @Test
    void nothingFloatsWhileSomethingCarriesTheWeight() {
        Flight knifeEdge = Flown.written(
                8, t -> new Sample(t, new Vec(70 * t, 0, 100), 70, AHEAD, new Vec(0, 1, 0), 0, 1000, 1000));
        assertThat(found(Flown.facts(Flown.biplane(), knifeEdge), Kind.FLOATING))
                .isEmpty();
    }

    @Test
    void thrownLineStandsStillAtItsTop() {
        CrowdFact slowest = fact(Flown.facts(Flown.glider(), verticalLine(160)), Kind.SLOWEST);
        assertThat(slowest.rounded()).isZero();
        assertThat(slowest.text()).isEqualTo("For a moment it stands quite still, hanging in the sky.");
    }

    @Test
    void slideFallsBackAsFarAsAFreeFall() {
        // Two seconds of free fall are 19.6 m, 4.1 times 4.8 m.
        Flight slide = Flown.written(
                2,
                t -> Flown.sample(t, 500 - G * t * t / 2, Math.abs(G * t), t < 2 ? UP : AHEAD, t < 2 ? AHEAD : UP, 0));
        CrowdFact backwards = fact(Flown.facts(Flown.biplane(), slide), Kind.BACKWARDS);
        assertThat(Units.mFromFt(backwards.number())).isCloseTo(19.61, within(0.05));
        assertThat(backwards.text())
                .isEqualTo("It slides backwards, tail first, for about sixty-five feet."
                        + " That is about four times its own length.");
    }

    @Test
    void diveNoseFirstIsNotBackwards() {
        Flight dive = Flown.written(5, t -> Flown.sample(t, 800 - G * t * t / 2, G * t, DOWN, AHEAD, 0));
        List<CrowdFact> facts = Flown.facts(Flown.biplane(), dive);
        assertThat(found(facts, Kind.BACKWARDS)).isEmpty();
        assertThat(fact(facts, Kind.DROP).number()).isCloseTo(Units.ftFromM(G * 12.5), within(0.5));
    }

    @Test
    void climbThatIsBrokenOffIsTwoClimbs() {
        // Up 200 m, down 100 m, up 150 m: the greatest climb is the first, and the sum of both is 350 m.
        Flight saw = Flown.written(45, t -> {
            double z = t < 20 ? 10 * t : t < 30 ? 200 - 10 * (t - 20) : 100 + 10 * (t - 30);
            return new Sample(t, new Vec(60 * t, 0, z), 60, AHEAD, UP, 1, 0, 0);
        });
        List<CrowdFact> facts = Flown.facts(Flown.glider(), saw);
        assertThat(fact(facts, Kind.CLIMB).number()).isCloseTo(Units.ftFromM(200), within(0.1));
        assertThat(new FlownPath(saw.samples()).totalClimbM()).isCloseTo(350, within(0.1));
    }

    /** Pilot's Handbook of Aeronautical Knowledge, FAA-H-8083-25C, p. 5-34: a level turn at 60° of bank is 2 G. */
    @Test
    void levelTurnAtSixtyDegreesMakesEverythingTwiceAsHeavy() {
        List<CrowdFact> facts = Flown.predicted(1000, 120, new Element.Turn(Element.Side.AWAY, 360, 60, 0, 0, 1));
        CrowdFact heaviest = fact(facts, Kind.HEAVIEST);
        assertThat(heaviest.number()).isCloseTo(2, within(0.01));
        assertThat(heaviest.text())
                .isEqualTo("This is the hardest pull of the act: everything feels about twice as heavy."
                        + " A head of five kilograms feels like ten.");
    }

    @Test
    void aileronRollTakesAsLongAsItsRateSays() {
        // 360° at 200°/s, at the speed the rate was given for.
        CrowdFact roll = fact(
                Flown.predicted(
                        1000,
                        120,
                        new Element.Line(Element.Until.SECONDS, 1, 1),
                        new Element.Roll(Element.RollStyle.AILERON, Element.Side.RIGHT, 360, null, 0, 0, 1)),
                Kind.ROLL);
        assertThat(roll.number()).isCloseTo(1.8, within(0.1));
        assertThat(roll.text()).contains("about two seconds");
    }

    @Test
    void rollsOfAnActAreAddedUp() {
        Element half = new Element.Roll(Element.RollStyle.SLOW, Element.Side.LEFT, 180, 2.0, 0, 0, 1);
        List<CrowdFact> facts = Flown.predicted(2000, 130, half, half, half, half, half, half, half, half);
        CrowdFact rolls = ofAct(facts, Kind.ROLLS);
        assertThat(rolls.number()).isCloseTo(4, within(0.02));
        assertThat(rolls.text()).contains("goes right round about four times in this act");
    }

    @ParameterizedTest
    @CsvSource({"1, It spins round once on the way down", "3, It spins round about three times on the way down"})
    void spinGoesRoundAsOftenAsPlanned(double turns, String words) {
        CrowdFact spin = fact(
                Flown.predicted(4000, 70, new Element.Spin(SpinKind.UPRIGHT, Element.Side.LEFT, turns, 0)),
                Kind.SPIN_TURNS);
        assertThat(spin.number()).isCloseTo(turns, within(0.05));
        assertThat(spin.text()).startsWith(words);
    }

    @Test
    void spinTurnTakesAsLongAsItsRateSaysOnceItHasSettled() {
        // 180°/s are two seconds a turn; building up with 0.7 s costs a little over six turns.
        CrowdFact spin = fact(
                Flown.predicted(6000, 70, new Element.Spin(SpinKind.UPRIGHT, Element.Side.LEFT, 6, 0)),
                Kind.SPIN_TURNS);
        assertThat(spin.text()).endsWith("One turn takes about two seconds.");
    }

    @Test
    void flickTakesAsLongAsItsRateSays() {
        CrowdFact flick = fact(
                Flown.predicted(2000, 100, new Element.Flick(Element.FlickKind.POSITIVE, Element.Side.LEFT, 360, 1)),
                Kind.FLICK);
        assertThat(flick.number()).isCloseTo(0.9, within(0.15));
    }

    @Test
    void strengthOfTheEngineIsForATonne() {
        // 134 kW are 179.7 hp; over 0.475 t, 378.
        CrowdFact power = ofAct(Flown.predicted(1000, 120, new Element.Line(Element.Until.SECONDS, 5, 1)), Kind.POWER);
        assertThat(power.number()).isCloseTo(378.3, within(0.2));
        assertThat(power.text()).contains("three hundred and eighty horsepower");
    }

    @Test
    void gliderHasNoEngineToTellOfAndNoSound() {
        List<CrowdFact> facts = Flown.facts(Flown.glider(), verticalLine(200));
        assertThat(facts)
                .isNotEmpty()
                .noneMatch(f -> List.of(Kind.POWER, Kind.PROPELLER, Kind.TIP_SPEED, Kind.SOUND)
                        .contains(f.kind()))
                .noneMatch(f -> f.text().contains("aeroplane"));
    }

    @Test
    void soundOfAFarFigureIsLate() {
        // 700 m beyond the display line, 900 m from the crowd: 2.64 s at 15 °C.
        Flight far = Flown.written(10, t -> new Sample(t, new Vec(0, 700, 0), 60, AHEAD, UP, 1, 0, 0));
        CrowdFact sound = fact(Flown.facts(Flown.biplane(), far), Kind.SOUND);
        assertThat(sound.number()).isCloseTo(2.645, within(0.01));
        assertThat(sound.text()).contains("two and a half seconds late");
    }

    @Test
    void shortMomentUpsideDownIsNotWorthTelling() {
        Flight briefly = Flown.written(
                5, t -> new Sample(t, new Vec(70 * t, 0, 100), 70, AHEAD, t > 2 && t < 3 ? DOWN : UP, 1, 0, 0));
        assertThat(found(Flown.facts(Flown.biplane(), briefly), Kind.UPSIDE_DOWN))
                .isEmpty();
    }

    @Test
    void figureThatWasOnlyTimedOrCouldNotBeFlownHasNoFacts() {
        Flight flight = verticalLine(160);
        FigureFlight f = flight.figures().get(0);
        for (boolean simulated : new boolean[] {true, false}) {
            FigureFlight without = new FigureFlight(
                    f.figureId(),
                    f.name(),
                    simulated,
                    !simulated,
                    f.startS(),
                    f.endS(),
                    f.entryMps(),
                    f.exitMps(),
                    f.leastMps(),
                    f.greatestMps(),
                    f.lowestM(),
                    f.highestM(),
                    f.greatestG(),
                    f.leastG(),
                    f.energyInM(),
                    f.energyOutM(),
                    f.exitAlongM(),
                    f.exitAwayM(),
                    f.upsideDownS(),
                    f.elements());
            Flight changed = new Flight("act", "full", List.of(without), flight.samples(), List.of());
            assertThat(Flown.facts(Flown.biplane(), changed)).isNotEmpty().allMatch(fact -> fact.figureId() == null);
        }
    }

    @Test
    void flightWithoutSamplesKeepsTheFactsOfItsSummary() {
        Flight flight = verticalLine(160);
        Flight without = new Flight("act", "full", flight.figures(), List.of(), List.of());
        assertThat(Flown.facts(Flown.biplane(), without))
                .anyMatch(f -> f.kind() == Kind.FASTEST)
                .noneMatch(f -> f.kind() == Kind.CLIMB);
    }

    @Test
    void actWithoutFiguresHasOnlyItsAircraft() {
        Flight none = new Flight("act", "full", List.of(), List.of(), List.of());
        assertThat(Flown.facts(Flown.biplane(), none))
                .isNotEmpty()
                .allMatch(f -> f.figureId() == null)
                .noneMatch(f -> f.kind() == Kind.HIGHEST);
    }
}
