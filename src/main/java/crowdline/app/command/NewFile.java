package crowdline.app.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A file that a command is to write. */
final class NewFile {
    private NewFile() {}

    /**
     * Why it cannot be written, or null.
     *
     * @param option the option that named it, such as {@code --out}
     * @param ending what its name must end in, such as {@code .pdf}
     */
    static @Nullable String refusal(String option, Path to, String ending) {
        if (!to.toString().toLowerCase(Locale.ROOT).endsWith(ending)) {
            return option + " is " + to + "; its name must end in " + ending;
        }
        Path folder = to.toAbsolutePath().getParent();
        return folder == null || Files.isDirectory(folder)
                ? null
                : option + " is " + to + "; there is no folder " + folder + "; make it first or choose another";
    }
}
