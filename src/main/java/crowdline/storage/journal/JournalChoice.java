package crowdline.storage.journal;

import crowdline.storage.file.OwnerOnly;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which journal of a show counts: the one with the latest event of an act in the air, whatever was begun after
 * it; if no act ever began in any of them, the one written last.
 */
final class JournalChoice {
    /** The first lines of at most this many journals are read. Nobody begins as many within the hours a show is gone on with. */
    static final int LOOKED_AT = 500;

    /** So many of one show are read to their ends. */
    private static final int READ = 20;
    /**
     * Seconds. An act still in the air goes before one that ended within this time of its last event: a figure or a hold may
     * last that long. Tuned.
     */
    private static final double IN_THE_AIR_S = 600;

    private static final System.Logger LOG = System.getLogger(JournalChoice.class.getName());

    private final JournalFolder folder;
    private final JournalMachine machine;
    private final JournalCodec codec;
    private final List<String> notices = new ArrayList<>();
    private final List<Path> unfinished = new ArrayList<>();

    JournalChoice(JournalFolder folder, JournalMachine machine, JournalCodec codec) {
        this.folder = folder;
        this.machine = machine;
        this.codec = codec;
    }

    /**
     * A journal read to its end.
     *
     * @param time when now is in its session
     */
    record Found(Path path, JournalReplay replay, JournalTime time) {
        private double ageS() {
            return time.sessionS() - lastS();
        }

        private double lastS() {
            JournalLine.Base last = replay.last();
            return last == null ? 0 : last.sessionS();
        }

        private boolean begun() {
            return replay.actAtS() != null;
        }

        private double actAgeS() {
            Double actAtS = replay.actAtS();
            double sinceS = actAtS == null ? Double.POSITIVE_INFINITY : time.sessionS() - actAtS;
            return replay.state().course().inTheAir() ? sinceS - IN_THE_AIR_S : sinceS;
        }

        private boolean goesBefore(@Nullable Found other) {
            if (other == null) {
                return true;
            }
            int acts = Double.compare(actAgeS(), other.actAgeS());
            return acts != 0 ? acts < 0 : ageS() < other.ageS();
        }
    }

    /** Sentences about journals that could not be looked at. */
    List<String> notices() {
        return notices;
    }

    /** Journals of the show that were neither finished nor left too long ago, the one chosen among them. */
    List<Path> unfinished() {
        return unfinished;
    }

    /**
     * The journal to go on with.
     *
     * @param forgetAfterS a journal left longer ago is not looked at
     * @param justOpened whether one in which no act began and which is over counts
     */
    Optional<Found> of(JournalShow show, double forgetAfterS, boolean justOpened) {
        Found best = null;
        int read = 0;
        for (Path path : folder.journals().stream().limit(LOOKED_AT).toList()) {
            if (read < READ && isOf(path, show, read == 0)) {
                read++;
                Found found = read(path);
                if (found != null && found.ageS() <= forgetAfterS) {
                    boolean over = found.replay().state().over();
                    if (!over) {
                        unfinished.add(path);
                    }
                    if ((found.begun() || !over || justOpened) && found.goesBefore(best)) {
                        best = found;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean isOf(Path path, JournalShow show, boolean tell) {
        if (!Files.isRegularFile(path)) {
            return false;
        }
        OwnerOnly.tighten(path);
        try {
            Optional<JournalLine.Header> header = JournalReplay.header(path, codec);
            if (header.isEmpty() && tell && Files.size(path) > 0) {
                notices.add("The journal " + path.getFileName() + " cannot be read; it is left as it is.");
            }
            return header.filter(h -> h.show().same(show)).isPresent();
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Reading " + path, e);
            if (tell) {
                notices.add(unreadable(path, e));
            }
            return false;
        }
    }

    private @Nullable Found read(Path path) {
        try {
            JournalReplay replay = JournalReplay.of(path, codec, false);
            if (replay.tooLarge()) {
                notices.add("The journal " + path.getFileName() + " is larger than any show's; it is left as it is.");
                return null;
            }
            return found(path, replay);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Reading " + path, e);
            notices.add(unreadable(path, e));
            return null;
        }
    }

    /** A journal as it was read; null if it does not say when it was. */
    @Nullable
    Found found(Path path, JournalReplay replay) {
        JournalLine.Base base = replay.base();
        JournalLine.Base last = replay.last();
        return base == null || last == null ? null : new Found(path, replay, JournalTime.of(base, last, machine));
    }

    private static String unreadable(Path path, IOException e) {
        return "The journal " + path.getFileName()
                + (e instanceof AccessDeniedException ? " may not be read by you" : " cannot be read")
                + "; it is left as it is.";
    }
}
