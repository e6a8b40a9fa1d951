package crowdline.arrange;

import java.util.Locale;
import java.util.Set;

/** Ids as a person would write them. */
public final class FreshId {
    private static final int LONGEST = 40;

    private FreshId() {}

    /**
     * An id from words that is not taken yet, and is from now on.
     *
     * @param taken the ids there are; the new one is added
     */
    public static String of(String words, Set<String> taken) {
        String base = words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-+|-+$", "");
        base = base.isEmpty() ? "figure" : base.substring(0, Math.min(base.length(), LONGEST));
        String id = base;
        for (int i = 2; !taken.add(id); i++) {
            id = base + "-" + i;
        }
        return id;
    }
}
