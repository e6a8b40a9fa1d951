package crowdline.steer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A step back that the aircraft led teaches the follower nothing: it is the follower's own word. One by hand does. */
class StepBackByAircraftTest {
    private static final double BEGIN_S = 20;

    private Flight flight;
    private AircraftFollowing following;
    private LiveState state = LiveState.initial();
    private int figure;

    @BeforeEach
    void fly() throws ShowFileException {
        Path file = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
        Show show = Objects.requireNonNull(new ShowFile().read(file).show());
        Act act = show.act("thistledown-glider").orElseThrow();
        flight =
                new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
        FollowPlan plan = FollowPlan.of(flight);
        following = new AircraftFollowing(s -> Optional.of(plan));
        happens(new ShowEvent.ShowOpened(0, "Test", List.of(act.id())));
        List<String> ids = flight.figures().stream().map(FigureFlight::figureId).toList();
        happens(new FlightEvent.ActChosen(1, act.id(), flight.variant(), ids, null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
        happens(new FlightEvent.ActStarted(BEGIN_S));
        figure = flight.figures().size() / 2;
        fly(0, begins(figure) + 0.7 * (begins(figure + 1) - begins(figure)));
        assertThat(state.course().position()).isEqualTo(figure);
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved next) {
            state = next.state();
        }
    }

    private double begins(int index) {
        return flight.figures().get(index).startS();
    }

    /** Flies five readings a second from one time of the act to another. */
    private void fly(double fromS, double toS) {
        for (Sample sample : flight.samples()) {
            double t = sample.tS();
            if (t >= fromS && t < toS && Math.round(t * 10) % 2 == 0) {
                following.reading(state, reading(sample)).ifPresent(this::happens);
            }
        }
    }

    private static Reading reading(Sample sample) {
        return new Reading(
                BEGIN_S + sample.tS(),
                sample.place().x(),
                sample.place().y(),
                sample.place().z(),
                null,
                null);
    }

    private double nowS() {
        return begins(figure) + 0.7 * (begins(figure + 1) - begins(figure));
    }

    /** How far through its figure the follower has the aircraft, once that has come back to the screen; not a number where it is not sure. */
    private double shareAfter(FlightEvent back) {
        happens(new FlightEvent.AircraftSeen(BEGIN_S + nowS(), figure + 1));
        fly(nowS(), nowS() + 0.25);
        happens(back);
        assertThat(state.course().position()).isEqualTo(figure);
        Sample one = flight.samples().stream()
                .filter(s -> s.tS() >= nowS() + 0.4)
                .findFirst()
                .orElseThrow();
        following.reading(state, reading(one));
        Tracking.Within within =
                Objects.requireNonNull(following.tracking(BEGIN_S + one.tS()).within());
        assertThat(within.figureIndex()).isEqualTo(figure);
        return within.atS() < BEGIN_S + one.tS() ? Double.NaN : within.share();
    }

    @Test
    void followerStaysWhereItIsWhenTheAircraftLeadsBack() {
        assertThat(shareAfter(new FlightEvent.AircraftSeen(BEGIN_S + nowS() + 0.3, figure)))
                .isCloseTo(0.7, within(0.15));
    }

    @Test
    void followerTakesItThatTheFigureHasJustBegunWhenTheHandTakesAStepBack() {
        assertThat(shareAfter(new FlightEvent.SteppedBack(BEGIN_S + nowS() + 0.3)))
                .isNotCloseTo(0.7, within(0.15));
    }
}
