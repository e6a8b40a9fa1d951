package crowdline;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the arrows between packages, and which library stays with whom. */
class ArchitectureTest {

    /** Each package may use only those before it. */
    private static final List<String> ORDER = List.of(
            "show",
            "flight",
            "sight",
            "speech",
            "timing",
            "patter",
            "telemetry",
            "follow",
            "live",
            "storage",
            "sheet",
            "console",
            "app");

    private static final String APP = "crowdline.app..";
    private static final String CONSOLE = "crowdline.console..";

    private static final Path SOURCES = Path.of("src", "main", "java");

    private static final JavaClasses CLASSES = ProgramClasses.imported();

    @Test
    void scanSeesTheClassesOfEverySourcePackage() throws IOException {
        List<String> packagesInSources = SourceTree.javaFilesUnder(SOURCES).stream()
                .map(file ->
                        SOURCES.relativize(file.resolveSibling(".")).normalize().toString())
                .map(folder -> folder.replace(File.separatorChar, '.'))
                .distinct()
                .toList();

        assertThat(packagesInSources).isNotEmpty();
        assertThat(CLASSES.stream().map(JavaClass::getPackageName)).containsAll(packagesInSources);
    }

    @Test
    void everyClassHasAPlaceInTheOrder() {
        String[] places = ORDER.stream().map(ArchitectureTest::withSubpackages).toArray(String[]::new);

        classes()
                .should()
                .resideInAnyPackage(places)
                .because("a package outside the order has no arrows; give it its place in ORDER and in DEVELOPERS.md")
                .check(CLASSES);
    }

    @ParameterizedTest(name = "{0} uses nothing of {1}")
    @MethodSource("packagesAndThoseAfterThem")
    void packagesUseOnlyThoseBeforeThem(String name, List<String> after) {
        String[] forbidden =
                after.stream().map(ArchitectureTest::withSubpackages).toArray(String[]::new);

        ArchRule rule = noClasses()
                .that()
                .resideInAPackage(withSubpackages(name))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden)
                .because("each package may use only those before it, so that each can be read and tested without"
                        + " the later ones");

        rule.allowEmptyShould(isNotWrittenYet(name)).check(CLASSES);
    }

    static Stream<Arguments> packagesAndThoseAfterThem() {
        return IntStream.range(0, ORDER.size() - 1)
                .mapToObj(i -> Arguments.of(ORDER.get(i), ORDER.subList(i + 1, ORDER.size())));
    }

    @Test
    void packagesAreFreeOfCycles() {
        slices().matching("crowdline.(**)")
                .should()
                .beFreeOfCycles()
                .because("two packages that need each other are one package")
                .check(CLASSES);
    }

    @ParameterizedTest(name = "only {1} use {0}")
    @MethodSource("librariesAndTheirUsers")
    void librariesStayWithTheirUsers(List<String> library, List<String> users, String reason) {
        noClasses()
                .that(DescribedPredicate.not(resideInAnyPackage(users.toArray(String[]::new))))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(library.toArray(String[]::new))
                .because(reason)
                .check(CLASSES);
    }

    static Stream<Arguments> librariesAndTheirUsers() {
        String sheet = "crowdline.sheet..";
        return Stream.of(
                Arguments.of(
                        List.of("javax.swing..", "com.formdev..", "net.miginfocom.."),
                        List.of(CONSOLE, APP),
                        "everything else must run and be tested without a screen"),
                Arguments.of(
                        List.of("java.awt..", "javax.print..", "javax.imageio.."),
                        List.of(CONSOLE, APP, sheet),
                        "only what draws may draw; sheets draw on paper without Swing"),
                Arguments.of(
                        List.of("org.apache.pdfbox..", "org.apache.fontbox..", "de.rototor.."),
                        List.of(sheet),
                        "PDF is one way to paper and only pages know it"),
                Arguments.of(
                        List.of("tools.jackson..", "com.fasterxml.jackson..", "com.networknt.."),
                        List.of("crowdline.storage.."),
                        "the file format must be able to change without the domain"),
                Arguments.of(
                        List.of("com.fazecast.."),
                        List.of("crowdline.telemetry.serial.."),
                        "framing and decoding must be testable without a port"),
                Arguments.of(
                        List.of("io.jenetics.."),
                        List.of("crowdline.telemetry.."),
                        "a flight log is a kind of telemetry whatever its file"),
                Arguments.of(
                        List.of("com.ibm.icu.."),
                        List.of("crowdline.speech.."),
                        "how a number is said is decided in one place"),
                Arguments.of(
                        List.of("org.shredzone.."), List.of("crowdline.sight.."), "where the sun is belongs to sight"),
                Arguments.of(
                        List.of("javax.sound.."),
                        List.of(APP),
                        "a microphone is a device; what is heard is judged from levels, without one"),
                Arguments.of(List.of("picocli.."), List.of(APP), "commands are wiring, not domain"));
    }

    @Test
    void namesSayWhatAThingIs() {
        noClasses()
                .should()
                .haveNameMatching("(?i).*\\.(util|utils|helper|helpers|manager|common|impl)\\..*"
                        + "|.*(Utils?|Helpers?|Manager|Impl)(\\$.*)?")
                .because("such a name says that nobody knew what belongs there")
                .check(CLASSES);
    }

    private static String withSubpackages(String name) {
        return "crowdline." + name + "..";
    }

    private static boolean isNotWrittenYet(String name) {
        return !Files.isDirectory(SOURCES.resolve("crowdline").resolve(name));
    }
}
