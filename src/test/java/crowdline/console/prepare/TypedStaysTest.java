package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.edit.day.Days;
import crowdline.show.Show;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import javax.swing.JFrame;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIf;

/** A change is answered while the next is being typed; the answer takes none of it away. */
@Tag("window")
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class TypedStaysTest {
    private static final Show SHOW = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);

    @Test
    void whatIsBeingTypedOfTheSameThingStaysAndOfAnotherGoes() throws Exception {
        ShowForm form = new ShowForm(new SampleTools(SHOW).tools);
        JTextField title = form.line("Title", Show::title, Days::title);
        JFrame frame = new JFrame();
        try {
            SwingUtilities.invokeAndWait(() -> {
                form.wear(new Appearance(Themes.DAY, Zoom.NONE));
                form.show(SHOW, "one");
                frame.add(title);
                frame.pack();
                frame.setVisible(true);
                title.requestFocusInWindow();
            });
            Instant until = Instant.now().plus(Duration.ofSeconds(20));
            while (!title.isFocusOwner() && Instant.now().isBefore(until)) {
                Thread.sleep(20);
            }
            SwingUtilities.invokeAndWait(() -> {
                title.setText("A better d");
                form.show(SHOW, "one");
                assertThat(title.getText()).isEqualTo("A better d");
                form.show(SHOW, "another");
                assertThat(title.getText()).isEqualTo("A day");
                title.setText("A day");
                form.show(SHOW, "another");
                form.show(ShowArranging.empty("Taken back", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null), "another");
                assertThat(title.getText()).as("nothing else was typed").isEqualTo("Taken back");
            });
        } finally {
            SwingUtilities.invokeAndWait(frame::dispose);
        }
    }
}
