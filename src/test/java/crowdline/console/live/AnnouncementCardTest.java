package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crowdline.console.incident.AnnouncementPanel;
import crowdline.console.incident.AnnouncementView;
import crowdline.console.incident.ChoicePanel;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.Announcement;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** Its keys, without a window. */
class AnnouncementCardTest {
    private static final Announcement LOST = new Announcement(
            "lost",
            "Lost child",
            List.of("A child waits at [where].", "It is [age and sex]. Come to [where]."),
            "the organiser, 3 May");
    private static final Announcement CLOSING =
            new Announcement("closing", "Closing words", List.of("Good night."), null);

    private final SampleAnnouncing announcing = new SampleAnnouncing();
    private final AnnouncementCard card =
            new AnnouncementCard(new Appearance(Themes.DAY, new Zoom(100)), () -> {}, () -> {});

    private AnnouncementCardTest with(Announcement... all) {
        announcing.announcements = List.of(all);
        card.setSize(1280, 700);
        card.open(announcing);
        card.refresh(SampleLiveViews.flying());
        return this;
    }

    /** Presses keys one after the other, each shown before the next; whether the last stayed in the pages. */
    private boolean press(int... keys) {
        boolean stays = true;
        for (int key : keys) {
            stays = card.press(key);
            card.refresh(SampleLiveViews.flying());
        }
        return stays;
    }

    private <C> C only(Class<C> type) {
        return Arrays.stream(card.getComponents())
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    private AnnouncementView page() {
        assertThat(only(AnnouncementPanel.class).isVisible()).isTrue();
        return Objects.requireNonNull(only(AnnouncementPanel.class).shown()).page();
    }

    private ChoicePanel.Shown choice() {
        assertThat(only(ChoicePanel.class).isVisible()).isTrue();
        return Objects.requireNonNull(only(ChoicePanel.class).shown());
    }

    private void write(String words) {
        JTextField field = field();
        field.setText(words);
        field.postActionEvent();
        card.refresh(SampleLiveViews.flying());
    }

    private JTextField field() {
        assertThat(card.isFilling()).isTrue();
        List<Component> found = new ArrayList<>(List.of(only(NoteRow.class).getComponents()));
        return (JTextField)
                found.stream().filter(JTextField.class::isInstance).findFirst().orElseThrow();
    }

    @Test
    void aDigitOpensThePageAndWhatIsMissingIsAskedForAtOnce() {
        with(LOST, CLOSING);
        assertThat(choice().rows())
                .extracting(
                        ChoicePanel.Row::digit,
                        row -> row.occasion() + ": " + row.state().word())
                .containsExactly(
                        tuple(1, "Lost child: Agreed, 2 blanks to fill in"), tuple(2, "Closing words: Not agreed"));
        press(KeyEvent.VK_NUMPAD1);
        assertThat(page().words())
                .containsExactly(
                        "A child waits at [fill in: where].",
                        "It is [fill in: age and sex]. Come to [fill in: where].");
        assertThat(page().notYet()).isNotNull();
        write("the blue tent");
        write("a girl of six, red coat");
        assertThat(card.isFilling()).isFalse();
        assertThat(page().words())
                .containsExactly(
                        "A child waits at the blue tent.", "It is a girl of six, red coat. Come to the blue tent.");
        assertThat(page().notYet()).isNull();
        assertThat(page().agreement()).isEqualTo("Agreed with the organiser, 3 May");
        assertThat(press(KeyEvent.VK_ENTER)).as("goes back").isFalse();
        assertThat(announcing.done)
                .containsExactly(
                        "shown lost",
                        "filled lost, where: the blue tent",
                        "filled lost, age and sex: a girl of six, red coat",
                        "read lost");
    }

    @Test
    void itCannotBeReadOutWhileSomethingIsMissing() {
        with(LOST);
        press(KeyEvent.VK_1);
        write("the blue tent");
        card.stopFilling();
        assertThat(press(KeyEvent.VK_ENTER)).isTrue();
        assertThat(announcing.done).doesNotContain("read lost");
        assertThat(Objects.requireNonNull(page().notYet()).word())
                .isEqualTo("Not to be read out yet: 1 blank to fill in");
        write("");
        assertThat(field().getText()).as("nothing is no answer").isEmpty();
        write("a girl of six");
        assertThat(press(KeyEvent.VK_ENTER)).isFalse();
        assertThat(announcing.done).endsWith("read lost");
    }

    @Test
    void aSecondTimeTheWordsAreThereAndCanBeChanged() {
        with(LOST);
        press(KeyEvent.VK_1);
        write("the blue tent");
        write("a girl of six");
        press(KeyEvent.VK_ENTER);
        card.open(announcing);
        card.refresh(SampleLiveViews.flying());
        assertThat(choice().rows().get(0).state().word()).isEqualTo("Read out at 12:00:04");
        press(KeyEvent.VK_1);
        assertThat(card.isFilling()).isFalse();
        assertThat(page().times()).isEqualTo("Shown 12:00:05, read out before at 12:00:04");
        press(KeyEvent.VK_F);
        assertThat(field().getText()).isEqualTo("the blue tent");
        write("the blue tent");
        write("a boy of four");
        assertThat(page().words().get(1)).isEqualTo("It is a boy of four. Come to the blue tent.");
        assertThat(announcing.done.subList(5, announcing.done.size()))
                .containsExactly("filled lost, age and sex: a boy of four");
    }

    @Test
    void moreThanNineAreShownNineAtATime() {
        with(IntStream.rangeClosed(1, 20)
                .mapToObj(i -> new Announcement("a" + i, "Occasion " + i, List.of("Words."), null))
                .toArray(Announcement[]::new));
        assertThat(choice().rows()).hasSize(9);
        assertThat(choice().more()).startsWith("1 to 9 of 20.");
        press(KeyEvent.VK_SPACE, KeyEvent.VK_SPACE);
        assertThat(choice().rows()).extracting(ChoicePanel.Row::occasion).containsExactly("Occasion 19", "Occasion 20");
        press(KeyEvent.VK_3);
        assertThat(announcing.done).as("there is no third here").isEmpty();
        press(KeyEvent.VK_SPACE, KeyEvent.VK_BACK_SPACE, KeyEvent.VK_2);
        assertThat(page().occasion()).isEqualTo("Occasion 20");
    }

    @Test
    void aShowWithoutAnySaysHowToWriteThem() {
        with();
        assertThat(choice().rows()).isEmpty();
        assertThat(choice().without())
                .isEqualTo("This show has no announcements. They are written in Prepare: F2, then Ctrl+5.");
        assertThat(press(KeyEvent.VK_1, KeyEvent.VK_ENTER, KeyEvent.VK_F, KeyEvent.VK_SPACE))
                .isTrue();
        assertThat(press(KeyEvent.VK_ESCAPE)).isFalse();
    }

    @Test
    void anotherIsChosenWithoutGoingBack() {
        with(LOST, CLOSING);
        press(KeyEvent.VK_1);
        card.stopFilling();
        press(KeyEvent.VK_B, KeyEvent.VK_2);
        assertThat(page().words()).containsExactly("Good night.");
        assertThat(page().agreement()).isEqualTo("Nobody has agreed these words yet");
        assertThat(page().notYet()).as("unagreed words can be read").isNull();
    }
}
