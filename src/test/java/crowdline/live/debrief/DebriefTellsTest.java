package crowdline.live.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Plan;
import crowdline.sheet.DebriefSheet;
import crowdline.sheet.DebriefTable;
import crowdline.show.Show;
import crowdline.timing.ActTimes;
import crowdline.timing.Pass;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What was noted and announced, as the debrief tells it. */
class DebriefTellsTest {
    private static final Show SHOW = SmallShow.show();

    private LiveState state = LiveState.initial();

    private static final class Unplanned implements DebriefSources {
        @Override
        public Optional<ActTimes> times(String actId, String variant) {
            return Optional.empty();
        }

        @Override
        public Optional<Plan> plan(String actId, String variant) {
            return Optional.empty();
        }

        @Override
        public String name(String actId, String variant, String figureId) {
            return "figure " + figureId;
        }

        @Override
        public double spokenS(String text) {
            return 4;
        }

        @Override
        public List<Pass> passes(String actId, String variant) {
            return List.of();
        }
    }

    private void happens(LiveEvent... events) {
        for (LiveEvent event : events) {
            state = ((Step.Moved) Live.next(state, event)).state();
        }
    }

    private void chosen(double atS) {
        happens(
                new ShowEvent.ShowOpened(0, SHOW.title(), List.of("a1")),
                new FlightEvent.ActChosen(atS, "a1", "full", List.of("f1", "f2", "f3"), atS + 50));
    }

    private Debrief debrief() {
        return Debrief.of(SHOW, state, new Unplanned());
    }

    @Test
    void announcementsAreProvedByTheirTimesAndWords() {
        chosen(0);
        happens(
                new AnnouncementEvent.AnnouncementShown(100, "lost", "Lost child"),
                new AnnouncementEvent.AnnouncementRead(130, "lost", "Lost child", List.of("A girl waits.", "Come.")),
                new AnnouncementEvent.AnnouncementShown(200, "weather", "Weather stop"));
        assertThat(DebriefSheet.lines(debrief(), second -> LocalTime.NOON.plusSeconds((long) second)))
                .containsSequence(
                        "Announcement: Lost child, shown 12:01:40, read out 12:02:10: A girl waits. Come.",
                        "Announcement: Weather stop, shown 12:03:20, not marked as read");
    }

    @Test
    void notesStandInTheTableWithTheFigureInWhichTheyWereMade() {
        chosen(0);
        happens(
                new LiveEvent.NoteMade(50, ""),
                new FlightEvent.ActStarted(100),
                new FlightEvent.Stepped(113),
                new LiveEvent.NoteMade(115, ""),
                new LiveEvent.NoteWritten(120, "smoke, \"late\""),
                new LiveEvent.NoteMade(121, ""),
                new FlightEvent.Stepped(122),
                new FlightEvent.ActEnded(132));
        List<String> lines = DebriefTable.lines(debrief());
        assertThat(lines.get(0)).endsWith(",notes");
        assertThat(lines.get(2)).contains("\"f2\"").endsWith(",\"smoke, \"\"late\"\"; noted\"");
        assertThat(lines.get(3)).contains("\"f3\"").endsWith(",true,");
        assertThat(lines.get(4)).isEqualTo(",,,,,note,,,,,,,,,,\"noted\"");
        assertThat(lines).hasSize(5);
    }
}
