package crowdline.console.place;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import org.junit.jupiter.api.Test;

class EmptyShowTest {
    private final List<String> opened = new ArrayList<>();
    private List<Action> last = List.of();

    private Action action(String name) {
        return new AbstractAction(name) {
            @Override
            public void actionPerformed(ActionEvent event) {
                opened.add(name);
            }
        };
    }

    private EmptyShow page() {
        return new EmptyShow(
                new Appearance(Themes.DAY, Zoom.NONE),
                new Ways(action("New"), action("Open"), action("Demo"), () -> last));
    }

    private static Stream<JButton> buttons(Container in) {
        return Arrays.stream(in.getComponents()).flatMap(EmptyShowTest::buttonsOf);
    }

    private static Stream<JButton> buttonsOf(Component child) {
        return child instanceof JButton button
                ? Stream.of(button)
                : child instanceof Container inner ? buttons(inner) : Stream.empty();
    }

    @Test
    void whatWasOpenLastIsAButtonEachThatTheFocusReaches() {
        last = IntStream.range(0, 5).mapToObj(i -> action("day-" + i + ".json")).toList();
        List<JButton> all = buttons(page()).toList();
        assertThat(all)
                .extracting(JButton::getText)
                .containsExactly("New", "Open", "Demo", "day-0.json", "day-1.json", "day-2.json");
        assertThat(all).allMatch(JButton::isFocusable);
        all.get(4).doClick();
        assertThat(opened).containsExactly("day-1.json");
    }

    @Test
    void aNameFromAFileIsShownAsItIs() {
        last = List.of(action("<html><b>day.json"));
        assertThat(buttons(page()).skip(3))
                .singleElement()
                .satisfies(b -> assertThat(b.getClientProperty("html.disable")).isEqualTo(true));
    }

    @Test
    void whereNothingWasOpenNothingIsOffered() {
        assertThat(buttons(page())).hasSize(3);
        EmptyShow page = page();
        last = List.of(action("day.json"));
        page.show(EmptyShow.Shown.opening("day.json", "Reading"));
        assertThat(buttons(page)).isEmpty();
        page.show(EmptyShow.Shown.NOTHING);
        assertThat(buttons(page)).hasSize(4);
    }
}
