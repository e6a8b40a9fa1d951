package crowdline.sight.fact;

import crowdline.flight.FigureFlight;
import crowdline.flight.leg.Sample;
import crowdline.sight.CountedWords;
import crowdline.sight.Everyday;
import crowdline.sight.Said;
import crowdline.sight.fact.CrowdFact.Kind;
import java.util.Comparator;
import java.util.Optional;

/**
 * How heavy, how light, how long upside down. Thresholds are judgement, no source: below them a fact is dull. None of it
 * says anything about a pilot's health.
 */
final class LoadFacts {
    private static final double LEAST_HEAVY_G = 1.75;
    private static final double MOST_LIGHT_G = -0.45;
    private static final double FLOATS_BELOW_G = 0.25;
    private static final double LEAST_FLOAT_S = 1.5;
    private static final double LEAST_UPSIDE_DOWN_S = 2.75;

    private LoadFacts() {}

    static void addTo(FactMaking making, FigureScene scene) {
        making.make(Kind.HEAVIEST, () -> heaviest(scene))
                .make(Kind.LIGHTEST, () -> lightest(scene))
                .make(Kind.FLOATING, () -> floating(scene))
                .make(Kind.UPSIDE_DOWN, () -> upsideDown(scene));
    }

    private static Optional<CrowdFact> heaviest(FigureScene scene) {
        FigureFlight f = scene.figure();
        if (f.greatestG() < LEAST_HEAVY_G) {
            return Optional.empty();
        }
        boolean record = f.figureId().equals(scene.records().heaviest());
        Said said = Said.roughly(f.greatestG(), "g");
        return Optional.of(scene.fact(
                Kind.HEAVIEST,
                said,
                (record ? 1 : 0.85) * f.greatestG() / 4,
                (record ? "This is the hardest pull of the act: everything feels " : "Everything on board feels ")
                        + said.words() + " as heavy. " + weighed(record ? 0 : scene.place() % 3, said.rounded()),
                "Everything feels " + said.words() + " as heavy."));
    }

    /** Three pictures by turns, so that figures one after another do not say the same. */
    private static String weighed(int which, double times) {
        return switch (which) {
            case 0 -> "A head of five kilograms feels like " + times(Everyday.HEAD, times) + ".";
            case 1 -> "A child of thirty kilograms would feel like " + times(Everyday.CHILD, times) + ".";
            default -> "A full bucket of ten kilograms would feel like " + times(Everyday.BUCKET, times) + ".";
        };
    }

    private static String times(Everyday thing, double times) {
        return CountedWords.of(Math.rint(thing.value() * times));
    }

    private static Optional<CrowdFact> lightest(FigureScene scene) {
        FigureFlight f = scene.figure();
        if (f.leastG() > MOST_LIGHT_G) {
            return Optional.empty();
        }
        Said said = Said.share(-f.leastG(), "g upwards");
        boolean inverted = scene.path().samples().stream()
                .min(Comparator.comparingDouble(Sample::g))
                .map(s -> s.up().z() < 0)
                .orElse(true);
        String start =
                inverted ? "Upside down, the pilot hangs in the straps" : "The pilot is lifted up into the straps";
        return Optional.of(scene.fact(
                Kind.LIGHTEST, said, said.rounded() / 1.5, start + " with about " + weights(said) + ".", start + "."));
    }

    private static String weights(Said said) {
        return said.rounded() < 1
                ? said.words() + " a body's weight"
                : said.rounded() == 1 ? "a whole body's weight" : said.words() + " a body's weight";
    }

    private static Optional<CrowdFact> floating(FigureScene scene) {
        double s = scene.path().floatingS(FLOATS_BELOW_G);
        if (s < LEAST_FLOAT_S) {
            return Optional.empty();
        }
        Said said = Said.seconds(s);
        return Optional.of(scene.fact(
                Kind.FLOATING,
                said,
                s / 3,
                "For about " + said.words() + " everything on board is almost weightless, as it is for astronauts.",
                "Almost weightless for about " + said.words() + "."));
    }

    private static Optional<CrowdFact> upsideDown(FigureScene scene) {
        FigureFlight f = scene.figure();
        if (f.upsideDownS() < LEAST_UPSIDE_DOWN_S) {
            return Optional.empty();
        }
        boolean record = f.figureId().equals(scene.records().upsideDown());
        Said said = Said.seconds(f.upsideDownS());
        return Optional.of(scene.fact(
                Kind.UPSIDE_DOWN,
                said,
                (record ? 1 : 0.8) * f.upsideDownS() / 6,
                "It is upside down for about " + said.words()
                        + (record ? ", longer than in any other figure of the act." : ". Count them with me."),
                "Upside down for about " + said.words() + "."));
    }
}
