package crowdline.storage.settings;

import org.jspecify.annotations.Nullable;

/**
 * How the second window looks.
 *
 * @param theme name of its theme
 * @param zoom size of its text against the ordinary, 0.5 to 4
 * @param place where it was left, or null if it was never moved
 * @param speaker the name of who sits before it, or null if nobody has said
 */
public record SecondLook(
        String theme,
        double zoom,
        @Nullable Place place,
        @Nullable String speaker) {
    /** As it looks at first. */
    public static final SecondLook DEFAULT = new SecondLook("day", 1, null, null);

    /** On the screen, in pixels; sizes above 0. */
    public record Place(int x, int y, int width, int height) {
        public Place {
            if (width <= 0 || height <= 0) {
                throw new IllegalArgumentException(
                        "the second window is " + width + " by " + height + " pixels; both must be above 0");
            }
        }
    }

    public SecondLook {
        if (theme.isBlank()) {
            throw new IllegalArgumentException("theme of the second window is empty; it must be the name of one");
        }
        if (!(zoom >= 0.5 && zoom <= 4)) {
            throw new IllegalArgumentException("zoom of the second window is " + zoom + "; it must be from 0.5 to 4");
        }
    }

    public SecondLook withPlace(@Nullable Place next) {
        return new SecondLook(theme, zoom, next, speaker);
    }
}
