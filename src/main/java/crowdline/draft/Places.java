package crowdline.draft;

import crowdline.flight.moment.Moment;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Finds the place of a line in its figure, and the moments that hold it there. */
final class Places {
    /** What tells what to look for is over so long before it comes, seconds. */
    private static final double LOOK_S = 0.3;
    /** What it is, is told in the first part of a figure with nothing to wait for. */
    private static final double FIRST_PART = 0.75;
    /** A figure is named at most so long after it began, seconds. */
    private static final double NAMED_S = 3;
    /** Beside its moment: how far after it a line may begin, seconds. As the plan has it, less what it keeps spare. */
    private static final double PAST_S = 1.3;

    private final Scene scene;
    private final FreeTime free;

    Places(Scene scene, FreeTime free) {
        this.scene = scene;
        this.free = free;
    }

    /**
     * Where a line goes.
     *
     * @param startS seconds after the start of its figure
     * @param earliestS against {@code at}
     * @param latestS against {@code until}
     */
    record Place(
            double startS,
            @Nullable MomentName at,
            @Nullable MomentName until,
            @Nullable Double earliestS,
            @Nullable Double latestS) {}

    Optional<Place> of(Line line, double seconds) {
        return switch (line.role()) {
            case NAME -> name(seconds);
            case LOOK -> look(line, seconds);
            case WHAT -> what(seconds);
            case BEHIND, HANDS -> behind(seconds);
            case NUMBER -> number(line, seconds);
            case BESIDE -> anywhere(seconds, 0);
            case CLOSING -> closing(seconds);
        };
    }

    private Optional<Place> name(double seconds) {
        double overS = tenths(NAMED_S + seconds);
        OptionalDouble start = free.find(seconds, 0, overS);
        return start.isEmpty()
                ? Optional.empty()
                : Optional.of(new Place(start.getAsDouble(), null, null, null, overS));
    }

    private Optional<Place> look(Line line, double seconds) {
        Moment at = scene.pointedAt(line.text()).orElse(null);
        if (at == null) {
            return placed(free.find(seconds, 0, scene.durationS() * FIRST_PART));
        }
        double beforeS = at.worthWatching() ? FreeTime.BEFORE_S : LOOK_S;
        OptionalDouble start = free.find(seconds, 0, at.afterS() - beforeS);
        return start.isEmpty()
                ? Optional.empty()
                : Optional.of(new Place(start.getAsDouble(), null, at.name(), null, -beforeS));
    }

    private Optional<Place> what(double seconds) {
        Moment begins =
                scene.seen().find(MomentName.first(MomentKind.SPIN_BEGINS)).orElse(null);
        Moment stops =
                scene.seen().find(MomentName.first(MomentKind.SPIN_STOPS)).orElse(null);
        if (begins != null && stops != null) {
            return placed(free.find(seconds, begins.afterS(), stops.afterS()));
        }
        double toS = scene.watchedAfter(0).map(Moment::afterS).orElse(scene.durationS() * FIRST_PART);
        return placed(free.find(seconds, 0, toS));
    }

    private Optional<Place> behind(double seconds) {
        double watchedS =
                scene.watchedBefore(scene.durationS() + 1).map(Moment::afterS).orElse(0.0);
        Optional<Place> after = anywhere(seconds, watchedS);
        return after.isPresent() ? after : anywhere(seconds, 0);
    }

    private Optional<Place> number(Line line, double seconds) {
        TrueWhile when = line.when();
        if (when != null) {
            OptionalDouble start = free.find(seconds, Math.max(0, when.fromS()), when.toS() + seconds);
            return start.isEmpty() ? Optional.empty() : Optional.of(whileTrue(start.getAsDouble(), when, seconds));
        }
        Moment spins =
                scene.seen().find(MomentName.first(MomentKind.SPIN_BEGINS)).orElse(null);
        if (spins != null) {
            return anywhere(seconds, spins.afterS());
        }
        Optional<Moment> own = scene.pointedAt(line.text()).filter(m -> !m.worthWatching());
        if (own.isPresent()) {
            double atS = own.get().afterS();
            OptionalDouble start = free.find(seconds, atS, atS + PAST_S + seconds);
            if (start.isPresent()) {
                return placed(start);
            }
        }
        return behind(seconds);
    }

    private Optional<Place> closing(double seconds) {
        double aheadS = seconds + 1;
        OptionalDouble start = free.find(seconds, Math.max(0, scene.durationS() - aheadS), scene.durationS() + 3);
        return start.isEmpty()
                ? anywhere(seconds, 0)
                : Optional.of(new Place(
                        start.getAsDouble(),
                        MomentName.first(MomentKind.FLIES_OUT),
                        null,
                        tenths(start.getAsDouble() - scene.durationS()),
                        null));
    }

    private Optional<Place> anywhere(double seconds, double fromS) {
        return placed(free.find(seconds, fromS, Double.POSITIVE_INFINITY));
    }

    /** Held off the moments worth watching on both sides of it. */
    private Optional<Place> placed(OptionalDouble start) {
        if (start.isEmpty()) {
            return Optional.empty();
        }
        double startS = start.getAsDouble();
        Moment before = scene.watchedBefore(startS).orElse(null);
        Moment after = scene.watchedAfter(startS).orElse(null);
        return Optional.of(new Place(
                startS,
                before == null ? null : before.name(),
                after == null ? null : after.name(),
                before == null ? null : tenths(startS - before.afterS()),
                after == null ? null : -FreeTime.BEFORE_S));
    }

    /** Held to the stretch in which it is seen to be true, by the last moment before that, and off what is worth watching. */
    private Place whileTrue(double startS, TrueWhile when, double seconds) {
        double firstS = Math.max(0, when.fromS());
        Moment tie = scene.seen().moments().stream()
                .filter(m -> m.afterS() <= firstS + 1e-6)
                .reduce((a, b) -> b)
                .orElseThrow();
        double fromS = scene.watchedBefore(startS)
                .map(m -> Math.max(firstS, m.afterS() + FreeTime.AFTER_S))
                .orElse(firstS);
        double overS = Math.min(
                when.toS() + seconds,
                scene.watchedAfter(startS)
                        .map(m -> m.afterS() - FreeTime.BEFORE_S)
                        .orElse(Double.POSITIVE_INFINITY));
        return new Place(
                startS,
                tie.name(),
                null,
                tenths(Math.min(fromS, startS) - tie.afterS()),
                Double.isInfinite(overS) ? null : Double.valueOf(tenths(overS - tie.afterS())));
    }

    private static double tenths(double seconds) {
        return Math.ceil(seconds * 10 - 1e-6) / 10;
    }
}
