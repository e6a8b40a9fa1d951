package crowdline.sight.fact;

import crowdline.flight.FigureFlight;
import crowdline.measure.Units;
import crowdline.sight.ApparentSize;
import crowdline.sight.CountedWords;
import crowdline.sight.Everyday;
import crowdline.sight.FlownPath;
import crowdline.sight.Said;
import crowdline.sight.Sound;
import crowdline.sight.fact.CrowdFact.Kind;
import java.util.Optional;

/** How high, how far up and down, how far away. Thresholds are judgement, no source: below them a fact is dull. */
final class HeightFacts {
    private static final double LEAST_RISE_M = Units.mFromFt(300);
    private static final double LEAST_CLIMB_M = Units.mFromFt(400);
    private static final double LEAST_DROP_MPS = 12;
    private static final double LEAST_FAR_M = 600;
    private static final double LEAST_LATE_S = 1.5;
    /** More of them nobody pictures on top of each other; by judgement. */
    private static final double MOST_PITCHES = 10;

    /** From here on half a pitch more makes no other picture; by judgement. */
    private static final double LEAST_WHOLE_PITCHES = 7;

    /** Of fewer than that there are buildings in every town; by judgement. */
    private static final double LEAST_FLOORS = 40;
    /** No building has many more; from memory. */
    private static final double MOST_FLOORS = 160;

    private static final double LEAST_BACKWARDS_LENGTHS = 0.5;
    /** More buses than that nobody pictures; judgement, no source. */
    private static final double MOST_BUSES = 120;

    private HeightFacts() {}

    static void addTo(FactMaking making, FigureScene scene) {
        scene.belowGround()
                .ifPresentOrElse(
                        where -> making.leaveOut(where + ", so no fact is made of its heights"),
                        () -> making.make(Kind.HIGHEST, () -> highest(scene))
                                .make(Kind.LOOKS_HIGH, () -> looksHigh(scene))
                                .make(Kind.CLIMB, () -> climb(scene))
                                .make(Kind.DROP, () -> drop(scene)));
        making.make(Kind.BACKWARDS, () -> backwards(scene))
                .make(Kind.FARTHEST, () -> farthest(scene))
                .make(Kind.SOUND, () -> sound(scene));
    }

    private static Optional<CrowdFact> highest(FigureScene scene) {
        FigureFlight f = scene.figure();
        boolean record = f.figureId().equals(scene.records().highest());
        if (!record && scene.path().greatestClimb().heightM() < LEAST_RISE_M) {
            return Optional.empty();
        }
        Said said = Said.height(f.highestM(), scene.units());
        String words = said.words();
        String start = record
                ? "This is the highest point of the act: about " + words + "."
                : "At its highest it is about " + words + " up.";
        return Optional.of(scene.fact(
                Kind.HIGHEST,
                said,
                record ? 1 : 0.6,
                start + picture(said, scene.place()),
                (record ? "The highest point: about " : "About ") + words + " up."));
    }

    /**
     * A sentence that pictures a height as it is said, or nothing; pitches, and floors by turns where a building could have so many.
     *
     * @param turn whose turn it is
     */
    static String picture(Said height, int turn) {
        double m = height.unit().equals("ft") ? Units.mFromFt(height.rounded()) : height.rounded();
        double floors = m / Everyday.STOREY.value();
        Optional<String> picture = turn % 2 == 0 || floors < LEAST_FLOORS || floors > MOST_FLOORS
                ? pitches(m)
                : Optional.of("as high as a building of about "
                        + Said.many(floors, "floor", "floors").words());
        return picture.map(p -> " That is " + p + ".").orElse("");
    }

    /** Such as "about three football pitches, stood on end", if it is two or more and no more than anybody pictures. */
    static Optional<String> pitches(double m) {
        double pitches = m / Everyday.FOOTBALL_PITCH.value();
        double rounded = pitches < LEAST_WHOLE_PITCHES ? Math.rint(pitches * 2) / 2 : Math.rint(pitches);
        return rounded < 2 || rounded > MOST_PITCHES
                ? Optional.empty()
                : Optional.of("about " + CountedWords.of(rounded) + " football pitches, stood on end");
    }

    private static Optional<CrowdFact> looksHigh(FigureScene scene) {
        if (scene.path().greatestClimb().heightM() < LEAST_RISE_M) {
            return Optional.empty();
        }
        return scene.highest()
                .flatMap(scene::sighting)
                .filter(s -> s.upDeg() > 25 && s.upDeg() < 85)
                .map(s -> {
                    Said said = Said.many(s.fistsUp(), "fist", "fists");
                    return scene.fact(
                            Kind.LOOKS_HIGH,
                            said,
                            0.9,
                            "Hold out your arm and stack your fists up from the horizon. At its highest it is about "
                                    + said.words() + " high.",
                            "Look about " + said.words() + " above the horizon.");
                });
    }

    private static Optional<CrowdFact> climb(FigureScene scene) {
        FlownPath.Leg climb = scene.path().greatestClimb();
        if (climb.heightM() < LEAST_CLIMB_M || climb.lastsS() < 1) {
            return Optional.empty();
        }
        Said said = Said.height(climb.heightM(), scene.units());
        double many = climb.heightM() / Everyday.BUS_HEIGHT.value();
        String picture = many > MOST_BUSES
                ? picture(said, scene.place())
                : " Picture about "
                        + Said.many(many, "double-decker bus", "double-decker buses")
                                .words()
                        + ", one on top of another.";
        return Optional.of(scene.fact(
                Kind.CLIMB,
                said,
                Units.ftFromM(climb.heightM()) / 1000,
                "It climbs about " + said.words() + " in "
                        + Said.seconds(climb.lastsS()).words() + "." + picture,
                "It climbs about " + said.words() + " in one go."));
    }

    private static Optional<CrowdFact> drop(FigureScene scene) {
        FlownPath.Leg drop = scene.path().greatestDrop();
        if (drop.heightM() < LEAST_CLIMB_M || drop.heightM() / drop.lastsS() < LEAST_DROP_MPS) {
            return Optional.empty();
        }
        Said said = Said.height(drop.heightM(), scene.units());
        double storeys = drop.heightM() / drop.lastsS() / Everyday.STOREY.value();
        return Optional.of(scene.fact(
                Kind.DROP,
                said,
                Units.ftFromM(drop.heightM()) / 1300,
                "It comes down about " + said.words() + " in "
                        + Said.seconds(drop.lastsS()).words() + ". That is about "
                        + Said.many(storeys, "floor", "floors").words() + " of a tall building every second.",
                "It comes down about " + said.words() + "."));
    }

    private static Optional<CrowdFact> backwards(FigureScene scene) {
        double m = scene.path().backwardsM();
        double lengths = m / scene.airframe().lengthM();
        if (lengths < LEAST_BACKWARDS_LENGTHS) {
            return Optional.empty();
        }
        Said said = Said.length(m, scene.units());
        double halves = Math.rint(lengths * 2) / 2;
        String own = halves == 0.5
                ? "half its own length"
                : halves == 1 ? "its own length" : Said.times(halves, "lengths").words() + " its own length";
        return Optional.of(scene.fact(
                Kind.BACKWARDS,
                said,
                1,
                "It slides backwards, tail first, for about " + said.words() + ". That is about " + own + ".",
                "It slides backwards for about " + said.words() + "."));
    }

    private static Optional<CrowdFact> farthest(FigureScene scene) {
        return scene.farthest().filter(s -> s.slantM() >= LEAST_FAR_M).map(s -> {
            Said said = Said.distance(s.slantM(), scene.units());
            String like = ApparentSize.of(scene.airframe().spanM(), s.slantM()).like();
            return scene.fact(
                    Kind.FARTHEST,
                    said,
                    s.slantM() / 1000,
                    "At its farthest it is about " + said.words() + " from you. Its wings look only as wide as " + like
                            + ".",
                    "At its farthest it is about " + said.words() + " away.");
        });
    }

    private static Optional<CrowdFact> sound(FigureScene scene) {
        if (scene.airframe().glider()) {
            return Optional.empty();
        }
        return scene.farthest()
                .map(s -> Sound.delayS(s.slantM(), scene.temperatureC()))
                .filter(delay -> delay >= LEAST_LATE_S)
                .map(delay -> {
                    Said said = Said.seconds(delay);
                    return scene.fact(
                            Kind.SOUND,
                            said,
                            delay / 3,
                            "When it is farthest away, you hear it about " + said.words()
                                    + " late. By then it is already somewhere else.",
                            "You hear it about " + said.words() + " late.");
                });
    }
}
