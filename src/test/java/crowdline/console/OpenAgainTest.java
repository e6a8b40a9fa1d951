package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Action;
import org.junit.jupiter.api.Test;

class OpenAgainTest {
    private static String said(Path path) {
        return String.valueOf(
                OpenAgain.of(() -> List.of(path), open -> {}).get(0).getValue(Action.NAME));
    }

    @Test
    void aFileIsCalledByItsNameAndTheEndOfItsFolder() {
        Path folder = Path.of("shows", "of this season");
        assertThat(said(folder.resolve("evening.json"))).isEqualTo("evening.json  in " + folder);
        assertThat(said(Path.of("evening.json"))).isEqualTo("evening.json");
        Path deep = Path.of("a folder with a long name".repeat(9), "and one more", "summer");
        assertThat(said(deep.resolve("evening.json")))
                .isEqualTo("evening.json  in …"
                        + Path.of("/", "and one more", "summer").toString());
        assertThat(said(Path.of("s".repeat(300), "e".repeat(300) + ".json")))
                .hasSizeLessThan(80)
                .startsWith("eee")
                .endsWith("ss");
    }

    @Test
    void theWholePathIsOpenedAndTold() {
        Path path = Path.of("a folder with a long name".repeat(9), "evening.json");
        List<Path> opened = new ArrayList<>();
        Action action = OpenAgain.of(() -> List.of(path), opened::add).get(0);
        action.actionPerformed(null);
        assertThat(opened).containsExactly(path);
        assertThat(action.getValue(Action.SHORT_DESCRIPTION)).isEqualTo(path.toString());
    }
}
