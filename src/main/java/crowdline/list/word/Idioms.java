package crowdline.list.word;

import java.util.regex.Pattern;

/** Set phrases whose words mean something else alone: in "land in turn" nobody turns, and the "tea break" breaks no formation. */
final class Idioms {
    private static final Pattern IDIOM = Pattern.compile(
            "\\b(?:(?<!nose[ -])in turn\\b|by turns\\b|(?:tea|lunch|coffee|comfort|short|half-?time) break\\b|half term\\b|bank holiday\\b|(?<!(?:turn|bank|roll|spin|break|the|to) )right (?=over |above |along |past |across |through |overhead |up to |down to |next to |by the |in the middle))");

    private Idioms() {}

    /** The text, as long as it was, with spaces in place of them. */
    static String without(String folded) {
        return IDIOM.matcher(folded)
                .replaceAll(found -> " ".repeat(found.group().length()));
    }
}
