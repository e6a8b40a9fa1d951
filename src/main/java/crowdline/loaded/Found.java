package crowdline.loaded;

import java.util.List;

/**
 * Something of the day that was found by a few letters.
 *
 * @param name how it is called; of a fact, what it is about
 * @param sayIt how to say the name, where a reader would get it wrong; else empty
 * @param texts what is said of it, the most telling first
 */
public record Found(Kind kind, String name, String sayIt, List<String> texts) {

    /** What it is. Of two found as well as each other the one before comes first. */
    public enum Kind {
        /** A person, an aircraft or a word with a way of saying it. */
        NAME,
        ACT,
        FIGURE,
        /** A word of the trade. */
        WORD,
        FACT
    }

    public Found {
        texts = List.copyOf(texts);
    }
}
