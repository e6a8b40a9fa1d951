package crowdline.console.walk;

import crowdline.console.paint.Seconds;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** A pass being timed on the ground: its presses, and when it was begun. */
final class Timing {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);

    private final Tour tour;
    private final PassTimer timer;
    private Instant begun = Instant.EPOCH;

    Timing(Tour tour) {
        this.tour = tour;
        timer = new PassTimer(
                tour.times().figures().stream().map(FigureTime::figureId).toList());
    }

    PassTimer timer() {
        return timer;
    }

    /**
     * A figure begins, or the last one ends.
     *
     * @return true if it was the last
     */
    boolean mark(double nowS, Supplier<Instant> wall) {
        if (timer.index() < 0) {
            begun = wall.get();
        }
        return timer.mark(nowS);
    }

    /** Keeps what was timed to its end as a pass, and says so. */
    String keptBy(Route route) {
        String id = "walked-" + DAY.format(begun.atOffset(ZoneOffset.UTC));
        Optional<Pass> made = timer.pass(id, tour.act().id(), tour.variant().name(), begun);
        made.ifPresent(route::keep);
        return made.map(Timing::kept).orElse("No figure was timed to its end, so nothing was kept");
    }

    private static String kept(Pass pass) {
        int count = pass.figures().size();
        return "Kept as a pass: " + count + (count == 1 ? " figure, " : " figures, ")
                + Seconds.clock(pass.figures().get(count - 1).endS()) + ". W shows it";
    }
}
