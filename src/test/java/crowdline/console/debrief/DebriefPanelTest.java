package crowdline.console.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.debrief.DebriefView.Line;
import crowdline.console.debrief.DebriefView.RunView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.console.window.Snapshot;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DebriefPanelTest {
    private static final Mark MARK = new Mark(Form.RING, Tone.CALM, "Change");

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    private static Stream<Component> all(Container in) {
        return Stream.of(in.getComponents())
                .flatMap(c -> c instanceof Container inner ? Stream.concat(Stream.of(c), all(inner)) : Stream.of(c));
    }

    @Test
    void atTheLargestZoomEveryKeyIsNamedAndWhatToChangeHasRoom() {
        DebriefPanel panel = new DebriefPanel(new Appearance(Themes.DAY, new Zoom(200)));
        panel.show(new DebriefView(
                "A long day at the far end of the marsh",
                MARK,
                List.of(new RunView("Act", "full", "4:00", List.of(), "", List.of())),
                List.of("Incident page: from 14:38:20 to 14:39:12, 0:52"),
                List.of(new Line(MARK, "Begin the loop later.", "")),
                "",
                Charts.NONE));
        var unused = Snapshot.of(panel, 1280, 700);
        JTextArea keys = (JTextArea) all(panel)
                .filter(c -> "Keys".equals(c.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
        assertThat(keys.getHeight()).isGreaterThanOrEqualTo(keys.getPreferredSize().height);
        assertThat(keys.getText()).contains("Ctrl+P prints   ← → acts");
        JScrollPane changes = (JScrollPane) all(panel)
                .filter(JScrollPane.class::isInstance)
                .filter(c -> all((Container) c)
                        .anyMatch(in -> "What to change"
                                .equals(in.getAccessibleContext().getAccessibleName())))
                .findFirst()
                .orElseThrow();
        assertThat(changes.getHeight()).isGreaterThan(100);
    }
}
