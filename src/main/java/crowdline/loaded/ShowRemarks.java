package crowdline.loaded;

import crowdline.show.Act;
import crowdline.show.Show;
import java.util.List;

/** A show without what is said of it. */
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
}
