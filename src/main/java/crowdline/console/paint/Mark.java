package crowdline.console.paint;

import crowdline.console.theme.Tone;

/**
 * A state as it is shown: always a shape and a word; the tone only adds to them.
 *
 * @param form the shape
 * @param tone how much it asks of the commentator
 * @param word the state in words
 */
public record Mark(Form form, Tone tone, String word) {
    public Mark {
        if (word.isBlank()) {
            throw new IllegalArgumentException("a mark needs a word beside its shape");
        }
    }
}
