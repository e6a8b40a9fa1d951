package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class WindowMakersTest {
    /** Whoever makes a window, a menu or a box that opens is walked by {@link IncidentEverywhereTest}, or this fails. */
    @Test
    void nobodyElseOpensAWindow() {
        Set<String> makers = new TreeSet<>(OwnWindows.all().keySet());
        makers.addAll(Set.of(
                "crowdline.console.ConsoleMenus",
                "crowdline.console.UnitsMenu",
                "crowdline.console.practice.SkyWindow",
                "crowdline.console.second.SecondWindow",
                "crowdline.console.prepare.field.Fields",
                "crowdline.console.preview.PreviewChoice",
                "crowdline.console.words.ChoiceBox",
                "crowdline.console.window.ContextMenu",
                "crowdline.console.window.TextMenu",
                "crowdline.console.words.RemarkFields"));
        assertThat(OwnWindows.makers()).isEqualTo(makers);
    }
}
