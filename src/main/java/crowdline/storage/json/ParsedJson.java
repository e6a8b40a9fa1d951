package crowdline.storage.json;

import crowdline.show.check.Finding;
import crowdline.storage.file.Where;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * What became of a text read as JSON.
 *
 * @param root the tree, or null if the text could not be read to its end
 * @param places where each value and, under its path with {@link #KEY_MARK}, each key begins
 * @param findings what was wrong with the text, with their places
 * @param spoilt paths whose value was already refused, so that nothing more need be said about it
 */
public record ParsedJson(
        @Nullable JsonNode root, Map<String, Where> places, List<PlacedFinding> findings, Set<String> spoilt) {

    /** Marks the path of a key, as against that of its value. */
    public static final String KEY_MARK = " key";

    /** A finding whose place is known before there are places to look it up in. */
    public record PlacedFinding(Finding finding, Where where) {}
}
