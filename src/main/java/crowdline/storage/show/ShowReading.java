package crowdline.storage.show;

import crowdline.show.Show;
import crowdline.show.check.Finding;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What reading a show file gave.
 *
 * @param show the show, or null if something in the file stands in its way
 * @param document the file as it stands, needed to write the show back without losing anything
 * @param findings what was found, in the order of the file
 */
public record ShowReading(@Nullable Show show, ShowDocument document, List<LocatedFinding> findings) {
    public ShowReading {
        findings = List.copyOf(findings);
    }

    /** This reading with more findings, such as those of {@link crowdline.show.check.ShowRules}. */
    public ShowReading with(List<Finding> more) {
        List<LocatedFinding> all = new ArrayList<>(findings);
        all.addAll(document.locate(more));
        return new ShowReading(show, document, ShowDocument.sorted(all));
    }

    /** Whether anything found is an error. */
    public boolean blocked() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }
}
