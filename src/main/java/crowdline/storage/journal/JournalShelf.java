package crowdline.storage.journal;

import crowdline.live.event.LiveEvent;
import crowdline.live.state.LiveState;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The journals of all shows: takes up the one that holds the running act of a show, or begins another. One process has one
 * shelf for a folder. Nothing here waits until the disk has something, except where a damaged journal is mended.
 */
public final class JournalShelf {
    private static final String CHANGED =
            "The show file has changed since this show was started; it goes on with the file as it is now.";

    private static final System.Logger LOG = System.getLogger(JournalShelf.class.getName());

    private final JournalFolder folder;
    private final JournalFile.Opener opener;
    private final JournalMachine machine;
    private final double forgetAfterS;
    private final JournalCodec codec = new JournalCodec();

    /**
     * @param folder where the journals are; it need not exist
     * @param forgetAfterS a show that was left this long ago is not gone on with
     */
    public JournalShelf(Path folder, JournalMachine machine, double forgetAfterS) {
        this(folder, machine, forgetAfterS, JournalDiskFile.opener());
    }

    JournalShelf(Path folder, JournalMachine machine, double forgetAfterS, JournalFile.Opener opener) {
        this.folder = new JournalFolder(folder, opener);
        this.opener = opener;
        this.machine = machine;
        this.forgetAfterS = forgetAfterS;
    }

    /** As {@link #open}, of a show that was just changed by hand: that its file has changed is no news then. */
    public JournalOpening openChanged(JournalShow show) {
        JournalOpening opening = open(show);
        return new JournalOpening(
                opening.journal(),
                opening.state(),
                opening.resumed(),
                opening.events(),
                opening.notices().stream().filter(n -> !n.equals(CHANGED)).toList());
    }

    /**
     * Goes on with the journal that holds this show's running act, else with the one written last that is unfinished, else
     * begins a new one. Asks nothing and does not fail: what went wrong is in the notices and in the journal's health.
     */
    public JournalOpening open(JournalShow show) {
        JournalChoice choice = new JournalChoice(folder, machine, codec);
        JournalChoice.Found best = choice.of(show, forgetAfterS, false).orElse(null);
        List<String> notices = new ArrayList<>(choice.notices());
        JournalOpening opening = null;
        if (best != null && !best.replay().state().over()) {
            try {
                opening = resume(best.path(), show, choice, notices);
            } catch (JournalInUseException inUse) {
                notices.add("This show is running in another window; this one keeps a journal of its own.");
                return begin(show, notices);
            } catch (IOException e) {
                LOG.log(System.Logger.Level.WARNING, "Reading " + best.path(), e);
                notices.add("The journal " + best.path().getFileName()
                        + " cannot be read; the show starts from the beginning.");
            }
        }
        Path taken = opening == null ? null : opening.journal().path();
        if (choice.unfinished().stream().anyMatch(path -> !path.equals(taken) && folder.inUse(path))) {
            notices.add("This show is running in another window as well.");
        }
        return opening == null
                ? begin(show, notices)
                : new JournalOpening(opening.journal(), opening.state(), true, opening.events(), notices);
    }

    /**
     * What the journal of this show says in which an act was flown last, over or not; empty if there is none.
     *
     * @throws ShowFileException if it cannot be read, with one sentence for the user
     */
    public Optional<JournalReading> last(JournalShow show) throws ShowFileException {
        JournalChoice choice = new JournalChoice(folder, machine, codec);
        return reading(choice, choice.of(show, Double.POSITIVE_INFINITY, true).orElse(null));
    }

    /**
     * What the journal of this show says that a process goes on with, which may be writing on it; empty if there is none. It
     * is neither locked nor written.
     *
     * @throws ShowFileException if it cannot be read, with one sentence for the user
     */
    public Optional<JournalReading> running(JournalShow show) throws ShowFileException {
        JournalChoice choice = new JournalChoice(folder, machine, codec);
        return reading(choice, choice.of(show, forgetAfterS, false).orElse(null));
    }

    private static Optional<JournalReading> reading(JournalChoice choice, JournalChoice.@Nullable Found found)
            throws ShowFileException {
        if (found == null) {
            if (!choice.notices().isEmpty()) {
                throw new ShowFileException(String.join(" ", choice.notices()));
            }
            return Optional.empty();
        }
        return Optional.of(reading(found.path(), found.replay()));
    }

    private static JournalReading reading(Path path, JournalReplay replay) {
        JournalLine.Base last = replay.last();
        Instant zero = last == null ? Instant.EPOCH : last.wall().minusNanos(Math.round(last.sessionS() * 1e9));
        return new JournalReading(
                path, replay.state(), zero, replay.damagedLines().size());
    }

    /**
     * The days on which an act was flown, of whichever show, newest first; those that are being written are left out, and so is
     * what cannot be read.
     *
     * @param most so many at most
     */
    public List<JournalDay> flown(int most) {
        return folder.journals().stream()
                .limit(JournalChoice.LOOKED_AT)
                .filter(path -> !folder.inUse(path))
                .flatMap(path -> flown(path).stream())
                .limit(most)
                .toList();
    }

    private Optional<JournalDay> flown(Path path) {
        try {
            JournalReplay replay = JournalReplay.of(path, codec, false);
            JournalLine.Header header = replay.header();
            return header == null || replay.actAtS() == null
                    ? Optional.empty()
                    : Optional.of(new JournalDay(
                            path,
                            reading(path, replay).zero(),
                            String.valueOf(Path.of(header.show().path()).getFileName())));
        } catch (IOException | InvalidPathException e) {
            LOG.log(System.Logger.Level.DEBUG, "Reading " + path, e);
            return Optional.empty();
        }
    }

    /**
     * A journal that somebody names, such as that of last year; it is only read.
     *
     * @throws ShowFileException if the file cannot be read or is no journal, with one sentence for the user
     */
    public JournalReading read(Path journal) throws ShowFileException {
        JournalReplay replay;
        try {
            replay = JournalReplay.of(journal, codec, false);
        } catch (IOException e) {
            throw new ShowFileException("the journal " + journal + " cannot be read; is it still there?", e);
        }
        if (replay.header() == null) {
            throw new ShowFileException(
                    journal + " is no journal; they lie in " + folder.path() + " and end in .journal");
        }
        return reading(journal, replay);
    }

    /**
     * The events in a journal, in the order in which they were written; what cannot be read is left out.
     *
     * @throws ShowFileException if the file cannot be read, with one sentence for the user
     */
    public List<LiveEvent> events(Path journal) throws ShowFileException {
        try {
            return JournalReplay.written(journal, codec);
        } catch (IOException e) {
            throw new ShowFileException("the journal " + journal + " cannot be read; is it still there?", e);
        }
    }

    /** Whether a show of exactly this content was run before, so that its file was found sound then. */
    public boolean knows(JournalShow show) {
        return folder.journals().stream().limit(JournalChoice.LOOKED_AT).anyMatch(path -> {
            try {
                return Files.isRegularFile(path)
                        && JournalReplay.header(path, codec)
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

    private JournalOpening begin(JournalShow show, List<String> notices) {
        Journal journal = new Journal(show, machine, codec, machine.ticker().nanos(), this::fresh);
        journal.begin();
        return new JournalOpening(journal, LiveState.initial(), false, 0, notices);
    }

    private JournalPlace fresh() throws IOException {
        LocalDate day = machine.wall().instant().atZone(ZoneOffset.UTC).toLocalDate();
        return folder.fresh(day);
    }

    private @Nullable JournalOpening resume(Path path, JournalShow show, JournalChoice choice, List<String> notices)
            throws IOException {
        JournalPlace place = takeUp(path, notices);
        boolean goesOn = false;
        try {
            // Once more, because somebody may have written until it was let go of.
            JournalReplay replay = JournalReplay.of(path, codec, true);
            JournalChoice.Found found = choice.found(path, replay);
            JournalLine.Header header = replay.header();
            if (found == null || header == null || replay.state().over() || replay.tooLarge()) {
                return null;
            }
            JournalTime time = found.time();
            time.told().ifPresent(notices::add);
            if (!show.sha256().equals(replay.sha256())) {
                notices.add(CHANGED);
            }
            if (replay.form() == JournalLines.Form.DAMAGED) {
                place = JournalMending.mend(path, place, replay, opener, notices);
            }
            Journal journal = new Journal(
                    new JournalShow(header.show().path(), show.sha256()),
                    machine,
                    codec,
                    time.zeroNanos(),
                    this::fresh);
            journal.goOn(place, replay);
            goesOn = true;
            return new JournalOpening(journal, replay.state(), true, replay.events(), notices);
        } finally {
            if (!goesOn && place != null) {
                place.close();
            }
        }
    }

    /** The journal to write on, or null if it can only be read. */
    private @Nullable JournalPlace takeUp(Path path, List<String> notices) throws JournalInUseException {
        try {
            return folder.takeUp(path);
        } catch (JournalInUseException inUse) {
            throw inUse;
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Writing " + path, e);
            notices.add(
                    "The journal " + path.getFileName() + " cannot be written to; it was read, and is left as it is.");
            return null;
        }
    }
}
