package crowdline.console.prepare.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import javax.swing.JTable;
import javax.swing.JViewport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class InSightTest {
    private final JTable table = new JTable(20, 1);
    private final JViewport around = new JViewport();

    @BeforeEach
    void tableOfTwentyRowsOfWhichTenAreSeen() {
        table.setRowHeight(20);
        table.setSize(100, 400);
        around.setView(table);
        around.setSize(100, 200);
        InSight.keep(around, table);
    }

    @Test
    void chosenRowStaysWholeWhereABarTakesRoom() {
        table.changeSelection(9, 0, false, false);
        around.setSize(100, 170);
        assertThat(around.getViewPosition()).isEqualTo(new Point(0, 30));
    }

    @Test
    void rowThatWasScrolledAwayStaysAway() {
        table.changeSelection(0, 0, false, false);
        around.setViewPosition(new Point(0, 100));
        around.setSize(100, 170);
        assertThat(around.getViewPosition()).isEqualTo(new Point(0, 100));
        table.changeSelection(9, 0, false, false);
        around.setViewPosition(new Point(0, 20));
        around.setSize(100, 190);
        assertThat(around.getViewPosition()).as("more room moves nothing").isEqualTo(new Point(0, 20));
    }
}
