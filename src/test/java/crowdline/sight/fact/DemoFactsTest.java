package crowdline.sight.fact;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * All facts of the acts of a biplane and a glider, as they read. After a change of wording or of the prediction, run with
 * {@code -Dcrowdline.golden=write} and read every changed line aloud.
 */
class DemoFactsTest {
    private static final Path GOLDEN = Path.of("src", "test", "resources", "crowdline", "sight", "demo-facts.txt");

    @Test
    void factsReadAsReviewed() throws ShowFileException, IOException {
        List<String> lines = new ArrayList<>();
        for (ToldActs.Told told : ToldActs.all()) {
            lines.add("# " + told.flight().actId() + ", " + told.flight().variant());
            told.facts().forEach(fact -> lines.add(line(fact)));
        }
        if ("write".equals(System.getProperty("crowdline.golden"))) {
            Files.write(GOLDEN, lines);
        }
        List<String> reviewed = Files.readAllLines(GOLDEN, StandardCharsets.UTF_8);
        List<String> unread =
                lines.stream().filter(line -> !reviewed.contains(line)).toList();
        assertThat(unread)
                .as("lines nobody has read yet; -Dcrowdline.golden=write keeps them")
                .isEmpty();
        assertThat(lines).as("the order of the facts").isEqualTo(reviewed);
    }

    private static String line(CrowdFact fact) {
        return String.format(
                Locale.UK,
                "%s | %.2f %s | %s | %s",
                fact.id(),
                fact.rounded(),
                fact.unit(),
                fact.text(),
                fact.shortText());
    }
}
