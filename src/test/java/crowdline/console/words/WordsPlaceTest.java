package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.edit.EditHost;
import crowdline.console.edit.Editing;
import crowdline.console.keys.Command;
import crowdline.console.live.SmallShow;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.window.NamedAction;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
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
        WordsPlace words = place(new Editing());
        assertThat(shown(words.component())).hasAtLeastOneElementOfType(EmptyShow.class);
        assertThat(shown(words.component())).doesNotHaveAnyElementsOfTypes(WordsPanel.class);
        words.hasShow();
        assertThat(shown(words.component())).hasAtLeastOneElementOfType(WordsPanel.class);
        assertThat(shown(words.component())).doesNotHaveAnyElementsOfTypes(EmptyShow.class);
    }

    private WordsPlace place(Editing editing) {
        return new WordsPlace(
                new Appearance(Themes.DAY, new Zoom(100)),
                new Ways(nothing, nothing, nothing),
                editing,
                command -> nothing);
    }

    /** Walk through begins with the act whose words were looked at. */
    @Test
    void otherPlacesCanAskWhichActIsChosen() {
        Editing editing = SampleWords.editing(SmallShow.show());
        WordsPlace words = place(editing);
        assertThat(words.chosenPlace()).isEqualTo(RemarkPlace.SHOW);
        WordsModel model = SampleWords.model(editing);
        words.show(model);
        model.choosePlace("a1", "f1");
        assertThat(words.chosenPlace()).isEqualTo(new RemarkPlace("a1", "f1"));
    }

    /** Most of what is accepted at once is out of sight. */
    @Test
    void itIsSaidHowManyDraftsWereAccepted() {
        Show show = SmallShow.show();
        RemarkPlace loop = new RemarkPlace("a1", "f1");
        Editing editing = SampleWords.editing(loop.with(
                show, loop.in(show).stream().map(r -> r.withDraft(true)).toList()));
        WordsPlace words = place(editing);
        List<String> said = new ArrayList<>();
        words.serve(EditHost.NONE, mark -> said.add(mark.word()));
        words.show(SampleWords.model(editing));
        words.commands().carryOut(Command.ACCEPT_ALL);
        assertThat(said).containsExactly(loop.in(show).size() + " drafts are accepted; Ctrl+Z takes that back");
        assertThat(words.commands().possible()).doesNotContain(Command.ACCEPT_ALL);
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
