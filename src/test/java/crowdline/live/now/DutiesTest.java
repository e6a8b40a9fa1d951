package crowdline.live.now;

import static crowdline.live.now.DutyNow.State.DONE;
import static crowdline.live.now.DutyNow.State.DUE;
import static crowdline.live.now.DutyNow.State.LATER;
import static crowdline.live.now.DutyNow.State.MISSED;
import static crowdline.live.now.DutyNow.State.OVERDUE;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.now.DutyNow.Told;
import crowdline.live.state.Played;
import crowdline.show.Act;
import crowdline.show.HarbourDay;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The session begins at 13:59; the slots of the three acts are at 14:00, 14:20 and 14:40. */
class DutiesTest {
    private static final Instant ZERO = Instant.parse("2027-06-01T13:59:00Z");

    private static Show show(DutyTimes asked) {
        return show(LocalTime.of(14, 0), asked);
    }

    private static Show show(LocalTime first, DutyTimes asked) {
        Remark duty = Remark.of("duty", RemarkKind.DUTY, "Thank you.").asked(asked);
        return HarbourDay.of(
                List.of(act("first", first), act("second", first.plusMinutes(20)), act("third", first.plusMinutes(40))),
                Remark.of("fact", RemarkKind.FACT, "Well."),
                duty);
    }

    private static Act act(String id, LocalTime slot) {
        return HarbourDay.act(id, slot, List.of());
    }

    private static DutyTimes asked(int times, double apartMinutes, @Nullable LocalTime by) {
        return new DutyTimes(times, apartMinutes, by, null, null, true);
    }

    private static DutyTimes between(@Nullable String after, @Nullable String before) {
        return new DutyTimes(1, null, null, after, before, true);
    }

    private static DutyNow at(Show show, Played played, double nowS) {
        LiveNow now = LiveNow.of(played.state, Played.DURATIONS, nowS, ZERO.plusMillis(Math.round(nowS * 1000)));
        List<DutyNow> all = Duties.of(show, played.state, now);
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static LiveEvent said(double atS) {
        return new TalkEvent.RemarkSaid(atS, "duty", RemarkForm.FULL);
    }

    private static LiveEvent shown(double atS) {
        return new TalkEvent.RemarkShown(atS, "duty", RemarkForm.FULL, atS - 5);
    }

    private static Played over(Played played, String actId, double fromS) {
        return played.with(
                new FlightEvent.ActChosen(fromS, actId, "full", Played.FIGURES, (Double) null),
                new FlightEvent.ActStarted(fromS + 1),
                new FlightEvent.ActEnded(fromS + 50));
    }

    @Test
    void onceMeansOnceAndThenItIsDone() {
        Show show = show(DutyTimes.ONCE);
        Played played = Played.waiting();
        assertThat(at(show, played, 5).state()).isEqualTo(DUE);
        assertThat(at(show, played, 5).wanted()).isTrue();
        played.with(said(10));
        DutyNow done = at(show, played, 11);
        assertThat(done.state()).isEqualTo(DONE);
        assertThat(done.wanted()).isFalse();
        assertThat(done.missing()).isZero();
        assertThat(done.told()).containsExactly(new Told(10, true));
    }

    @Test
    void itIsDueAgainWhenItsTimeApartIsOverAndNotBefore() {
        Show show = show(asked(2, 10, null));
        Played played = Played.waiting().with(said(100));
        assertThat(at(show, played, 699.9).state()).isEqualTo(LATER);
        assertThat(at(show, played, 699.9).fromS()).isEqualTo(700);
        assertThat(at(show, played, 700).state()).isEqualTo(DUE);
        assertThat(at(show, played, 700).fromS()).isNull();
        played.with(said(700));
        assertThat(played.refusal).isNull();
        assertThat(at(show, played, 5000).state()).isEqualTo(DONE);
    }

    @Test
    void whereNobodySaysHowFarApartItIsAQuarterOfAnHour() {
        Show show = show(new DutyTimes(2, null, null, null, null, true));
        Played played = Played.waiting().with(said(100));
        assertThat(at(show, played, 999.9).state()).isEqualTo(LATER);
        assertThat(at(show, played, 1000).state()).isEqualTo(DUE);
    }

    /** Three times ten minutes apart by 14:40: the first by 14:20, 1260 s into the session. */
    @Test
    void itIsOverdueOnceWhatIsMissingNoLongerFitsBeforeItsHour() {
        Show show = show(asked(3, 10, LocalTime.of(14, 40)));
        Played played = Played.waiting();
        assertThat(at(show, played, 1260).untilS()).isEqualTo(1260);
        assertThat(at(show, played, 1260).state()).isEqualTo(DUE);
        assertThat(at(show, played, 1260.1).state()).isEqualTo(OVERDUE);
        assertThat(at(show, played, 1260.1).wanted()).isTrue();
        played.with(said(1300));
        assertThat(at(show, played, 1300).untilS()).isEqualTo(1860);
        assertThat(at(show, played, 1890).state()).isEqualTo(LATER);
        assertThat(at(show, played, 1900).state()).isEqualTo(OVERDUE);
        played.with(said(1900), said(2500));
        assertThat(at(show, played, 2600).state()).isEqualTo(DONE);
    }

    @Test
    void anHourAfterMidnightIsThatOfTheNight() {
        Show late = show(LocalTime.of(22, 0), asked(1, 1, LocalTime.of(0, 30)));
        // From 13:59 to half past midnight.
        assertThat(at(late, Played.waiting(), 0).untilS()).isEqualTo((10 * 60 + 31) * 60);
        Show early = show(LocalTime.of(12, 30), asked(1, 1, LocalTime.of(0, 30)));
        assertThat(at(early, Played.waiting(), 0).untilS()).isEqualTo(-(13 * 60 + 29) * 60);
    }

    @Test
    void whatComesAfterAnActWaitsUntilThatIsOver() {
        Show show = show(between("first", null));
        Played played = Played.waiting();
        assertThat(at(show, played, 5).state()).isEqualTo(LATER);
        assertThat(at(show, played, 5).fromS()).isNull();
        played.with(new FlightEvent.ActStarted(60));
        assertThat(at(show, played, 80).state()).isEqualTo(LATER);
        played.with(new FlightEvent.ActEnded(100));
        assertThat(at(show, played, 100).state()).isEqualTo(DUE);
    }

    @Test
    void whatComesBeforeAnActIsMissedOnceThatHasBegun() {
        Show show = show(between(null, "second"));
        Played played = over(Played.waiting(), "first", 60);
        // The slot of the second act is at 14:20.
        assertThat(at(show, played, 1260).state()).isEqualTo(DUE);
        assertThat(at(show, played, 1261).state()).isEqualTo(OVERDUE);
        played.with(new ShowEvent.ActsMoved(200, List.of("second"), 120));
        assertThat(at(show, played, 1380).state()).isEqualTo(DUE);
        played.with(
                new FlightEvent.ActChosen(1380, "second", "full", Played.FIGURES, (Double) null),
                new FlightEvent.ActStarted(1381));
        DutyNow missed = at(show, played, 1382);
        assertThat(missed.state()).isEqualTo(MISSED);
        assertThat(missed.wanted()).isFalse();
        assertThat(missed.missing()).isEqualTo(1);
    }

    @Test
    void whatWasSaidBeforeItsActIsDoneAndNotMissed() {
        Show show = show(between(null, "first"));
        Played played = Played.waiting().with(said(20), new FlightEvent.ActStarted(60));
        assertThat(at(show, played, 70).state()).isEqualTo(DONE);
    }

    @Test
    void aCancelledActCountsAsOverOnceTheNextHasBegun() {
        Show after = show(between("first", null));
        Show before = show(between(null, "first"));
        Played played = Played.waiting().with(new ShowEvent.ActCancelled(30, "first"));
        assertThat(at(after, played, 40).state()).isEqualTo(LATER);
        assertThat(at(before, played, 40).state()).isEqualTo(DUE);
        played.with(
                new FlightEvent.ActChosen(50, "second", "full", Played.FIGURES, (Double) null),
                new FlightEvent.ActStarted(60));
        assertThat(at(after, played, 61).state()).isEqualTo(DUE);
        assertThat(at(before, played, 61).state()).isEqualTo(MISSED);
    }

    @Test
    void ofTheLastActsCancelledNothingIsWaitedFor() {
        Show show = show(between("third", null));
        Played played = over(over(Played.waiting(), "first", 60), "second", 200);
        assertThat(at(show, played, 300).state()).isEqualTo(LATER);
        played.with(new ShowEvent.ActCancelled(310, "third"));
        assertThat(at(show, played, 311).state()).isEqualTo(DUE);
        played.with(new ShowEvent.ActRestored(320, "third"));
        assertThat(at(show, played, 321).state()).isEqualTo(LATER);
    }

    @Test
    void anActThatTheShowDoesNotHaveIsNotWaitedFor() {
        assertThat(at(show(between("gone", null)), Played.waiting(), 5).state()).isEqualTo(DUE);
        assertThat(at(show(between(null, "gone")), Played.waiting(), 5).state()).isEqualTo(DUE);
    }

    @Test
    void onlyBetweenActsMeansNotInTheAir() {
        Show show = show(new DutyTimes(1, null, null, null, null, false));
        assertThat(at(show, Played.waiting(), 5).wanted()).isTrue();
        DutyNow flying = at(show, Played.flying(), 105);
        assertThat(flying.state()).isEqualTo(DUE);
        assertThat(flying.wanted()).isFalse();
        assertThat(at(show, Played.flying().with(new FlightEvent.ActEnded(150)), 151)
                        .wanted())
                .isTrue();
        assertThat(at(show(DutyTimes.ONCE), Played.flying(), 105).wanted()).isTrue();
    }

    @Test
    void shownCountsAndAKeySoonAfterSaysThatItWasSaid() {
        Show show = show(asked(2, 10, null));
        Played played = Played.waiting().with(shown(100));
        assertThat(at(show, played, 101).told()).containsExactly(new Told(100, false));
        played.with(said(159));
        assertThat(at(show, played, 160).told()).containsExactly(new Told(100, true));
        played.with(shown(800), said(860));
        assertThat(at(show, played, 861).told())
                .containsExactly(new Told(100, true), new Told(800, false), new Told(860, true));
    }

    @Test
    void whatAKeySaidWhileItStoodThereIsNotShownOnceMore() {
        Show show = show(asked(2, 10, null));
        Played played = Played.waiting().with(said(99), shown(100));
        assertThat(at(show, played, 101).told()).containsExactly(new Told(99, true));
    }

    @Test
    void cutShortIsNotSaid() {
        Show show = show(DutyTimes.ONCE);
        Played played = Played.waiting()
                .with(
                        new TalkEvent.RemarkStarted(10, "duty", RemarkForm.FULL),
                        new TalkEvent.RemarkStarted(12, "fact", RemarkForm.FULL));
        assertThat(at(show, played, 13).state()).isEqualTo(DUE);
    }

    @Test
    void leftOutByAKeyItComesAgainInTheNextActAndIsNeverTakenForSaid() {
        Show show = show(DutyTimes.ONCE);
        Played played = Played.waiting().with(new TalkEvent.RemarkSkipped(10, "duty"));
        assertThat(at(show, played, 11).state()).isEqualTo(DUE);
        assertThat(at(show, played, 11).wanted()).isFalse();
        played.with(new FlightEvent.ActChosen(20, "second", "full", Played.FIGURES, (Double) null));
        assertThat(at(show, played, 21).wanted()).isTrue();
    }

    @Test
    void takingBackTakesTheTickBack() {
        Show show = show(DutyTimes.ONCE);
        Played played = Played.waiting().with(said(10), new LiveEvent.Undone(11));
        assertThat(at(show, played, 12).state()).isEqualTo(DUE);
    }

    /** The program is opened in the morning: what it shows then would be gone when the crowd is there. */
    @Test
    void longBeforeTheFirstActNobodyListens() {
        Show show = show(LocalTime.of(15, 0), asked(2, 5, null));
        Played played = Played.waiting();
        double heardS = 31 * 60;
        DutyNow early = at(show, played, 5);
        assertThat(early.state()).isEqualTo(LATER);
        assertThat(early.wanted()).isFalse();
        assertThat(early.fromS()).isEqualTo(heardS);
        assertThat(at(show, played, heardS + 1).wanted()).isTrue();
    }

    @Test
    void whoSpeaksAlreadyOrHasAnHourToKeepIsHeardEarlier() {
        assertThat(at(show(LocalTime.of(15, 0), asked(2, 5, LocalTime.of(14, 10))), Played.waiting(), 5)
                        .wanted())
                .as("by ten past two")
                .isTrue();
        Show show = show(LocalTime.of(15, 0), asked(2, 5, null));
        assertThat(at(show, Played.waiting().with(said(10)), 11).fromS())
                .as("said once, with a key")
                .isEqualTo(310);
        assertThat(at(show, Played.waiting().with(new ShowEvent.ActCancelled(10, "first")), 11)
                        .wanted())
                .as("the first act is cancelled")
                .isTrue();
        Show soon = show(LocalTime.of(14, 10), asked(2, 5, null));
        assertThat(at(soon, Played.waiting().with(new ShowEvent.ActsMoved(10, List.of("first"), 3600)), 11)
                        .wanted())
                .as("those who wait for a late start are there")
                .isTrue();
    }
}
