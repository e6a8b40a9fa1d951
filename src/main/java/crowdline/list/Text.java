package crowdline.list;

/**
 * A text as it was written, and the same in small letters without accents; both are equally long.
 *
 * @param written as it was written
 * @param folded as it is compared
 */
record Text(String written, String folded) {
    static Text of(String written) {
        return new Text(written, Words.folded(written));
    }

    /** A stretch as it was written, without spaces and commas around it. */
    String piece(int from, int to) {
        int first = from;
        int last = to;
        while (first < last && isEdge(written.charAt(first))) {
            first++;
        }
        while (last > first && isEdge(written.charAt(last - 1))) {
            last--;
        }
        return written.substring(first, last);
    }

    private static boolean isEdge(char c) {
        return !Character.isLetterOrDigit(c) && "()'\"½¼¾°[]{}!?:@~’′″“”".indexOf(c) < 0;
    }
}
