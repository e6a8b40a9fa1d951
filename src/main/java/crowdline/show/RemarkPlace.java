package crowdline.show;

import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Where remarks belong: to the whole show, an act, or a figure of an act.
 *
 * @param actId the act, or null for the whole show
 * @param figureId the figure, or null for the whole act
 */
public record RemarkPlace(@Nullable String actId, @Nullable String figureId) {
    public static final RemarkPlace SHOW = new RemarkPlace(null, null);

    public RemarkPlace {
        if (actId == null && figureId != null) {
            throw new IllegalArgumentException("the figure " + figureId + " needs its act");
        }
    }

    /** Every place of a show: the show, then each act with its figures in the order written. */
    public static List<RemarkPlace> all(Show show) {
        List<RemarkPlace> places = new ArrayList<>();
        places.add(SHOW);
        for (Act act : show.acts()) {
            places.add(new RemarkPlace(act.id(), null));
            act.figures().forEach(figure -> places.add(new RemarkPlace(act.id(), figure.id())));
        }
        return places;
    }

    /** The remarks here; none if the show has no such place. */
    public List<Remark> in(Show show) {
        if (actId == null) {
            return show.remarks();
        }
        return show.act(actId)
                .map(act -> figureId == null
                        ? act.remarks()
                        : act.figure(figureId).map(Figure::remarks).orElse(List.of()))
                .orElse(List.of());
    }

    /** The show with other remarks here and everything else as it was. */
    public Show with(Show show, List<Remark> remarks) {
        if (actId == null) {
            return show.withActs(show.acts(), remarks);
        }
        UnaryOperator<Act> change = act -> figureId == null
                ? act.withFigures(act.figures(), remarks)
                : act.withFigures(
                        act.figures().stream()
                                .map(f -> f.id().equals(figureId) ? f.withRemarks(remarks) : f)
                                .toList(),
                        act.remarks());
        List<Act> acts = show.acts().stream()
                .map(act -> act.id().equals(actId) ? change.apply(act) : act)
                .toList();
        return show.withActs(acts, show.remarks());
    }

    /** The id of what remarks here belong to. */
    public String ownerId() {
        return figureId != null ? figureId : actId != null ? actId : "show";
    }

    /** What a remark added here is: a call where a figure has none yet, an explanation in a figure, else a fact. */
    public RemarkKind kindOfNew(Show show) {
        boolean called = in(show).stream().anyMatch(r -> r.kind() == RemarkKind.CALL);
        return figureId == null ? RemarkKind.FACT : called ? RemarkKind.EXPLANATION : RemarkKind.CALL;
    }

    /** An id that no remark of the show has, from where it belongs and its kind. */
    public String freshId(Show show, RemarkKind kind) {
        return freshId(show, kind.name().toLowerCase(Locale.ROOT));
    }

    /** An id that no remark of the show has, from where it belongs and what it is. */
    public String freshId(Show show, String what) {
        Set<String> taken = show.remarkIds();
        String base = ownerId() + "-" + what;
        String id = base;
        for (int i = 2; taken.contains(id); i++) {
            id = base + "-" + i;
        }
        return id;
    }
}
