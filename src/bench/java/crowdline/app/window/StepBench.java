package crowdline.app.window;

import crowdline.console.live.LivePresenter;
import crowdline.console.live.LiveView;
import crowdline.console.live.row.LiveMoment;
import crowdline.flight.Workers;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.now.TakenAsSaid;
import crowdline.live.state.ActDurations;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Paces;
import crowdline.steer.Tracking;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.timing.FigureTime;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What one step of the commentator costs: the next state, the plan made anew from the one before, and the screen's view.
 * The steps of the demo's first act follow each other, act after act. Writing the journal and painting are not in it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
@SuppressWarnings("NullAway.Init") // JMH calls the set-up before anything else
public class StepBench {
    private static final double START_S = 240;
    /** Steps come this much later than predicted, seconds, so that plans have something to mend. */
    private static final double LATE_S = 1.3;

    private final Planner planner = new Planner();
    private final List<LiveEvent> steps = new ArrayList<>();
    private Prediction prediction;
    private ActDurations durations;
    private LivePresenter presenter;
    private PlanAhead ahead;
    private LiveState chosen;
    private LocalDateTime clock;

    private LiveState state;
    private Plan plan = Plan.EMPTY;
    private TakenAsSaid aired = new TakenAsSaid();
    private int at;

    @Setup
    public void read() throws ShowFileException {
        Show show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                .show());
        LoadedShow loaded =
                new LoadedShow(show, CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, LoadedShow.FLIGHTS);
        Act act = show.acts().get(0);
        Variant variant = act.variants().get(0);
        prediction = loaded.prediction(act.id(), variant.name()).orElseThrow();
        durations = loaded.durations();
        presenter = new LivePresenter(loaded.words());
        ahead = loaded.planAhead();
        clock = show.slotStart(act);
        List<String> acts = show.acts().stream().map(Act::id).toList();
        List<String> figures = act.inOrder(variant).stream().map(Figure::id).toList();
        LiveState opened = next(LiveState.initial(), new ShowEvent.ShowOpened(0, show.title(), acts));
        chosen = next(opened, new FlightEvent.ActChosen(1, act.id(), variant.name(), figures, START_S));
        state = chosen;
        steps.add(new FlightEvent.ActStarted(START_S));
        List<FigureTime> times = prediction.times().figures();
        for (FigureTime time : times.subList(1, times.size())) {
            steps.add(new FlightEvent.Stepped(START_S + LATE_S + time.startS()));
        }
    }

    private static LiveState next(LiveState state, LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            return moved.state();
        }
        throw new IllegalStateException(event + " was refused");
    }

    /** One step, as the console answers it. */
    @Benchmark
    public LiveView step() {
        if (at == steps.size()) {
            state = chosen;
            plan = Plan.EMPTY;
            aired = new TakenAsSaid();
            at = 0;
        }
        LiveEvent event = steps.get(at++);
        state = next(state, event);
        LiveNow now = LiveNow.of(state, durations.of(state), event.atS(), Instant.EPOCH);
        aired.follow(state, plan, now.nowS(), id -> false);
        plan = planner.plan(aired.request(ahead.request(state, now, prediction.times(), Optional.of(plan))));
        return presenter.view(new LiveMoment(state, now, plan, clock, Tracking.NONE));
    }
}
