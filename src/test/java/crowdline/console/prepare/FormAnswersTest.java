package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.page.ShowForm;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.day.Days;
import crowdline.show.Show;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** A change takes its time; until it is answered its field keeps what was typed, wherever the keys are. */
class FormAnswersTest {
    private static final Show SHOW = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);

    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private final SampleTools tools = new SampleTools(SHOW);
    private final ShowForm form = new ShowForm(tools.tools);
    private final JTextField title = form.line("Title", Show::title, Days::title);
    private final JTextField date = form.line("Date", show -> show.date().toString(), FormAnswersTest::day);

    private static Edit day(String typed) throws CannotBe {
        try {
            return Days.date(LocalDate.parse(typed));
        } catch (DateTimeException e) {
            throw new CannotBe("no date");
        }
    }

    FormAnswersTest() {
        tools.making = waiting::add;
        tools.editing.onEdit(form::show);
        form.wear(new Appearance(Themes.DAY, Zoom.NONE));
        form.show(SHOW);
    }

    private void type(JTextField field, String text) {
        field.setText(text);
        field.postActionEvent();
    }

    private void answer() {
        waiting.remove().run();
    }

    @Test
    void theAnswerToAFieldLeavesWhatWasTypedIntoTheNext() {
        type(title, "A better day");
        type(date, "2027-06-19");

        answer();
        assertThat(title.getText()).isEqualTo("A better day");
        assertThat(date.getText()).isEqualTo("2027-06-19");

        answer();
        assertThat(tools.editing.now().date()).isEqualTo(LocalDate.of(2027, 6, 19));
        assertThat(date.getText()).isEqualTo("2027-06-19");
    }

    @Test
    void whatCannotBeGoesForWhatIsThere() {
        type(date, "tomorrow");

        assertThat(tools.refused).hasSize(1);
        assertThat(date.getText()).isEqualTo("2027-05-02");
    }

    @Test
    void whatWasTakenAndTakenBackIsNotShownAnyMore() {
        type(title, "A better day");
        answer();
        tools.editing.undo();

        assertThat(title.getText()).isEqualTo("A day");
    }
}
