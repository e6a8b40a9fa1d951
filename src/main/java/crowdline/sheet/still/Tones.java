package crowdline.sheet.still;

import crowdline.sight.picture.Facet.Tone;

/**
 * What an aircraft and its way are painted with, colours as 0xRRGGBB: its top always paler than its underside, whatever the
 * ground.
 *
 * @param pale the paler of ground and words
 * @param dark the other
 * @param nose what its nose is painted with
 * @param tail what its fin is painted with
 * @param edge round the aircraft
 * @param path its way
 * @param stage the sky
 * @param ground the earth
 * @param rule the edge of the earth
 */
public record Tones(int pale, int dark, int nose, int tail, int edge, int path, int stage, int ground, int rule) {
    /** Of a way that is seen through. */
    private static final double FAINT = 0.3;

    public int of(Tone tone) {
        return switch (tone) {
            case TOP -> shaded(0.1);
            case BAND -> shaded(0.15);
            case SIDE -> shaded(0.42);
            case UNDERSIDE -> shaded(0.75);
            case GLASS -> shaded(0.95);
            case NOSE -> nose;
            case TAIL -> tail;
        };
    }

    /** The upper side of what the wings sweep. */
    public int sweptTop() {
        return shaded(0.22);
    }

    public int sweptUnder() {
        return shaded(0.58);
    }

    /** The way of one among several. */
    public int way() {
        return mixed(path, stage, FAINT);
    }

    private int shaded(double darkness) {
        return mixed(pale, dark, darkness);
    }

    private static int mixed(int from, int to, double share) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int a = from >> shift & 0xff;
            int b = to >> shift & 0xff;
            mixed |= (int) Math.round(a + (b - a) * share) << shift;
        }
        return mixed;
    }
}
