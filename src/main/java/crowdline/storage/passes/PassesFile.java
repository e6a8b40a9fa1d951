package crowdline.storage.passes;

import crowdline.storage.file.AppendingFile;
import crowdline.storage.file.LineLimits;
import crowdline.storage.file.OwnerOnly;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.timing.Pass;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The passes of a show, in a file beside it: {@code SHOW.json.passes}, one line of JSON for each pass and each later
 * decision about one. Lines are only ever added. Where the folder of the show may not be written to, they go into a folder
 * of the program's own, and both files are read.
 */
public final class PassesFile {
    private static final String ENDING = ".passes";

    private final Path beside;
    private final Path elsewhere;
    private final Appender appender;
    private final Appender ownAppender;

    /** Adds a line to a file; a test can let a folder be one that may not be written to. */
    @FunctionalInterface
    interface Appender {
        void append(Path file, byte[] line) throws IOException;
    }

    /**
     * What the files hold.
     *
     * @param passes in the order in which they were kept, as they stand after every decision
     * @param findings sentences about lines that could not be used; they stay in the file
     */
    public record Reading(List<Pass> passes, List<String> findings) {
        public Reading {
            passes = List.copyOf(passes);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Where a line went.
     *
     * @param notice what the user should know about that, or null if it lies beside the show as it should
     */
    public record Kept(Path file, @Nullable String notice) {}

    /**
     * @param show the show file
     * @param folder where lines go if the show's own folder may not be written to; it need not exist
     */
    public PassesFile(Path show, Path folder) {
        this(show, folder, AppendingFile::append, AppendingFile::appendOwn);
    }

    PassesFile(Path show, Path folder, Appender appender) {
        this(show, folder, appender, appender);
    }

    private PassesFile(Path show, Path folder, Appender appender, Appender ownAppender) {
        Path whole = show.toAbsolutePath().normalize();
        String name = String.valueOf(whole.getFileName());
        this.beside = whole.resolveSibling(name + ENDING);
        this.elsewhere = folder.resolve(name + "-" + Sha256.ofName(whole.toString()) + ENDING);
        this.appender = appender;
        this.ownAppender = ownAppender;
    }

    /** The file beside the show. */
    public Path file() {
        return beside;
    }

    /**
     * Keeps a pass.
     *
     * @throws ShowFileException if no disk takes it, with one sentence for the user
     */
    public Kept keep(Pass pass) throws ShowFileException {
        return put(new PassLine.Timed(pass), "the pass");
    }

    /** Has a pass count or not from now on; see {@link #keep} for errors. */
    public Kept count(String passId, boolean counts, Instant at) throws ShowFileException {
        return put(new PassLine.Change(passId, at, counts, null), "whether the pass counts");
    }

    /** Gives a pass another note; see {@link #keep} for errors. */
    public Kept note(String passId, String note, Instant at) throws ShowFileException {
        return put(new PassLine.Change(passId, at, null, note), "the note");
    }

    private Kept put(PassLine line, String what) throws ShowFileException {
        byte[] bytes = PassCodec.write(line).getBytes(StandardCharsets.UTF_8);
        String why;
        try {
            appender.append(beside, bytes);
            return new Kept(beside, null);
        } catch (IOException e) {
            why = reason(e);
        }
        try {
            OwnerOnly.folderOf(elsewhere);
            ownAppender.append(elsewhere, bytes);
            return new Kept(
                    elsewhere,
                    beside + " cannot be written to (" + why + "), so " + what + " is kept in " + elsewhere
                            + "; it is read from there on this machine");
        } catch (IOException e) {
            throw new ShowFileException(
                    what + " could not be kept: " + beside + " cannot be written to (" + why + "), nor can " + elsewhere
                            + " (" + reason(e) + "); make room or make one of them writable",
                    e);
        }
    }

    private static String reason(IOException e) {
        String said = e.getMessage();
        return e instanceof AccessDeniedException || said == null ? "its folder may not be written to" : said;
    }

    /**
     * Reads what was kept. No file is no pass.
     *
     * @throws ShowFileException if a file is there and cannot be read, with one sentence for the user
     */
    public Reading read() throws ShowFileException {
        Map<String, Pass> passes = new LinkedHashMap<>();
        List<PassLine.Change> changes = new ArrayList<>();
        List<String> findings = new ArrayList<>();
        if (Files.exists(elsewhere)) {
            OwnerOnly.withFolder(elsewhere);
        }
        for (Path file : List.of(beside, elsewhere)) {
            if (Files.exists(file)) {
                read(file, passes, changes, findings);
            }
        }
        // Two files may hold decisions about one pass; the list sort keeps those of the same moment in their order.
        changes.sort(Comparator.comparing(PassLine.Change::at));
        for (PassLine.Change change : changes) {
            if (passes.computeIfPresent(change.id(), (id, pass) -> change.applied(pass)) == null) {
                findings.add(beside.getFileName() + " has a decision about a pass " + change.id()
                        + ", which is not there; it is kept but not used");
            }
        }
        return new Reading(new ArrayList<>(passes.values()), findings);
    }

    private static void read(Path file, Map<String, Pass> passes, List<PassLine.Change> changes, List<String> findings)
            throws ShowFileException {
        byte[] bytes = ShowText.bytes(file);
        int number = 0;
        for (int from = 0; from < bytes.length; ) {
            int to = from;
            while (to < bytes.length && bytes[to] != '\n') {
                to++;
            }
            if (++number > LineLimits.PASS_LINES) {
                throw new ShowFileException(file + ": " + LineLimits.tooManyLines(LineLimits.PASS_LINES));
            }
            try {
                take(text(bytes, from, to), passes, changes);
            } catch (PassCodec.Unsound e) {
                findings.add(file + ", line " + number + ", column " + e.column() + ": " + e.getMessage()
                        + "; the line is kept but not used");
            }
            from = to + 1;
        }
    }

    /** Each line by itself, so that a byte that is no text spoils only its own. */
    private static String text(byte[] bytes, int from, int to) throws PassCodec.Unsound {
        ShowText text = ShowText.decode(Arrays.copyOfRange(bytes, from, to));
        ShowText.Fault fault = text.fault();
        if (fault != null) {
            throw new PassCodec.Unsound(fault.where().column(), fault.message());
        }
        return text.text();
    }

    private static void take(String line, Map<String, Pass> passes, List<PassLine.Change> changes)
            throws PassCodec.Unsound {
        if (line.isBlank()) {
            return;
        }
        PassLine read = PassCodec.read(line);
        if (read instanceof PassLine.Change change) {
            changes.add(change);
        } else if (read instanceof PassLine.Timed timed) {
            Pass before = passes.putIfAbsent(timed.pass().id(), timed.pass());
            if (before != null && !before.equals(timed.pass())) {
                throw new PassCodec.Unsound(
                        1, "there is another pass " + timed.pass().id() + " before it; give it an id of its own");
            }
        }
    }
}
