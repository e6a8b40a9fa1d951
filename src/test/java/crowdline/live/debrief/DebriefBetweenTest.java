package crowdline.live.debrief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crowdline.console.live.SmallShow;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import crowdline.patter.Plan;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where the list has time between two figures, keys see the first last until the second: nobody flew it longer. */
class DebriefBetweenTest {
    /** Ten seconds each, with six between the first two. */
    private static final DebriefSources PLANNED = new DebriefSources() {
        @Override
        public Optional<ActTimes> times(String actId, String variant) {
            return Optional.of(new ActTimes(
                    actId,
                    variant,
                    List.of(
                            new FigureTime("f1", 0, 10, 9, 11),
                            new FigureTime("f2", 16, 10, 9, 11),
                            new FigureTime("f3", 26, 10, 9, 11))));
        }

        @Override
        public Optional<Plan> plan(String actId, String variant) {
            return Optional.of(Plan.EMPTY);
        }

        @Override
        public String name(String actId, String variant, String figureId) {
            return figureId;
        }

        @Override
        public double spokenS(String text) {
            return 4;
        }

        @Override
        public List<Pass> passes(String actId, String variant) {
            return List.of();
        }
    };

    private static Debrief after(FlightEvent... events) {
        return Debrief.of(SmallShow.show(), SmallShow.after(events), PLANNED);
    }

    @Test
    void whatLiesBetweenIsPlannedWithTheFirst() {
        Debrief debrief = after(
                new FlightEvent.ActStarted(100),
                new FlightEvent.Stepped(116),
                new FlightEvent.Stepped(126),
                new FlightEvent.ActEnded(136));

        assertThat(debrief.runs().get(0).figures())
                .extracting(FigureRun::plannedS)
                .containsExactly(16.0, 10.0, 10.0);
        assertThat(debrief.runs().get(0).figures())
                .extracting(FigureRun::longerS)
                .containsOnly(0.0);
        assertThat(debrief.changes()).noneMatch(c -> c.contains("longer"));
    }

    @Test
    void whereTheNextWasDroppedNothingLiesBetween() {
        Debrief debrief = after(
                new FlightEvent.ActStarted(100),
                new FlightEvent.NextDropped(104),
                new FlightEvent.Stepped(110),
                new FlightEvent.ActEnded(120));

        assertThat(debrief.runs().get(0).figures().get(0).plannedS()).isEqualTo(10);
    }

    /** The follower found it in the third figure: the second was flown and not seen, within what looks like the first. */
    @Test
    void figuresBeforeAndAfterAJumpWereNotTimed() {
        Debrief jumped = after(
                new FlightEvent.SourceChosen(90, Source.AIRCRAFT),
                new FlightEvent.ActStarted(100),
                new FlightEvent.AircraftSeen(130, 2),
                new FlightEvent.ActEnded(138));
        assertThat(jumped.runs().get(0).figures())
                .extracting(FigureRun::figureId, FigureRun::measured)
                .contains(tuple("f1", false), tuple("f3", false));
        assertThat(jumped.changes()).noneMatch(c -> c.contains("than predicted"));

        Debrief seen = after(
                new FlightEvent.SourceChosen(90, Source.AIRCRAFT),
                new FlightEvent.ActStarted(100),
                new FlightEvent.AircraftSeen(116, 1),
                new FlightEvent.AircraftSeen(126, 2),
                new FlightEvent.ActEnded(136));
        assertThat(seen.runs().get(0).figures()).extracting(FigureRun::measured).containsOnly(true);
    }
}
