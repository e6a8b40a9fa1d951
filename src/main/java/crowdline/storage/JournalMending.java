package crowdline.storage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Takes out of a journal what cannot be read, keeping all of it beside. */
final class JournalMending {
    private static final System.Logger LOG = System.getLogger(JournalMending.class.getName());

    private JournalMending() {}

    /** Keeps the damaged journal aside and leaves only what can be read in its place; the length of that. */
    static long mend(Path path, JournalFile file, JournalReplay replay, List<String> notices) {
        Path aside = path.resolveSibling(path.getFileName() + ".damaged");
        try {
            for (int i = 2; Files.exists(aside); i++) {
                aside = path.resolveSibling(path.getFileName() + ".damaged" + i);
            }
            Files.copy(path, aside);
            StringBuilder text = new StringBuilder();
            replay.good().forEach(line -> text.append(line).append('\n'));
            byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
            file.put(0, bytes);
            notices.add(damage(replay) + " The damaged file is kept as " + aside.getFileName() + ".");
            return bytes.length;
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Mending " + path, e);
            notices.add(damage(replay) + " It could not be mended and is written on as it is.");
            return replay.goodLength();
        }
    }

    private static String damage(JournalReplay replay) {
        List<Integer> lines = replay.damagedLines();
        return lines.size() == 1
                ? "Line " + lines.get(0) + " of the journal cannot be read; everything else was used."
                : lines.size() + " lines of the journal cannot be read, the first is line " + lines.get(0)
                        + "; everything else was used.";
    }
}
