package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.check.LocatedFinding;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundTripTest {
    private final ShowFile files = new ShowFile();

    private static Show sound(ShowReading reading) {
        assertThat(reading.findings()).as("findings").isEmpty();
        return Objects.requireNonNull(reading.show());
    }

    private String written(Show show, ShowDocument document) {
        return new String(files.bytes(show, document), StandardCharsets.UTF_8);
    }

    private static Show withFigures(Show show, UnaryOperator<List<Figure>> change) {
        Act a = show.acts().get(0);
        Act changed = new Act(
                a.id(),
                a.title(),
                a.performer(),
                a.airframe(),
                a.slotStart(),
                a.slotMinutes(),
                a.entry(),
                change.apply(new ArrayList<>(a.figures())),
                a.variants(),
                a.remarks());
        return show.withActs(List.of(changed), show.remarks());
    }

    private static Figure titled(Figure f, String title, List<Element> elements) {
        return new Figure(
                f.id(),
                f.figure(),
                title,
                f.look(),
                elements,
                f.durationS(),
                f.exit(),
                f.minEntryKt(),
                f.quiets(),
                f.remarks());
    }

    @Test
    void everyShowIsReadAsItWasWritten() {
        for (long seed = 0; seed < 150; seed++) {
            Show show = SeededShows.show(seed);
            ShowReading reading = files.read(Path.of("day.json"), files.bytes(show, null));
            assertThat(reading.findings()).as("findings of seed %d", seed).isEmpty();
            assertThat(reading.show()).as("seed %d", seed).isEqualTo(show);
        }
    }

    @Test
    void anyShowLaidOverAnyFileIsReadAsItWasWritten() {
        for (long seed = 0; seed < 80; seed++) {
            ShowReading before = files.read(Path.of("day.json"), files.bytes(SeededShows.show(seed), null));
            Show show = SeededShows.show(seed + 1000);
            ShowReading reading = files.read(Path.of("day.json"), files.bytes(show, before.document()));
            assertThat(reading.show()).as("seed %d", seed).isEqualTo(show);
        }
    }

    @Test
    void writingAnUnchangedShowAgainChangesNothing() {
        ShowReading first = Fixture.read(Fixture.FULL);
        String once = written(sound(first), first.document());
        ShowReading second = Fixture.read(once);
        assertThat(written(sound(second), second.document())).isEqualTo(once);
    }

    @Test
    void numbersStayAsTheyWereWritten() {
        ShowReading reading = Fixture.read(Fixture.changed("\"windKt\": 9", "\"windKt\": 9.50"));
        assertThat(written(sound(reading), reading.document())).contains("\"windKt\": 9.50");
    }

    @Test
    void defaultsSpelledOutStayAndOthersAreNotAdded() {
        ShowReading reading = Fixture.read(Fixture.changed("\"do\": \"line\",", "\"do\": \"line\", \"power\": 1,"));
        String text = written(sound(reading), reading.document());
        assertThat(text)
                .contains("{\"do\": \"line\", \"power\": 1, \"toAlongM\": 0}")
                .contains("{\"do\": \"arc\", \"way\": \"pull\", \"degrees\": 360, \"loadG\": 4.5}");
    }

    @Test
    void unknownKeysStayAtTheirPlaceWhileValuesChange() {
        String text = Fixture.changed(
                        "\"title\": \"Ada's own\",", "\"draft\": {\"by\": [1]}, \"title\": \"Ada's own\",")
                .replace("{\"do\": \"arc\",", "{\"note\": \"hold it\", \"do\": \"arc\",")
                .replace("\"crowdline\": 1,", "\"$schema\": \"show-schema.json\", \"crowdline\": 1, \"season\": 3,");
        ShowReading reading = Fixture.read(text);
        assertThat(reading.findings()).extracting(LocatedFinding::code).containsOnly("unknown-key");
        assertThat(reading.findings())
                .extracting(LocatedFinding::path)
                .containsExactly("season", "acts[0].figures[1].draft", "acts[0].figures[1].elements[1].note");
        Show changed = withFigures(Objects.requireNonNull(reading.show()), figures -> {
            Figure own = figures.get(1);
            List<Element> elements = new ArrayList<>(Objects.requireNonNull(own.elements()));
            elements.add(0, new Element.Pivot(Element.Side.LEFT, 1));
            figures.set(1, titled(own, "Spiral of Harrowmere", elements));
            figures.add(0, Figure.of("new-one", "roll"));
            return figures;
        });
        String out = written(changed, reading.document());
        assertThat(out)
                .startsWith("{\n  \"$schema\": \"show-schema.json\",\n  \"crowdline\": 1,\n  \"season\": 3,\n")
                .contains("\"draft\": {\"by\": [1]},\n          \"title\": \"Spiral of Harrowmere\"")
                .contains("{\"note\": \"hold it\", \"do\": \"arc\", \"way\": \"pull\"")
                .contains("{\"do\": \"pivot\"}");
        assertThat(Fixture.read(out).show()).isEqualTo(changed);
    }

    @Test
    void valueTakenAwayLeavesTheFile() {
        ShowReading reading = Fixture.read(Fixture.FULL);
        Show changed = withFigures(sound(reading), figures -> {
            Figure own = figures.get(1);
            figures.set(1, Figure.of(own.id(), own.figure()));
            return figures;
        });
        assertThat(written(changed, reading.document()))
                .doesNotContain("Ada's own")
                .doesNotContain("Watch the smoke");
    }

    @Test
    void savingKeepsThePreviousFile(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("day.json");
        Files.writeString(file, Fixture.FULL);
        ShowReading reading = files.read(file);
        Show changed = withFigures(sound(reading), figures -> List.of(figures.get(0)));
        ShowDocument document = files.write(file, changed, reading.document());
        assertThat(files.read(file).show()).isEqualTo(changed);
        assertThat(document.file()).isEqualTo(file);
        assertThat(folder.resolve("day.json.previous")).hasContent(Fixture.FULL);
    }

    @Test
    void sayAsKeepsItsOrder() {
        ShowReading reading = Fixture.read(
                Fixture.changed("\"Quillan\": \"K", "\"Zed\": \"zee\", \"Ada\": \"AY\", \"Quillan\": \"K"));
        Show show = sound(reading);
        assertThat(show.sayAs()).isEqualTo(Map.of("Zed", "zee", "Ada", "AY", "Quillan", "KWIL-an"));
        assertThat(written(show, reading.document()))
                .contains("{\"Zed\": \"zee\", \"Ada\": \"AY\", \"Quillan\": \"KWIL-an\"}");
    }

    @Test
    void missingFolderIsOneSentence(@TempDir Path folder) {
        Path file = folder.resolve("gone").resolve("day.json");
        assertThatThrownBy(() -> files.write(file, SeededShows.show(1)))
                .isInstanceOf(ShowFileException.class)
                .hasMessageStartingWith(file + " could not be saved: there is no folder ");
    }
}
