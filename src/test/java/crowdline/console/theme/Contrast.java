package crowdline.console.theme;

import java.awt.Color;

/**
 * How well a colour can be told from the one behind it: WCAG 2.2, "contrast ratio" and "relative luminance".
 */
public final class Contrast {
    private Contrast() {}

    /** The contrast ratio of two opaque colours, 1 (the same) to 21 (black on white). */
    public static double ratio(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
