package crowdline.console.path;

import crowdline.console.theme.Palette;
import crowdline.sheet.still.Tones;
import java.awt.Color;

/** What an aircraft and its way are painted with in a theme. */
final class PaletteTones {
    private PaletteTones() {}

    static Tones of(Palette palette) {
        boolean darkWords = sum(palette.text()) < sum(palette.stage());
        return new Tones(
                rgb(darkWords ? palette.stage() : palette.text()),
                rgb(darkWords ? palette.text() : palette.stage()),
                rgb(palette.accent()),
                rgb(palette.alarm()),
                rgb(palette.text()),
                rgb(palette.path()),
                rgb(palette.stage()),
                rgb(palette.sunk()),
                rgb(palette.rule()));
    }

    private static int rgb(Color colour) {
        return colour.getRGB() & 0xffffff;
    }

    private static int sum(Color colour) {
        return colour.getRed() + colour.getGreen() + colour.getBlue();
    }
}
