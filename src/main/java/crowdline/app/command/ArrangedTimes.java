package crowdline.app.command;

import crowdline.arrange.ShowArranging;
import crowdline.show.Act;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.ToldTimes;
import java.util.ArrayList;
import java.util.List;

/** When each figure of an act that was just made is flown: as it was laid out, or as the clock of its list has it. */
final class ArrangedTimes {
    private ArrangedTimes() {}

    static List<FigureTime> of(ShowArranging.Made made) {
        Act act = made.act();
        List<FigureTime> times = new ArrayList<>();
        double atS = 0;
        for (int i = 0; i < act.figures().size(); i++) {
            double seconds = made.arranged().times().get(i);
            times.add(new FigureTime(act.figures().get(i).id(), atS, seconds, seconds, seconds));
            atS += seconds;
        }
        return ToldTimes.of(act)
                .on(new ActTimes(act.id(), act.variants().get(0).name(), times))
                .figures();
    }
}
