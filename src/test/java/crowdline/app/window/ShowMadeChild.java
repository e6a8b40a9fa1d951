package crowdline.app.window;

import crowdline.console.place.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.stream.Stream;

/**
 * The whole program in a process of its own, to be killed: by keys alone it makes a show of three acts from nothing and saves it,
 * then changes it without saving. Takes a folder; says so once what is not saved is kept beside, and waits.
 */
final class ShowMadeChild {
    static final Instant HOUR = Instant.parse("2027-06-12T13:00:00Z");
    static final String READY = "READY";

    private ShowMadeChild() {}

    /** Where the show is saved. */
    static Path file(Path folder) {
        return folder.resolve("harbour-evening.json");
    }

    /** Ends at once if anything goes wrong, as a window would keep it going. */
    public static void main(String[] args) {
        try {
            make(Path.of(args[0]));
        } catch (Exception | AssertionError e) {
            System.getLogger(ShowMadeChild.class.getName()).log(System.Logger.Level.ERROR, "Making a show", e);
        }
        Runtime.getRuntime().halt(1);
    }

    private static void make(Path folder) throws Exception {
        ConsoleOnScreen screen = new ConsoleOnScreen(folder, HOUR);
        screen.give("ctrl N");
        screen.await("an empty show", () -> screen.acts() == 0 && screen.isIn(Place.PREPARE));
        ActsByKeys.threeActs(screen);

        screen.give("ctrl S");
        screen.await("a file is asked for", () -> screen.focusIs("File Name"));
        screen.give("ctrl A");
        screen.type(file(folder).toString());
        screen.give("ENTER");
        // The file is there a moment before what was kept beside while it had none is forgotten.
        screen.await(
                "it is saved", () -> screen.spoken("Messages").contains("Saved") && !isKept(folder.resolve("unsaved")));
        screen.awaitAlone();
        screen.give("F2");

        ActsByKeys.invertedPass(screen);
        screen.await("it is kept beside", () -> isKept(folder.resolve("unsaved")));
        System.out.println(READY);
        // Whoever started this kills it.
        System.in.transferTo(System.out);
    }

    private static boolean isKept(Path folder) throws Exception {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(file -> file.toString().endsWith(".unsaved"));
        }
    }
}
