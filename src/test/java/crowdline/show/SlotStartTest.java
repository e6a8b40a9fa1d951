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
    private static List<LocalDateTime> starts(LocalTime... slots) {
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
        Show show = small.withActs(acts, small.remarks());
        return acts.stream().map(show::slotStart).toList();
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
