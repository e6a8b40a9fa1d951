package crowdline.app;

import crowdline.show.Act;
import crowdline.show.Figure;
import crowdline.show.Remark;
import crowdline.show.Show;
import java.util.HashMap;
import java.util.Map;

/** The remarks of a show by their ids. */
final class RemarksOf {
    private RemarksOf() {}

    static Map<String, Remark> byId(Show show) {
        Map<String, Remark> remarks = new HashMap<>();
        show.remarks().forEach(r -> remarks.put(r.id(), r));
        for (Act act : show.acts()) {
            act.remarks().forEach(r -> remarks.put(r.id(), r));
            for (Figure figure : act.figures()) {
                figure.remarks().forEach(r -> remarks.put(r.id(), r));
            }
        }
        return remarks;
    }
}
