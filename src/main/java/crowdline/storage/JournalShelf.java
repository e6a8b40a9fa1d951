package crowdline.storage;

import crowdline.live.LiveState;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The folder of journals: takes up the newest unfinished one of a show, or begins another. Journals are numbered, so that
 * which is newest does not hang on a clock.
 */
public final class JournalShelf {
    private static final System.Logger LOG = System.getLogger(JournalShelf.class.getName());
    private static final Pattern NAME = Pattern.compile("(\\d{4,9})-.*\\.journal");

    private final Path folder;
    private final JournalMachine machine;
    private final double forgetAfterS;
    private final JournalFile.Opener opener;
    private final JournalCodec codec = new JournalCodec();

    /**
     * @param folder where the journals are; it need not exist
     * @param forgetAfterS a show that was left this long ago is not gone on with
     */
    public JournalShelf(Path folder, JournalMachine machine, double forgetAfterS) {
        this(folder, machine, forgetAfterS, JournalDiskFile::open);
    }

    JournalShelf(Path folder, JournalMachine machine, double forgetAfterS, JournalFile.Opener opener) {
        this.folder = folder;
        this.machine = machine;
        this.forgetAfterS = forgetAfterS;
        this.opener = opener;
    }

    /**
     * Goes on with the newest journal of this show if it is unfinished, else begins a new one. Asks nothing and does not
     * fail: what went wrong is in the notices and in the journal's health.
     */
    public JournalOpening open(JournalShow show) {
        List<String> notices = new ArrayList<>();
        Path newest = newest(show, notices);
        if (newest != null) {
            try {
                JournalOpening resumed = resume(newest, show, notices);
                if (resumed != null) {
                    return resumed;
                }
            } catch (JournalInUseException inUse) {
                notices.add("Another Crowdline is running this show; this one keeps a journal of its own.");
            } catch (IOException e) {
                LOG.log(System.Logger.Level.WARNING, "Reading " + newest, e);
                notices.add("The journal " + newest.getFileName() + " cannot be read; the show starts afresh.");
            }
        }
        return begin(show, notices);
    }

    /**
     * What the newest journal of this show says, over or not; empty if there is none.
     *
     * @throws ShowFileException if it cannot be read, with one sentence for the user
     */
    public Optional<JournalReading> last(JournalShow show) throws ShowFileException {
        Path path = newest(show, new ArrayList<>());
        if (path == null) {
            return Optional.empty();
        }
        try {
            JournalReplay replay = JournalReplay.of(Files.readAllBytes(path), codec);
            JournalLine.Base last = replay.last();
            if (last == null) {
                throw new ShowFileException("the journal " + path + " has no first line that can be read");
            }
            Instant zero = last.wall().minusNanos(Math.round(last.sessionS() * 1e9));
            return Optional.of(new JournalReading(
                    path, replay.state(), zero, replay.damagedLines().size()));
        } catch (IOException e) {
            throw new ShowFileException("the journal " + path + " cannot be read; check that it is there", e);
        }
    }

    /** Whether a show of exactly this content was run before, so that its file was found sound then. */
    public boolean knows(JournalShow show) {
        return journals().stream().anyMatch(path -> {
            try {
                return header(path)
                        .filter(h -> h.show().sha256().equals(show.sha256()))
                        .isPresent();
            } catch (IOException e) {
                // Opening it says so; here it only means that it bears no witness.
                return false;
            }
        });
    }

    /** Begins a new journal, whatever is there. */
    public JournalOpening begin(JournalShow show) {
        return begin(show, List.of());
    }

    /** A session that is not kept, for walking an act through. */
    public static JournalOpening unkept(JournalMachine machine) {
        Journal journal = new Journal(
                Path.of("not kept"),
                new JournalNowhere(),
                path -> new JournalNowhere(),
                machine,
                machine.ticker().nanos(),
                0,
                new JournalCodec());
        return new JournalOpening(journal, LiveState.initial(), false, 0, List.of());
    }

    private JournalOpening begin(JournalShow show, List<String> notices) {
        long nanos = machine.ticker().nanos();
        int number =
                1 + journals().stream().mapToInt(JournalShelf::number).max().orElse(0);
        String day =
                machine.wall().instant().atZone(ZoneOffset.UTC).toLocalDate().toString();
        Path path = folder.resolve(name(number, day));
        while (Files.exists(path)) {
            number++;
            path = folder.resolve(name(number, day));
        }
        Journal journal = new Journal(path, null, opener, machine, nanos, 0, codec);
        journal.put(new JournalLine.Header(
                JournalCodec.VERSION,
                show,
                new JournalLine.Base(machine.bootId(), nanos, machine.wall().instant(), 0)));
        return new JournalOpening(journal, LiveState.initial(), false, 0, notices);
    }

    private static String name(int number, String day) {
        return String.format(Locale.ROOT, "%04d-%s.journal", number, day);
    }

    private @Nullable JournalOpening resume(Path path, JournalShow show, List<String> notices) throws IOException {
        JournalFile file = opener.open(path);
        JournalReplay replay;
        try {
            replay = JournalReplay.of(Files.readAllBytes(path), codec);
        } catch (IOException e) {
            file.close();
            throw e;
        }
        JournalLine.Header header = replay.header();
        JournalLine.Base base = replay.base();
        JournalLine.Base last = replay.last();
        if (header == null || base == null || last == null || replay.state().over()) {
            file.close();
            return null;
        }
        JournalTime time = JournalTime.of(base, last, machine);
        if (time.sessionS() - last.sessionS() > forgetAfterS) {
            file.close();
            return null;
        }
        time.told().ifPresent(notices::add);
        if (!header.show().sha256().equals(show.sha256())) {
            notices.add("The show file has changed since this show was started.");
        }
        long length = replay.goodLength();
        if (!replay.damagedLines().isEmpty()) {
            length = JournalMending.mend(path, file, replay, notices);
        }
        Journal journal = new Journal(path, file, opener, machine, time.zeroNanos(), length, codec);
        journal.put(new JournalLine.Resumed(new JournalLine.Base(
                machine.bootId(), time.nanos(), machine.wall().instant(), time.sessionS())));
        return new JournalOpening(journal, replay.state(), true, replay.events(), notices);
    }

    private @Nullable Path newest(JournalShow show, List<String> notices) {
        for (Path path : journals()) {
            try {
                Optional<JournalLine.Header> header = header(path);
                if (header.filter(h -> h.show().same(show)).isPresent()) {
                    return path;
                }
                if (header.isEmpty() && Files.size(path) > 0) {
                    notices.add("The journal " + path.getFileName() + " cannot be read; it is left as it is.");
                }
            } catch (IOException e) {
                LOG.log(System.Logger.Level.WARNING, "Reading " + path, e);
                notices.add("The journal " + path.getFileName() + " cannot be read; it is left as it is.");
            }
        }
        return null;
    }

    private Optional<JournalLine.Header> header(Path path) throws IOException {
        try (BufferedReader reader = Files.newBufferedReader(path)) {
            String first = reader.readLine();
            return first == null ? Optional.empty() : JournalReplay.header(first, codec);
        }
    }

    /** Newest first. */
    private List<Path> journals() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(
                            p -> NAME.matcher(String.valueOf(p.getFileName())).matches())
                    .sorted(Comparator.comparingInt(JournalShelf::number).reversed())
                    .toList();
        } catch (NoSuchFileException none) {
            return List.of();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Listing " + folder, e);
            return List.of();
        }
    }

    private static int number(Path path) {
        Matcher matcher = NAME.matcher(String.valueOf(path.getFileName()));
        return matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
    }
}
