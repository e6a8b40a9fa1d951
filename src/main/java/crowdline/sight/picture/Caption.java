package crowdline.sight.picture;

import crowdline.show.figure.MomentKind;

/**
 * What there is to see at one moment.
 *
 * @param atS seconds since the act began
 * @param kind what it is
 * @param words such as "over the top, nearly floating"
 */
public record Caption(double atS, MomentKind kind, String words) {
    static final Caption NONE = new Caption(0, MomentKind.BEGINS, "");
}
