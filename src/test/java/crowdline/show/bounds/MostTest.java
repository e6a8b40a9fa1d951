package crowdline.show.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import crowdline.show.Variant;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How much a show may hold, and the schema that refuses the rest. */
class MostTest {
    private static JsonNode schema() throws Exception {
        try (InputStream in = MostTest.class.getResourceAsStream("/crowdline/show-schema.json")) {
            return new JsonMapper().readTree(in);
        }
    }

    /** Every list that the schema names, with its limit, and every text without the limit of all texts. */
    private static void limits(JsonNode node, Set<String> lists, List<String> texts) {
        node.path("properties").properties().forEach(property -> {
            JsonNode rule = property.getValue();
            String type = rule.path("type").asString("");
            if (type.equals("array") || rule.has("maxProperties")) {
                int most = rule.path(type.equals("array") ? "maxItems" : "maxProperties")
                        .asInt(0);
                lists.add(property.getKey() + " " + most);
            }
        });
        if (node.path("type").asString("").equals("string")
                && node.path("maxLength").asInt(0) != Most.LETTERS) {
            texts.add(node.toString());
        }
        node.forEach(child -> limits(child, lists, texts));
    }

    @Test
    void theSchemaRefusesWhatTheTableRefuses() throws Exception {
        Set<String> ofSchema = new HashSet<>();
        List<String> endless = new ArrayList<>();
        limits(schema(), ofSchema, endless);
        Set<String> ofTable = new TreeSet<>();
        for (Most most : Most.values()) {
            ofTable.add(most.key() + " " + most.entries());
        }
        assertThat(ofTable).hasSizeGreaterThan(10);
        assertThat(ofSchema).containsExactlyInAnyOrderElementsOf(ofTable);
        assertThat(endless).isEmpty();
    }

    @Test
    void oneMoreThanTheLimitIsRefusedWithBoth() {
        Most.SAY_AS.must(Collections.nCopies(2_000, "x"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Most.SAY_AS.must(Collections.nCopies(2_001, "x")))
                .withMessage("sayAs has 2,001 entries; the limit is 2,000, so take some out");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Variant("full", null, Collections.nCopies(301, "f")))
                .withMessage("order has 301 entries; the limit is 300, so take some out");
    }

    @Test
    void aTextOfAnyLanguageHasItsLimitInLetters() {
        Remark.of("r", RemarkKind.FACT, "\ud83d\udee9".repeat(5_000));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Remark.of("r", RemarkKind.FACT, "x".repeat(5_001)))
                .withMessage("remark text is 5,001 letters long; the limit is 5,000, so shorten it or split it");
    }
}
