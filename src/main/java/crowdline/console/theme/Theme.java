package crowdline.console.theme;

import java.awt.Color;

/**
 * Everything about how the console looks: colours and type as keys, so that no view holds a literal.
 *
 * @param id stable name for settings
 * @param label the word in the menu
 * @param dark true if light words stand on a dark ground
 * @param palette colours
 * @param typeface type
 */
public record Theme(String id, String label, boolean dark, Palette palette, Typeface typeface) {

    /** The colour of a tone. */
    public Color tone(Tone tone) {
        return switch (tone) {
            case CALM -> palette.text();
            case GOOD -> palette.good();
            case CAUTION -> palette.caution();
            case ALARM -> palette.alarm();
        };
    }
}
