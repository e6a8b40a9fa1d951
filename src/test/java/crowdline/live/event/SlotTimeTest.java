package crowdline.live.event;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent.ActChosen;
import crowdline.live.now.LiveNow;
import crowdline.live.state.LiveState;
import crowdline.live.state.Played;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Slots go by the clock on the wall; the session's own seconds, which never jump, say nothing of them. */
class SlotTimeTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static double toSlotS(LocalDateTime slot, ZoneId zone, double nowS, String wall) {
        Played played = new Played()
                .with(
                        new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first")),
                        new ActChosen(
                                1, "first", "full", Played.FIGURES, List.of(), null, new SlotTime.OnClock(slot, zone)));
        Double toSlotS = LiveNow.of(played.state, Played.DURATIONS, nowS, Instant.parse(wall))
                .toSlotS();
        return toSlotS == null ? Double.NaN : toSlotS;
    }

    private static double toJune(double nowS, String wall) {
        return toSlotS(LocalDateTime.of(2026, 6, 12, 14, 30), LONDON, nowS, wall);
    }

    @Test
    void aCorrectedClockCorrectsTheCountdown() {
        assertThat(toJune(5, "2026-06-12T13:00:00Z")).isEqualTo(30 * 60);
        assertThat(toJune(6, "2026-06-12T13:20:01Z")).as("put on by 20 minutes").isEqualTo(10 * 60 - 1);
        assertThat(toJune(7, "2026-06-12T12:40:02Z"))
                .as("put back by 20 minutes")
                .isEqualTo(50 * 60 - 2);
    }

    /** A machine that sleeps does not count its seconds. */
    @Test
    void aClosedLidCostsTheCountdownNothing() {
        assertThat(toJune(5, "2026-06-12T10:00:00Z")).isEqualTo(3.5 * 3600);
        assertThat(toJune(6, "2026-06-12T13:00:00Z")).isEqualTo(30 * 60);
    }

    @Test
    void theEveningBeforeIsADayBefore() {
        assertThat(toJune(5, "2026-06-11T21:30:00Z")).isEqualTo(16 * 3600);
    }

    @Test
    void theVenueHasItsOwnZoneWhereverTheComputerIsSet() {
        LocalDateTime slot = LocalDateTime.of(2026, 6, 12, 14, 30);
        String wall = "2026-06-12T12:00:00Z";
        assertThat(toSlotS(slot, ZoneId.of("UTC"), 5, wall)).isEqualTo(2.5 * 3600);
        assertThat(toSlotS(slot, LONDON, 5, wall)).isEqualTo(1.5 * 3600);
        assertThat(toSlotS(slot, ZoneId.of("Asia/Tokyo"), 5, wall)).isEqualTo(-6.5 * 3600);
    }

    /** In London the clocks went on at 01:00 UTC on 29 March 2026, and go back at 01:00 UTC on 25 October 2026. */
    @Test
    void aNightInWhichTheClocksAreChangedIsAnHourShorterOrLonger() {
        assertThat(toSlotS(LocalDateTime.of(2026, 3, 29, 10, 0), LONDON, 5, "2026-03-28T22:00:00Z"))
                .isEqualTo(11 * 3600);
        assertThat(toSlotS(LocalDateTime.of(2026, 10, 25, 10, 0), LONDON, 5, "2026-10-24T21:00:00Z"))
                .isEqualTo(13 * 3600);
        assertThat(toSlotS(LocalDateTime.of(2026, 3, 29, 1, 30), LONDON, 5, "2026-03-29T00:30:00Z"))
                .as("an hour there is none of")
                .isEqualTo(3600);
    }

    @Test
    void aSlotAfterMidnightIsOfTheNextDay() {
        assertThat(toSlotS(LocalDateTime.of(2026, 6, 13, 0, 30), LONDON, 5, "2026-06-12T22:50:00Z"))
                .isEqualTo(40 * 60);
    }

    @Test
    void aSlotOfAJournalFromBeforeStaysOnTheSessionsScale() {
        LiveState old = Played.waiting().state;
        for (String wall : new String[] {"2026-06-12T13:00:00Z", "2020-01-01T00:00:00Z"}) {
            assertThat(LiveNow.of(old, Played.DURATIONS, 45, Instant.parse(wall))
                            .toSlotS())
                    .isEqualTo(15);
        }
    }
}
