package crowdline.sight.picture;

/**
 * What there is to see at one moment.
 *
 * @param atS seconds since the act began
 * @param words such as "over the top, nearly floating"
 */
public record Caption(double atS, String words) {
    static final Caption NONE = new Caption(0, "");
}
