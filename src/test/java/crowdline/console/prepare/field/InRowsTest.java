package crowdline.console.prepare.field;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Component;
import java.util.Arrays;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class InRowsTest {
    private static JPanel panel(int wide) {
        JPanel panel = new JPanel(new InRows(4));
        for (String name :
                new String[] {"full, from 2,300 ft", "rolling, from 1,200 ft", "flat and short, from 900 ft"}) {
            panel.add(new JToggleButton(name));
        }
        panel.setSize(wide, 10);
        panel.setSize(wide, panel.getPreferredSize().height);
        panel.doLayout();
        return panel;
    }

    /** How large a button is depends on what the program wore last. */
    @BeforeEach
    void wears() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            LookAndFeel.loadType();
            LookAndFeel.wear(new Appearance(Themes.DAY, Zoom.NONE));
        });
    }

    @Test
    void everyNameIsShownWholeHoweverNarrowThePlace() {
        for (int wide = 250; wide < 900; wide += 50) {
            JPanel panel = panel(wide);
            for (Component button : panel.getComponents()) {
                assertThat(button.getWidth()).isEqualTo(button.getPreferredSize().width);
                assertThat(button.getX() + button.getWidth()).isLessThanOrEqualTo(wide);
                assertThat(button.getY() + button.getHeight()).isLessThanOrEqualTo(panel.getHeight());
            }
        }
    }

    @Test
    void whereThereIsRoomAllStandInOneRow() {
        assertThat(Arrays.stream(panel(900).getComponents())
                        .map(Component::getY)
                        .distinct())
                .hasSize(1);
    }
}
