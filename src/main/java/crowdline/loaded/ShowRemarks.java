package crowdline.loaded;

import crowdline.show.Act;
import crowdline.show.Figure;
import crowdline.show.Remark;
import crowdline.show.Show;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The remarks of a show by their ids. */
public final class ShowRemarks {
    private ShowRemarks() {}

    /** The show without a remark: two shows that differ in their words alone are the same without them. */
    public static Show none(Show s) {
        return new Show(
                s.title(),
                s.date(),
                s.venue(),
                s.air(),
                s.airframes(),
                s.performers(),
                s.acts().stream().map(ShowRemarks::none).toList(),
                List.of(),
                s.figures(),
                s.sayAs(),
                s.incident());
    }

    private static Act none(Act a) {
        List<Figure> silent = a.figures().stream()
                .map(f -> new Figure(
                        f.id(),
                        f.figure(),
                        f.title(),
                        f.look(),
                        f.elements(),
                        f.durationS(),
                        f.exit(),
                        f.minEntryKt(),
                        f.quiets(),
                        List.of()))
                .toList();
        return new Act(
                a.id(),
                a.title(),
                a.performer(),
                a.airframe(),
                a.slotStart(),
                a.slotMinutes(),
                a.entry(),
                silent,
                a.variants(),
                List.of());
    }

    public static Map<String, Remark> byId(Show show) {
        Map<String, Remark> remarks = new HashMap<>();
        show.everyRemark().forEach(r -> remarks.put(r.id(), r));
        return remarks;
    }
}
