package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.Folders;
import crowdline.flight.Workers;
import crowdline.show.Act;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class WhereToLookTest {
    @Test
    void crowdIsToldWhereToLookOnceThatIsWorkedOut() throws Exception {
        LoadedShow show = Objects.requireNonNull(new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"), 1)
                .loaded());
        Act act = show.show().acts().get(0);
        Prediction prediction =
                show.prediction(act.id(), act.variants().get(0).name()).orElseThrow();
        assertThat(prediction.where("first-loop")).isEmpty();
        prediction.refine(1);
        assertThat(prediction.where("first-loop")).containsPattern("^(low|well up|high|almost).*o'clock");
        assertThat(prediction.where("nothing")).isEmpty();
    }
}
