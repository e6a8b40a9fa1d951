package crowdline.storage.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.speech.pace.Pace;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaceShelfTest {
    @TempDir
    Path parent;

    private Path folder() {
        return parent.resolve("config").resolve("paces");
    }

    private PaceShelf shelf() {
        return new PaceShelf(folder());
    }

    private static Pace pace(String name, double letterS) {
        return new Pace(name, 0.1, letterS, 0.2, 0.6, 0.1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../etc/passwd",
                "..",
                ".",
                "/etc/passwd",
                "C:\\Windows\\win.ini",
                "con",
                "NUL",
                "a:b*c?d\"e<f>g|h",
                "~root",
                "$(touch x) `ls`",
                "%2e%2e%2f",
                "Zoë Ærø-Łuk",
                "王小明",
                "🛩",
                "name.json",
                "trailing dot.",
                "-rf",
                "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"
            })
    void everyNameBecomesAPlainFileOfTheFolder(String name) throws Exception {
        shelf().write(pace(name, 0.07));
        Path file = shelf().file(name);
        assertThat(file.getParent()).isEqualTo(folder());
        assertThat(file.getFileName().toString()).matches("[a-z0-9][a-z0-9-]{0,24}-[0-9a-f]{12}\\.json");
        try (var all = Files.walk(parent)) {
            assertThat(all.filter(Files::isRegularFile)).containsExactly(file);
        }
        assertThat(shelf().read().of(name)).contains(pace(name, 0.07));
        assertThat(shelf().read().said()).isEmpty();
    }

    @Test
    void namesThatLookAlikeAsFilesKeepApart() throws Exception {
        List<String> names = List.of("Anna B", "anna b", "Anna-B", "Änna B", "Anna  B");
        for (int i = 0; i < names.size(); i++) {
            shelf().write(pace(names.get(i), 0.05 + 0.001 * i));
        }
        PaceShelf.Reading reading = shelf().read();
        assertThat(reading.paces()).hasSize(names.size());
        for (int i = 0; i < names.size(); i++) {
            assertThat(reading.of(names.get(i))).contains(pace(names.get(i), 0.05 + 0.001 * i));
        }
    }

    @Test
    void aSpeakerTimedAgainReplacesTheEarlierPace() throws Exception {
        shelf().write(pace("Anna", 0.06));
        shelf().write(pace("Anna", 0.08));
        assertThat(shelf().read().paces()).containsExactly(pace("Anna", 0.08));
    }

    @Test
    void aCopyOfAFileDoesNotHideTheSpeakersOwn() throws Exception {
        shelf().write(pace("Anna", 0.08));
        PaceFile.write(folder().resolve("zz-copy.json"), pace("Anna", 0.02));
        PaceFile.write(folder().resolve("a-copy.json"), pace("Anna", 0.03));
        assertThat(shelf().read().paces()).containsExactly(pace("Anna", 0.08));
    }

    @Test
    void aBrokenFileIsSaidAndTheOthersAreRead() throws Exception {
        shelf().write(pace("Anna", 0.08));
        Files.writeString(folder().resolve("broken.json"), "{");
        PaceShelf.Reading reading = shelf().read();
        assertThat(reading.paces()).containsExactly(pace("Anna", 0.08));
        assertThat(reading.said()).singleElement().asString().contains("broken.json is not a pace file");
    }

    @Test
    void noFolderIsAnEmptyShelf() {
        assertThat(shelf().read()).isEqualTo(new PaceShelf.Reading(List.of(), List.of()));
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Files.writeString(parent.resolve("config"), "in the way");
        assertThatThrownBy(() -> shelf().write(pace("Anna", 0.08)))
                .isInstanceOf(ShowFileException.class)
                .hasMessageContaining("cannot be made; check its parent");
    }

    @Test
    void aNameIsKeptComposedAndWithoutSpaceAroundIt() {
        assertThat(PaceShelf.name("  Zoe\u0308 ")).isEqualTo("Zo\u00eb");
    }

    @Test
    void whatIsNobodysNameIsRefusedInOneSentence() {
        assertThatThrownBy(() -> PaceShelf.name(" \t")).hasMessage("the speaker has no name; type one");
        assertThatThrownBy(() -> PaceShelf.name("a\u0000b")).hasMessageContaining("cannot be shown");
        assertThatThrownBy(() -> PaceShelf.name("\ud83d")).hasMessageContaining("cannot be shown");
        assertThatThrownBy(() -> PaceShelf.name("a".repeat(61))).hasMessageContaining("longer than 60");
        assertThat(PaceShelf.name("🛩".repeat(60))).hasSize(120);
    }
}
