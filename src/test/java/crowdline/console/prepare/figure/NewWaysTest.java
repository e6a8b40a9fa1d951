package crowdline.console.prepare.figure;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.draft.Drafted;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;

class NewWaysTest {
    private final Show show = Drafted.arranged(
                    Drafted.empty(), "light aerobatic biplane", "Ada Quillan", "loop\nstall turn\nslow roll\nlow pass")
            .show();
    private final Act act = show.acts().get(0);
    private final String variant = act.variants().get(0).name();
    private final List<Figure> flown = act.inOrder(act.variants().get(0));
    private final List<String> ways =
            flown.stream().filter(Figure::transit).map(Figure::id).toList();

    @Test
    void aWayThatWasPutInIsNamedWithTheFigureItLeadsTo() {
        String last = ways.get(ways.size() - 1);
        int at = flown.stream().map(Figure::id).toList().indexOf(last);
        assertThat(NewWays.of(ways.subList(0, ways.size() - 1), show, act.id(), variant))
                .isEqualTo("Put in to fit: “" + flown.get(at).shownName() + "” ahead of "
                        + flown.get(at + 1).shownName());
    }

    @Test
    void whereThereAreNoMoreWaysThanBeforeNothingIsSaid() {
        assertThat(NewWays.of(ways, show, act.id(), variant)).isEmpty();
        List<String> others = ways.stream().map(id -> "old " + id).toList();
        assertThat(NewWays.of(others, show, act.id(), variant)).isEmpty();
    }
}
