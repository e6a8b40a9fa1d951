package crowdline.app.command;

import crowdline.app.shell.Folders;
import crowdline.measure.Measures;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.SettingsFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What speeds and heights are printed in. */
final class UnitsOption {
    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "Speeds in kt, km/h or mph and heights in ft or m, such as km/h,m. If none are given, those"
                    + " chosen in the window, or kt,ft.")
    private @Nullable String units;

    /**
     * The units to use.
     *
     * @throws ShowFileException if there is no such unit
     */
    Measures measures(Folders folders) throws ShowFileException {
        String asked = units;
        if (asked == null) {
            return new SettingsFile(folders.settings()).read().settings().measures();
        }
        try {
            return Measures.of(asked);
        } catch (IllegalArgumentException e) {
            throw new ShowFileException("--units: " + e.getMessage());
        }
    }
}
