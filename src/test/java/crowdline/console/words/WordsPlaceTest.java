package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.edit.Editing;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.window.NamedAction;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Action;
import org.junit.jupiter.api.Test;

class WordsPlaceTest {
    private final Action nothing = new NamedAction("nothing", () -> {});

    @Test
    void withoutAShowItSaysHowToOpenOneAndHasNoEmptyFields() {
        LookAndFeel.loadType();
        WordsPlace words = new WordsPlace(
                new Appearance(Themes.DAY, new Zoom(100)),
                new Ways(nothing, nothing, nothing),
                new Editing(),
                command -> nothing);
        assertThat(shown(words.component())).hasAtLeastOneElementOfType(EmptyShow.class);
        assertThat(shown(words.component())).doesNotHaveAnyElementsOfTypes(WordsPanel.class);
        words.hasShow();
        assertThat(shown(words.component())).hasAtLeastOneElementOfType(WordsPanel.class);
        assertThat(shown(words.component())).doesNotHaveAnyElementsOfTypes(EmptyShow.class);
    }

    /** All components that are not hidden, nor within one that is. */
    private static List<Component> shown(Component in) {
        List<Component> all = new ArrayList<>();
        if (in.isVisible()) {
            all.add(in);
            if (in instanceof Container container) {
                for (Component child : container.getComponents()) {
                    all.addAll(shown(child));
                }
            }
        }
        return all;
    }
}
