package crowdline.steer;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.leg.Sample;
import crowdline.follow.FollowPlan;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.telemetry.Reading;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the aircraft's position says it may be is told while positions come, and no longer. */
class GuessesTest {
    private static final double BEGIN_S = 20;

    private LiveState state = LiveState.initial();

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved next) {
            state = next.state();
        }
    }

    @Test
    void theFigureThatIsFlownIsGuessedUntilPositionsAreGone() throws ShowFileException {
        Show show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                .show());
        Act act = show.act("thistledown-glider").orElseThrow();
        Flight flight =
                new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
        AircraftFollowing following = new AircraftFollowing(s -> Optional.of(FollowPlan.of(flight)));
        assertThat(following.tracking(0).guesses()).isEmpty();
        happens(new ShowEvent.ShowOpened(0, "Test", List.of(act.id())));
        happens(new FlightEvent.ActChosen(
                1,
                act.id(),
                flight.variant(),
                flight.figures().stream().map(FigureFlight::figureId).toList(),
                null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
        happens(new FlightEvent.ActStarted(BEGIN_S));
        FigureFlight third = flight.figures().get(2);
        double untilS = third.startS() + 0.8 * third.durationS();
        for (Sample sample : flight.samples()) {
            double nowS = BEGIN_S + sample.tS();
            if (sample.tS() < untilS && Math.round(sample.tS() * 10) % 2 == 0) {
                following
                        .reading(
                                state,
                                new Reading(
                                        nowS,
                                        sample.place().x(),
                                        sample.place().y(),
                                        sample.place().z(),
                                        null,
                                        null))
                        .ifPresent(this::happens);
            }
        }

        List<Tracking.Guess> guesses = following.tracking(BEGIN_S + untilS).guesses();
        assertThat(guesses.get(0).figureIndex()).isEqualTo(2);
        assertThat(guesses.get(0).chance()).isGreaterThan(0.5);

        following.tick(state, BEGIN_S + untilS + 6).ifPresent(this::happens);
        assertThat(following.tracking(BEGIN_S + untilS + 6).guesses()).isEmpty();
    }
}
