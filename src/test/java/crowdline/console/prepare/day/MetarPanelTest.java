package crowdline.console.prepare.day;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.DayAir;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MetarPanelTest {
    private final List<DayAir> chosen = new ArrayList<>();
    private final List<DayAir> kept = new ArrayList<>();
    private int closed;

    private final MetarPanel panel = new MetarPanel(
            new Appearance(Themes.DAY, Zoom.NONE), DayAir.STANDARD, chosen::add, kept::add, () -> closed++);

    @Test
    void nothingCanBeUsedBeforeAReportIsThere() {
        assertThat(panel.use().isEnabled()).isFalse();
        assertThat(panel.said()).isEqualTo(MetarView.HOW);
    }

    @Test
    void whatWasReadIsShownBeforeItIsUsed() {
        panel.paste("METAR XXXX 121220Z 24008KT 9999 BKN035 19/11 Q1016");
        assertThat(panel.said()).isEqualTo("Wind from 240° true at 8 kt, 19 °C, QNH 1016 hPa, Cloud base 3,500 ft");
        assertThat(chosen).isEmpty();
        panel.use().doClick();
        assertThat(chosen).containsExactly(new DayAir(1016, 19, 240, 8, 3500.0));
        assertThat(closed).isEqualTo(1);
    }

    @Test
    void airForTheShowIsNotAirForTheSessionOnly() {
        assertThat(panel.keep().isEnabled()).isFalse();
        panel.paste("24008KT 9999 BKN035 19/11 Q1016");
        panel.keep().doClick();
        assertThat(kept).containsExactly(new DayAir(1016, 19, 240, 8, 3500.0));
        assertThat(chosen).isEmpty();
        assertThat(closed).isEqualTo(1);
    }

    @Test
    void wrongGroupIsToldAndCannotBeUsed() {
        panel.paste("24008KT Q0016");
        assertThat(panel.said()).isEqualTo("Q0016 is 16 hPa; it must be from 850 to 1100 hPa");
        panel.use().doClick();
        assertThat(chosen).isEmpty();
        assertThat(panel.air()).isNull();
    }
}
