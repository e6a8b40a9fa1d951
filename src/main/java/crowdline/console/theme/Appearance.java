package crowdline.console.theme;

import crowdline.measure.Measures;
import java.awt.Font;
import javax.swing.text.StyleContext;

/**
 * How the commentator wants to see things: what a view needs to paint.
 *
 * @param theme colours and type
 * @param zoom how much larger than designed
 * @param measures what speeds and heights are read in
 */
public record Appearance(Theme theme, Zoom zoom, Measures measures) {

    /** With speeds and heights as they are flown. */
    public Appearance(Theme theme, Zoom zoom) {
        this(theme, zoom, Measures.USUAL);
    }

    public Palette palette() {
        return theme.palette();
    }

    /** A role's size in pixels at this zoom, in a window {@code windowScale} times the designed one. */
    public double sizePx(TextRole role, double windowScale) {
        return theme.typeface().sizePx(role) * zoom.factor() * windowScale;
    }

    /** Ordinary type for a role in places that scroll and so depend on the zoom alone. */
    public Font plain(TextRole role) {
        return withEveryLetter(theme.typeface().plain(sizePx(role, 1)));
    }

    /** Heavier type for a role in places that scroll and so depend on the zoom alone. */
    public Font strong(TextRole role) {
        return withEveryLetter(theme.typeface().strong(sizePx(role, 1)));
    }

    /** The type, with the system's letters where it has none: people are called and fly in every script. */
    private static Font withEveryLetter(Font type) {
        // A context of its own: the shared one keeps what a name meant before its type was loaded.
        return new StyleContext().getFont(type.getName(), type.getStyle(), 1).deriveFont(type.getSize2D());
    }

    /** The same for a layout's constraint: in its own words for screen pixels, so that nothing scales it twice. */
    public String room(double designedPx) {
        return px(designedPx) + "px";
    }

    /** The same in another theme. */
    public Appearance with(Theme next) {
        return new Appearance(next, zoom, measures);
    }

    /** The same at another zoom. */
    public Appearance with(Zoom next) {
        return new Appearance(theme, next, measures);
    }

    /** The same with speeds and heights in other units. */
    public Appearance with(Measures next) {
        return new Appearance(theme, zoom, next);
    }

    /** So many designed pixels at this zoom. */
    public int px(double designedPx) {
        return (int) Math.round(designedPx * zoom.factor());
    }
}
