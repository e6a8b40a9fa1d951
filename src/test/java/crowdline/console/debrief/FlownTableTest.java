package crowdline.console.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.debrief.DebriefView.FigureRow;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.FontMetrics;
import java.util.List;
import javax.swing.JScrollPane;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class FlownTableTest {
    private static final FigureRow ROW =
            new FigureRow("climbing and coming round again", "0:25", "0:27", "+2.5 s", "47.3 s", "45.1 s", "−2.2 s");

    private final FlownTable table = new FlownTable();

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    private void show(int wide) {
        table.wear(new Appearance(Themes.DAY, Zoom.LARGEST));
        table.show(List.of(ROW));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setSize(wide, 400);
        scroll.doLayout();
        scroll.getViewport().doLayout();
        table.doLayout();
    }

    @Test
    void largeLettersLeaveEveryColumnInSightWhileTheyHaveRoom() {
        show(1190);
        assertThat(table.getScrollableTracksViewportWidth()).isTrue();
        FontMetrics letters = table.getFontMetrics(table.getFont());
        for (int i = 0; i < table.getColumnCount(); i++) {
            assertThat(table.getColumnModel().getColumn(i).getWidth())
                    .as(table.getColumnName(i))
                    .isGreaterThanOrEqualTo(letters.stringWidth(String.valueOf(table.getValueAt(0, i))) + 7);
        }
    }

    @Test
    void inLessRoomItScrollsAndCutsNothing() {
        show(700);
        assertThat(table.getScrollableTracksViewportWidth()).isFalse();
    }
}
