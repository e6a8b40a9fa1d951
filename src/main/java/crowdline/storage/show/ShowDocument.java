package crowdline.storage.show;

import crowdline.show.check.Finding;
import crowdline.show.check.LocatedFinding;
import crowdline.storage.file.Where;
import crowdline.storage.json.ParsedJson;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * A show file as it stands on the disk: what a show has no place for, so that it survives when the show is written, and
 * where everything is.
 */
public final class ShowDocument {
    private final Path file;
    private final @Nullable JsonNode root;
    private final Map<String, Where> places;
    private final Set<String> unknownKeys;

    ShowDocument(Path file, @Nullable JsonNode root, Map<String, Where> places, Set<String> unknownKeys) {
        this.file = file;
        this.root = root;
        this.places = Map.copyOf(places);
        this.unknownKeys = Set.copyOf(unknownKeys);
    }

    /** The file it was read from, as it was named. */
    public Path file() {
        return file;
    }

    @Nullable
    JsonNode root() {
        return root;
    }

    /** Paths of the keys the program knows nothing about. */
    Set<String> unknownKeys() {
        return unknownKeys;
    }

    /** The findings with their places, in the order of the file. What has no place of its own stands where its parent does. */
    public List<LocatedFinding> locate(List<Finding> findings) {
        List<LocatedFinding> located = new ArrayList<>();
        findings.forEach(finding -> located.add(locate(finding)));
        return sorted(located);
    }

    /** One finding with its place. */
    public LocatedFinding locate(Finding finding) {
        boolean aboutKey = finding.code().equals("unknown-key");
        return at(finding, place(aboutKey ? finding.path() + ParsedJson.KEY_MARK : finding.path()));
    }

    LocatedFinding at(Finding finding, Where where) {
        return new LocatedFinding(
                finding.severity(),
                finding.code(),
                finding.message(),
                file.toString(),
                where.line(),
                where.column(),
                finding.path());
    }

    private Where place(String path) {
        String here = path;
        while (!here.isEmpty()) {
            Where where = places.get(here);
            if (where != null) {
                return where;
            }
            here = here.substring(0, Math.max(0, Math.max(here.lastIndexOf('.'), here.lastIndexOf('['))));
        }
        return places.getOrDefault("", Where.START);
    }

    static List<LocatedFinding> sorted(List<LocatedFinding> findings) {
        return findings.stream()
                .sorted(Comparator.comparingInt(LocatedFinding::line).thenComparingInt(LocatedFinding::column))
                .toList();
    }
}
