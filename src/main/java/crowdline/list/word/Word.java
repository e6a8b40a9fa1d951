package crowdline.list.word;

import org.jspecify.annotations.Nullable;

/**
 * One word, number or sign of a text.
 *
 * @param plain the form in which two ways of writing it are one: "rolls" is "roll", "½" is "half", "four" is "4"
 * @param start where it begins in the text
 * @param end where it ends, exclusive
 * @param number what it counts, or null if it is no number
 */
public record Word(
        String plain, int start, int end, @Nullable Double number) {

    /** The same, as if it began earlier. */
    public Word standingAt(int earlier) {
        return new Word(plain, earlier, end, number);
    }

    /** The same in another spelling. */
    public Word spelt(String other) {
        return new Word(other, start, end, number);
    }
}
