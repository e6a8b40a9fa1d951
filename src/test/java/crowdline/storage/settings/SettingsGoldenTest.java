package crowdline.storage.settings;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.glossary.drill.Memory;
import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.SpeedUnit;
import crowdline.show.FigureNote;
import crowdline.speech.pace.Pace;
import crowdline.storage.Golden;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.Practised.Well;
import crowdline.telemetry.serial.ButtonSignal;
import crowdline.telemetry.serial.ButtonSignal.Sent;
import crowdline.telemetry.serial.ButtonSignal.Turned;
import crowdline.telemetry.serial.ControlLine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The program's own files as they lie on disks, and what they say. What is expected is written here by hand. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the files name paths of the other systems")
class SettingsGoldenTest {
    private static final Path SHOW = Path.of("/shows/harbour.json");
    private static final Settings FIRST = new Settings(
            List.of(SHOW, Path.of("/shows/other day.json")),
            "sunlight",
            1.25,
            null,
            LearnedButtons.NONE,
            Measures.USUAL,
            false,
            false,
            SecondLook.DEFAULT);

    private static final Pace PACE = new Pace("Zoë Ærø", 0.25, 0.0625, 0.3, 0.55, 0.08);
    private static final String PACE_NAME = "zoe-r-ad13ac45a25e.json";

    private static final List<FigureNote> NOTES = List.of(
            new FigureNote("first", "loop", "Look for the smoke — “late” today"),
            new FigureNote("second", "spin-1", "Two turns, not three"));
    /** After the name, the SHA-256 of the show's path, its first twelve digits. */
    private static final String NOTES_NAME = "harbour.json-71994751ac56.json";

    @TempDir
    Path folder;

    private static Settings settings() {
        Map<ButtonSignal, String> pedals = new LinkedHashMap<>();
        pedals.put(new Sent(49), "next");
        pedals.put(new Sent(255), "back");
        pedals.put(new Turned(ControlLine.CTS, true), "said");
        pedals.put(new Turned(ControlLine.CTS, false), "not-said");
        pedals.put(new Turned(ControlLine.DSR, true), "hold");
        pedals.put(new Turned(ControlLine.DSR, false), "off-plan");
        return new Settings(
                List.of(SHOW),
                "night",
                2,
                "Zoë Ærø",
                new LearnedButtons("/dev/ttyUSB0", 19_200, pedals, Map.of("shift F9", "filler")),
                Measures.USUAL,
                false,
                false,
                SecondLook.DEFAULT);
    }

    private SettingsFile.Reading read(String golden) throws IOException {
        Files.write(folder.resolve("settings.json"), Golden.bytes(golden));
        return new SettingsFile(folder).read();
    }

    private static void isWrittenAs(String golden, Path file) throws IOException {
        JsonMapper mapper = new JsonMapper();
        JsonNode written = mapper.readTree(Files.readAllBytes(file));
        assertThat(written.toString())
                .isEqualTo(mapper.readTree(Golden.bytes(golden)).toString());
    }

    /** They could name a journal, which nothing ever set and nothing asks for. */
    @Test
    void firstSettingsAreReadAsTheyWereMeant() throws IOException {
        assertThat(read("settings-first.json")).isEqualTo(new SettingsFile.Reading(FIRST, null));
    }

    @Test
    void settingsAreReadAsTheyWereMeant() throws IOException {
        assertThat(read("settings.json")).isEqualTo(new SettingsFile.Reading(settings(), null));
    }

    @Test
    void unitsAreReadAndWrittenAsTheyWereMeant() throws IOException, ShowFileException {
        Settings metric = settings().withMeasures(new Measures(SpeedUnit.KMH, LengthUnit.METRES));
        assertThat(read("settings-units.json")).isEqualTo(new SettingsFile.Reading(metric, null));

        new SettingsFile(folder).write(metric);

        isWrittenAs("settings-units.json", folder.resolve("settings.json"));
    }

    @Test
    void theSkyInAWindowOfItsOwnIsReadAndWrittenAsItWasMeant() throws IOException, ShowFileException {
        Settings apart = settings().withSkyApart(true);
        assertThat(read("settings-sky-apart.json")).isEqualTo(new SettingsFile.Reading(apart, null));

        new SettingsFile(folder).write(apart);

        isWrittenAs("settings-sky-apart.json", folder.resolve("settings.json"));
    }

    @Test
    void listeningIsReadAndWrittenAsItWasMeant() throws IOException, ShowFileException {
        Settings listens = settings().withListens(true);
        assertThat(read("settings-listens.json")).isEqualTo(new SettingsFile.Reading(listens, null));

        new SettingsFile(folder).write(listens);

        isWrittenAs("settings-listens.json", folder.resolve("settings.json"));
    }

    @Test
    void theSecondWindowIsReadAndWrittenAsItWasMeant() throws IOException, ShowFileException {
        Settings second = settings()
                .withSecond(new SecondLook("sunlight", 1.5, new SecondLook.Place(-1920, 0, 1900, 1000), null));
        assertThat(read("settings-second.json")).isEqualTo(new SettingsFile.Reading(second, null));

        new SettingsFile(folder).write(second);

        isWrittenAs("settings-second.json", folder.resolve("settings.json"));
    }

    @Test
    void whoSitsBeforeTheSecondWindowIsReadAndWrittenAsItWasMeant() throws IOException, ShowFileException {
        Settings second = settings()
                .withSecond(new SecondLook("sunlight", 1.5, new SecondLook.Place(-1920, 0, 1900, 1000), "Claire"));
        assertThat(read("settings-second-speaker.json")).isEqualTo(new SettingsFile.Reading(second, null));

        new SettingsFile(folder).write(second);

        isWrittenAs("settings-second-speaker.json", folder.resolve("settings.json"));
    }

    @Test
    void settingsAreWrittenAsTheyAlwaysWere() throws IOException, ShowFileException {
        new SettingsFile(folder).write(settings());
        isWrittenAs("settings.json", folder.resolve("settings.json"));
    }

    @Test
    void paceIsReadAndWrittenAsItWasMeant() throws IOException, ShowFileException {
        Files.write(folder.resolve(PACE_NAME), Golden.bytes("pace-1.json"));
        PaceShelf shelf = new PaceShelf(folder);
        assertThat(shelf.read()).isEqualTo(new PaceShelf.Reading(List.of(PACE), List.of()));

        Files.delete(folder.resolve(PACE_NAME));
        shelf.write(PACE);

        isWrittenAs("pace-1.json", folder.resolve(PACE_NAME));
    }

    @Test
    void notesAreReadAndWrittenAsTheyWereMeant() throws IOException, ShowFileException {
        Files.write(folder.resolve(NOTES_NAME), Golden.bytes("notes-1.json"));
        FigureNotesFile notes = new FigureNotesFile(folder, SHOW);
        assertThat(notes.read()).isEqualTo(NOTES);

        Files.delete(folder.resolve(NOTES_NAME));
        notes.write(NOTES);

        isWrittenAs("notes-1.json", folder.resolve(NOTES_NAME));
    }

    @Test
    void practiceFlightsAreReadAndWrittenAsTheyWereMeant() throws IOException, ShowFileException {
        Path file = folder.resolve("practice.json");
        Files.write(file, Golden.bytes("practice-1.json"));
        PractisedFile practice = new PractisedFile(file);
        Well none = Well.NOTHING;
        Map<String, List<Practised>> flown = Map.of(
                "",
                List.of(),
                "Zoë Ærø",
                List.of(
                        new Practised(
                                2,
                                LocalDate.of(2026, 5, 2),
                                "Quickthorn – solo",
                                17,
                                new Well(1, 2),
                                new Well(8, 9),
                                new Well(5, 6),
                                new Well(9, 9),
                                none),
                        new Practised(
                                4,
                                LocalDate.of(2026, 5, 3),
                                "Quickthorn – solo",
                                99_999,
                                new Well(0, 3),
                                new Well(0, 1),
                                none,
                                none,
                                new Well(2, 2))));
        assertThat(practice.read()).isEqualTo(new PractisedFile.Reading(flown, ""));

        Files.delete(file);
        practice.write(flown);

        isWrittenAs("practice-1.json", file);
    }

    @Test
    void whatTheDrillKeptIsReadAndWrittenAsItWasMeant() throws IOException, ShowFileException {
        Path file = folder.resolve("drill.json");
        Files.write(file, Golden.bytes("drill-1.json"));
        DrillFile drill = new DrillFile(file);
        Map<String, Map<String, Memory>> remembered = Map.of(
                "",
                Map.of("loop", new Memory(0, 2.5, 0, 20_575)),
                "Zoë Ærø",
                Map.of("humpty bump", new Memory(2, 2.36, 6, 20_500)));
        assertThat(drill.read()).isEqualTo(new DrillFile.Reading(remembered, ""));

        Files.delete(file);
        drill.write(remembered);

        isWrittenAs("drill-1.json", file);
    }
}
