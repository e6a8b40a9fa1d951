package crowdline.console.prepare.figure;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;

/** What an edit put between two figures: it may take longer than either of them. */
final class NewWays {
    private NewWays() {}

    /**
     * In a sentence; empty where there are no more ways than before.
     *
     * @param before ids of the ways that were there
     */
    static String of(List<String> before, Show after, String actId, String variantName) {
        Act act = after.act(actId).orElse(null);
        Variant variant = act == null ? null : act.variant(variantName).orElse(null);
        if (act == null || variant == null) {
            return "";
        }
        List<Figure> flown = act.inOrder(variant);
        List<String> said = new ArrayList<>();
        for (int i = 0; i < flown.size(); i++) {
            Figure way = flown.get(i);
            if (way.transit() && !before.contains(way.id())) {
                said.add("“" + way.shownName() + "”"
                        + (i + 1 < flown.size()
                                ? " ahead of " + flown.get(i + 1).shownName()
                                : " at the end"));
            }
        }
        boolean isMore = flown.stream().filter(Figure::transit).count() > before.size();
        return !isMore || said.isEmpty() ? "" : "Put in to fit: " + String.join(", ", said);
    }
}
