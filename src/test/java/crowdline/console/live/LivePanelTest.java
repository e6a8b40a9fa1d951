package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderView;
import crowdline.console.live.day.ToldLine;
import crowdline.console.live.find.FindPanel;
import crowdline.console.live.row.ListRows;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class LivePanelTest {
    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    private static LivePanel panel(int zoom) {
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(zoom));
        LivePanel panel = new LivePanel(appearance);
        panel.setSize(1280, 736);
        panel.wear(appearance);
        return panel;
    }

    private static List<Rectangle> rows(LivePanel panel) {
        return Arrays.stream(panel.getComponents())
                .filter(row -> !liesOverRows(row))
                .map(Component::getBounds)
                .toList();
    }

    private static boolean liesOverRows(Component row) {
        return row instanceof ToldLine || row instanceof NoteRow || row instanceof ListRows || row instanceof FindPanel;
    }

    @Test
    void noRowChangesItsPlaceWhenItsContentChanges() {
        LivePanel panel = panel(100);
        List<Rectangle> before = rows(panel);
        for (LiveView view : SampleLiveViews.all().values()) {
            panel.show(view);
            panel.doLayout();
            assertThat(rows(panel)).isEqualTo(before);
        }
    }

    @Test
    void rowsFillTheHeightWithoutGaps() {
        for (int zoom : new int[] {100, 200}) {
            List<Rectangle> rows = rows(panel(zoom));
            int y = 0;
            for (Rectangle row : rows) {
                assertThat(row.y).isEqualTo(y);
                y += row.height;
            }
            assertThat(y).isEqualTo(736);
        }
    }

    /** Read at two metres, over the rows, and none of them moves for it. */
    @Test
    void whatAKeyDidIsToldInLargeTypeAndMovesNoRow() {
        for (int zoom : new int[] {100, 200}) {
            LivePanel panel = panel(zoom);
            List<Rectangle> before = rows(panel);
            ToldLine told = Arrays.stream(panel.getComponents())
                    .filter(ToldLine.class::isInstance)
                    .map(ToldLine.class::cast)
                    .findFirst()
                    .orElseThrow();
            assertThat(told.isVisible()).isFalse();
            Mark longest = new Mark(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    "The act has moved on by itself since your last key: press Backspace to go back a figure.");
            panel.show(SampleLiveViews.flying().withTold(longest));
            assertThat(told.isVisible()).isTrue();
            assertThat(panel.getComponentZOrder(told)).as("on top").isZero();
            assertThat(told.getAccessibleContext().getAccessibleDescription()).isEqualTo(longest.word());
            assertThat(rows(panel)).isEqualTo(before);
            double least = ToldLine.LEAST_PX;
            TextBlock words = told.words(panel.getWidth());
            assertThat(words.whole()).as("nothing is cut at " + zoom + " %").isTrue();
            assertThat(words.font().getSize2D()).isGreaterThanOrEqualTo((float) least);
            assertThat(words.heightPx()).isLessThanOrEqualTo(told.getHeight());
            Mark brief = new Mark(Form.DISC, Tone.CALM, "Following the clock");
            panel.show(SampleLiveViews.flying().withTold(brief));
            assertThat(told.getWidth()).as("no wider than its words").isLessThan(panel.getWidth() / 2);
            assertThat(told.words(told.getWidth()).lines()).hasSize(1);
            assertThat(told.getY())
                    .as("what is flown and what to say are in sight")
                    .isGreaterThan(rows(panel).get(3).y);
            panel.show(SampleLiveViews.flying());
            assertThat(told.isVisible()).isFalse();
        }
    }

    @Test
    void whatLiesOverTheFigureLeavesItsNameAndItsTimeInSight() {
        LivePanel panel = panel(100);
        LiveView flying = SampleLiveViews.flying();
        String flown = flying.now().name() + ", " + flying.now().left();
        panel.show(flying);
        assertThat(strip(panel)).startsWith(flying.strip().act());
        panel.find().open(words -> List.of());
        panel.show(flying);
        assertThat(strip(panel)).startsWith(flown).contains(flying.strip().hour());
        panel.find().close();
        panel.showDuties(new DutiesView(List.of()));
        assertThat(strip(panel)).startsWith(flown);
        panel.showDuties(null);
        assertThat(strip(panel)).startsWith(flying.strip().act());
    }

    private static String strip(LivePanel panel) {
        return Arrays.stream(panel.getComponents())
                .filter(row -> "Strip".equals(row.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow()
                .getAccessibleContext()
                .getAccessibleDescription();
    }

    @Test
    void noteLeavesTheNextFigureInSight() {
        for (int zoom : new int[] {100, 200}) {
            LivePanel panel = panel(zoom);
            panel.show(SampleLiveViews.flying());
            panel.openNote(
                    "Noted at 14:10:33. A few words if there is time: Enter keeps them, Esc goes on without.", "");
            Component note = Arrays.stream(panel.getComponents())
                    .filter(NoteRow.class::isInstance)
                    .findFirst()
                    .orElseThrow();
            Rectangle next = rows(panel).get(3);
            assertThat(note.getY()).as("at %s %%", zoom).isGreaterThan(next.y + next.height * 3 / 5);
        }
    }

    @Test
    void everyRowTellsAScreenReaderWhatItShows() {
        LivePanel panel = panel(100);
        panel.show(SampleLiveViews.flying());
        List<String> told = new ArrayList<>();
        for (Component row : panel.getComponents()) {
            assertThat(row.getAccessibleContext().getAccessibleName()).isNotBlank();
            if (liesOverRows(row)) {
                continue;
            }
            told.add(row.getAccessibleContext().getAccessibleDescription());
        }
        assertThat(told.get(0)).contains("6 s late");
        assertThat(told.get(1)).contains("Half Cuban");
        assertThat(told.get(2)).contains("Over the top");
        assertThat(told.get(3)).contains("Stall turn");
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component component : container.getComponents()) {
            if (component instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    private static OrderView day() {
        OrderView.Row row = SampleLiveViews.order().rows().get(0);
        return new OrderView(
                IntStream.range(0, 20)
                        .mapToObj(i -> new OrderView.Row(
                                "a" + i,
                                row.state(),
                                row.slot(),
                                row.moved(),
                                row.expected(),
                                row.lasts(),
                                row.title(),
                                row.who()))
                        .toList(),
                0);
    }

    @Test
    void aListOverTheRowsShowsThreeAtLeastAtAnyZoom() {
        for (int zoom : new int[] {100, 150, 200}) {
            LivePanel panel = panel(zoom);
            panel.showOrder(day());
            // Twice, as text that is wrapped knows its height once it has its width.
            layOut(panel.order());
            layOut(panel.order());
            assertThat(panel.order().seen()).as(zoom + " %").isGreaterThanOrEqualTo(ListRows.LEAST_ROWS);
        }
    }

    @Test
    void aListWithoutARowSaysWhereRowsComeFrom() {
        LivePanel panel = panel(100);
        panel.showDuties(new DutiesView(List.of()));
        assertThat(label(panel.duties())).contains("no duties").contains("Ctrl+6");
        panel.showDuties(new DutiesView(List.of(
                new DutiesView.Row("d", new Mark(Form.RING, Tone.CALM, "Later"), "0 of 1", "Thank the dairy.", ""))));
        assertThat(label(panel.duties())).contains("S it was said");
    }

    private static String label(Container list) {
        return Arrays.stream(list.getComponents())
                .filter(JTextArea.class::isInstance)
                .map(area -> ((JTextArea) area).getText())
                .findFirst()
                .orElse("");
    }
}
