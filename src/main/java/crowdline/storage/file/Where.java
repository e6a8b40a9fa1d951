package crowdline.storage.file;

/**
 * A place in a text file.
 *
 * @param line counted from 1; 0 if there is no place
 * @param column counted from 1 in characters; 0 if there is no place
 */
public record Where(int line, int column) {
    public static final Where START = new Where(1, 1);
}
