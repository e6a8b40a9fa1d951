package crowdline.show;

import crowdline.show.bounds.Most;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who flies.
 *
 * @param id stable, unique within the show
 * @param name as written
 * @param sayAs how to say the name, or null if it is said as written
 * @param facts what is known about them, each with where it comes from
 */
public record Performer(String id, String name, @Nullable String sayAs, List<SourcedFact> facts) {

    /** A fact and who vouches for it. */
    public record SourcedFact(String text, String source) {
        public SourcedFact {
            Most.mustBeText("fact text", text);
            Most.mustBeText("fact source", source);
        }
    }

    public Performer {
        Most.mustBeText("performer id", id);
        Most.mustBeText("performer name", name);
        Most.FACTS.must(facts);
        facts = List.copyOf(facts);
    }
}
