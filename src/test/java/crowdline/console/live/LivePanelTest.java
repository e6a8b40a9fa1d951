package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Component;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
        return Arrays.stream(panel.getComponents()).map(Component::getBounds).toList();
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

    @Test
    void everyRowTellsAScreenReaderWhatItShows() {
        LivePanel panel = panel(100);
        panel.show(SampleLiveViews.flying());
        List<String> told = new ArrayList<>();
        for (Component row : panel.getComponents()) {
            assertThat(row.getAccessibleContext().getAccessibleName()).isNotBlank();
            told.add(row.getAccessibleContext().getAccessibleDescription());
        }
        assertThat(told.get(0)).contains("6 s late");
        assertThat(told.get(1)).contains("Half Cuban");
        assertThat(told.get(2)).contains("Over the top");
        assertThat(told.get(3)).contains("Stall turn");
    }
}
