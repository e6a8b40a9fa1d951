package crowdline.console.prepare.act;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.WordHighList;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import java.util.stream.Stream;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import org.junit.jupiter.api.Test;

/** A finding is as high as its words: what is to be mended is never cut. */
class FindingCellsTest {
    private static final String LONG =
            "the venue's latitude and longitude, its elevation, the bearing of the crowd line and"
                    + " the distance to the display line are not given; the sun, where to look, how late the sound is and the"
                    + " aircraft's own position are left out; the air is taken as at sea level";

    private final JList<FindingView> list = new WordHighList<>(new DefaultListModel<>(), FindingView::message);

    FindingCellsTest() {
        DefaultListModel<FindingView> rows = (DefaultListModel<FindingView>) list.getModel();
        Stream.of("the show has no act", LONG)
                .map(said -> new FindingView(new Mark(Form.RING, Tone.CALM, "Note"), said, "loop"))
                .forEach(rows::addElement);
        list.setCellRenderer(ActCells.findings(new Appearance(Themes.DAY, Zoom.NONE)));
        wide(300);
    }

    private void wide(int px) {
        list.setSize(px, 600);
    }

    private int high(int row) {
        return list.getCellBounds(row, row).height;
    }

    private String tip(int row) {
        JComponent cell = (JComponent) list.getCellRenderer()
                .getListCellRendererComponent(list, list.getModel().getElementAt(row), row, false, false);
        return String.valueOf(cell.getToolTipText());
    }

    @Test
    void longWordsHaveTheLinesTheyNeedAndShortOnesNoMore() {
        assertThat(high(1)).isGreaterThan(2 * high(0));
        assertThat(high(0)).isLessThan(70);
        assertThat(tip(1)).as("the words that a cut row has in its tip").isEqualTo("null");
    }

    @Test
    void whereTheListIsWiderTheyAreLower() {
        int narrow = high(1);
        wide(900);
        assertThat(high(1)).isLessThan(narrow);
    }
}
