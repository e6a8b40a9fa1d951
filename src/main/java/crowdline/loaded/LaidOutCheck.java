package crowdline.loaded;

import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.show.Act;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.Optional;
import java.util.Set;

/**
 * Whether an act still comes out as it was laid out. The layout leaves nothing too low, too hard or over the display line;
 * what it drew for one air does not do so in another, as the pilot would fly it otherwise there.
 */
final class LaidOutCheck {
    static final String CODE = "laid-out-for-other-air";

    private static final Set<String> NEVER_LAID_OUT =
            Set.of("over-load-limit", "below-ground", "below-base", "crosses-display-line");

    private LaidOutCheck() {}

    /** @param path where the act stands in the show */
    static Optional<Finding> of(Act act, Flight flight, String path) {
        boolean otherwise = flight.findings().stream()
                .filter(f -> NEVER_LAID_OUT.contains(f.code()))
                .map(FlightFinding::figureId)
                .flatMap(id -> act.figure(id).stream())
                .anyMatch(LaidOutCheck::isFree);
        return !otherwise
                ? Optional.empty()
                : Optional.of(new Finding(
                        Severity.WARNING,
                        CODE,
                        "\"" + act.title()
                                + "\" was laid out for other air, or another aircraft, than it is flown in now; \"Lay"
                                + " the act out\" in Prepare draws afresh whatever is not pinned",
                        path));
    }

    /** Whether the layout drew it: a shape of somebody's own is flown as it stands. */
    private static boolean isFree(Figure figure) {
        Asked asked = figure.asked();
        return figure.transit() || (asked != null && !asked.ownShape());
    }
}
