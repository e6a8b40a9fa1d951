package crowdline.loaded;

import crowdline.app.window.edit.ShowFacts;
import crowdline.app.window.time.LoadedPredictions;
import crowdline.app.window.walk.Tours;
import crowdline.console.live.LivePresenter;
import crowdline.console.live.row.LiveMoment;
import crowdline.flight.Workers;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.check.LocatedFinding;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Paces;
import crowdline.steer.Tracking;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import crowdline.timing.ActTimes;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Everything that the program makes of a show, from its text: what it finds, and every place with every act in it. */
final class WholeShow {
    private static final Path FILE = Path.of("show.json");
    private static final int FLIGHTS = 3;
    /** Live is seen in every so many figures: planning takes most of the time. */
    private static final int SEEN = 12;

    private final ShowFile shows = new ShowFile();

    /**
     * Makes all of it; the findings of {@code check} and of the flights.
     *
     * @throws RuntimeException if any place fails
     */
    List<String> of(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        ShowReading reading = shows.read(FILE, bytes);
        Show show = reading.show();
        if (show == null) {
            if (!reading.blocked()) {
                throw new IllegalStateException("no show and no error");
            }
            return reading.findings().stream().map(LocatedFinding::asLine).toList();
        }
        List<String> found = reading.with(FlownCheck.of(show, CatalogueFile.shipped())).findings().stream()
                .map(LocatedFinding::asLine)
                .toList();
        LoadedShow loaded = new LoadedShow(show, CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, FLIGHTS);
        loaded.refine(FLIGHTS);
        LoadedPredictions.view(loaded, List.of());
        var tours = Tours.of(loaded);
        ShowFacts.of(loaded);
        ActPlans.of(loaded, show.acts(), act -> act.variants().get(0));
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                loaded.prediction(act.id(), variant.name()).ifPresent(p -> {
                    loaded.drifts(act, p.flight());
                    fly(loaded, act, variant, p);
                });
            }
        }
        if (tours.isEmpty()) {
            throw new IllegalStateException("no tour");
        }
        return found;
    }

    private static void fly(LoadedShow loaded, Act act, Variant variant, Prediction prediction) {
        LivePresenter presenter = new LivePresenter(loaded.words());
        PlanAhead ahead = loaded.planAhead();
        ActTimes times = prediction.times();
        LiveState state = LiveState.initial();
        state = after(state, new ShowEvent.ShowOpened(0, "show", List.of(act.id())));
        state = after(
                state,
                new FlightEvent.ActChosen(
                        1,
                        act.id(),
                        variant.name(),
                        act.inOrder(variant).stream().map(Figure::id).toList(),
                        60.0));
        see(loaded, presenter, ahead, times, state, 2);
        state = after(state, new FlightEvent.SourceChosen(3, Source.HAND));
        state = after(state, new FlightEvent.ActStarted(60));
        for (int i = 0; i < act.inOrder(variant).size(); i++) {
            if (i % SEEN == 1) {
                see(loaded, presenter, ahead, times, state, 61 + 5 * i);
            }
            state = after(state, new FlightEvent.Stepped(64 + 5 * i));
        }
    }

    private static LiveState after(LiveState state, LiveEvent event) {
        return Live.next(state, event) instanceof Step.Moved moved ? moved.state() : state;
    }

    private static void see(
            LoadedShow loaded, LivePresenter presenter, PlanAhead ahead, ActTimes times, LiveState state, double nowS) {
        LiveNow now = LiveNow.of(state, loaded.durations().of(state), nowS, Instant.EPOCH);
        var plan = new Planner().plan(ahead.request(state, now, times, Optional.empty()));
        var unused = presenter.view(new LiveMoment(
                state, now, plan, loaded.show().date().atTime(12, 0).plusSeconds((long) nowS), Tracking.NONE));
    }
}
