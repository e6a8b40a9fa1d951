package crowdline.sight;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;

/**
 * How large something looks.
 *
 * @param degrees the angle it fills, 0 or more
 */
public record ApparentSize(double degrees) {
    private static final Map<Everyday, String> LIKE = new EnumMap<>(Map.of(
            Everyday.MATCH_HEAD, "a match head at arm's length",
            Everyday.FULL_MOON, "the full moon",
            Everyday.LITTLE_FINGER, "a little finger at arm's length",
            Everyday.POUND_COIN, "a pound coin at arm's length",
            Everyday.THREE_FINGERS, "three fingers at arm's length",
            Everyday.FIST_WIDTH, "a fist at arm's length",
            Everyday.OPEN_HAND, "an open hand at arm's length"));

    /**
     * Seen square on: 2 atan(size / 2 distance).
     *
     * @param sizeM how large it is, metres
     * @param slantM how far away, metres, above 0
     */
    public static ApparentSize of(double sizeM, double slantM) {
        return new ApparentSize(2 * Math.toDegrees(Math.atan2(sizeM / 2, slantM)));
    }

    /** What looks as wide, such as "the full moon" or "a fist at arm's length": the nearest by ratio. */
    public String like() {
        return LIKE.entrySet().stream()
                .min(Comparator.comparingDouble(e ->
                        Math.abs(Math.log(Math.max(degrees, 1e-9) / e.getKey().value()))))
                .orElseThrow()
                .getValue();
    }
}
