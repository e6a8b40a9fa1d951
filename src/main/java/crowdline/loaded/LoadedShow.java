package crowdline.loaded;

import crowdline.flight.Drift;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Workers;
import crowdline.flight.air.Air;
import crowdline.flight.moment.FigureMoments;
import crowdline.live.debrief.DebriefSources;
import crowdline.live.now.PlanAhead;
import crowdline.live.state.ActDurations;
import crowdline.live.state.Day.AddedAct;
import crowdline.live.state.Durations;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.check.LocatedFinding;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.PacedVoices;
import crowdline.speech.pace.Paces;
import crowdline.speech.pace.Voices;
import crowdline.timing.ActTimes;
import crowdline.timing.Pass;
import crowdline.timing.ToldTimes;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * A show with what is computed from it, each thing once and when it is first asked for: a start in the middle of an act
 * waits for that act alone. It may be asked from any thread.
 */
public final class LoadedShow {
    /** Varied flights behind each band: enough for a tenth and nine tenths to settle within a few per cent. */
    public static final int FLIGHTS = 200;
    /** As many as a start can wait for. */
    public static final int FIRST_FLIGHTS = 5;

    private final Show show;
    private final Catalogue catalogue;
    private final Paces paces;
    private final Workers workers;
    private final int flights;
    private final int settled;
    private final Map<Flown, Prediction> predictions;
    private final Voices voices;
    private final Known shared;

    /** What is shared with what becomes of the show. */
    private static final class Known {
        private final FlownContents flown = new FlownContents();
        private final LastBands bands = new LastBands();
        private volatile List<Pass> passes = List.of();
        private final Sketched sketched = new Sketched();
    }

    /** A variant of an act. */
    private record Flown(String actId, String variant) {}

    /**
     * @param workers fly the varied flights
     * @param flights how many of them are behind the first bands, 1 or more
     */
    public LoadedShow(Show show, Catalogue catalogue, Paces paces, Workers workers, int flights) {
        this(show, catalogue, paces, workers, flights, FLIGHTS);
    }

    /** @param settled how many are behind them once the show has settled, 1 or more */
    LoadedShow(Show show, Catalogue catalogue, Paces paces, Workers workers, int flights, int settled) {
        this.settled = settled;
        this.show = show;
        this.catalogue = catalogue;
        this.paces = paces;
        this.workers = workers;
        this.flights = flights;
        predictions = new ConcurrentHashMap<>();
        shared = new Known();
        voices = new PacedVoices(show, paces);
    }

    /** Hears how far it is with how many. */
    public interface Count {
        void is(int number, int all);
    }

    /** Predicts every variant of every act that was not asked for yet. */
    public void predictAll(Count count) {
        int all = show.acts().stream().mapToInt(act -> act.variants().size()).sum();
        int number = 0;
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                number++;
                count.is(number, all);
                prediction(act.id(), variant.name()).ifPresent(Prediction::times);
            }
        }
    }

    /** Whether the flights behind every band were flown; predicts what was not asked for yet. */
    public boolean hasBands() {
        return show.acts().stream()
                .allMatch(act -> act.variants().stream()
                        .allMatch(variant -> prediction(act.id(), variant.name())
                                .map(Prediction::hasBands)
                                .orElse(true)));
    }

    /** Flies as many flights for every band as it needs to change no more; takes a moment. */
    public void settle() {
        refine(settled);
    }

    /** Predicts what was not asked for yet, and flies more flights for every band; takes a moment. */
    public void refine(int moreFlights) {
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                prediction(act.id(), variant.name()).ifPresent(p -> p.refine(moreFlights));
            }
        }
    }

    private LoadedShow(LoadedShow before, Show edited) {
        show = edited;
        catalogue = before.catalogue;
        paces = before.paces;
        workers = before.workers;
        flights = before.flights;
        settled = before.settled;
        predictions = new ConcurrentHashMap<>();
        shared = before.shared;
        boolean sounds =
                edited.sayAs().equals(before.show.sayAs()) && edited.speakers().equals(before.show.speakers());
        voices = sounds ? before.voices : new PacedVoices(edited, before.paces);
    }

    private LoadedShow(LoadedShow same, Paces others) {
        show = same.show;
        catalogue = same.catalogue;
        paces = others;
        workers = same.workers;
        flights = same.flights;
        settled = same.settled;
        predictions = same.predictions;
        shared = same.shared;
        voices = new PacedVoices(show, others);
    }

    /** The same said at other paces, which flies nothing anew. */
    public LoadedShow atPaces(Paces others) {
        return new LoadedShow(this, others);
    }

    /** What became of the show. Only variants whose flight the edit changes are predicted anew, when they are asked for. */
    public LoadedShow with(Show edited) {
        return new LoadedShow(this, edited);
    }

    /** As it is flown on the day, with what was put in. */
    public LoadedShow onTheDay(List<AddedAct> added) {
        return added.isEmpty() ? this : with(DayShow.of(show(), added));
    }

    /** The same with other remarks, which fly nothing anew, in the air it is in. */
    public LoadedShow withWords(Show words) {
        return with(words.withAir(show.air()));
    }

    /** Goes by these passes from now on, wherever it is asked, with whatever words. */
    public void learn(List<Pass> passes) {
        shared.passes = List.copyOf(passes);
    }

    /** The passes of every act. */
    public List<Pass> passes() {
        return shared.passes;
    }

    /** The same show in other air, in which nothing is predicted unless it was flown in it before. */
    public LoadedShow inAir(DayAir air) {
        return with(show.withAir(air));
    }

    public Paces paces() {
        return paces;
    }

    public Show show() {
        return show;
    }

    /** Who says its remarks, and how long they take. */
    public Voices voices() {
        return voices;
    }

    /** Empty if there is no such act or variant, or if nobody described what flies it and where it begins. */
    public Optional<Prediction> prediction(@Nullable String actId, @Nullable String variant) {
        if (actId == null || variant == null) {
            return Optional.empty();
        }
        Flown flown = new Flown(actId, variant);
        Prediction known = predictions.get(flown);
        if (known != null) {
            return Optional.of(known);
        }
        Act act = show.act(actId).filter(show::canBePredicted).orElse(null);
        if (act == null) {
            return Optional.empty();
        }
        return act.variant(variant)
                .map(v -> predictions.computeIfAbsent(
                        flown, key -> shared.flown.of(FlownContents.Content.of(show, act, v), () -> predict(act, v))));
    }

    private Prediction predict(Act act, Variant variant) {
        return new Prediction(
                new Predictor(show, catalogue, act, variant),
                workers,
                shared.bands,
                flights,
                this::passes,
                flight -> WhereToLook.of(show, act, flight),
                ToldTimes.of(act),
                show.venue().crowdToLineM(),
                show.outline(act));
    }

    /** How far the day's wind carries a flight of an act. */
    public List<Drift> drifts(Act act, Flight flight) {
        if (!Air.isWindPlaced(show.air(), show.venue())) {
            return Drift.unknown(flight);
        }
        Variant variant = act.variant(flight.variant()).orElseThrow();
        Air still = Air.of(show.air(), show.venue()).still();
        return Drift.between(flight, new Predictor(show, catalogue, act, variant, still).predict());
    }

    public ShowLookup words() {
        return new ShowLookup(
                show,
                catalogue,
                voices,
                (act, variant) -> prediction(act.id(), variant.name())
                        .map(Prediction::sheet)
                        .orElse(ActSheet.NONE),
                (actId, variant, figureId) ->
                        prediction(actId, variant).map(p -> p.where(figureId)).orElse(""),
                (actId, variant, figureId) ->
                        prediction(actId, variant).map(p -> p.moments(figureId)).orElse(FigureMoments.timed(0)),
                shared.sketched);
    }

    /** Draws what is only timed, so that whoever shows it need not wait for it. */
    public void sketch() {
        ShowLookup words = words();
        for (Act act : show.acts()) {
            act.figures().stream()
                    .filter(figure -> figure.durationS() != null)
                    .forEach(figure -> words.sketch(act, figure.id()));
        }
    }

    public PlanAhead planAhead() {
        return new PlanAhead(show, voices);
    }

    /** How long figures last, for the clock; a figure nobody predicted has no length, and the clock waits for the hand. */
    public ActDurations durations() {
        return (actId, variant, figureIds) -> new Durations() {
            @Override
            public double secondsOf(int index) {
                return prediction(actId, variant)
                        .map(p -> p.durationS(figureIds.get(index)))
                        .orElse(Double.NaN);
            }

            @Override
            public double pauseS(int index, int next) {
                return prediction(actId, variant)
                        .map(p -> p.times().pauseS(figureIds.get(index), figureIds.get(next)))
                        .orElse(0.0);
            }
        };
    }

    /** What to say when in an act flown in these times. */
    public Plan plan(Act act, ActTimes times) {
        return new Planner().plan(planAhead().wholeAct(act, times));
    }

    /** The shipped catalogue. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /**
     * The clock at the venue at a moment of a session.
     *
     * @param zero the wall clock at second 0 of it
     * @param sessionS seconds since then
     */
    public LocalTime hour(Instant zero, double sessionS) {
        return LocalTime.ofInstant(
                zero.plusNanos(Math.round(sessionS * 1e9)), show.venue().timeZone());
    }

    /**
     * What a debrief compares a show with.
     *
     * @param begun when the session began: a pass of its own does not tell what was planned for it
     */
    public DebriefSources debriefSources(Instant begun, BiFunction<String, String, List<Pass>> passes) {
        return new LoadedDebrief(this, words(), begun, passes);
    }

    /** What only flying it shows of the show itself: slips, and what a pilot told and is not flown. */
    public List<Finding> slips() {
        return FlownCheck.slips(this);
    }

    /** What was noticed on the predicted flight of every variant of every act, and of the paces it is said at. */
    public List<LocatedFinding> findings() {
        List<LocatedFinding> found = new ArrayList<>();
        UntimedSpeakers.of(show, paces)
                .forEach(f -> found.add(LocatedFinding.inNoLine(f.severity(), f.code(), f.message())));
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                prediction(act.id(), variant.name())
                        .ifPresent(p -> p.outline()
                                .findings()
                                .forEach(f -> found.add(LocatedFinding.inNoLine(
                                        f.severity(), f.code(), act.title() + ": " + f.message()))));
            }
        }
        return found;
    }
}
