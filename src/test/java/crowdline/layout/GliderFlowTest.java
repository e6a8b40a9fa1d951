package crowdline.layout;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A glider spends height for speed between two figures; it does not come round for every one of them. */
class GliderFlowTest {
    private static LaidOut laid(String... figures) {
        Airframe glider = KindsFile.shipped().named("aerobatic glider").airframe("g", "A glider", Sliders.TYPICAL);
        FigureTrial trial = new FigureTrial(glider, Air.STANDARD);
        Area area = Area.of(Venue.Limits.NONE, Units.mpsFromKt(glider.usual().passKt()), trial.stallMps(0));
        List<Wish> wishes = IntStream.range(0, figures.length)
                .mapToObj(i -> wish(figures[i], i))
                .toList();
        return new Layout(trial, area).of(wishes);
    }

    private static Wish wish(String figure, int place) {
        CatalogueEntry entry = CatalogueFile.shipped().find(figure).orElseThrow();
        return new Wish(
                figure + " " + place,
                figure,
                entry.elements(),
                false,
                entry.enters(),
                null,
                null,
                null,
                null,
                null,
                null,
                Wish.Role.FIGURE);
    }

    private static long turns(LaidOut laid) {
        return laid.pieces().stream()
                .filter(piece -> piece.transit() == Transit.TURNS_BACK)
                .count();
    }

    @Test
    void oneLoopFollowsAnotherOnceThereIsSpeed() {
        assertThat(turns(laid("dive", "loop", "loop"))).isZero();
        assertThat(turns(laid("loop", "stall turn", "loop"))).isZero();
    }

    @Test
    void anActOfSixFiguresTurnsBackOnce() {
        LaidOut laid = laid("loop", "stall turn", "loop", "half Cuban", "spin", "low pass");

        assertThat(turns(laid)).isEqualTo(1);
        assertThat(laid.seconds()).isLessThan(180);
        assertThat(laid.pieces().get(0).transit()).isEqualTo(Transit.RUNS_IN);
    }
}
