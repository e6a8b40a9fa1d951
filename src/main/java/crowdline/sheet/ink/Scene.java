package crowdline.sheet.ink;

import java.util.List;

/**
 * A picture before it is a file.
 *
 * @param title what it shows, in words
 * @param inks from the hindmost to the foremost
 */
public record Scene(String title, int widthPx, int heightPx, int groundRgb, List<Ink> inks) {
    public Scene {
        inks = List.copyOf(inks);
    }
}
