package crowdline.storage.settings;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.serial.ButtonSignal;
import crowdline.telemetry.serial.ControlLine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SettingsFileTest {
    @TempDir
    Path folder;

    @Test
    void settingsAreReadAsWritten() throws ShowFileException {
        Settings settings = Settings.DEFAULT
                .withRecent(Path.of("a.json"))
                .withRecent(Path.of("b.json"))
                .withRecent(Path.of("a.json"))
                .withTheme("night")
                .withZoom(1.25)
                .withSpeaker("Zoë Ærø")
                .withButtons(LearnedButtons.NONE
                        .withPort("/dev/ttyUSB0")
                        .withBaud(19_200)
                        .with(new ButtonSignal.Sent(0x31), "next")
                        .with(new ButtonSignal.Turned(ControlLine.DSR, false), "said")
                        .with("shift F9", "hold"));
        SettingsFile file = new SettingsFile(folder.resolve("made").resolve("for it"));
        file.write(settings);
        assertThat(file.read()).isEqualTo(new SettingsFile.Reading(settings, null));
        assertThat(settings.recentFiles()).containsExactly(Path.of("a.json"), Path.of("b.json"));
    }

    @Test
    void settingsFromBeforePedalsHaveNone() throws IOException {
        Files.writeString(folder.resolve("settings.json"), "{\"theme\": \"night\", \"zoom\": 1.5}");
        SettingsFile.Reading reading = new SettingsFile(folder).read();
        assertThat(reading)
                .isEqualTo(new SettingsFile.Reading(
                        Settings.DEFAULT.withTheme("night").withZoom(1.5), null));
    }

    @Test
    void aPortFromBeforeSpeedsHasTheUsualOneAndAnotherThanANumberIsNamed() throws IOException {
        Files.writeString(folder.resolve("settings.json"), "{\"buttons\": {\"port\": \"COM3\"}}");
        assertThat(new SettingsFile(folder).read().settings().buttons().baud()).isEqualTo(9600);
        Files.writeString(folder.resolve("settings.json"), "{\"buttons\": {\"port\": \"COM3\", \"baud\": \"fast\"}}");
        assertThat(new SettingsFile(folder).read().said())
                .contains("the speed of the pedals' port is \"fast\"; it must be a whole number such as 9600");
        Files.writeString(folder.resolve("settings.json"), "{\"buttons\": {\"port\": \"COM3\", \"baud\": 0}}");
        assertThat(new SettingsFile(folder).read().said())
                .contains("the speed of the pedals' port is 0 baud; it must be above 0");
    }

    @Test
    void aPedalThatCannotBeReadIsNamed() throws IOException {
        Files.writeString(folder.resolve("settings.json"), "{\"buttons\": {\"pedals\": {\"byte 300\": \"next\"}}}");
        assertThat(new SettingsFile(folder).read().said())
                .contains("a pedal is \"byte 300\"; it must be like \"byte 49\" or \"CTS on\"");
    }

    @Test
    void settingsAsLargeAsAShowAreNotRead() throws IOException {
        Files.writeString(folder.resolve("settings.json"), "{\"theme\": \"" + "x".repeat(1_000_000) + "\"}");
        assertThat(new SettingsFile(folder).read())
                .isEqualTo(new SettingsFile.Reading(
                        Settings.DEFAULT,
                        folder.resolve("settings.json")
                                + " is 1.1 MB large; the limit is 1 MB. Check that it is the right"
                                + " file, or split it into smaller ones; the default settings are used"));
    }

    @Test
    void noSettingsAreTheDefaults() {
        assertThat(new SettingsFile(folder).read()).isEqualTo(new SettingsFile.Reading(Settings.DEFAULT, null));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"zoom\": 99}",
                "{\"theme\": \" \"}",
                "{\"zoom\": NaN}",
                "{\"buttons\": {\"port\": \"\"}}"
            })
    void brokenSettingsAreKeptAsideAndSaid(String broken) throws IOException {
        Files.writeString(folder.resolve("settings.json"), broken);
        SettingsFile.Reading reading = new SettingsFile(folder).read();
        assertThat(reading.settings()).isEqualTo(Settings.DEFAULT);
        assertThat(reading.said())
                .startsWith("the settings could not be used (")
                .endsWith("are kept in " + folder.resolve("settings.json.broken"));
        assertThat(folder.resolve("settings.json.broken")).hasContent(broken);
        assertThat(folder.resolve("settings.json")).doesNotExist();
    }

    @Test
    void tenRecentFilesAreRemembered() {
        Settings settings = Settings.DEFAULT;
        for (int i = 0; i < 15; i++) {
            settings = settings.withRecent(Path.of(i + ".json"));
        }
        assertThat(settings.recentFiles()).hasSize(10).startsWith(Path.of("14.json"));
        assertThat(settings.recentFiles()).isNotEqualTo(List.of());
    }
}
