package crowdline.sight.fact;

import crowdline.flight.FigureFlight;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Which figure is the highest of its act, and so on: ids, null where there is no figure. The first of equals has it. */
record Records(
        @Nullable String highest,
        @Nullable String fastest,
        @Nullable String heaviest,
        @Nullable String upsideDown) {

    static Records of(List<FigureFlight> figures) {
        return new Records(
                holder(figures, FigureFlight::highestM),
                holder(figures, FigureFlight::greatestMps),
                holder(figures, FigureFlight::greatestG),
                holder(figures, FigureFlight::upsideDownS));
    }

    private static @Nullable String holder(List<FigureFlight> figures, ToDoubleFunction<FigureFlight> what) {
        // Iterating in order and replacing only by more, so that the first of equals stays.
        return figures.stream()
                .reduce((a, b) -> Comparator.comparingDouble(what).compare(b, a) > 0 ? b : a)
                .map(FigureFlight::figureId)
                .orElse(null);
    }
}
