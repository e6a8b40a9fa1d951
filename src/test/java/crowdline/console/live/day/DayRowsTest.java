package crowdline.console.live.day;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.row.ListRows;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JList;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A row of the day's lists in Live: all of it is read at each zoom, in columns of their own. */
class DayRowsTest {
    private static final int WIDE = 1240;
    private static final DutiesView.Row DUTY = new DutiesView.Row(
            "d", new Mark(Form.STOP, Tone.ALARM, "Overdue"), "10 of 10", "Please stay on your side.", "by 14:25");
    private static final OrderView.Row ACT = new OrderView.Row(
            "a",
            new Mark(Form.CROSS, Tone.CAUTION, "Cancelled"),
            "15:04",
            "12 min later",
            "began 15:05",
            "10 min",
            "Somebody and the Brackwater Four",
            "Somebody");

    private static Appearance zoomed(int percent) {
        return new Appearance(Themes.DAY, new Zoom(percent));
    }

    private static <R extends ListRows.Row> JComponent cell(ListRows<R> rows, R row) {
        // As high as the row of what is flown, over which they lie, on the smallest screen.
        rows.setBounds(0, 0, WIDE + 36, 245);
        rows.show(List.of(row), 0);
        JList<R> list = list(rows);
        list.setSize(WIDE, 400);
        JComponent cell = (JComponent) list.getCellRenderer().getListCellRendererComponent(list, row, 0, false, false);
        cell.setSize(WIDE, cell.getPreferredSize().height);
        return cell;
    }

    @SuppressWarnings("unchecked")
    private static <R extends ListRows.Row> JList<R> list(Container in) {
        return (JList<R>) Objects.requireNonNull(find(in));
    }

    private static @Nullable JList<?> find(Container in) {
        for (Component each : in.getComponents()) {
            JList<?> found = each instanceof JList<?> list ? list : each instanceof Container c ? find(c) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** The stretches of a row that have ink, with what lies between letters and words taken in. */
    private static List<int[]> stretches(JComponent cell) {
        BufferedImage image = new BufferedImage(WIDE, cell.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        cell.paint(g);
        g.dispose();
        int gap = cell.getHeight() / 3;
        List<int[]> all = new ArrayList<>();
        for (int x = 0; x < WIDE; x++) {
            if (hasInk(image, x)) {
                int[] last = all.isEmpty() ? null : all.get(all.size() - 1);
                if (last != null && x - last[1] <= gap) {
                    last[1] = x;
                } else {
                    all.add(new int[] {x, x});
                }
            }
        }
        return all;
    }

    private static boolean hasInk(BufferedImage image, int x) {
        int ground = image.getRGB(2, 2);
        for (int y = 2; y < image.getHeight() - 4; y++) {
            if (image.getRGB(x, y) != ground) {
                return true;
            }
        }
        return false;
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 150, 200})
    void aDutyStandsInFourColumnsAndIsReadWhole(int percent) {
        JComponent cell = cell(DutyRows.in(zoomed(percent)), DUTY);
        assertThat(cell.getToolTipText()).as("what is cut is in the tip").isNull();
        assertThat(stretches(cell))
                .hasSize(4)
                .last()
                .satisfies(when ->
                        assertThat(when[1]).as("the last at the right edge").isGreaterThan(WIDE - 40 * percent / 100));
        assertThat(cell.getAccessibleContext().getAccessibleName())
                .isEqualTo("Please stay on your side., Overdue, 10 of 10, by 14:25");
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 150, 200})
    void anActStandsInItsColumnsAndIsReadWhole(int percent) {
        JComponent cell = cell(OrderRows.in(zoomed(percent)), ACT);
        assertThat(cell.getToolTipText()).as("what is cut is in the tip").isNull();
        assertThat(stretches(cell)).hasSizeBetween(4, 5);
        assertThat(cell.getAccessibleContext().getAccessibleName())
                .isEqualTo("Somebody and the Brackwater Four, Cancelled, slot 15:04 12 min later began 15:05, 10 min");
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 200})
    void whatFindsNoRoomIsInTheTip(int percent) {
        DutiesView.Row endless = new DutiesView.Row(
                "d", DUTY.state(), DUTY.count(), "Please stay on your side of the rope. ".repeat(12), DUTY.when());
        assertThat(cell(DutyRows.in(zoomed(percent)), endless).getToolTipText())
                .contains(endless.text().strip());
    }
}
