package crowdline.sight.fact;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.measure.Units;
import crowdline.show.CrowdUnits;
import crowdline.sight.CountedWords;
import crowdline.sight.Everyday;
import crowdline.sight.Said;
import crowdline.sight.Turning;
import crowdline.sight.fact.CrowdFact.Kind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The facts of a whole act, over the figures whose flight was predicted. */
final class ActFacts {
    private static final double HALF_A_TONNE_KG = 500;
    /** From here on a weight is told to the next fifty; by judgement. */
    private static final double LEAST_ROUND_KG = 300;

    private final Flight flight;
    private final List<FigureScene> scenes;
    private final String craft;
    private final CrowdUnits units;
    private final int number;

    /** @param number which act of the day, from 0: neighbours say the same in other words */
    ActFacts(Flight flight, List<FigureScene> scenes, boolean glider, CrowdUnits units, int number) {
        this.number = number;
        this.units = units;
        this.flight = flight;
        this.scenes = scenes;
        this.craft = glider ? "the glider" : "the aeroplane";
    }

    void addTo(FactMaking making) {
        if (scenes.isEmpty()) {
            return;
        }
        scenes.stream()
                .flatMap(scene -> scene.belowGround().stream()
                        .map(where ->
                                scene.figure().name() + ": " + where + ", so no fact is made of the act's heights"))
                .findFirst()
                .ifPresentOrElse(
                        making::leaveOut,
                        () -> making.make(Kind.HIGHEST, this::highest).make(Kind.TOTAL_CLIMB, this::totalClimb));
        making.make(Kind.FASTEST, this::fastest)
                .make(Kind.HEAVIEST, this::heaviest)
                .make(Kind.UPSIDE_DOWN, this::upsideDown)
                .make(Kind.DISTANCE_FLOWN, this::flown)
                .make(Kind.ROLLS, this::rolls);
    }

    private Optional<CrowdFact> fact(Kind kind, Said said, double share, String text, String shortText) {
        return Optional.of(
                CrowdFact.of(new CrowdFact.Subject(flight.actId(), null), kind, said, share, text, shortText));
    }

    /**
     * By turns, and each says "in this act": it may be told at any time of it, and counts all of it.
     *
     * @param shift so that two facts of one act do not begin alike
     */
    private String inTurn(int shift, String... ways) {
        return ways[(number + shift) % ways.length];
    }

    private Stream<FigureFlight> figures() {
        return scenes.stream().map(FigureScene::figure);
    }

    private FigureFlight most(Comparator<FigureFlight> by) {
        return figures().max(by).orElseThrow();
    }

    private Optional<CrowdFact> highest() {
        double m = most(Comparator.comparingDouble(FigureFlight::highestM)).highestM();
        Said said = Said.height(m, units);
        return fact(
                Kind.HIGHEST,
                said,
                1,
                inTurn(
                                0,
                                "The highest point in this act is about " + said.words() + " up.",
                                "In this act " + craft + " goes up to about " + said.words() + ".",
                                "Nothing in this act goes higher than about " + said.words() + ".")
                        + HeightFacts.picture(said, number),
                "Up to about " + said.words() + ".");
    }

    private Optional<CrowdFact> fastest() {
        double mps = most(Comparator.comparingDouble(FigureFlight::greatestMps)).greatestMps();
        double mph = Units.mphFromMps(mps);
        if (mph >= 85) {
            Said said = Said.speed(mps, units);
            return fact(
                    Kind.FASTEST,
                    said,
                    1,
                    inTurn(
                                    1,
                                    "The fastest moment in this act is at about " + said.words() + ". That is ",
                                    "In this act " + craft + " reaches about " + said.words() + ". That is ",
                                    "Top speed in this act: about " + said.words() + ". That is ")
                            + MotionFacts.motorway(mps, units) + ".",
                    "Up to about " + said.words() + ".");
        }
        return Optional.empty();
    }

    private Optional<CrowdFact> heaviest() {
        double g = most(Comparator.comparingDouble(FigureFlight::greatestG)).greatestG();
        if (g < 2) {
            return Optional.empty();
        }
        Said said = Said.roughly(g, "g");
        boolean coaster = Math.abs(g - Everyday.ROLLER_COASTER.value()) <= 0.75;
        return fact(
                Kind.HEAVIEST,
                said,
                g / 4,
                inTurn(
                                2,
                                "At the hardest pull in this act everything feels ",
                                "The hardest pull in this act makes everything feel ",
                                "In this act's hardest pull everything feels ")
                        + said.words() + " as heavy"
                        + (coaster
                                ? ", as on a roller coaster."
                                : ". A grown-up feels like " + weight(Everyday.GROWN_UP.value() * said.rounded())
                                        + "."),
                "At most everything feels " + said.words() + " as heavy.");
    }

    /** As round as it is pictured: "half a tonne" and not five hundred and twenty kilograms. */
    private static String weight(double kg) {
        double step = kg < LEAST_ROUND_KG ? 10 : 50;
        double rounded = Math.rint(kg / step) * step;
        return rounded == HALF_A_TONNE_KG ? "half a tonne" : CountedWords.of(rounded) + " kilograms";
    }

    private Optional<CrowdFact> upsideDown() {
        double s = figures().mapToDouble(FigureFlight::upsideDownS).sum();
        if (s >= 10) {
            Said said = Said.seconds(s);
            return fact(
                    Kind.UPSIDE_DOWN,
                    said,
                    s / 40,
                    inTurn(
                            2,
                            "In this act " + craft + " spends about " + said.words() + " upside down.",
                            "For about " + said.words() + " in this act the pilot has the ground overhead.",
                            "For about " + said.words() + " in this act " + craft + " is on its back."),
                    "Upside down for about " + said.words() + " in all.");
        }
        return Optional.empty();
    }

    private Optional<CrowdFact> totalClimb() {
        double m = scenes.stream().mapToDouble(s -> s.path().totalClimbM()).sum();
        if (Units.milesFromM(m) >= 0.625) {
            Said said = Said.distance(m, units);
            return fact(
                    Kind.TOTAL_CLIMB,
                    said,
                    m / 3000,
                    inTurn(
                            0,
                            "All the climbs in this act together come to about " + said.words() + ".",
                            "In this act " + craft + " climbs about " + said.words() + ", a little at a time.",
                            "One climb after another, " + craft + " goes up about " + said.words() + " in this act."),
                    "All its climbs make about " + said.words() + ".");
        }
        return Optional.empty();
    }

    private Optional<CrowdFact> flown() {
        double m = scenes.stream().mapToDouble(s -> s.path().lengthM()).sum();
        if (Units.milesFromM(m) >= 2) {
            Said said = Said.distance(m, units);
            return fact(
                    Kind.DISTANCE_FLOWN,
                    said,
                    m / 20000,
                    "From the first figure to the last, " + craft + " flies about " + said.words() + " in this act.",
                    "It flies about " + said.words() + " in all.");
        }
        return Optional.empty();
    }

    private Optional<CrowdFact> rolls() {
        double deg = 0;
        for (FigureScene scene : scenes) {
            for (ElementFlight e : scene.elements(FigureScene.ROLLS)) {
                deg += scene.path().turnedDeg(Turning.ROLL, e.startS(), e.endS());
            }
            for (ElementFlight e : scene.elements(FigureScene.FLICKS)) {
                deg += scene.path().turnedDeg(Turning.ATTITUDE, e.startS(), e.endS());
            }
        }
        double turns = deg / 360;
        if (turns >= 2.75) {
            Said said = Said.many(turns, "time", "times");
            return fact(
                    Kind.ROLLS,
                    said,
                    turns / 10,
                    inTurn(
                            2,
                            "In this act " + craft + " rolls right round about " + said.words() + ".",
                            "All the rolling in this act comes to about " + said.words() + " right round.",
                            "Roll by roll, " + craft + " goes right round about " + said.words() + " in this act."),
                    "Rolls worth about " + said.words() + " right round.");
        }
        return Optional.empty();
    }
}
