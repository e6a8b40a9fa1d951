package crowdline.console.path;

import crowdline.console.theme.Palette;
import crowdline.sight.picture.Facet.Tone;
import java.awt.Color;

/**
 * What an aircraft is painted with in a theme: its top always paler than its underside, whatever the ground.
 *
 * @param pale the paler of the theme's ground and words
 * @param dark the other
 * @param nose what its nose is painted with
 * @param tail what its fin is painted with
 */
record Tones(Color pale, Color dark, Color nose, Color tail) {
    static Tones of(Palette palette) {
        boolean darkWords = sum(palette.text()) < sum(palette.stage());
        return new Tones(
                darkWords ? palette.stage() : palette.text(),
                darkWords ? palette.text() : palette.stage(),
                palette.accent(),
                palette.alarm());
    }

    Color of(Tone tone) {
        return switch (tone) {
            case TOP -> mixed(0.1);
            case BAND -> mixed(0.15);
            case SIDE -> mixed(0.42);
            case UNDERSIDE -> mixed(0.75);
            case GLASS -> mixed(0.95);
            case NOSE -> nose;
            case TAIL -> tail;
        };
    }

    /** The upper side of what the wings sweep. */
    Color sweptTop() {
        return mixed(0.22);
    }

    Color sweptUnder() {
        return mixed(0.58);
    }

    private Color mixed(double darkness) {
        return new Color(
                part(pale.getRed(), dark.getRed(), darkness),
                part(pale.getGreen(), dark.getGreen(), darkness),
                part(pale.getBlue(), dark.getBlue(), darkness));
    }

    private static int part(int pale, int dark, double darkness) {
        return (int) Math.round(pale + (dark - pale) * darkness);
    }

    private static int sum(Color colour) {
        return colour.getRed() + colour.getGreen() + colour.getBlue();
    }
}
