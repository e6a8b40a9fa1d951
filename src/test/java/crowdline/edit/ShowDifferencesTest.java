package crowdline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShowDifferencesTest {
    private static final Show SHOW = SmallShow.show();
    private static final RemarkPlace LOOP = new RemarkPlace("a1", "f1");

    private static Show with(Act act) {
        return SHOW.withActs(List.of(act), SHOW.remarks());
    }

    @Test
    void theSameShowHasNone() {
        assertThat(ShowDifferences.of(SHOW, SHOW)).isEmpty();
    }

    @Test
    void aRemarkWrittenOtherwiseAddedOrDeletedIsSaidWithItsFigure() {
        List<Remark> remarks = new ArrayList<>(LOOP.in(SHOW));
        remarks.set(0, Remark.of(remarks.get(0).id(), RemarkKind.CALL, "Here comes the loop."));
        remarks.remove(2);
        remarks.add(Remark.of("r-new", RemarkKind.FACT, "Quite new."));
        assertThat(ShowDifferences.of(SHOW, LOOP.with(SHOW, remarks)))
                .containsExactly(
                        "“The Calder display”: Loop, remark “Now a loop.” is now “Here comes the loop.”",
                        "“The Calder display”: Loop, remark “It is two hundred metres high.” is not in it",
                        "“The Calder display”: Loop, remark “Quite new.” is new in it");
    }

    @Test
    void actsAndFiguresAreSaidByName() {
        Act act = SHOW.acts().get(0);
        List<Figure> figures = act.figures().subList(0, 2);
        assertThat(ShowDifferences.of(SHOW, with(act.withFigures(figures, act.remarks()))))
                .containsExactly("“The Calder display”: figure Low pass is not in it");
        assertThat(ShowDifferences.of(SHOW, with(act.withTitle("Another").withSlot(LocalTime.of(15, 0), 12))))
                .containsExactly(
                        "“The Calder display”: the title is “Another” in it, not “The Calder display”",
                        "“The Calder display”: the slot is “15:00, 12.0 min” in it, not “14:30, 12.0 min”");
        assertThat(ShowDifferences.of(SHOW, SHOW.withActs(List.of(), SHOW.remarks())))
                .containsExactly("Act The Calder display is not in it");
        assertThat(ShowDifferences.of(SHOW.withActs(List.of(), SHOW.remarks()), SHOW))
                .containsExactly("Act The Calder display is new in it");
    }

    @Test
    void anythingElseThatDiffersIsSaidToo() {
        assertThat(ShowDifferences.of(SHOW, SHOW.withAir(new DayAir(990, 1, 2, 3, null))))
                .containsExactly("The air of the day is different");
    }
}
