package crowdline.console.theme;

import java.awt.Font;
import java.util.EnumMap;
import java.util.Map;

/**
 * The type of a theme.
 *
 * @param family ordinary weight
 * @param strongFamily heavier weight, for what is read from afar
 * @param strongIsBold true if the heavier weight is the bold of that family, false if the family itself is heavy
 * @param sizesPx size of each role in pixels at zoom 100 % in a window of 1280 by 800
 */
public record Typeface(String family, String strongFamily, boolean strongIsBold, Map<TextRole, Double> sizesPx) {

    /** The same sizes serve every theme; tried at two metres on a 13-inch screen, so tuned. */
    static final Map<TextRole, Double> SIZES_PX = sizes();

    public Typeface {
        sizesPx = Map.copyOf(sizesPx);
        for (TextRole role : TextRole.values()) {
            if (!sizesPx.containsKey(role)) {
                throw new IllegalArgumentException("the typeface has no size for " + role);
            }
        }
    }

    public double sizePx(TextRole role) {
        Double size = sizesPx.get(role);
        if (size == null) {
            throw new IllegalStateException("no size for " + role);
        }
        return size;
    }

    /** The ordinary weight at a size in pixels. */
    public Font plain(double sizePx) {
        return new Font(family, Font.PLAIN, 1).deriveFont((float) sizePx);
    }

    /** The heavier weight at a size in pixels. */
    public Font strong(double sizePx) {
        int style = strongIsBold ? Font.BOLD : Font.PLAIN;
        return new Font(strongFamily, style, 1).deriveFont((float) sizePx);
    }

    private static Map<TextRole, Double> sizes() {
        Map<TextRole, Double> sizes = new EnumMap<>(TextRole.class);
        sizes.put(TextRole.FIGURE, 104.0);
        sizes.put(TextRole.LOOK, 28.0);
        sizes.put(TextRole.REMARK, 40.0);
        sizes.put(TextRole.NEXT, 34.0);
        sizes.put(TextRole.READ, 23.0);
        sizes.put(TextRole.VALUE, 22.0);
        sizes.put(TextRole.SMALL, 18.0);
        sizes.put(TextRole.LABEL, 13.0);
        sizes.put(TextRole.BODY, 14.0);
        return sizes;
    }
}
