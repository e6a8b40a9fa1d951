package crowdline.storage.journal;

import crowdline.storage.file.AtomicFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes out of a journal what cannot be read, keeping all of it beside. The mended one is written beside and moved into
 * place whole; the journal's lock holds throughout.
 */
final class JournalMending {
    private static final System.Logger LOG = System.getLogger(JournalMending.class.getName());

    private JournalMending() {}

    /**
     * Leaves only what can be read in the journal's place.
     *
     * @param place where it is written, or null if it may not be
     * @return where it is written from now on; null if it could not be mended and stays as it is
     */
    static @Nullable JournalPlace mend(
            Path path,
            @Nullable JournalPlace place,
            JournalReplay replay,
            JournalFile.Opener opener,
            List<String> notices) {
        if (place == null) {
            notices.add(damage(replay));
            return null;
        }
        Path aside = path.resolveSibling(path.getFileName() + ".damaged");
        for (int i = 2; Files.exists(aside); i++) {
            aside = path.resolveSibling(path.getFileName() + ".damaged" + i);
        }
        StringBuilder text = new StringBuilder();
        replay.good().forEach(line -> text.append(line).append('\n'));
        try {
            // Some systems move nothing into the place of a file that is open.
            place.file().close();
            AtomicFile.ownerOnly().replace(path, text.toString().getBytes(StandardCharsets.UTF_8), aside);
            notices.add(damage(replay) + " The damaged file is kept as " + aside.getFileName() + ".");
            return new JournalPlace(path, opener.open(path), place.lock());
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Mending " + path, e);
            place.close();
            notices.add(damage(replay) + " It could not be repaired and is left as it is.");
            return null;
        }
    }

    private static String damage(JournalReplay replay) {
        List<Integer> lines = replay.damagedLines();
        return switch (lines.size()) {
            case 0 -> "The journal was damaged, but everything in it can be read.";
            case 1 -> "Line " + lines.get(0) + " of the journal cannot be read; everything else was used.";
            default ->
                lines.size() + " lines of the journal cannot be read, the first is line " + lines.get(0)
                        + "; everything else was used.";
        };
    }
}
