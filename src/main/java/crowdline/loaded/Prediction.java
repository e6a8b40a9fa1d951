package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Spread;
import crowdline.flight.Workers;
import crowdline.flight.moment.FigureMoments;
import crowdline.show.aircraft.Outline;
import crowdline.sight.ActSheet;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.LearnedTimes;
import crowdline.timing.Pass;
import crowdline.timing.PredictedTimes;
import crowdline.timing.ToldTimes;
import java.lang.ref.SoftReference;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What was predicted for one variant of an act. The flight is there at once, since the clock and the picture need it; the
 * varied flights behind the bands are flown when the times are first asked for. Passes teach on top of it, as they are at
 * each moment. It may be asked from any thread.
 */
public final class Prediction {
    private static final long SEED = 1;

    private final Predictor predictor;
    private final Flight outline;
    private final @Nullable Double crowdM;
    private final ToldTimes told;
    private final Outline seenAs;
    private volatile SoftReference<Flown> flown;
    private final Once<Varied> firstVaried;
    private final Once<Map<String, FigureMoments>> moments;
    private final Workers workers;
    private final LastBands last;
    private final Supplier<List<Pass>> passes;
    private final Function<Flight, Map<String, String>> lookedFor;
    private volatile Map<String, String> where = Map.of();
    /** From more flights than the first; null until they were flown. */
    private volatile @Nullable Varied refined;

    private volatile @Nullable Taught taught;
    private volatile @Nullable Timed timed;

    /** What there is to see in each figure in the time that passes gave it. */
    private record Timed(List<Pass> passes, Map<String, FigureMoments> moments) {}

    /** What takes most of the room, and is flown again in a moment where the memory was needed for something else. */
    private record Flown(Flight flight, ActSheet sheet) {}

    /** What varied flights gave. */
    private record Varied(List<Spread.Band> bands, ActTimes times) {}

    /** What passes made of it. */
    private record Taught(Varied on, List<Pass> passes, LearnedTimes learned) {}

    /**
     * @param workers fly the varied flights
     * @param last how wide bands were before
     * @param firstFlights how many of them are behind the first bands, 1 or more
     * @param passes those of the show, as they are now
     * @param lookedFor where the crowd looks as each figure begins, by its id
     * @param told what the list of the act says of its times
     * @param crowdM from the crowd line to the display line, metres, or null if that is not known
     * @param seenAs the shape of what flies
     */
    Prediction(
            Predictor predictor,
            Workers workers,
            LastBands last,
            int firstFlights,
            Supplier<List<Pass>> passes,
            Function<Flight, Map<String, String>> lookedFor,
            ToldTimes told,
            @Nullable Double crowdM,
            Outline seenAs) {
        this.lookedFor = lookedFor;
        this.told = told;
        this.predictor = predictor;
        this.passes = passes;
        this.workers = workers;
        this.last = last;
        firstVaried = new Once<>(() -> varied(firstFlights));
        moments = new Once<>(() -> seen(flight()));
        this.crowdM = crowdM;
        this.seenAs = seenAs;
        Flown first = fly();
        flown = new SoftReference<>(first);
        Flight flight = first.flight();
        outline = new Flight(flight.actId(), flight.variant(), flight.figures(), List.of(), flight.findings());
    }

    private Flown fly() {
        Flight flight = predictor.predict();
        return new Flown(flight, ActSheet.of(flight, crowdM, seenAs));
    }

    private Flown flown() {
        Flown known = flown.get();
        if (known == null) {
            known = fly();
            flown = new SoftReference<>(known);
        }
        return known;
    }

    /** The flight with its samples, which are flown again if they were given up meanwhile. */
    public Flight flight() {
        return flown().flight();
    }

    /** The flight without its samples. */
    public Flight outline() {
        return outline;
    }

    public ActSheet sheet() {
        return flown().sheet();
    }

    /** When each figure is flown, with its band: as the passes have it, else as predicted. */
    public ActTimes times() {
        return learned().times();
    }

    /** When each figure was to be flown at a moment: as the passes flown before it have it, else as predicted. */
    ActTimes timesBefore(Instant moment) {
        List<Pass> earlier =
                passes.get().stream().filter(p -> p.begunAt().isBefore(moment)).toList();
        return LearnedTimes.of(varied().times(), earlier).times();
    }

    /** What the passes say, on top of the prediction. */
    public LearnedTimes learned() {
        Varied now = varied();
        List<Pass> with = passes.get();
        Taught known = taught;
        if (known == null || !known.on().equals(now) || !known.passes().equals(with)) {
            known = new Taught(now, with, LearnedTimes.of(now.times(), with));
            taught = known;
        }
        return known.learned();
    }

    /** Whether the flights behind the bands were flown. */
    public boolean hasBands() {
        return refined != null || firstVaried.known().isPresent();
    }

    /** As {@link #learned}, at once: a band whose flights were not flown yet is as wide as the last of that figure. */
    public LearnedTimes learnedAtOnce() {
        return hasBands() ? learned() : LearnedTimes.of(varied(last.of(outline)).times(), passes.get());
    }

    /** The bands behind the times, one for each figure of the flight. */
    public List<Spread.Band> bands() {
        return varied().bands();
    }

    /** How long a figure takes, seconds; not a number if nobody predicted it. Without passes, or times told, it needs no bands. */
    double durationS(String figureId) {
        if (!told.isEmpty()
                || passes.get().stream().anyMatch(p -> p.teaches() && p.isOf(outline.actId(), outline.variant()))) {
            return times().figures().stream()
                    .filter(f -> f.figureId().equals(figureId))
                    .mapToDouble(FigureTime::durationS)
                    .findFirst()
                    .orElse(Double.NaN);
        }
        for (FigureFlight figure : outline.figures()) {
            if (figure.figureId().equals(figureId)) {
                return PredictedTimes.durationS(figure);
            }
        }
        return Double.NaN;
    }

    /** What there is to see in a figure, in the time it takes. Without passes it needs no bands. */
    FigureMoments moments(String figureId) {
        List<Pass> with = passes.get();
        Timed known = timed;
        if (known == null || !known.passes().equals(with)) {
            Map<String, FigureMoments> seen = new HashMap<>();
            moments.get().forEach((id, m) -> seen.put(id, m.lasting(Math.max(0, durationS(id)))));
            known = new Timed(with, seen);
            timed = known;
        }
        FigureMoments found = known.moments().get(figureId);
        return found == null ? FigureMoments.timed(0) : found;
    }

    /** Flies this number of varied flights for the bands; takes a moment. */
    void refine(int flights) {
        refined = varied(flights);
        where = lookedFor.apply(flight());
    }

    /** Where the crowd looks as a figure begins; empty until {@link #refine} has worked it out. */
    String where(String figureId) {
        return where.getOrDefault(figureId, "");
    }

    private static Map<String, FigureMoments> seen(Flight flight) {
        Map<String, FigureMoments> seen = new HashMap<>();
        flight.figures().forEach(f -> seen.put(f.figureId(), FigureMoments.of(f, flight.samples())));
        return seen;
    }

    private Varied varied() {
        Varied known = refined;
        return known != null ? known : firstVaried.get();
    }

    private Varied varied(int flights) {
        List<Spread.Band> bands =
                new Spread(predictor, SEED, workers).fly(flights, share -> {}).bands();
        last.flown(outline, bands);
        return varied(bands);
    }

    private Varied varied(List<Spread.Band> bands) {
        Map<String, FigureMoments> seen = moments.get();
        return new Varied(
                bands, told.on(PredictedTimes.of(outline, bands)).with(id -> Objects.requireNonNull(seen.get(id))));
    }
}
