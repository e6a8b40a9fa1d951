package crowdline.telemetry.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fazecast.jSerialComm.SerialPort;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** In processes of its own, since a library is loaded once. Planted are copies of the genuine one, which load and say nothing. */
@Timeout(60)
class SerialLibraryTest {
    @TempDir
    private Path root;

    private Path shared;
    private Path own;

    @BeforeEach
    void folders() throws IOException {
        assumeTrue(
                Files.exists(Path.of("/proc/self/maps"))
                        && System.getProperty("os.arch").equals("amd64"),
                "skipped: what a process has loaded is known on Linux only");
        shared = Files.createDirectories(root.resolve("shared"));
        own = root.resolve("state").resolve("serial");
    }

    /** Where the library looks by itself. */
    private Path inSharedFolder() {
        return shared.resolve("jSerialComm").resolve(SerialPort.getVersion()).resolve("libjSerialComm.so");
    }

    private static Path plant(Path where) throws IOException {
        Files.createDirectories(where.getParent());
        try (InputStream in = SerialPort.class.getResourceAsStream("/Linux/x86_64/libjSerialComm.so")) {
            Files.copy(Objects.requireNonNull(in), where);
        }
        return where;
    }

    private List<String> child(String... options) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-Djava.io.tmpdir=" + shared,
                "-Duser.home=" + root));
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", classPath(), SerialChild.class.getName(), own.toString()));
        Process process = new ProcessBuilder(command)
                .directory(shared.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return said.lines().toList();
    }

    private static String classPath() {
        return Stream.of(SerialPorts.class, SerialChild.class, SerialPort.class, NullMarked.class)
                .map(SerialLibraryTest::home)
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static String home(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("cannot find " + type, e);
        }
    }

    @Test
    void whatSomebodyPlantedInTheSharedFolderIsNotLoaded() throws Exception {
        Path planted = plant(inSharedFolder());
        List<String> said = child();
        assertThat(said).startsWith("ports", shared.toString()).hasSize(3);
        assertThat(said.get(2)).startsWith(own.toString()).contains("libjSerialComm.so");
        assertThat(planted).exists();
        assertThat(Files.getPosixFilePermissions(own)).isEqualTo(PosixFilePermissions.fromString("rwx------"));
        try (Stream<Path> left = Files.list(own)) {
            assertThat(left).isEmpty();
        }
    }

    /** The library clears up what it takes for its own older versions, through links as well. */
    @Test
    void nothingIsDeletedThroughALinkSomebodyPlanted() throws Exception {
        Path precious = Files.createDirectories(root.resolve("precious"));
        Files.writeString(precious.resolve("letter"), "keep");
        Files.createDirectories(shared.resolve("jSerialComm"));
        Files.createSymbolicLink(shared.resolve("jSerialComm").resolve("old"), precious);
        assertThat(child()).startsWith("ports");
        assertThat(precious.resolve("letter")).exists();
    }

    @Test
    void aLinkOrAnOpenFolderInTheWayIsNotTrusted() throws Exception {
        Path elsewhere = Files.createDirectories(root.resolve("elsewhere"));
        Files.createDirectories(own.getParent());
        Files.createSymbolicLink(own, elsewhere);
        List<String> said = child();
        assertThat(said).startsWith("ports").hasSize(3);
        assertThat(said.get(2)).startsWith(shared + "/crowdline-serial-");
        try (Stream<Path> left = Files.list(elsewhere)) {
            assertThat(left).isEmpty();
        }
        Files.delete(own);
        Files.createDirectory(own, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxrwxrwx")));
        assertThat(child().get(2)).startsWith(own.toString());
        assertThat(Files.getPosixFilePermissions(own)).isEqualTo(PosixFilePermissions.fromString("rwx------"));
    }

    @Test
    void leftoversOfAnotherVersionOrHalfAFileAreNotLoaded() throws Exception {
        Path old = plant(own.resolve("jSerialComm").resolve("2.9.0").resolve("libjSerialComm.so"));
        Path half = own.resolve("jSerialComm").resolve(SerialPort.getVersion()).resolve("libjSerialComm.so");
        Files.createDirectories(half.getParent());
        Files.write(half, List.of("half a file"));
        List<String> said = child();
        assertThat(said).startsWith("ports").hasSize(3);
        assertThat(said.get(2)).doesNotContain(old.toString(), half + " ");
    }

    @Test
    void aLibraryInTheFolderItWasStartedFromIsRefused() throws Exception {
        Path planted = plant(shared.resolve("libjSerialComm.so"));
        List<String> said = child("-Djava.library.path=/usr/lib:.");
        assertThat(said).hasSize(2);
        assertThat(said.get(0)).startsWith("Serial ports are not used: ").contains("libjSerialComm.so would be loaded");
        assertThat(planted).exists();
    }
}
