package crowdline;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.Location;
import java.util.regex.Pattern;

/** The classes of the program without those of its tests, wherever a build puts them. */
public final class ProgramClasses {
    private static final Pattern OF_TESTS = Pattern.compile(".*/test(-classes)?/crowdline/.*");

    /** Read once for all tests, which takes seconds. */
    private static final JavaClasses IMPORTED = new ClassFileImporter()
            .withImportOption(ProgramClasses::isOfProgram)
            .importPackages("crowdline");

    private ProgramClasses() {}

    public static JavaClasses imported() {
        return IMPORTED;
    }

    private static boolean isOfProgram(Location location) {
        return !location.matches(OF_TESTS);
    }
}
