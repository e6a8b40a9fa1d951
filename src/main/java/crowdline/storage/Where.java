package crowdline.storage;

/**
 * A place in a text file.
 *
 * @param line counted from 1; 0 if there is no place
 * @param column counted from 1 in characters; 0 if there is no place
 */
record Where(int line, int column) {
    static final Where START = new Where(1, 1);
}
