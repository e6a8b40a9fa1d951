package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.act;
import static crowdline.edit.act.Edited.done;
import static crowdline.edit.act.Edited.id;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.edit.Touched;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class TouchedTest {
    private static final String FULL = "full";

    private final Figures figures = new Figures(CATALOGUE);
    private final Show show = Edited.solo();
    private final String actId = act(show).id();

    TouchedTest() throws CannotBe {}

    private void touches(Show before, Show after, String figure) {
        assertThat(Touched.figure(before, after))
                .contains(new RemarkPlace(actId, figure.isEmpty() ? null : id(after, figure)));
    }

    @Test
    void aPinTouchesItsFigureThoughTheLayoutFlewOthersOtherwise() throws CannotBe {
        Show pinned = done(show, figures.pin(actId, id(show, "slow roll"), new Pin.Height(1_400.0)));
        touches(show, pinned, "slow roll");
        touches(pinned, show, "slow roll");
    }

    @Test
    void whatIsMovedIsTouchedAndNotWhatItIsMovedPast() throws CannotBe {
        Show earlier = done(show, figures.move(actId, FULL, id(show, "spin"), -2));
        touches(show, earlier, "spin");
        touches(earlier, show, "spin");
        Show later = done(show, figures.move(actId, FULL, id(show, "loop"), 3));
        touches(show, later, "loop");
        touches(later, show, "loop");
    }

    @Test
    void aFigurePutInIsTouchedAndWhatStandsInThePlaceOfOneTakenOut() throws CannotBe {
        Show without = done(show, figures.remove(actId, FULL, id(show, "slow roll")));
        touches(without, show, "slow roll");
        touches(show, without, "spin");
    }

    @Test
    void wordsTouchTheirFigureAndASlotTheActAlone() {
        String spin = id(show, "spin");
        RemarkPlace place = new RemarkPlace(actId, spin);
        Show worded = place.with(show, List.of(Remark.of("r-new", RemarkKind.FACT, "Round it goes.")));
        touches(show, worded, "spin");
        assertThat(Touched.remarks(show, worded)).contains(place);
        Show moved = show.withAct(act(show).withSlot(LocalTime.of(9, 5), 12));
        touches(show, moved, "");
        assertThat(Touched.remarks(show, moved)).isEmpty();
        assertThat(Touched.figure(show, show)).isEmpty();
    }

    @Test
    void aCopyTakenBackTouchesTheActItWasMadeOf() throws CannotBe {
        Show copied = done(show, Acts.duplicate(actId));
        Show andOneMore = done(copied, Acts.duplicate(copied.acts().get(1).id()));
        touches(copied, show, "");
        assertThat(Touched.figure(andOneMore, copied))
                .contains(new RemarkPlace(copied.acts().get(1).id(), null));
        assertThat(Touched.figure(show, copied))
                .contains(new RemarkPlace(copied.acts().get(1).id(), null));
    }

    @Test
    void theFirstRemarkThatIsAnotherIsToldByItsNumber() {
        Remark a = Remark.of("a", RemarkKind.FACT, "A.");
        Remark b = Remark.of("b", RemarkKind.FACT, "B.");
        assertThat(Touched.first(List.of(a), List.of(a, b))).isEqualTo(1);
        assertThat(Touched.first(List.of(a, b), List.of(b))).isZero();
        assertThat(Touched.first(List.of(a, b), List.of(a))).isZero();
        assertThat(Touched.first(List.of(a), List.of())).isZero();
    }
}
