package crowdline.app.window;

import java.nio.file.Path;
import java.time.Instant;

/**
 * The whole program in a process of its own, to be killed: by keys alone it flies an act and fills in one of the two blanks of an
 * announcement, and half of the other. Takes a folder in which the show lies; says so then, and waits.
 */
final class AnnouncementChild {
    static final Instant HOUR = Instant.parse("2027-06-12T13:29:00Z");
    static final String READY = "READY";

    private AnnouncementChild() {}

    /** Ends at once if anything goes wrong, as a window would keep it going. */
    public static void main(String[] args) {
        try {
            fill(Path.of(args[0]));
        } catch (Exception | AssertionError e) {
            System.getLogger(AnnouncementChild.class.getName()).log(System.Logger.Level.ERROR, "Filling in", e);
        }
        Runtime.getRuntime().halt(1);
    }

    private static void fill(Path folder) throws Exception {
        ConsoleOnScreen screen =
                new ConsoleOnScreen(folder, folder.resolve("made").resolve("day.json"), HOUR);
        screen.at(60);
        screen.press("SPACE");
        screen.press("B");
        screen.press("1");
        screen.type("the blue tent");
        screen.press("ENTER");
        screen.type("a girl of");
        System.out.println(READY);
        // Whoever started this kills it.
        System.in.transferTo(System.out);
    }
}
