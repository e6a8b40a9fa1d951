package crowdline.speech.plain;

/**
 * A part of a text.
 *
 * @param fromChar its first character
 * @param toChar the character after its last
 */
public record TextSpan(int fromChar, int toChar) {

    public TextSpan {
        if (fromChar < 0 || toChar < fromChar) {
            throw new IllegalArgumentException(
                    "a span needs 0 <= from <= to, but got from " + fromChar + " to " + toChar);
        }
    }

    public String in(String text) {
        return text.substring(fromChar, toChar);
    }
}
