package crowdline.edit.act;

import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import java.util.List;

/** Where the aircraft stands on the ground nothing can be flown: a take-off comes first, a landing last. */
final class OnTheGround {
    private static final String TAKE_OFF = "take-off";
    private static final String LANDING = "landing";

    private OnTheGround() {}

    static boolean isLanding(Figure figure) {
        return figure.figure().equals(LANDING);
    }

    /**
     * Refuses an edit that puts something there.
     *
     * @param before the act as it was: what its list put there already is no reason to refuse whatever else is edited
     */
    static void check(Act before, Act act) throws CannotBe {
        try {
            check(before);
        } catch (CannotBe e) {
            return;
        }
        check(act);
    }

    private static void check(Act act) throws CannotBe {
        for (Variant variant : act.variants()) {
            check(act.inOrder(variant).stream().filter(f -> !f.transit()).toList());
        }
    }

    private static void check(List<Figure> order) throws CannotBe {
        Figure before = null;
        for (Figure figure : order) {
            if (before == null) {
                before = figure;
                continue;
            }
            boolean down = isLanding(before);
            if (figure.figure().equals(TAKE_OFF) && !down) {
                throw new CannotBe(
                        "The take-off comes first; " + Found.brief(before.shownName()) + " cannot be flown before it");
            }
            if (down && !figure.figure().equals(TAKE_OFF)) {
                throw new CannotBe(
                        "The landing comes last; " + Found.brief(figure.shownName()) + " cannot be flown after it");
            }
            before = figure;
        }
    }
}
