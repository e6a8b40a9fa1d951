package crowdline.console.passes;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesView.PassLine;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class PassesPanelTest {
    private final List<String> asked = new ArrayList<>();
    private final PassesHost host = new PassesHost() {
        @Override
        public void count(String passId, boolean counts) {
            asked.add(passId + (counts ? " counts" : " ignored"));
        }

        @Override
        public void note(String passId, String note) {
            asked.add(passId + ": " + note);
        }
    };

    private static PassesView view(boolean secondCounts) {
        return new PassesView("Passes: 2 of 2 used", List.of(), List.of(line("a", true), line("b", secondCounts)));
    }

    private static PassLine line(String id, boolean counts) {
        return new PassLine(
                id, "Pass " + id, "noted " + id, counts, new Mark(Form.DISC, Tone.GOOD, "Counts"), List.of());
    }

    private void onPanel(Consumer<PassesPanel> looking) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            PassesPanel panel = new PassesPanel(new Appearance(Themes.all().get(0), new Zoom(100)), () -> host);
            panel.show(view(true));
            looking.accept(panel);
        });
    }

    @Test
    void spaceOnAPassHasItCountNoMore() throws Exception {
        onPanel(panel -> {
            JList<?> list = find(panel, JList.class);
            list.setSelectedIndex(1);
            press(list, "SPACE");
            assertThat(asked).containsExactly("b ignored");
            panel.show(view(false));
            assertThat(list.getSelectedIndex()).as("stays on the pass").isEqualTo(1);
            press(list, "SPACE");
            assertThat(asked).containsExactly("b ignored", "b counts");
        });
    }

    @Test
    void checkBoxDoesTheSame() throws Exception {
        onPanel(panel -> {
            find(panel, JCheckBox.class).doClick();
            assertThat(asked).containsExactly("a ignored");
        });
    }

    @Test
    void noteIsThatOfTheChosenPassAndEnterKeepsIt() throws Exception {
        onPanel(panel -> {
            JTextField note = find(panel, JTextField.class);
            assertThat(note.getText()).isEqualTo("noted a");
            note.setText(" gusty ");
            note.postActionEvent();
            assertThat(asked).containsExactly("a: gusty");
        });
    }

    @Test
    void everythingThatTakesTheFocusHasAName() throws Exception {
        onPanel(panel -> {
            for (Class<? extends JComponent> type : List.of(JList.class, JCheckBox.class, JTextField.class)) {
                assertThat(((Accessible) find(panel, type))
                                .getAccessibleContext()
                                .getAccessibleName())
                        .isNotBlank();
            }
        });
    }

    @Test
    void withoutPassesNothingCanBePressed() throws Exception {
        onPanel(panel -> {
            panel.show(PassesView.NONE);
            press(find(panel, JList.class), "SPACE");
            assertThat(asked).isEmpty();
            assertThat(find(panel, JCheckBox.class).isEnabled()).isFalse();
            assertThat(find(panel, JTextField.class).isEnabled()).isFalse();
        });
    }

    private static void press(JComponent component, String key) {
        Object name = component.getInputMap().get(KeyStroke.getKeyStroke(key));
        component.getActionMap().get(name).actionPerformed(new ActionEvent(component, 0, key));
    }

    private static <C extends Component> C find(Container in, Class<C> type) {
        Deque<Component> waiting = new ArrayDeque<>(List.of(in));
        while (!waiting.isEmpty()) {
            Component next = waiting.remove();
            if (type.isInstance(next)) {
                return type.cast(next);
            }
            if (next instanceof Container container) {
                waiting.addAll(List.of(container.getComponents()));
            }
        }
        throw new AssertionError("no " + type.getSimpleName());
    }
}
