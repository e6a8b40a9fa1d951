package crowdline.telemetry.serial;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Says why a system would not open a port, and what to do about it. */
final class OpenRefusal {
    // errno of Linux and macOS, and the codes of Windows
    private static final int NOT_THERE = 2;
    private static final int NO_SUCH_DEVICE = 6;
    private static final int NOT_ALLOWED = 13;
    private static final int BUSY = 16;
    private static final int WOULD_BLOCK = 11;
    private static final int WINDOWS_ACCESS = 5;
    private static final int NO_TERMINAL = 25;

    private OpenRefusal() {}

    /**
     * One sentence.
     *
     * @param code as the system gave it
     * @param system its name, as of the property {@code os.name}
     * @param group that owns the port, or null where not known
     */
    static String sentence(String path, int code, String system, @Nullable String group) {
        boolean windows = system.toLowerCase(Locale.ROOT).startsWith("windows");
        if (code == NOT_THERE || code == NO_SUCH_DEVICE) {
            return path + " is not there (error " + code + "); plug it in";
        }
        if (code == BUSY || code == WOULD_BLOCK || (windows && code == WINDOWS_ACCESS)) {
            return "Another program uses " + path + " (error " + code + "); close that program";
        }
        if (code == NOT_ALLOWED && system.equals("Linux")) {
            if (group == null || group.equals("root")) {
                return "Linux does not let you use " + path + " (permission denied, error 13); run"
                        + " \"sudo usermod -aG dialout $USER\", log out and in again, and plug it in again";
            }
            return "Linux does not let you use " + path + " (permission denied, error 13); run \"sudo usermod -aG "
                    + group + " $USER\", then log out and in again";
        }
        if (code == NOT_ALLOWED) {
            return "You are not allowed to use " + path + " (permission denied, error 13); ask who looks after this"
                    + " machine";
        }
        if (code == NO_TERMINAL && !windows) {
            return path + " is not a serial port (error 25); choose a port, or a flight log";
        }
        return "The system would not open " + path + " (error " + code + "); unplug it and plug it in again";
    }
}
