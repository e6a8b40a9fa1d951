package crowdline.show.bounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The table of what numbers may be, and the schema that refuses the rest. */
class QuantityTest {
    private static String range(String key, double least, double most) {
        return key + " " + least + " to " + most;
    }

    /** Every number that the schema names, with its range. */
    private static void ranges(JsonNode node, Set<String> found) {
        node.path("properties").properties().forEach(property -> {
            JsonNode rule = property.getValue();
            String type = rule.path("type").asString("");
            if (type.equals("number") || type.equals("integer")) {
                found.add(range(
                        property.getKey(),
                        rule.path("minimum").asDouble(Double.NaN),
                        rule.path("maximum").asDouble(Double.NaN)));
            }
        });
        node.forEach(child -> ranges(child, found));
    }

    @Test
    void theSchemaRefusesWhatTheTableRefuses() throws Exception {
        Set<String> ofSchema = new HashSet<>();
        try (InputStream in = QuantityTest.class.getResourceAsStream("/crowdline/show-schema.json")) {
            ranges(new JsonMapper().readTree(in), ofSchema);
        }
        Set<String> ofTable = new HashSet<>();
        for (Quantity quantity : Quantity.values()) {
            // Only a roll in stops has points; without them the record holds none.
            double least = quantity == Quantity.POINTS_PER_TURN ? 2 : quantity.least();
            ofTable.add(range(quantity.key(), least, quantity.most()));
        }
        assertThat(ofTable).hasSizeGreaterThan(50);
        assertThat(ofSchema).containsExactlyInAnyOrderElementsOf(ofTable);
    }

    @Test
    void whatIsPlausibleCanBeComputed() {
        for (Quantity quantity : Quantity.values()) {
            assertThat(quantity.isPlausible(quantity.least() - 1))
                    .as("%s", quantity)
                    .isFalse();
            assertThat(quantity.isPlausible(quantity.most() + 1))
                    .as("%s", quantity)
                    .isFalse();
        }
    }

    @Test
    void whatCannotBeComputedIsRefusedWithItsRange() {
        assertThatThrownBy(() -> Quantity.MASS_KG.must(1e7))
                .hasMessage("massKg is 10,000,000; it must be from 20 to 700,000");
        assertThatThrownBy(() -> Quantity.ZERO_LIFT_DRAG.must(1e-9))
                .hasMessage("zeroLiftDrag is 1.0E-9; it must be from 0.001 to 1");
        assertThatThrownBy(() -> Quantity.MASS_KG.must(Double.NaN)).hasMessage("massKg is NaN; it must be a number");
    }
}
