package crowdline.storage.unsaved;

import crowdline.arrange.ShowArranging;
import crowdline.show.Show;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** Edits a show and keeps every edit, to be killed. Takes a folder; says each edit that is kept. */
final class UnsavedChild {
    private UnsavedChild() {}

    static Show edit(int number) {
        return ShowArranging.empty("Edit " + number, LocalDate.of(2026, 5, 2), ZoneOffset.UTC, null);
    }

    public static void main(String[] args) throws Exception {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        UnsavedShelf shelf = new UnsavedShelf(Path.of(args[0]));
        var lock = shelf.take("the-show").orElseThrow();
        for (int number = 1; lock.seen(); number++) {
            shelf.keep("the-show", new UnsavedEdit(Path.of("/shows/day.json"), "ab", Instant.EPOCH, edit(number)));
            out.println("KEPT " + number);
        }
    }
}
