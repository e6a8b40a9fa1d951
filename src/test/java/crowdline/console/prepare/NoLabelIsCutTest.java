package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.edit.act.CannotBe;
import crowdline.edit.day.AskedDuties;
import crowdline.edit.day.GapPieces;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollBar;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What stands over a field, or on a button, is read whole where words are largest and the window is smallest. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NoLabelIsCutTest {
    private static final Appearance LARGEST = new Appearance(Themes.DAY, new Zoom(200));

    private final SampleTools sample = new SampleTools(ActsFixture.solo());
    private PreparePanel panel;

    @BeforeAll
    void makeThePages() {
        LookAndFeel.wear(LARGEST);
        panel = new PreparePanel(LARGEST, sample.tools);
        sample.editing.onChange(panel::edited);
        panel.setSize(1280, 700);
        panel.turn(Page.ANNOUNCEMENTS);
        ListPageTest.find(panel, JButton.class, "Begin with the template").doClick();
    }

    @AfterAll
    static void wearTheUsual() {
        LookAndFeel.wear(new Appearance(Themes.DAY, Zoom.NONE));
    }

    @ParameterizedTest
    @EnumSource(Page.class)
    void labelsOfAPageFit(Page page) {
        panel.turn(page);
        assertThat(cut()).isEmpty();
    }

    /** In a panel of its own: without a window nothing is laid out again for a longer word. */
    @Test
    void labelsOfAnActAndWhatItsFiguresTakeTogetherFit() {
        PreparePanel own = new PreparePanel(LARGEST, sample.tools);
        own.setSize(1280, 700);
        own.turn(Page.ACTS);
        own.show(new ActsFixture() {}.view());
        assertThat(cut(own)).isEmpty();
    }

    @Test
    void labelsOfTheListOfANewActFit() {
        panel.pasteList();
        assertThat(cut()).isEmpty();
    }

    @Test
    void labelsOfAPieceAndOfADutyFit() throws CannotBe {
        panel.turn(Page.DUTIES);
        sample.editing.change(GapPieces.add("Interview").of(sample.editing.now()));
        assertThat(cut()).isEmpty();
        sample.editing.change(AskedDuties.add("Thank the dairy.").of(sample.editing.now()));
        JList<?> list = ListPageTest.find(panel, JList.class, "Duties and pieces");
        for (int i = 0; i < list.getModel().getSize(); i++) {
            list.setSelectedIndex(i);
            assertThat(cut()).as("entry " + i).isEmpty();
        }
    }

    /** However many words stand around them. */
    @Test
    void tablesOfPeopleHaveRoomForTwoRowsAtLeast() {
        panel.turn(Page.PEOPLE);
        cut();
        for (String name : new String[] {"How words are said", "Who speaks"}) {
            JTable table = ListPageTest.find(panel, JTable.class, name);
            assertThat(table.getParent().getHeight()).as(name).isGreaterThanOrEqualTo(2 * table.getRowHeight());
        }
    }

    private List<String> cut() {
        return cut(panel);
    }

    private static List<String> cut(PreparePanel in) {
        for (int i = 0; i < 3; i++) {
            layOut(in);
        }
        List<String> cut = new ArrayList<>();
        look(in, cut);
        return cut;
    }

    private static void look(Container parent, List<String> cut) {
        for (Component each : parent.getComponents()) {
            String text = each instanceof JLabel label
                    ? label.getText()
                    : each instanceof AbstractButton button ? button.getText() : "";
            if (each.isVisible() && text != null && !text.isBlank() && !(parent instanceof JScrollBar)) {
                int needed = each.getPreferredSize().width;
                if (((JComponent) each).getWidth() < needed) {
                    cut.add("“" + text + "” needs " + needed + " and has " + each.getWidth());
                }
            }
            if (each instanceof Container inner && each.isVisible()) {
                look(inner, cut);
            }
        }
    }

    private static void layOut(Container parent) {
        parent.doLayout();
        for (Component each : parent.getComponents()) {
            if (each instanceof Container inner) {
                layOut(inner);
            }
        }
    }
}
