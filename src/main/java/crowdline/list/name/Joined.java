package crowdline.list.name;

import crowdline.list.word.Rows;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Figures of which the first is only the beginning of the second: {@code joined.txt}. */
public final class Joined {
    /**
     * What two are together.
     *
     * @param figure the catalogue's name
     * @param rolls how many rolls the second word has, or null if it has none or says so itself
     * @param onlyAtTheEnd whether they are two where something follows
     */
    public record Whole(String figure, @Nullable Double rolls, boolean onlyAtTheEnd) {}

    private record Pair(String first, String second) {}

    /** Behind two that are one only where nothing follows. */
    private static final String AT_THE_END = " .";

    private final Map<Pair, Whole> wholes = new HashMap<>();

    Joined(Catalogue catalogue) {
        for (String row : Rows.of("joined.txt")) {
            String[] sides = row.split(" = ", 2);
            String[] pair = sides[0].replace(AT_THE_END, "").split(" \\+ ", 2);
            String[] whole = sides[1].split(" x ", 2);
            Double rolls = whole.length > 1 ? Double.valueOf(whole[1]) : null;
            catalogue
                    .find(whole[0])
                    .map(CatalogueEntry::name)
                    .ifPresent(name -> wholes.put(
                            new Pair(pair[0], pair[1]), new Whole(name, rolls, sides[0].endsWith(AT_THE_END))));
        }
    }

    /** What both are, or null if they are two. */
    @Nullable
    public Whole of(String first, String second) {
        return wholes.get(new Pair(first, second));
    }
}
