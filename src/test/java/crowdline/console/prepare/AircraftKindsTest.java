package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.edit.Change;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import java.util.List;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the page of an aircraft says and offers of its kind. */
class AircraftKindsTest {
    private final SampleTools sample = new SampleTools(ActsFixture.solo());
    private final PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools);

    private void show(String kindName) {
        Kind kind = sample.kinds().find(kindName).orElseThrow();
        Show now = sample.editing.now();
        Aircraft own = now.airframes().get(0);
        Aircraft other = kind.flies()
                ? kind.airframe(own.id(), "The one", Sliders.TYPICAL)
                : new TimedAircraft(own.id(), "The one", kind, null);
        sample.editing.onChange(panel::edited);
        sample.editing.change(Change.of("Fly another", now.withAircraft(List.of(other))));
        panel.turn(Page.AIRCRAFT);
    }

    private String said() {
        return ListPageTest.find(panel, JTextArea.class, "What it is").getText();
    }

    @ParameterizedTest
    @CsvSource({"formation", "helicopter", "parachutists", "fly-past"})
    void thatItIsOnlyTimedIsSaidOnce(String kind) {
        show(kind);

        assertThat(said().split("only timed", -1)).hasSize(2);
    }

    @Test
    void whatHasNoEngineIsNoStronger() {
        show("aerobatic glider");
        assertThat(ListPageTest.find(panel, JSlider.class, "Weaker or stronger than is typical")
                        .isEnabled())
                .isFalse();
        assertThat(ListPageTest.find(panel, JSlider.class, "Lighter or heavier than is typical")
                        .isEnabled())
                .isTrue();
    }

    @Test
    void whatHasAnEngineMayBeStronger() {
        show("old trainer");
        assertThat(ListPageTest.find(panel, JSlider.class, "Weaker or stronger than is typical")
                        .isEnabled())
                .isTrue();
    }
}
