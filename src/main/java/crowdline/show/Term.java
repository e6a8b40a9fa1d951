package crowdline.show;

import crowdline.show.bounds.Most;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One word of the trade explained, beside the figures of the catalogue.
 *
 * @param name as the trade says it
 * @param aliases other names for the same thing
 * @param group what it belongs with, such as "formation"
 * @param whatItIs what it means, in plain words
 * @param atTheShow what to see, hear or say of it at a display; empty if there is nothing
 * @param sayIt how to say the name, where a reader would get it wrong; else empty
 * @param see names of other terms and of figures to read next
 * @param source where the text comes from: a published handbook with its section, or "common practice"; null for a term of a
 *     show that does not say
 */
public record Term(
        String name,
        List<String> aliases,
        String group,
        String whatItIs,
        String atTheShow,
        String sayIt,
        List<String> see,
        @Nullable String source) {
    /** The group of a show's own words that name none. */
    public static final String OWN_GROUP = "our own words";

    public Term {
        Most.mustBeText("name of a term", name);
        Most.mustBeText("group of " + name, group);
        Most.mustBeText("whatItIs of " + name, whatItIs);
        Most.ALIASES.must(aliases);
        Most.SEE.must(see);
        aliases = List.copyOf(aliases);
        see = List.copyOf(see);
    }

    /** A show's own word and what it means. */
    public static Term own(String name, String whatItIs) {
        return new Term(name, List.of(), OWN_GROUP, whatItIs, "", "", List.of(), null);
    }
}
