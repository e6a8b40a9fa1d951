package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.SpeedUnit;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.Test;

class UnitsMenuTest {
    private final List<Measures> chosen = new ArrayList<>(List.of(Measures.USUAL));
    private final UnitsMenu units = new UnitsMenu(() -> chosen.get(chosen.size() - 1), chosen::add);

    private static void choose(JMenu menu, String words) {
        for (int i = 0; i < menu.getItemCount(); i++) {
            JMenuItem item = menu.getItem(i);
            if (item.getText().equals(words)) {
                item.doClick(0);
                return;
            }
        }
        throw new AssertionError("there is no " + words);
    }

    @Test
    void eachIsChosenAndTheOtherStays() {
        choose(units.speeds(), "kilometres an hour");
        choose(units.heights(), "metres");
        choose(units.speeds(), "miles an hour");
        assertThat(chosen)
                .containsExactly(
                        Measures.USUAL,
                        new Measures(SpeedUnit.KMH, LengthUnit.FEET),
                        new Measures(SpeedUnit.KMH, LengthUnit.METRES),
                        new Measures(SpeedUnit.MPH, LengthUnit.METRES));
    }

    @Test
    void openedItShowsWhatIsChosenNow() {
        chosen.add(new Measures(SpeedUnit.MPH, LengthUnit.METRES));
        JMenu menu = units.speeds();
        for (var listener : menu.getMenuListeners()) {
            listener.menuSelected(null);
        }
        assertThat(menu.getItem(2).isSelected()).isTrue();
        assertThat(menu.getItem(0).isSelected()).isFalse();
    }
}
