package crowdline.sight.fact;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.measure.Units;
import crowdline.show.CrowdUnits;
import crowdline.sight.Everyday;
import crowdline.sight.Said;
import crowdline.sight.Turning;
import crowdline.sight.fact.CrowdFact.Kind;
import java.util.Optional;
import java.util.Set;

/** How fast and how slow, and how often round. Thresholds are judgement, no source: below them a fact is dull. */
final class MotionFacts {
    private static final double LEAST_FAST_MPH = 100;
    private static final double STANDSTILL_MPH = 2.5;
    /** Below that a speed is only faster than another, and no times it; by judgement. */
    private static final double LEAST_TIMES = 1.4;

    private MotionFacts() {}

    static void addTo(FactMaking making, FigureScene scene) {
        making.make(Kind.FASTEST, () -> fastest(scene))
                .make(Kind.SLOWEST, () -> slowest(scene))
                .make(Kind.SPIN_TURNS, () -> spin(scene))
                .make(Kind.TUMBLES, () -> tumble(scene))
                .make(Kind.FLICK, () -> flick(scene))
                .make(Kind.ROLL, () -> roll(scene));
    }

    private static Optional<CrowdFact> fastest(FigureScene scene) {
        FigureFlight f = scene.figure();
        double mph = Units.mphFromMps(f.greatestMps());
        boolean record = f.figureId().equals(scene.records().fastest());
        if (mph < LEAST_FAST_MPH) {
            return Optional.empty();
        }
        Said said = Said.speed(f.greatestMps(), scene.units());
        return Optional.of(scene.fact(
                Kind.FASTEST,
                said,
                record ? 1 : 0.5,
                record
                        ? "This is the fastest moment of the act: about " + said.words() + ". That is "
                                + motorway(f.greatestMps(), scene.units()) + "."
                        : "At its fastest it does about " + said.words() + ". " + pitch(f.greatestMps(), scene.place()),
                (record ? "The fastest moment: about " : "About ") + said.words() + "."));
    }

    /** By turns. */
    private static String pitch(double mps, int turn) {
        double seconds = Everyday.FOOTBALL_PITCH.value() / mps;
        return turn % 2 == 0
                ? "In every second it passes " + passed(mps) + "."
                : "A football pitch goes by in about " + Said.seconds(seconds).words() + ".";
    }

    private static String passed(double mps) {
        Said part = Said.share(mps / Everyday.FOOTBALL_PITCH.value(), "pitches");
        return part.rounded() < 1
                ? "about " + part.words() + " a football pitch"
                : part.rounded() == 1 ? "about a whole football pitch" : "more than a whole football pitch";
    }

    /** A speed of 85 mph or more against what cars may do, such as "about twice the motorway limit". */
    static String motorway(double mps, CrowdUnits units) {
        if (units == CrowdUnits.METRIC) {
            double ratio = Said.speed(mps, units).rounded() / Everyday.MOTORWAY_CAR.value();
            return ratio < LEAST_TIMES
                    ? "faster than cars on a motorway"
                    : Said.roughly(ratio, "cars").words() + " as fast as a car on a motorway";
        }
        double ratio = Said.speed(mps, units).rounded() / Everyday.MOTORWAY_LIMIT.value();
        return ratio < LEAST_TIMES
                ? "faster than a car may go on a motorway"
                : Said.roughly(ratio, "limits").words() + " the motorway limit";
    }

    private static Optional<CrowdFact> slowest(FigureScene scene) {
        FigureFlight f = scene.figure();
        double mph = Units.mphFromMps(f.leastMps());
        if (mph > 0.55 * Units.mphFromMps(f.greatestMps()) || mph > Everyday.MOTORWAY_LIMIT.value() + 2.5) {
            return Optional.empty();
        }
        if (mph < STANDSTILL_MPH) {
            return Optional.of(scene.fact(
                    Kind.SLOWEST,
                    Said.standstill(f.leastMps()),
                    1,
                    "For a moment it stands quite still, hanging in the sky.",
                    "For a moment it stands quite still."));
        }
        Said said = Said.speed(f.leastMps(), scene.units());
        return Optional.of(scene.fact(
                Kind.SLOWEST,
                said,
                1 - mph / 120,
                (scene.place() % 2 == 0 ? "At its slowest it does only about " : "It slows down to about ")
                        + said.words() + ". That is "
                        + slowAs(Said.mph(f.leastMps()).rounded()) + ".",
                "At its slowest, only about " + said.words() + "."));
    }

    private static String slowAs(double mph) {
        return mph <= Everyday.WALKING.value() + 1
                ? "walking pace"
                : mph <= Everyday.BICYCLE.value() + 3
                        ? "no faster than a bicycle"
                        : mph <= Everyday.TOWN_LIMIT.value()
                                ? "no faster than a car in town"
                                : mph < Everyday.MOTORWAY_LIMIT.value()
                                        ? "slower than cars on the motorway"
                                        : "no faster than a car on the motorway";
    }

    private static Optional<CrowdFact> spin(FigureScene scene) {
        Round spin = Round.of(scene, FigureScene.SPINS, Turning.COMPASS);
        if (spin.turns() < 0.9) {
            return Optional.empty();
        }
        Said said = spin.said();
        return Optional.of(scene.fact(
                Kind.SPIN_TURNS,
                said,
                0.7 + spin.turns() / 10,
                said.rounded() == 1
                        ? "It spins round once on the way down, in about "
                                + Said.seconds(spin.lastsS()).words() + "."
                        : "It spins round about " + said.words() + " on the way down. One turn takes about "
                                + Said.seconds(spin.lastsS() / spin.turns()).words() + ".",
                said.rounded() == 1 ? "It spins round once." : "It spins round about " + said.words() + "."));
    }

    private static Optional<CrowdFact> tumble(FigureScene scene) {
        Round tumble = Round.of(scene, FigureScene.TUMBLES, Turning.ATTITUDE);
        if (tumble.turns() < 0.9) {
            return Optional.empty();
        }
        Said said = tumble.said();
        return Optional.of(scene.fact(
                Kind.TUMBLES,
                said,
                1,
                "It tumbles " + over(said) + " in "
                        + Said.seconds(tumble.lastsS()).words() + ". For that time its wings no longer carry it.",
                "It tumbles " + over(said) + "."));
    }

    private static String over(Said said) {
        return said.rounded() == 1 ? "right over once" : "over and over, about " + said.words() + ",";
    }

    private static Optional<CrowdFact> flick(FigureScene scene) {
        Round flick = Round.of(scene, FigureScene.FLICKS, Turning.ATTITUDE);
        if (flick.turns() < 0.9) {
            return Optional.empty();
        }
        Said said = Said.seconds(flick.lastsS() / flick.turns());
        return Optional.of(scene.fact(
                Kind.FLICK,
                said,
                1,
                "In the flick it whips right round in about " + said.words() + ". If you blink, you miss it.",
                "It whips right round in about " + said.words() + "."));
    }

    private static double rolledDeg(FigureScene scene, ElementFlight e) {
        return scene.path().turnedDeg(Turning.ROLL, e.startS(), e.endS());
    }

    private static String rolling(String element) {
        return switch (element) {
            case "hesitation roll" -> "The whole roll, with its stops,";
            case "barrel roll" -> "Once round the barrel";
            default -> "To roll right round";
        };
    }

    private static Optional<CrowdFact> roll(FigureScene scene) {
        Optional<ElementFlight> full = scene.elements(FigureScene.ROLLS).stream()
                .filter(e -> rolledDeg(scene, e) > 340)
                .findFirst();
        return full.map(e -> {
            double turns = rolledDeg(scene, e) / 360;
            Said said = Said.seconds((e.endS() - e.startS()) / turns);
            return scene.fact(
                    Kind.ROLL,
                    said,
                    said.rounded() <= 2 || said.rounded() >= 8 ? 1 : 0.8,
                    rolling(e.name()) + " takes about " + said.words() + "."
                            + (said.rounded() >= 8 ? " Count them: that is a long time to keep straight." : ""),
                    "Right round in about " + said.words() + ".");
        });
    }

    /**
     * How often something went round.
     *
     * @param turns whole turns and parts
     * @param lastsS how long they took together
     */
    private record Round(double turns, double lastsS) {
        static Round of(FigureScene scene, Set<String> names, Turning turning) {
            double deg = 0;
            double lastsS = 0;
            for (ElementFlight e : scene.elements(names)) {
                deg += scene.path().turnedDeg(turning, e.startS(), e.endS());
                lastsS += scene.path().whirlingS(turning, e.startS(), e.endS());
            }
            return new Round(deg / 360, lastsS);
        }

        Said said() {
            return Said.times(turns, "turns");
        }
    }
}
