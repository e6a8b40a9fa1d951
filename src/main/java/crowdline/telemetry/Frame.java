package crowdline.telemetry;

/**
 * What was cut out of a stream of bytes as one sentence, from its {@code $} or {@code !} on, without its line end.
 *
 * @param text printable ASCII
 * @param line on which it began, from 1, as the line ends before it count
 * @param end what ended it
 */
record Frame(String text, int line, End end) {
    enum End {
        /** The two digits of a checksum. */
        CHECKSUM,
        /** A line end before any checksum. */
        LINE_END,
        /** Another sentence, a byte that is no text, or the end of the bytes. */
        CUT,
        /** More than {@link Framer#LONGEST} characters. */
        TOO_LONG
    }
}
