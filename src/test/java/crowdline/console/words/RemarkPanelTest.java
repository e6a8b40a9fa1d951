package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.MarkLine;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemarkPanelTest {
    private static final int WIDTH_PX = 560;

    private static List<Component> all(Container in) {
        List<Component> found = new ArrayList<>();
        for (Component each : in.getComponents()) {
            each.doLayout();
            found.add(each);
            if (each instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    private static WordsView.RemarkPage asDraft(WordsView.RemarkPage page) {
        return new WordsView.RemarkPage(
                page.draft(),
                new Mark(Form.RING, Tone.CALM, "First draft"),
                page.spoken(),
                page.verdict(),
                page.shortVerdict(),
                page.room(),
                page.planned(),
                page.problems(),
                page.findings(),
                page.reads(),
                page.inFigure(),
                page.moments(),
                page.speakers(),
                page.notes(),
                page.other(),
                true);
    }

    /** The seconds of a text have a line of their own, whether or not it is a draft. */
    @ParameterizedTest
    @CsvSource({"false, 100", "true, 100", "false, 200"})
    void secondsOfATextAreNeverCut(boolean draft, int zoom) {
        WordsModel model = SampleWords.model(SampleWords.editing(SmallShow.show()));
        model.choosePlace("a1", "f1");
        WordsView.RemarkPage page = model.view().page().orElseThrow();
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(zoom));
        RemarkPanel panel = new RemarkPanel(appearance, typed -> {});
        panel.wear(appearance);
        panel.show(draft ? asDraft(page) : page);
        panel.setSize(WIDTH_PX, 900);
        panel.doLayout();
        MarkLine seconds = all(panel).stream()
                .filter(MarkLine.class::isInstance)
                .map(MarkLine.class::cast)
                .filter(line ->
                        "Time of the text".equals(line.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
        assertThat(seconds.getWidth()).isGreaterThan(WIDTH_PX * 4 / 5);
    }

    /** In a window that is narrower than usual; what is wider than the page would stand behind the scroll bar. */
    @Test
    void nothingIsWiderThanThePageWhereWordsAreLargest() {
        WordsModel model = SampleWords.model(SampleWords.editing(SmallShow.show()));
        model.choosePlace("a1", "f1");
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(200));
        RemarkPanel panel = new RemarkPanel(appearance, typed -> {});
        panel.wear(appearance);
        panel.show(model.view().page().orElseThrow());
        panel.setSize(430, 900);
        panel.doLayout();
        all(panel);
        assertThat(all(panel).stream()
                        .filter(WordsPage.class::isInstance)
                        .map(page -> ((Container) page).getComponent(0)))
                .singleElement()
                .satisfies(page -> assertThat(Stream.of(((Container) page).getComponents())
                                .filter(Component::isVisible)
                                .filter(c -> c.getX() + c.getWidth() > page.getWidth())
                                .map(c -> c.getClass().getSimpleName() + " to " + (c.getX() + c.getWidth()) + " of "
                                        + page.getWidth()))
                        .isEmpty());
    }

    @Test
    void noTimesOfAnotherRemarkStandUnderEmptyFields() {
        WordsModel model = SampleWords.model(SampleWords.editing(SmallShow.show()));
        model.choosePlace("a1", "f1");
        Appearance appearance = new Appearance(Themes.DAY, Zoom.NONE);
        RemarkPanel panel = new RemarkPanel(appearance, typed -> {});
        panel.wear(appearance);
        panel.show(model.view().page().orElseThrow());
        assertThat(times(panel)).contains("Time of the text", "Time of the short form");
        panel.blank("Nothing to say here yet.");
        assertThat(times(panel)).isEmpty();
        panel.show(model.view().page().orElseThrow());
        assertThat(times(panel)).contains("Time of the text", "Time of the short form");
    }

    private static List<String> times(RemarkPanel panel) {
        return all(panel).stream()
                .filter(MarkLine.class::isInstance)
                .filter(Component::isVisible)
                .map(line -> line.getAccessibleContext().getAccessibleName())
                .toList();
    }
}
