package crowdline.storage.journal;

import crowdline.live.now.Ticker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import org.jspecify.annotations.Nullable;

/**
 * What the journal needs to know of the machine it runs on.
 *
 * @param ticker the monotonic clock; on the systems Java runs on it counts from the start of the machine, so two processes
 *     of one boot read the same clock
 * @param wall the wall clock, trusted only across restarts of the machine
 * @param bootId a name for this run of the machine, or null if the system gives none
 */
public record JournalMachine(
        Ticker ticker, InstantSource wall, @Nullable String bootId) {

    private static final Path LINUX_BOOT_ID = Path.of("/proc/sys/kernel/random/boot_id");

    /** This machine; only Linux names its boots (proc(5), {@code /proc/sys/kernel/random/boot_id}). */
    public static JournalMachine here(Ticker ticker) {
        return new JournalMachine(ticker, InstantSource.system(), readBootId());
    }

    private static @Nullable String readBootId() {
        try {
            String id = Files.readString(LINUX_BOOT_ID).strip();
            return id.isEmpty() ? null : id;
        } catch (IOException absent) {
            return null;
        }
    }
}
