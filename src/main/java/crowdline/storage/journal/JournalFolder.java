package crowdline.storage.journal;

import crowdline.storage.file.NameLocks;
import crowdline.storage.file.OwnerOnly;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The journals in their folder, each with a number, so that which was begun last does not hang on a clock. */
final class JournalFolder {
    private static final System.Logger LOG = System.getLogger(JournalFolder.class.getName());
    private static final Pattern NAME = Pattern.compile("(\\d{4,})-.*\\.journal");
    /** A larger number was given by no session of this program, and numbering does not go on from it. */
    private static final BigInteger MOST = BigInteger.valueOf(99_999_999);

    /** More than there are programs that could begin one at the same moment. */
    private static final int TRIES = 1000;

    private final Path folder;
    private final JournalFile.Opener opener;
    private final JournalLocks locks;

    JournalFolder(Path folder, JournalFile.Opener opener) {
        this.folder = folder;
        this.opener = opener;
        this.locks = new JournalLocks(folder);
    }

    Path path() {
        return folder;
    }

    /** Newest first. */
    List<Path> journals() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(
                            p -> NAME.matcher(String.valueOf(p.getFileName())).matches())
                    .sorted(Comparator.comparing(JournalFolder::number).reversed())
                    .toList();
        } catch (NoSuchFileException none) {
            return List.of();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Listing " + folder, e);
            return List.of();
        }
    }

    private static BigInteger number(Path path) {
        Matcher matcher = NAME.matcher(String.valueOf(path.getFileName()));
        return matcher.matches() ? new BigInteger(matcher.group(1)) : BigInteger.ZERO;
    }

    /** A new and empty journal with the next number. */
    JournalPlace fresh(LocalDate day) throws IOException {
        OwnerOnly.folder(folder);
        long number = 1
                + journals().stream()
                        .map(JournalFolder::number)
                        .filter(n -> n.compareTo(MOST) <= 0)
                        .mapToLong(BigInteger::longValueExact)
                        .max()
                        .orElse(0);
        for (int attempt = 0; attempt < TRIES; attempt++) {
            Path path = folder.resolve(String.format(Locale.ROOT, "%04d-%s.journal", number + attempt, day));
            try {
                return placed(path, true);
            } catch (FileAlreadyExistsException | JournalInUseException taken) {
                LOG.log(System.Logger.Level.DEBUG, "Somebody else began {0}", path);
            }
        }
        throw new IOException("no journal can be begun in " + folder);
    }

    /**
     * A journal that is there, to be written on.
     *
     * @throws JournalInUseException if somebody else is writing it
     */
    JournalPlace takeUp(Path journal) throws IOException {
        return placed(journal, false);
    }

    private JournalPlace placed(Path path, boolean fresh) throws IOException {
        NameLocks.Held held = locks.take(path);
        try {
            return new JournalPlace(path, fresh ? opener.create(path) : opener.open(path), held);
        } catch (IOException e) {
            held.close();
            throw e;
        }
    }

    /** True if somebody is writing it. */
    boolean inUse(Path journal) {
        return locks.taken(journal);
    }
}
