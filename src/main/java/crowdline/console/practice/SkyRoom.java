package crowdline.console.practice;

import java.awt.Rectangle;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the sky has a window of its own.
 *
 * @param sky where it is; it covers nothing of the console
 * @param console where the console is then, as large as before
 */
record SkyRoom(Rectangle sky, Rectangle console) {
    /** Smaller than this the sky is too small to be looked at, pixels; a design choice. */
    private static final int LEAST_WIDE = 480;

    private static final int LEAST_TALL = 270;

    /** How much wider than tall what happens in the sky of an act is; a design choice. What is taller shows it no larger. */
    private static final int WIDE = 3;

    private static final Comparator<Rectangle> BY_SIZE =
            Comparator.comparingLong(r -> Math.min(r.width, (long) WIDE * r.height));

    /**
     * The screen that shows it largest and the console is not on; else the room beside the console that does; else the room
     * there is when the console has moved to the left, or down. Nothing if the console leaves no room at all.
     *
     * @param screens those there are, 1 or more
     */
    static Optional<SkyRoom> beside(Rectangle console, List<Rectangle> screens) {
        Rectangle own = screens.stream()
                .max(Comparator.comparingLong(screen -> shared(screen, console)))
                .orElseThrow();
        Rectangle left = new Rectangle(own.x, console.y, console.width, console.height);
        Rectangle down = new Rectangle(
                console.x, own.y + Math.max(0, own.height - console.height), console.width, console.height);
        return screens.stream()
                .filter(screen -> !screen.intersects(console))
                .max(BY_SIZE)
                .or(() -> largest(console, own))
                .map(sky -> new SkyRoom(sky, console))
                .or(() -> Stream.of(left, down)
                        .flatMap(moved -> largest(moved, own).map(sky -> new SkyRoom(sky, moved)).stream())
                        .max(Comparator.comparing(SkyRoom::sky, BY_SIZE)));
    }

    private static long shared(Rectangle screen, Rectangle console) {
        Rectangle both = screen.intersection(console);
        return both.isEmpty() ? 0 : (long) both.width * both.height;
    }

    /** The largest room around the console. */
    private static Optional<Rectangle> largest(Rectangle console, Rectangle screen) {
        int right = console.x + console.width;
        int foot = console.y + console.height;
        return Stream.of(
                        new Rectangle(right, screen.y, screen.x + screen.width - right, screen.height),
                        new Rectangle(screen.x, screen.y, console.x - screen.x, screen.height),
                        new Rectangle(screen.x, foot, screen.width, screen.y + screen.height - foot),
                        new Rectangle(screen.x, screen.y, screen.width, console.y - screen.y))
                .filter(room -> room.width >= LEAST_WIDE && room.height >= LEAST_TALL)
                .max(BY_SIZE);
    }
}
