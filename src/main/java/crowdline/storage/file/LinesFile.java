package crowdline.storage.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A plain text file of one entry a line. */
public final class LinesFile {
    private LinesFile() {}

    /**
     * The lines that say something, without the space around them.
     *
     * @throws ShowFileException if the file cannot be read, is not UTF-8 or holds too much, with one sentence for the user
     */
    public static List<String> read(Path file) throws ShowFileException {
        ShowText text = ShowText.decode(ShowText.bytes(file));
        ShowText.Fault fault = text.fault();
        if (fault != null) {
            throw new ShowFileException(file + ", line " + fault.where().line() + ": " + fault.message());
        }
        List<String> lines = new ArrayList<>();
        int number = 0;
        for (String line : (Iterable<String>) text.text().lines()::iterator) {
            number++;
            String said = line.strip();
            boolean isOneTooMany = lines.size() == LineLimits.LINES && !said.isEmpty();
            if (isOneTooMany || LineLimits.isTooLong(said)) {
                String why = isOneTooMany ? LineLimits.tooManyLines(LineLimits.LINES) : LineLimits.tooLong(said);
                throw new ShowFileException(file + ", line " + number + ": " + why);
            }
            if (!said.isEmpty()) {
                lines.add(said);
            }
        }
        return List.copyOf(lines);
    }
}
