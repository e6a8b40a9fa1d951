package crowdline.console.edit;

import crowdline.sight.CrowdFact;
import java.util.List;

/**
 * What was computed about an act or a figure.
 *
 * @param variant the variant of the act it was computed for
 * @param facts the most telling first
 */
public record PlaceFacts(String variant, List<CrowdFact> facts) {
    public PlaceFacts {
        facts = List.copyOf(facts);
    }
}
