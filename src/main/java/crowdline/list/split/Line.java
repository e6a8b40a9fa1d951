package crowdline.list.split;

/**
 * A line of a text.
 *
 * @param start where it begins
 * @param end where it ends, exclusive
 * @param words where its words begin, behind a number or a bullet
 * @param numbered whether it has one
 */
record Line(int start, int end, int words, boolean numbered) {
    boolean isBlank() {
        return words >= end;
    }
}
