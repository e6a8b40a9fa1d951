package crowdline.app.shell;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The version as the build wrote it into the program. */
public final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
        @Nullable String version = VersionLine.class.getPackage().getImplementationVersion();
        return new String[] {"crowdline " + (version == null ? "(not built as a program)" : version)};
    }
}
