package crowdline.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A show on 6 June 2026. */
class SlotStartTest {
    private static Show show(LocalTime... slots) {
        Show small = SmallShow.show();
        Act one = small.acts().get(0);
        List<Act> acts = new ArrayList<>();
        for (LocalTime slot : slots) {
            acts.add(new Act(
                    "act-" + acts.size(),
                    one.title(),
                    one.performer(),
                    one.airframe(),
                    slot,
                    one.slotMinutes(),
                    one.entry(),
                    one.figures(),
                    one.variants(),
                    one.remarks()));
        }
        return small.withActs(acts, small.remarks());
    }

    private static List<LocalDateTime> starts(LocalTime... slots) {
        Show show = show(slots);
        return show.acts().stream().map(show::slotStart).toList();
    }

    private static boolean isOn(Show show, LocalDateTime at) {
        return show.isOn(at.atZone(show.venue().timeZone()).toInstant());
    }

    @Test
    void dayOfTheShowGoesOnForSomeHoursAfterItsLastSlot() {
        Show noon = show(LocalTime.NOON);
        assertThat(isOn(noon, LocalDateTime.of(2026, 6, 5, 23, 59))).isFalse();
        assertThat(isOn(noon, LocalDateTime.of(2026, 6, 6, 0, 0))).isTrue();
        assertThat(isOn(noon, LocalDateTime.of(2026, 6, 6, 23, 59))).isTrue();
        assertThat(isOn(noon, LocalDateTime.of(2026, 6, 7, 0, 0))).isFalse();

        Show night = show(LocalTime.of(22, 30), LocalTime.of(0, 15));
        assertThat(isOn(night, LocalDateTime.of(2026, 6, 7, 6, 14))).isTrue();
        assertThat(isOn(night, LocalDateTime.of(2026, 6, 7, 6, 15))).isFalse();
    }

    @Test
    void slotsAreOnTheShowsDate() {
        assertThat(starts(LocalTime.of(0, 30), LocalTime.of(14, 30), LocalTime.of(14, 10)))
                .as("one written a little too early is a slip, no next day")
                .containsExactly(
                        LocalDateTime.of(2026, 6, 6, 0, 30),
                        LocalDateTime.of(2026, 6, 6, 14, 30),
                        LocalDateTime.of(2026, 6, 6, 14, 10));
    }

    @Test
    void pastMidnightTheyAreOnTheDayAfter() {
        assertThat(starts(LocalTime.of(22, 30), LocalTime.of(23, 45), LocalTime.of(0, 15), LocalTime.of(1, 0)))
                .containsExactly(
                        LocalDateTime.of(2026, 6, 6, 22, 30),
                        LocalDateTime.of(2026, 6, 6, 23, 45),
                        LocalDateTime.of(2026, 6, 7, 0, 15),
                        LocalDateTime.of(2026, 6, 7, 1, 0));
    }
}
