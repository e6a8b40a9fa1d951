package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.catalogue.Catalogue;
import java.util.function.Consumer;

/** Says which limits nothing can be checked against, as none is ever assumed. */
final class LimitRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        Venue.Limits limits = show.venue().limits();
        if (limits.equals(Venue.Limits.NONE)) {
            findings.accept(new Finding(
                    Severity.NOTE,
                    "no-limits",
                    "no limits are given, so no figure is checked against any; enter those the display director gave you",
                    "venue"));
        }
        Double baseFt = limits.baseFt();
        Double ceilingFt = limits.ceilingFt();
        if (baseFt != null && ceilingFt != null && ceilingFt <= baseFt) {
            findings.accept(new Finding(
                    Severity.ERROR,
                    "limits-crossed",
                    "the ceilingFt is " + ceilingFt + "; it must be above the baseFt, " + baseFt,
                    "venue.limits.ceilingFt"));
        }
    }
}
