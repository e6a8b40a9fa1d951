package crowdline.console.prepare.figure;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.passes.PassesView;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.util.List;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FigureTableTest {
    @Test
    void aNameThatIsCutIsWholeInTheTooltipAndNeverReadAsHtml() {
        FigureTable table = new FigureTable(row -> {}, (field, typed) -> {});
        table.show(
                List.of(figure("loop"), figure("<b>climbing slope</b> with opposite rolls, right, second")),
                PassesView.NONE);
        table.wear(new Appearance(Themes.DAY, new Zoom(100)));
        assertThat(tip(table, 0)).isNull();
        assertThat(tip(table, 1))
                .contains("&lt;b&gt;climbing slope&lt;/b&gt; with opposite rolls, right, second")
                .doesNotContain("<b>");
        assertThat(cell(table, 1).getFont()).isEqualTo(cell(table, 0).getFont());
    }

    @Test
    void aFigureThatIsGoneAndComesBackIsChosenAgainUnlessAnotherWasChosen() {
        FigureTable table = new FigureTable(row -> {}, (field, typed) -> {});
        List<FigureView> before = List.of(withId("loop"), withId("way"), withId("roll"));
        List<FigureView> without = List.of(withId("loop"), withId("roll"));
        table.show(before, PassesView.NONE);
        table.setRowSelectionInterval(1, 1);
        table.show(without, PassesView.NONE);
        assertThat(table.getSelectedRow()).isEqualTo(1);
        table.show(before, PassesView.NONE);
        assertThat(table.getSelectedRow()).as("as it was").isEqualTo(1);
        table.show(without, PassesView.NONE);
        table.setRowSelectionInterval(0, 0);
        table.show(before, PassesView.NONE);
        assertThat(table.getSelectedRow()).as("chosen since").isZero();
    }

    private static FigureView withId(String id) {
        FigureView plain = figure(id);
        FigureEdit edit =
                new FigureEdit(id, false, List.of(), null, PrepareView.ShapeView.NONE, PrepareView.WrittenView.NONE);
        return new FigureView(
                edit, plain.curves(), plain.sketch(), id, "", "0:00", "1 s", "", "", "", "", plain.remarks());
    }

    private static FigureView figure(String name) {
        return new FigureView(name, "", "0:00", "1 s", "", "", "", "", List.of());
    }

    private static JComponent cell(FigureTable table, int row) {
        return (JComponent) table.prepareRenderer(table.getCellRenderer(row, 1), row, 1);
    }

    private static @Nullable String tip(FigureTable table, int row) {
        return cell(table, row).getToolTipText();
    }
}
