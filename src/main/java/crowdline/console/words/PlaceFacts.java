package crowdline.console.words;

import crowdline.sight.fact.CrowdFact;
import java.util.List;

/**
 * What was computed about an act or a figure.
 *
 * @param variant the variant of the act it was computed for
 * @param facts the most telling first
 * @param without why there are no more: a sentence for each fact that could not be made
 */
public record PlaceFacts(String variant, List<CrowdFact> facts, List<String> without) {
    public PlaceFacts {
        facts = List.copyOf(facts);
        without = List.copyOf(without);
    }
}
