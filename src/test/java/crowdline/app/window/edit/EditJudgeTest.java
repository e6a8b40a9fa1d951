package crowdline.app.window.edit;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.draft.Drafted;
import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.show.Show;
import crowdline.show.check.LocatedFinding;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import org.junit.jupiter.api.Test;

class EditJudgeTest {
    /** An act that was just made from a list was never opened. */
    @Test
    void whatAPilotWroteAndIsNotDrawnIsFoundInAnEditedShow() {
        Show show = Drafted.arranged(
                        Drafted.empty(), "light aerobatic biplane", "Ada Quillan", "loop\nstall turn, quarter roll")
                .show();
        LoadedShow loaded = new LoadedShow(show, CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, 3);
        assertThat(EditJudge.findings(loaded, null, CatalogueFile.shipped()))
                .extracting(LocatedFinding::message)
                .anyMatch(message -> message.startsWith("stall turn is drawn without “quarter roll”"));
    }
}
