package crowdline.list.about;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Between which heights a letter says the act is flown: "Base 500, ceiling 2500 ft". They are judged, and set nothing. */
public final class Heights {
    private static final String IS =
            "\\s*(?:is|at|of|:|=|-|–)?\\s*(\\d{1,2}[,.]?\\d{3}|\\d{3})\\b(?![.,:]?\\d|\\s*(?:kt|kn|mph|km|m\\b|s\\b|sec|min|hp|kg))";
    private static final Pattern BASE =
            Pattern.compile("\\b(?<!cloud )(?:base|floor|minimum height|min(?:\\.|imum)? height)" + IS);
    private static final Pattern CEILING =
            Pattern.compile("\\b(?:ceiling|cloud ?base|max(?:\\.|imum)? height|not above)" + IS);

    private Heights() {}

    /**
     * What cannot be in them, in a sentence; empty if nothing is wrong, or nothing said.
     *
     * @param letter as it was written
     */
    public static Optional<String> contradiction(String letter) {
        String text = letter.toLowerCase(Locale.UK);
        Integer base = first(BASE, text);
        Integer ceiling = first(CEILING, text);
        return base == null || ceiling == null || ceiling > base
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.UK,
                        "The list says a base of %,d ft, and a ceiling of %,d ft that is no higher; ask the pilot which is meant."
                                + " Neither was used: the heights of the place are typed under Show in Prepare",
                        base,
                        ceiling));
    }

    /** Feet; null if none is said. */
    private static @Nullable Integer first(Pattern said, String text) {
        Matcher found = said.matcher(text);
        return found.find() ? Integer.valueOf(found.group(1).replaceAll("[,.]", "")) : null;
    }
}
