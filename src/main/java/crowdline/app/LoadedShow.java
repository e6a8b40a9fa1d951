package crowdline.app;

import crowdline.console.live.ActSheet;
import crowdline.console.live.ShowWords;
import crowdline.console.prepare.PreparePresenter;
import crowdline.console.prepare.PrepareView;
import crowdline.console.walk.Tour;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Spread;
import crowdline.live.ActDurations;
import crowdline.live.DebriefSources;
import crowdline.live.PlanAhead;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.Catalogue;
import crowdline.show.CatalogueEntry;
import crowdline.show.Figure;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.speech.Pace;
import crowdline.speech.Spoken;
import crowdline.speech.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import crowdline.timing.PredictedTimes;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A show with everything that was computed from it once: flights, times, spoken times. Only the bands change, when
 * {@link #refine} has flown more flights; it may be asked from any thread meanwhile.
 */
final class LoadedShow {
    /** Varied flights behind each band: enough for a tenth and nine tenths to settle within a few per cent. */
    static final int FLIGHTS = 200;
    /** As many as a start can wait for. */
    static final int FIRST_FLIGHTS = 5;

    private static final long SEED = 1;

    private final Show show;
    private final Catalogue catalogue;
    private final Map<String, Prediction> predictions = new ConcurrentHashMap<>();
    private final Function<String, SpokenTime> spoken;

    /** What was predicted for one variant of an act, and what predicted it. */
    record Prediction(Predictor predictor, Flight flight, List<Spread.Band> bands, ActTimes times) {
        static Prediction of(Predictor predictor, Flight flight, int flights) {
            List<Spread.Band> bands =
                    new Spread(predictor, SEED).fly(flights, share -> {}).bands();
            return new Prediction(predictor, flight, bands, PredictedTimes.of(flight, bands));
        }

        /** The same flight with bands from so many varied ones. */
        Prediction withBands(int flights) {
            return of(predictor, flight, flights);
        }
    }

    LoadedShow(Show show, Catalogue catalogue, Pace pace, int flights) {
        this.show = show;
        this.catalogue = catalogue;
        Spoken words = new Spoken(show.sayAs());
        Map<String, SpokenTime> known = new ConcurrentHashMap<>();
        spoken = text -> known.computeIfAbsent(text, t -> pace.time(words.expand(t)));
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                if (show.airframe(act.airframe()).isPresent()) {
                    predictions.put(key(act.id(), variant.name()), predict(act, variant, flights));
                }
            }
        }
    }

    /** Flies more flights for the bands; takes a moment. */
    void refine(int flights) {
        predictions.replaceAll((key, prediction) -> prediction.withBands(flights));
    }

    private Prediction predict(Act act, Variant variant, int flights) {
        Predictor predictor = new Predictor(show, catalogue, act, variant);
        return Prediction.of(predictor, predictor.predict(), flights);
    }

    private static String key(@Nullable String actId, @Nullable String variant) {
        return actId + "\n" + variant;
    }

    Show show() {
        return show;
    }

    Function<String, SpokenTime> spoken() {
        return spoken;
    }

    Optional<Prediction> prediction(@Nullable String actId, @Nullable String variant) {
        return Optional.ofNullable(predictions.get(key(actId, variant)));
    }

    ShowWords words() {
        return new ShowWords(
                show,
                catalogue,
                spoken,
                (act, variant) -> prediction(act.id(), variant.name())
                        .map(p -> ActSheet.of(p.flight()))
                        .orElse(ActSheet.NONE));
    }

    PlanAhead planAhead() {
        return new PlanAhead(show, spoken);
    }

    /** What the clock goes by; a figure nobody predicted has no length, and the clock waits for the hand. */
    ActDurations durations() {
        Map<String, Map<String, Double>> lengths = new HashMap<>();
        predictions.forEach((key, prediction) -> {
            Map<String, Double> own = new HashMap<>();
            for (FigureTime time : prediction.times().figures()) {
                own.put(time.figureId(), time.durationS());
            }
            lengths.put(key, own);
        });
        return (actId, variant, figureIds) -> index ->
                lengths.getOrDefault(key(actId, variant), Map.of()).getOrDefault(figureIds.get(index), Double.NaN);
    }

    /** Every variant of every act that was predicted, in running order. */
    List<Tour> tours() {
        return show.acts().stream()
                .flatMap(act -> act.variants().stream()
                        .flatMap(variant -> prediction(act.id(), variant.name()).stream()
                                .map(p -> new Tour(act, variant, p.flight(), p.times(), ActSheet.of(p.flight())))))
                .toList();
    }

    /** What to say when in an act flown in these times. */
    Plan plan(Act act, ActTimes times) {
        return new Planner().plan(planAhead().wholeAct(act, times));
    }

    /** What a debrief compares a show with. */
    DebriefSources debriefSources(BiFunction<String, String, List<Pass>> passes) {
        return new DebriefSources() {
            @Override
            public Optional<ActTimes> times(String actId, String variant) {
                return prediction(actId, variant).map(Prediction::times);
            }

            @Override
            public Optional<Plan> plan(String actId, String variant) {
                return show.act(actId)
                        .flatMap(act -> times(actId, variant).map(times -> LoadedShow.this.plan(act, times)));
            }

            @Override
            public String name(String actId, String figureId) {
                return show.act(actId)
                        .flatMap(act -> act.figure(figureId))
                        .map(LoadedShow.this::name)
                        .orElse(figureId);
            }

            @Override
            public List<Pass> passes(String actId, String variant) {
                return passes.apply(actId, variant);
            }
        };
    }

    private String name(Figure figure) {
        String title = figure.title();
        return title != null
                ? title
                : catalogue
                        .with(show.figures())
                        .find(figure.figure())
                        .map(CatalogueEntry::name)
                        .orElse(figure.figure());
    }

    PrepareView prepareView(List<PreparePresenter.Found> findings) {
        PreparePresenter.Predictions predicted = new PreparePresenter.Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return prediction(act.id(), variant.name()).map(Prediction::flight);
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return prediction(act.id(), variant.name()).map(Prediction::times);
            }
        };
        return new PreparePresenter(catalogue, spoken, predicted).view(show, findings);
    }
}
