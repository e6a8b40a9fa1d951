package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.speech.pace.Pace;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import crowdline.storage.settings.PaceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What comes with the program, and the smaller files. */
class ShippedFilesTest {
    @Test
    void shippedCatalogueIsSoundByTheSchemaToo() {
        Catalogue shipped = CatalogueFile.shipped();
        assertThat(shipped.entries()).hasSizeGreaterThanOrEqualTo(48);
        Show s = Objects.requireNonNull(Fixture.read(Fixture.FULL).show());
        Show withAll = s.withGlossary(shipped.entries(), TermsFile.shipped());
        ShowReading reading = Fixture.read(new ShowFile().bytes(withAll, null));
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.show()).isEqualTo(withAll);
    }

    @Test
    void termFaultsAreNamed() {
        assertThatThrownBy(() -> TermsFile.read("{\"crowdlineTerms\": 1, \"terms\": [{\"name\": \"lift\"}]}"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("whatItIs of lift");
        assertThatThrownBy(() -> TermsFile.read("{\"crowdlineTerms\": 2}"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("cannot be read");
    }

    @Test
    void catalogueFaultsAreNamed() {
        assertThatThrownBy(() -> CatalogueFile.read(
                        "{\"crowdlineCatalogue\": 1, \"figures\": [{\"name\": \"loop\", \"family\": \"\"}]}"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("figures[0]: catalogue family is empty; it needs some text");
        assertThatThrownBy(() -> CatalogueFile.read("{\n,}"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("line 2: this is not JSON");
    }

    @Test
    void incidentTemplateSaysThatItMustBeAgreed() {
        IncidentTemplate template = IncidentTemplate.shipped();
        assertThat(template.notice()).contains("Agree every word of it with the display director before use");
        assertThat(template.incident().agreedWith()).isNull();
        assertThat(template.incident().firstSteps().get(0))
                .as("the steps are for when it has happened")
                .isEqualTo("Stop talking. Fade the music out.");
        assertThat(template.incident().words()).isNotEmpty().noneMatch(w -> w.matches(".*\\d.*"));
    }

    @Test
    void paceIsReadAsWritten(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("pace.json");
        PaceFile.write(file, Pace.DEFAULT);
        assertThat(PaceFile.read(file)).isEqualTo(Pace.DEFAULT);
    }

    @Test
    void paceFaultsAreOneSentence(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("pace.json");
        Map<String, String> saidOf = new LinkedHashMap<>();
        saidOf.put("{}", file + " is not a pace file; one has \"crowdlinePace\": 1 in it");
        saidOf.put(
                "{\"crowdlinePace\": 1, \"fixedSS\": 1}",
                "the pace file " + file + " has no fixedS; is \"fixedSS\" meant for it?");
        saidOf.put("{\"crowdlinePace\": 1}", "the pace file " + file + " has no fixedS; add it as a number");
        saidOf.put("", file + " is not a pace file: the file is empty; it must begin with {");
        saidOf.put(
                "{\"crowdlinePace\": 1, \"fixedS\": -1, \"perLetterS\": 0.07, \"perCommaS\": 0.2, \"perStopS\": 0.4,"
                        + " \"relativeError\": 0.1}",
                "the pace file " + file + " cannot be used: fixedS is -1.0; it must be a number from 0.0 to 5.0");
        for (var said : saidOf.entrySet()) {
            Files.writeString(file, said.getKey());
            assertThatThrownBy(() -> PaceFile.read(file))
                    .isInstanceOf(ShowFileException.class)
                    .hasMessage(said.getValue());
        }
    }

    @Test
    void jsonOutWritesEveryPlainValue() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("text", "a \"b\" – c");
        values.put("list", List.of(1, 2.5, true));
        values.put("kind", Element.SlideKind.WHEELS_DOWN);
        assertThat(JsonOut.of(values))
                .isEqualTo("{\"text\": \"a \\\"b\\\" – c\", \"list\": [1, 2.5, true], \"kind\": \"wheels-down\"}\n");
        assertThat(JsonOut.of(Arrays.asList("x", null))).isEqualTo("[\"x\", null]\n");
        assertThatThrownBy(() -> JsonOut.of(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("NaN has no form in JSON");
    }
}
