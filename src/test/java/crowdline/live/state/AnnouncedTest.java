package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crowdline.live.event.AnnouncementEvent.AnnouncementRead;
import crowdline.live.event.AnnouncementEvent.AnnouncementShown;
import crowdline.live.event.AnnouncementEvent.BlankFilled;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.Announced.Page;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AnnouncedTest {
    private static final AnnouncementRead READ =
            new AnnouncementRead(30, "lost", "Lost child", List.of("A girl of six is waiting."));

    private static LiveState after(LiveEvent... events) {
        LiveState state = LiveState.initial();
        for (LiveEvent event : List.of(
                new ShowEvent.ShowOpened(0, "Day", List.of("first")),
                new FlightEvent.ActChosen(0, "first", "full", List.of("loop", "roll"), 60.0),
                new FlightEvent.ActStarted(1))) {
            state = ((Step.Moved) Live.next(state, event)).state();
        }
        for (LiveEvent event : events) {
            state = ((Step.Moved) Live.next(state, event)).state();
        }
        return state;
    }

    @Test
    void whenItWasShownAndReadIsKeptAndTheActGoesOn() {
        LiveState state = after(
                new AnnouncementShown(10, "lost", "Lost child"),
                new FlightEvent.Stepped(20),
                new BlankFilled(25, "lost", "age", "of five"),
                new BlankFilled(26, "lost", "age", "of six"),
                READ);
        assertThat(state.figureId()).isEqualTo("roll");
        assertThat(state.announced().pages())
                .containsExactly(new Page("lost", "Lost child", 10, 30.0, List.of("A girl of six is waiting.")));
        assertThat(state.announced().filled("lost")).containsOnly(Map.entry("age", "of six"));
        assertThat(state.announced().filled("other")).isEmpty();
        assertThat(state.announced().lastReadS("lost")).contains(30.0);
    }

    @Test
    void eachShowingIsKeptWhetherReadOrNot() {
        LiveState state = after(
                new AnnouncementShown(10, "lost", "Lost child"),
                new AnnouncementShown(20, "lost", "Lost child"),
                READ,
                new AnnouncementShown(40, "weather", "Weather stop"));
        assertThat(state.announced().pages())
                .extracting(Page::announcementId, Page::shownAtS, Page::readAtS)
                .containsExactly(tuple("lost", 10.0, null), tuple("lost", 20.0, 30.0), tuple("weather", 40.0, null));
        assertThat(state.announced().lastReadS("weather")).isEmpty();
    }

    @Test
    void takingBackTakesTheReadingBackAndNothingElse() {
        LiveState state = after(
                new FlightEvent.Held(5),
                new AnnouncementShown(10, "lost", "Lost child"),
                new BlankFilled(25, "lost", "age", "of six"),
                READ,
                new LiveEvent.Undone(31));
        assertThat(state.announced().pages()).containsExactly(new Page("lost", "Lost child", 10, null, List.of()));
        assertThat(state.announced().filled("lost")).containsEntry("age", "of six");
        assertThat(state.phase()).isInstanceOf(Phase.Held.class);
    }

    @Test
    void theWordsAreThereWhileTheIncidentPageIsOpen() {
        LiveState state = after(
                new IncidentEvent.IncidentOpened(5),
                new AnnouncementShown(10, "evacuation", "Evacuation"),
                new BlankFilled(12, "evacuation", "where to go", "the east gate"),
                new AnnouncementRead(20, "evacuation", "Evacuation", List.of("Walk to the east gate.")));
        assertThat(state.incidentOpen()).isTrue();
        assertThat(state.announced().lastReadS("evacuation")).contains(20.0);
    }

    /** As after lines of a journal that nobody can read any more. */
    @Test
    void aReadingWithoutItsPageIsKeptByItself() {
        assertThat(after(READ).announced().pages())
                .containsExactly(new Page("lost", "Lost child", 30, 30.0, List.of("A girl of six is waiting.")));
    }
}
