package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.edit.Editing;
import crowdline.console.passes.PassesHost;
import crowdline.console.place.Ways;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.window.NamedAction;
import crowdline.show.Show;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Action;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** A file that is dropped on the window: what is no show is taken into the one that is edited, by its name. */
class FilesTakenTest {
    private static final Show SHOW = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);
    private static final Action NOTHING = new NamedAction("nothing", () -> {});

    private final Editing editing = new Editing();
    private final List<String> came = new ArrayList<>();
    private final PreparePlace place = new PreparePlace(
            new Appearance(Themes.DAY, Zoom.NONE), new Ways(NOTHING, NOTHING, NOTHING), editing, command -> NOTHING);

    private final List<String> said = new ArrayList<>();

    private boolean takes(String name) throws Exception {
        place.serve(PassesHost.NONE, new SampleTools(SHOW), () -> {}, mark -> said.add(mark.word()), measures -> {});
        boolean takes = place.takes(Path.of(name), () -> came.add(name));
        SwingUtilities.invokeAndWait(() -> {});
        return takes;
    }

    @Test
    void listIsReadWhereAShowIsEdited() throws Exception {
        assertThat(takes("mail.txt")).as("no show is open").isFalse();
        editing.open("day.json", SHOW);
        assertThat(takes("first.txt")).isTrue();
        assertThat(said).containsExactly("first.txt comes too soon; drop it again once the acts are there");
        place.show(new PrepareView("Day", "Field", "calm", List.of(), List.of()));
        came.clear();
        assertThat(takes("Mail.TXT")).isTrue();
        assertThat(came).containsExactly("Mail.TXT");
        assertThat(ListPageTest.find((java.awt.Container) place.component(), JTextArea.class, "The pilot's list")
                        .getText())
                .startsWith("loop, slow roll from Mail.TXT");
        assertThat(takes("order.csv")).isTrue();
    }

    @Test
    void showsAndWhateverElseAreNotTaken() throws Exception {
        editing.open("day.json", SHOW);
        for (String name : List.of("day.json", "day", "flight.igc", "picture.png", "0001.journal")) {
            assertThat(takes(name)).as(name).isFalse();
        }
        assertThat(came).isEmpty();
    }
}
