package crowdline.app.window.time;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Mark;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.settings.PaceShelf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaceKeeperTest {
    private static final Pace ANNA = new Pace("Anna", 0.1, 0.08, 0.2, 0.6, 0.1);
    private static final Pace BO = new Pace("Bo", 0.1, 0.06, 0.2, 0.6, 0.1);

    @TempDir
    Path folder;

    private final PaceInUse pace = new PaceInUse(Paces.DEFAULT);
    private final List<Pace> told = new ArrayList<>();
    private final List<String> said = new ArrayList<>();

    private PaceShelf shelf() {
        return new PaceShelf(folder);
    }

    private PaceKeeper desk(PaceShelf shelf) {
        return new PaceKeeper(
                shelf,
                pace,
                () -> null,
                paces -> told.add(paces.own()),
                (Mark mark) -> said.add(mark.word()),
                Runnable::run);
    }

    @Test
    void twoCommentatorsTakeTurnsWithOneKey() throws Exception {
        shelf().write(BO);
        shelf().write(ANNA);
        PaceKeeper desk = desk(shelf());
        for (int i = 0; i < 4; i++) {
            desk.useNext();
        }
        assertThat(told).containsExactly(ANNA, BO, Pace.DEFAULT, ANNA);
        assertThat(pace.get().own()).isEqualTo(ANNA);
        assertThat(said.get(0)).isEqualTo("Times now use Anna's pace");
    }

    @Test
    void nobodyTimedIsSaid() {
        desk(shelf()).useNext();
        assertThat(told).isEmpty();
        assertThat(said).singleElement().asString().contains("Ctrl+U");
    }

    @Test
    void aPaceKeptIsGoneByAndThereTheNextTime() {
        desk(shelf()).keep(ANNA);
        assertThat(told).containsExactly(ANNA);
        assertThat(shelf().pacesOf("Anna").own()).isEqualTo(ANNA);
        assertThat(PaceKeeper.missing("Anna", ANNA)).isEmpty();
    }

    @Test
    void aPaceThatCannotBeSavedIsSaidAndNotGoneBy() throws Exception {
        Files.writeString(folder.resolve("file"), "in the way");
        PaceShelf nowhere = new PaceShelf(folder.resolve("file").resolve("paces"));
        desk(nowhere).keep(ANNA);
        assertThat(told).isEmpty();
        assertThat(said).singleElement().asString().contains("cannot be made");
    }

    @Test
    void aPaceThatIsGoneIsSaidAtTheStart() {
        Pace first = shelf().pacesOf("Anna").own();
        assertThat(first).isEqualTo(Pace.DEFAULT);
        assertThat(PaceKeeper.missing("Anna", first)).isPresent();
        assertThat(PaceKeeper.missing(null, first)).isEmpty();
    }
}
