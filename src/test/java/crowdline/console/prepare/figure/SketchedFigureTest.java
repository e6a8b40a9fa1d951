package crowdline.console.prepare.figure;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.window.time.LoadedPredictions;
import crowdline.console.path.SkyView;
import crowdline.console.prepare.SampleTools;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.draft.Drafted;
import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.speech.pace.Paces;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A figure that is only timed has a sketch where another has its curves. */
class SketchedFigureTest {
    private static ActView act(String kind, String list) {
        LoadedShow loaded = new LoadedShow(
                Drafted.arranged(Drafted.empty(), kind, "The Tern Team", list).show(),
                SampleTools.CATALOGUE,
                Paces.DEFAULT,
                Workers.ALONE,
                LoadedShow.FIRST_FLIGHTS);
        return LoadedPredictions.viewAtOnce(loaded, List.of()).acts().get(0);
    }

    private static List<String> seen(FigureDetail detail) {
        return all(detail)
                .filter(c -> c instanceof SketchPicture || c instanceof CurvePicture || c instanceof PathPicture)
                .filter(Component::isVisible)
                .map(c -> c.getClass().getSimpleName())
                .toList();
    }

    private static Stream<Component> all(Container parent) {
        return Stream.of(parent.getComponents())
                .flatMap(c -> c instanceof Container inner ? Stream.concat(Stream.of(c), all(inner)) : Stream.of(c));
    }

    private static FigureDetail detail(ActView act) {
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(100));
        FigureDetail detail = new FigureDetail(appearance, new SampleTools(Drafted.empty()).tools, drag -> {});
        detail.wear(appearance);
        detail.show(act.variants().get(0));
        return detail;
    }

    @Test
    void aFormationIsSketchedAndWhatNobodyKnowsIsNot() {
        ActView act = act("formation", "formation loop, 40 s\nZwickelbogen, 30 s\nbomb burst, 1 min");
        List<FigureView> figures = act.variants().get(0).figures();
        assertThat(figures).extracting(f -> f.sketch().isEmpty()).containsExactly(false, true, false);

        FigureDetail detail = detail(act);
        detail.choose(act.id(), 0);
        assertThat(seen(detail)).containsExactly("SketchPicture");
        detail.choose(act.id(), 1);
        assertThat(seen(detail)).containsExactly("PathPicture", "CurvePicture");
    }

    @Test
    void whatIsPredictedKeepsItsPathAndItsCurves() {
        ActView act = act("old trainer", "loop\nlanding");
        List<FigureView> figures = act.variants().get(0).figures();
        FigureDetail detail = detail(act);
        for (int i = 0; i < figures.size(); i++) {
            detail.choose(act.id(), i);
            boolean isSketched = !figures.get(i).sketch().equals(SkyView.NONE);
            assertThat(seen(detail))
                    .as(figures.get(i).name())
                    .containsExactly("PathPicture", isSketched ? "SketchPicture" : "CurvePicture");
            assertThat(isSketched).isEqualTo(figures.get(i).curves().seconds().isEmpty());
        }
    }
}
