package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.now.NowView;
import crowdline.console.paint.Form;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.SlotTime;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.show.Show;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the wait for a slot says on this day and on another. The show is for Saturday 6 June 2026, 14:30. */
class SlotWordsTest {
    private final LivePresenter presenter = new LivePresenter(SmallShow.words());

    private NowView at(LocalDateTime clock) {
        return at(clock, LocalDateTime.of(2026, 6, 6, 14, 30));
    }

    private NowView at(LocalDateTime clock, LocalDateTime slot) {
        return at(presenter, clock, slot);
    }

    private static NowView at(LivePresenter presenter, LocalDateTime clock, LocalDateTime slot) {
        LiveState state = SmallShow.after(new FlightEvent.ActChosen(
                1,
                "a1",
                "full",
                List.of("f1", "f2", "f3"),
                List.of(),
                null,
                new SlotTime.OnClock(slot, ZoneId.of("UTC"))));
        return presenter.view(SmallShow.moment(5, Plan.EMPTY, state, clock)).now();
    }

    @Test
    void anActThatIsCalledWithASmallLetterBeginsItsSentenceWithACapital() {
        Show show = SmallShow.show();
        LivePresenter team = new LivePresenter(
                SmallShow.words(show.withAct(show.acts().get(0).withTitle("the Marram Four"))));
        LocalDateTime slot = LocalDateTime.of(2026, 6, 6, 14, 30);
        assertThat(at(team, slot.minusMinutes(5), slot).look()).contains(" begins. The Marram Four");
        assertThat(at(team, slot.minusDays(1), slot).look()).startsWith("The Marram Four");
    }

    @Test
    void onTheDayTheHoursCount() {
        assertThat(at(LocalDateTime.of(2026, 6, 6, 14, 20)).name()).isEqualTo("On in 10:00");
        assertThat(at(LocalDateTime.of(2026, 6, 6, 0, 30)).name()).isEqualTo("On in 14 h 00 min");
        assertThat(at(LocalDateTime.of(2026, 6, 6, 14, 32, 10)).name()).isEqualTo("Due now, 2 min late");
        assertThat(at(LocalDateTime.of(2026, 6, 6, 23, 30)).name()).isEqualTo("Due now, 9 h 00 min late");
        assertThat(at(LocalDateTime.of(2026, 6, 6, 14, 20)).look()).doesNotContain("today");
    }

    @Test
    void theEveningBeforeSaysTomorrowAndForWhichDayTheShowIs() {
        NowView view = at(LocalDateTime.of(2026, 6, 5, 21, 18));
        assertThat(view.name()).isEqualTo("Tomorrow, 14:30");
        assertThat(view.look()).endsWith(". Today is Friday 5 June." + " Press Space when the first figure begins.");
        assertThat(view.state()).isNotNull();
        assertThat(view.state().word()).isEqualTo("Not today");
        assertThat(view.state().form()).isEqualTo(Form.DIAMOND);
    }

    @Test
    void anotherDayIsNamedWithItsYearWhereThatDiffers() {
        assertThat(at(LocalDateTime.of(2026, 5, 30, 9, 0)).name()).isEqualTo("Saturday 6 June, 14:30");
        assertThat(at(LocalDateTime.of(2026, 5, 30, 9, 0)).left()).isEqualTo("7 days");
        assertThat(at(LocalDateTime.of(2026, 6, 4, 20, 0)).left()).isEqualTo("42 h 30 min");
        assertThat(at(LocalDateTime.of(2026, 6, 7, 9, 0)).name()).isEqualTo("Due yesterday, 14:30");
        NowView lastYear = at(LocalDateTime.of(2027, 1, 8, 9, 0));
        assertThat(lastYear.name()).isEqualTo("Due on Saturday 6 June 2026, 14:30");
        assertThat(lastYear.look()).contains(". Today is Friday 8 January 2027.");
        assertThat(lastYear.left()).isEmpty();
    }

    @Test
    void midnightBetweenNowAndANearSlotMakesItNoOtherDay() {
        LocalDateTime afterMidnight = LocalDateTime.of(2026, 6, 7, 0, 30);
        assertThat(at(LocalDateTime.of(2026, 6, 6, 23, 50), afterMidnight).name())
                .isEqualTo("On in 40:00");
        assertThat(at(LocalDateTime.of(2026, 6, 7, 0, 33), afterMidnight).name())
                .isEqualTo("Due now, 3 min late");
        assertThat(at(LocalDateTime.of(2026, 6, 7, 0, 10), LocalDateTime.of(2026, 6, 6, 23, 50))
                        .name())
                .isEqualTo("Due now, 20 min late");
    }
}
