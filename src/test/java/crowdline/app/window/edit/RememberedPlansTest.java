package crowdline.app.window.edit;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.Workers;
import crowdline.loaded.ActPlans;
import crowdline.loaded.LoadedShow;
import crowdline.show.Act;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class RememberedPlansTest {
    private final RememberedPlans plans = new RememberedPlans();
    private LoadedShow loaded;

    @BeforeEach
    void load() throws Exception {
        byte[] content = Files.readAllBytes(Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json"));
        loaded = new LoadedShow(
                ShowFile.soundBefore(content).orElseThrow(), CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, 1);
    }

    private List<ActPlans.Planned> round(LoadedShow of) {
        List<ActPlans.Planned> planned =
                ActPlans.of(of, of.show().acts(), act -> act.variants().get(0), plans::of);
        plans.turn();
        return planned;
    }

    @Test
    void onlyTheActThatAnEditTouchesIsPlannedAnewAndPlansAreWhatAPlannerSays() {
        List<ActPlans.Planned> first = round(loaded);
        assertThat(first).hasSizeGreaterThan(1);
        Act act = loaded.show().acts().get(1);
        RemarkPlace figure = new RemarkPlace(act.id(), act.figures().get(1).id());
        List<Remark> more = new ArrayList<>(figure.in(loaded.show()));
        more.add(Remark.of("more", RemarkKind.FACT, "Look at that."));
        Show edited = figure.with(loaded.show(), more);

        List<ActPlans.Planned> next = round(loaded.with(edited));

        for (int i = 0; i < first.size(); i++) {
            boolean touched = first.get(i).act().id().equals(act.id());
            var plan = assertThat(next.get(i).plan()).as(first.get(i).act().title());
            if (touched) {
                plan.isNotSameAs(first.get(i).plan());
            } else {
                plan.isSameAs(first.get(i).plan());
            }
        }
        assertThat(next)
                .isEqualTo(ActPlans.of(
                        loaded.with(edited),
                        edited.acts(),
                        each -> each.variants().get(0)));
    }
}
