package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.state.Played;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Speaking;
import crowdline.show.Act;
import crowdline.show.HarbourDay;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** An act begun at 100 s with a loop of 10 s; a full call takes 5 s, a short one 2 s. */
class IntroductionTest {
    private final Introduction introduction = new Introduction((remark, form) -> form == RemarkForm.FULL ? 5 : 2);

    private static Figure figure(String id, @Nullable String shorter) {
        Remark call = new Remark(
                id + "-call", RemarkKind.CALL, "Here it comes.", shorter, null, null, null, null, 1, false, false);
        return Figure.of(id, "loop").withRemarks(List.of(call));
    }

    private static Act act(@Nullable String shorter) {
        return HarbourDay.act("first", LocalTime.NOON, List.of(figure("loop", shorter), figure("roll", "A roll.")));
    }

    private Optional<Speaking> due(Act act, Played played, double nowS, Set<String> done) {
        return introduction.due(act, played.state, played.at(nowS), done, Optional.empty());
    }

    private Optional<Speaking> due(Played played, double nowS) {
        return due(act(null), played, nowS, Set.of());
    }

    private static Speaking said(RemarkForm form, double fromS) {
        return new Speaking("loop-call", form, fromS, false);
    }

    @Test
    void isDueInTheFirstFigureAsLongAsItCanBeOverWithIt() {
        assertThat(due(Played.waiting(), 99)).isEmpty();
        assertThat(due(Played.flying(), 100)).contains(said(RemarkForm.FULL, 100));
        assertThat(due(Played.flying(), 105)).contains(said(RemarkForm.FULL, 105));
        assertThat(due(Played.flying(), 105.5)).isEmpty();
        assertThat(due(Played.flying().with(new FlightEvent.Stepped(103)), 103)).isEmpty();
    }

    /** Of the 10 s the next call needs 3.6 s, with the breath before it and a second to look up. */
    @Test
    void isShortWhereTheNextCallWouldFindNoTime() {
        assertThat(due(act("Ada."), Played.flying(), 101, Set.of())).contains(said(RemarkForm.FULL, 101));
        assertThat(due(act("Ada."), Played.flying(), 102, Set.of())).contains(said(RemarkForm.SHORT, 102));
        assertThat(due(act("Ada."), Played.flying(), 108, Set.of())).contains(said(RemarkForm.SHORT, 108));
        assertThat(due(act("Ada."), Played.flying(), 108.5, Set.of())).isEmpty();
    }

    @Test
    void isNotDueOnceSaidNorInFrontOfTheIncidentPage() {
        assertThat(due(act(null), Played.flying(), 101, Set.of("loop-call"))).isEmpty();
        assertThat(due(Played.flying().with(new IncidentEvent.IncidentOpened(100.5)), 101))
                .isEmpty();
    }

    @Test
    void goesOnAsItWasBegun() {
        Placed shown = new Placed("loop-call", "loop", RemarkKind.CALL, RemarkForm.FULL, 99, 104, false);
        Plan plan = new Plan(List.of(shown), List.of(), 0, 0, true);
        Played played = Played.flying();
        assertThat(introduction.due(act("Ada."), played.state, played.at(102), Set.of(), Optional.of(plan)))
                .contains(said(RemarkForm.FULL, 99));
    }
}
