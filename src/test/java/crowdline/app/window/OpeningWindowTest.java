package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crowdline.ExpectsWarning;
import crowdline.app.shell.Folders;
import crowdline.storage.settings.Settings;
import crowdline.storage.settings.SettingsFile;
import java.awt.GraphicsEnvironment;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Opening shows in the real window, in every order and at every moment. */
@Tag("window")
@Timeout(120)
class OpeningWindowTest {
    @TempDir
    private Path root;

    private Path day;
    private Path other;
    private Folders folders;
    private @Nullable RealWindow window;

    @BeforeEach
    void shows() throws IOException {
        assumeTrue(!GraphicsEnvironment.isHeadless(), "skipped: there is no screen");
        day = write("day.json", text());
        other = write("other.json", text().replace("Ada Quillan in the Wren", "Another act"));
        folders = RealWindow.folders(root, root.resolve("no-demo.json"));
    }

    @AfterEach
    void close() throws Exception {
        RealWindow open = window;
        if (open != null) {
            open.close();
        }
    }

    private static String text() throws IOException {
        try (InputStream in = OpeningWindowTest.class.getResourceAsStream("/crowdline/storage/show/full.json")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(root.resolve(name), text);
    }

    private RealWindow open(@Nullable Path show, Path... openedBefore) throws Exception {
        if (openedBefore.length > 0) {
            Settings settings = new SettingsFile(folders.settings()).read().settings();
            for (Path one : openedBefore) {
                settings = settings.withRecent(one);
            }
            new SettingsFile(folders.settings()).write(settings);
        }
        RealWindow opened = RealWindow.open(folders, show);
        window = opened;
        return opened;
    }

    private RealWindow flying(Path... openedBefore) throws Exception {
        RealWindow opened = open(day, openedBefore);
        opened.until("Harrowmere Air Day");
        opened.untilGone("Opening day.json");
        opened.press(KeyEvent.VK_F5);
        opened.space();
        opened.until("loop. Watch");
        return opened;
    }

    private List<byte[]> journals() throws IOException {
        try (Stream<Path> files = Files.list(folders.journals())) {
            return files.filter(f -> f.toString().endsWith(".journal"))
                    .sorted()
                    .map(f -> {
                        try {
                            return Files.readAllBytes(f);
                        } catch (IOException e) {
                            throw new IllegalStateException(e);
                        }
                    })
                    .toList();
        }
    }

    @Test
    void anActInTheAirIsNotLeftForAnotherShow() throws Exception {
        RealWindow window = flying(other);
        List<byte[]> before = journals();
        window.openAgain(other);
        window.until("Ada Quillan in the Wren is in the air: press E in Live when it is over, then open other.json");
        window.press(KeyEvent.VK_O, InputEvent.CTRL_DOWN_MASK, (char) 15);
        window.untilSaidLarge("press E in Live when it is over, then open another show");
        assertThat(journals()).hasSameSizeAs(before);
        assertThat(journals().get(0)).startsWith(before.get(0));
        window.press(KeyEvent.VK_E);
        window.until("Act over");
        window.openAgain(other);
        window.until("Another act");
    }

    @Test
    void theIncidentPageIsNotLeftForAnotherShow() throws Exception {
        RealWindow window = open(day, other);
        window.until("Harrowmere Air Day");
        window.untilGone("Opening day.json");
        window.press(KeyEvent.VK_F5);
        window.press(KeyEvent.VK_I);
        window.openAgain(other);
        window.until("The incident page is open: leave it before opening other.json");
    }

    @Test
    void theSameShowOpenedAgainGoesOnInItsActWhateverItIsCalled() throws Exception {
        Path link = Files.createSymbolicLink(root.resolve("link.json"), day);
        Path around = root.resolve("sub").resolve("..").resolve("day.json");
        Files.createDirectories(root.resolve("sub"));
        RealWindow window = flying(link, around);
        int journals = journals().size();
        for (Path name : List.of(day, link, around)) {
            window.openAgain(name);
            window.until("day.json is open already and carries on where it is");
            window.space();
            window.until("Watch the smoke.");
            window.press(KeyEvent.VK_BACK_SPACE);
            window.until("loop. Watch");
        }
        assertThat(journals()).hasSize(journals);
    }

    @Test
    void wordsChangedInTheFileComeInAndTheActGoesOn() throws Exception {
        RealWindow window = flying();
        write("day.json", text().replace("Now her own.", "And now one of her own."));
        window.openAgain(day);
        window.until("Live says the words of day.json as they stand in the file now");
        write("day.json", text().replace("\"durationS\": 90", "\"durationS\": 95"));
        window.openAgain(day);
        window.until("day.json has changed in more than its words; press E in Live when the act is over, then open it"
                + " again");
        write("day.json", "{ no show");
        window.openAgain(day);
        window.until("day.json has errors now, so Live keeps the version it had");
        assertThat(journals()).hasSize(1);
    }

    /** The act begins between the choice of another show and its opening. */
    @Test
    void anActThatBeginsWhileAnotherShowIsReadIsNotLeft() throws Exception {
        RealWindow window = open(day, other);
        window.until("Harrowmere Air Day");
        window.untilGone("Opening day.json");
        window.press(KeyEvent.VK_F5);
        window.until("Ada Quillan");
        RealWindow.onScreen(() -> {
            window.openAgainNow(other);
            window.spaceNow();
            return "";
        });
        window.until("is in the air: press E in Live when it is over, then open other.json");
        window.until("loop. Watch");
        assertThat(window.read()).doesNotContain("Another act");
    }

    @Test
    void ofTwoShowsOpenedQuicklyTheLastIsOpen() throws Exception {
        RealWindow window = open(day, other);
        window.until("Harrowmere Air Day");
        window.untilGone("Opening day.json");
        RealWindow.onScreen(() -> {
            window.openAgainNow(other);
            window.openAgainNow(day);
            window.openAgainNow(other);
            return "";
        });
        window.until("Another act");
        window.untilGone("Opening");
        assertThat(window.read()).contains("Another act");
    }

    @Test
    void closingInTheMiddleOfAnActTakesTwoAndTheNextStartSaysWhereItWentOn() throws Exception {
        RealWindow window = flying();
        window.press(KeyEvent.VK_Q, InputEvent.CTRL_DOWN_MASK, (char) 17);
        window.untilSaidLarge(
                "Ada Quillan in the Wren is in the air: close again to leave. It will carry on where it was.");
        window.closeButton();
        window.untilClosed();
        RealWindow next = open(null);
        next.until("Carried on where it was: loop, 0:");
        next.until("loop. Watch");
    }

    @Test
    void whileAShowIsOpenedNothingSaysThatNoneIs() throws Exception {
        RealWindow window = open(day);
        window.until("Harrowmere Air Day");
        window.press(KeyEvent.VK_F4);
        window.read();
        window.press(KeyEvent.VK_F5);
        window.until("Ada Quillan");
        assertThat(window.everRead()).noneMatch(read -> read.contains("No show is open"));
        assertThat(window.everRead().get(0)).containsAnyOf("Opening day.json…", "Harrowmere");
    }

    @Test
    void whatIsNoShowIsASentenceAtOnce() throws Exception {
        Path pipe = root.resolve("pipe.json");
        assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0, "skipped: no pipes here");
        Path folder = Files.createDirectory(root.resolve("folder.json"));
        Path huge = root.resolve("huge.json");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(3L << 30);
        }
        Path gone = root.resolve("gone.json");
        Path deep = write("deep.json", "{\"crowdline\": 1, \"title\": " + "[".repeat(2_000_000));
        Path picture = Files.write(root.resolve("picture.json"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3});
        RealWindow window = open(pipe, folder, huge, gone, deep, picture, Path.of("/dev/zero"), day);
        window.until("pipe.json is a pipe or a device and not a file; name a file");
        window.until("No show is open");
        window.openAgain(Path.of("/dev/zero"));
        window.until("/dev/zero is a pipe or a device and not a file");
        window.openAgain(folder);
        window.until("folder.json is a folder");
        window.openAgain(huge);
        window.until("huge.json is 3221.3 MB large");
        window.openAgain(gone);
        window.until("there is no file " + gone);
        window.openAgain(deep);
        window.until("deep.json cannot be used until its errors are fixed: line 1");
        window.openAgain(picture);
        window.until("picture.json is a picture and not a show, so nothing was opened");
        window.openAgain(day);
        window.until("Harrowmere Air Day");
        window.press(KeyEvent.VK_F5);
        window.until("Ada Quillan");
    }

    /** A file dropped by mistake must not stand where the acts of the day were. */
    @Test
    void whatCannotBeUsedLeavesTheShowInSight() throws Exception {
        Path broken = write("broken.json", "{\"crowdline\": 1, \"title\": 3}");
        RealWindow window = open(day, broken);
        window.until("Harrowmere Air Day");
        window.untilGone("Opening day.json");
        window.press(KeyEvent.VK_F2);
        window.until("Ada Quillan in the Wren");
        window.openAgain(broken);
        window.until("broken.json cannot be used until its errors are fixed: line 1");
        window.until("Ada Quillan in the Wren");
    }

    /** Times that were learned and are not used any more are missed by nobody else. */
    @Test
    void aPassThatCannotBeReadIsSaidWhenItsShowIsOpened() throws Exception {
        write("day.json.passes", "{\"crowdlinePass\":1,\n{\"crowdlinePass\":1,\"id\"\n");
        RealWindow window = open(day);
        window.until("day.json.passes, line 1, column ");
        window.until("the line is kept but not used, and 1 more such line");
    }

    /** Nothing that lies where the program keeps its own files holds up the window. */
    @Test
    @ExpectsWarning("settings.json could not be saved")
    void aPipeInPlaceOfTheSettingsOrAPaceIsASentence() throws Exception {
        Files.createDirectories(folders.settings().resolve("paces"));
        new SettingsFile(folders.settings()).write(Settings.DEFAULT.withSpeaker("Ann"));
        Path pace = folders.settings().resolve("paces").resolve("ann.json");
        assumeTrue(new ProcessBuilder("mkfifo", pace.toString()).start().waitFor() == 0, "skipped: no pipes here");
        RealWindow first = open(day);
        first.until("The pace of Ann cannot be read");
        first.close();
        Path settings = folders.settings().resolve("settings.json");
        Files.delete(settings);
        assertThat(new ProcessBuilder("mkfifo", settings.toString()).start().waitFor())
                .isZero();
        RealWindow second = open(day);
        second.until("settings.json is a pipe or a device and not a file");
    }

    @Test
    void whatWasWrongAtTheStartIsStillSaidWhenAShowIsOpen() throws Exception {
        Files.createDirectories(folders.settings());
        Path settings = folders.settings().resolve("settings.json");
        new SettingsFile(folders.settings()).write(Settings.DEFAULT.withSpeaker("Ann"));
        RealWindow first = open(day);
        first.until("The pace of Ann cannot be read");
        first.until("Harrowmere Air Day");
        first.untilGone("Opening day.json");
        first.press(KeyEvent.VK_F5);
        first.until("The pace of Ann cannot be read");
        first.close();
        Files.writeString(settings, "{ broken");
        RealWindow second = open(day);
        second.until("Ada Quillan");
        second.untilGone("Opening day.json");
        second.until("settings");
        assertThat(second.read()).contains("settings");
    }
}
