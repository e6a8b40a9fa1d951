package crowdline.console.prepare;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.field.Aim;
import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.storage.show.KindsFile;
import java.awt.event.FocusEvent;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.JTextField;

/** The panel of a show with one act flown, as it is edited. */
abstract class ActsFixture {
    final SampleTools sample = new SampleTools(solo());
    final PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools);
    final JTable table = ListPageTest.find(panel, JTable.class, "Figures in the order flown");

    ActsFixture() {
        sample.editing.onChange(this::show);
        show();
    }

    static Show solo() {
        Show empty = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);
        try {
            return new SampleTools(empty)
                    .adding()
                    .fromList(
                            new ListReader(SampleTools.CATALOGUE)
                                    .read("take-off, loop at 600 ft, stall turn, slow roll, landing"),
                            new AddAct.Wanted(
                                    KindsFile.shipped().named("light aerobatic biplane"),
                                    null,
                                    "Solo",
                                    "Ada Field",
                                    LocalTime.of(14, 0)))
                    .of(empty)
                    .show();
        } catch (CannotBe e) {
            throw new AssertionError(e.why(), e);
        }
    }

    PrepareView view() {
        return Listed.flown(sample.editing.now());
    }

    void show() {
        panel.show(view());
    }

    Act act() {
        return sample.editing.now().acts().get(0);
    }

    List<String> flown() {
        return act().inOrder(act().variants().get(0)).stream()
                .filter(f -> !f.transit())
                .map(Figure::figure)
                .toList();
    }

    void chooseFigure(String name) {
        for (int row = 0; row < table.getRowCount(); row++) {
            if (table.getValueAt(row, 1).equals(name)) {
                table.setRowSelectionInterval(row, row);
                return;
            }
        }
        throw new AssertionError("there is no " + name);
    }

    void aimAtFigures() {
        for (var listener : table.getFocusListeners()) {
            if (listener instanceof Aim aim) {
                aim.focusGained(new FocusEvent(table, FocusEvent.FOCUS_GAINED));
            }
        }
    }

    String chosen() {
        return String.valueOf(table.getValueAt(table.getSelectedRow(), 1));
    }

    JTextField field(PinField field) {
        return ListPageTest.find(panel, JTextField.class, field.label());
    }

    FigureView figure(String name) {
        return view().acts().get(0).variants().get(0).figures().stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    Optional<Asked> asked(String figure) {
        return act().figures().stream()
                .filter(f -> f.figure().equals(figure))
                .findFirst()
                .map(Figure::asked);
    }
}
