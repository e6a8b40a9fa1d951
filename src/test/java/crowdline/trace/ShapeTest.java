package crowdline.trace;

import static crowdline.trace.FlightFiguresTest.trial;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.show.CatalogueFile;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a shape is compared with, and by what. */
class ShapeTest {
    private final Catalogue catalogue = CatalogueFile.shipped();
    private final FigureTrial trial = trial("light aerobatic biplane");

    /** At the top of a stall turn a receiver points anywhere. */
    @Test
    void directionCountsLittleWhereItHardlyMoves() {
        assertThat(overTheTop(0.3).distance(overTheTop(2.8)))
                .isLessThan(0.25 * overTheTop(0.3, 40).distance(overTheTop(2.8, 40)));
    }

    private static Shape overTheTop(double headingRad) {
        return overTheTop(headingRad, 5);
    }

    /** Level at 50 m/s, then a while at another speed somewhere else, and back. */
    private static Shape overTheTop(double headingRad, double topMps) {
        List<Reading> log = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (double t = 0; t < 24; t += 0.2) {
            boolean top = t > 8 && t < 16;
            log.add(new Reading(t, x, y, 100, null, null));
            x += 0.2 * (top ? topMps * Math.cos(headingRad) : 50);
            y += 0.2 * (top ? topMps * Math.sin(headingRad) : 0);
        }
        Path path = Path.of(log);
        return new Shape(path, 0, path.size - 1);
    }

    @Test
    void timeItTakesCounts() {
        KnownShapes.Known loop = known("loop");
        double usual = loop.seconds();
        assertThat(loop.price(2 * usual)).isGreaterThan(loop.price(usual) + 0.01);
        assertThat(loop.price(usual / 2)).isGreaterThan(loop.price(usual) + 0.01);
        assertThat(loop.price(4 * usual)).isInfinite();
    }

    private KnownShapes.Known known(String name) {
        return new KnownShapes(catalogue, trial)
                .all.stream()
                        .filter(k -> k.entry().name().equals(name))
                        .findFirst()
                        .orElseThrow();
    }

    /** It leaves no height and leads nowhere, and was a crooked line. */
    @Test
    void eachKindIsComparedWithWhatItCanFly() {
        Set<String> biplane = names(new KnownShapes(catalogue, trial));
        assertThat(biplane)
                .contains("loop", "stall turn", "spin")
                .doesNotContain("slow roll", "low pass", "formation loop");
        assertThat(names(new KnownShapes(catalogue, trial("old trainer")))).doesNotContain("lomcovak");
    }

    static Set<String> names(KnownShapes shapes) {
        return shapes.all.stream().map(k -> k.entry().name()).collect(Collectors.toSet());
    }
}
