package crowdline.storage.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class DiskNamesTest {
    private enum Colour {
        RED,
        GREEN
    }

    private final DiskNames<Colour> names = new DiskNames<>(Colour.class, colour -> switch (colour) {
        case RED -> "red-one";
        case GREEN -> "green one";
    });

    @Test
    void constantsGoByTheirNamesBothWays() {
        assertThat(names.all()).containsExactly("red-one", "green one");
        for (Colour colour : Colour.values()) {
            assertThat(names.constant(names.of(colour))).isEqualTo(colour);
        }
    }

    @Test
    void anotherNameIsRefusedWithWhatIsAllowed() {
        assertThatThrownBy(() -> names.constant("RED"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"RED\" is none of red-one, green one");
    }

    @Test
    void oneNameIsNotForTwo() {
        assertThatThrownBy(() -> new DiskNames<>(Colour.class, colour -> "red"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("two constants of Colour are called red; each needs its own name");
    }
}
