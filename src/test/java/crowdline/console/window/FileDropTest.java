package crowdline.console.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FileDropTest {
    private final List<Path> opened = new ArrayList<>();
    private final List<String> said = new ArrayList<>();
    private final FileDrop drop = new FileDrop(opened::add, mark -> said.add(mark.word()));

    @Test
    void oneFileIsOpened() {
        drop.take(List.of(new File("day.json")));
        assertThat(opened).containsExactly(Path.of("day.json"));
        assertThat(said).isEmpty();
    }

    @Test
    void aPilotsLetterATableAndAnEarlierCopyOfAShowAreOpened() {
        List.of("nell.eml", "List.TXT", "order.csv", "day.json.previous", "day")
                .forEach(name -> drop.take(List.of(new File(name))));
        assertThat(opened).hasSize(5);
        assertThat(said).isEmpty();
    }

    @Test
    void whatIsNeitherShowNorLetterIsRefusedBeforeItIsReadAsOne() {
        drop.take(List.of(new File("words.wav")));
        drop.take(List.of(new File("Flight.IGC")));
        assertThat(opened).isEmpty();
        assertThat(said)
                .containsExactly(
                        "words.wav cannot be used here; drop a show, a letter as text or e-mail, a table (CSV) or a journal",
                        "Flight.IGC is a flight log; to play it in Live, choose it with Ctrl+R");
    }

    @Test
    void ofSeveralNoneIsOpenedAndThatIsSaid() {
        drop.take(List.of(new File("day.json"), new File("other.json"), new File("map.png")));
        assertThat(opened).isEmpty();
        assertThat(said).containsExactly("3 files were dropped, and none was opened; drop one show file");
    }
}
