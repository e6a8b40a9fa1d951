package crowdline.console.tour;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.keys.CommandActions;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import javax.swing.JPanel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TourRowTest {
    @ParameterizedTest
    @ValueSource(ints = {100, 130, 140, 170, 200})
    void whatItPointsAtKeepsMostOfTheWindow(int zoom) {
        LookAndFeel.loadType();
        TourRow row = new TourRow(
                new Appearance(Themes.SUNLIGHT, new Zoom(zoom)), new CommandActions(command -> {}), () -> {});
        JPanel window = new JPanel(new BorderLayout());
        window.add(row, BorderLayout.SOUTH);
        window.setSize(1280, 800);
        for (Tour tour = Tour.begin(); !tour.isLast(); tour = tour.next()) {
            row.show(tour);
            // The height of wrapped words is known once they have a width.
            for (int i = 0; i < 3; i++) {
                layOut(window);
            }
            assertThat(row.getHeight()).as(tour.step().words()).isBetween(30, 300);
        }
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
            child.invalidate();
        }
    }
}
