package crowdline.list.split;

/**
 * A stretch of a text that may hold one figure.
 *
 * @param start where it begins, with what parts it from the one before
 * @param from where its own words begin
 * @param to where they end, exclusive
 * @param end where it ends, with a full stop or colon
 * @param parting what parts it from the one before
 */
public record Piece(int start, int from, int to, int end, Parting parting) {
    /** How two pieces are parted. */
    public enum Parting {
        /** By the line's beginning, or a sentence's. */
        LINE,
        /** By a comma, an arrow, or a word such as "into". */
        COMMA,
        /** By "then" or another word that leads on to what is flown next. */
        THEN,
        /** By a dash, a colon or a tab, which may as well lead to what is said of the same figure. */
        DASH
    }
}
