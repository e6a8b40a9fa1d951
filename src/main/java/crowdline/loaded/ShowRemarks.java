package crowdline.loaded;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The remarks of a show by their ids. */
public final class ShowRemarks {
    private ShowRemarks() {}

    /** The show without a remark: two shows that differ in their words alone are the same without them. */
    public static Show none(Show show) {
        return show.withActs(show.acts().stream().map(ShowRemarks::none).toList(), List.of());
    }

    private static Act none(Act act) {
        return act.withFigures(
                act.figures().stream().map(f -> f.withRemarks(List.of())).toList(), List.of());
    }

    public static Map<String, Remark> byId(Show show) {
        Map<String, Remark> remarks = new HashMap<>();
        show.everyRemark().forEach(r -> remarks.put(r.id(), r));
        return remarks;
    }
}
