package crowdline.console.foot;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import java.util.List;
import org.junit.jupiter.api.Test;

class MessagesTest {
    private static final Mark SETTINGS = new Mark(Form.DIAMOND, Tone.CAUTION, "The settings could not be used");
    private static final Mark PACE = new Mark(Form.DIAMOND, Tone.CAUTION, "The pace of Ann cannot be read");
    private static final Mark LOST = new Mark(Form.STOP, Tone.ALARM, "Nothing is written down");
    private static final Mark SAVED = new Mark(Form.DISC, Tone.GOOD, "Saved");
    private static final Mark PEDAL = new Mark(Form.DIAMOND, Tone.CAUTION, "The pedal is not there");

    private final Messages messages = new Messages();

    private void pass(double seconds) {
        for (double s = 0; s < seconds; s += 0.5) {
            List<Mark> now = messages.now(List.of());
            if (!now.isEmpty()) {
                messages.pass(0.5, now.get(0));
            }
        }
    }

    @Test
    void nothingThatAsksForSomethingIsOverwritten() {
        messages.say(0, SETTINGS);
        messages.say(0, PACE);
        messages.say(1, SAVED);
        assertThat(messages.now(List.of())).containsExactlyInAnyOrder(SETTINGS, PACE, SAVED);
        pass(600);
        assertThat(messages.now(List.of())).containsExactlyInAnyOrder(SETTINGS, PACE);
    }

    @Test
    void whatStandsInFrontLeavesWhenItCanHaveBeenReadAndTheUserDoesSomething() {
        messages.say(0, SETTINGS);
        messages.acted();
        assertThat(messages.now(List.of())).containsExactly(SETTINGS);
        pass(5);
        messages.acted();
        assertThat(messages.now(List.of())).isEmpty();
    }

    @Test
    void whatIsNoLongerTrueIsTakenBackAndCanBeReadAgain() {
        messages.say(0, LOST);
        messages.say(1, PACE);
        messages.unsay(LOST.word());
        assertThat(messages.now(List.of())).containsExactly(PACE);
        assertThat(messages.all()).hasSize(2);
    }

    @Test
    void eachOfSeveralIsInFrontInItsTurn() {
        messages.say(0, SETTINGS);
        messages.say(0, PACE);
        assertThat(messages.now(List.of()).get(0)).as("the newest first").isEqualTo(PACE);
        pass(8);
        assertThat(messages.now(List.of()).get(0)).isEqualTo(SETTINGS);
        messages.acted();
        assertThat(messages.now(List.of())).as("only what was in front").containsExactly(SETTINGS);
    }

    @Test
    void theMostPressingIsFirst() {
        messages.stand(0, List.of(PEDAL, LOST));
        messages.say(0, SETTINGS);
        messages.say(0, SAVED);
        assertThat(messages.now(List.of())).containsExactly(LOST, SETTINGS, PEDAL, SAVED);
    }

    @Test
    void whatStandsIsSaidUntilItIsNoLongerSo() {
        messages.stand(0, List.of(LOST));
        pass(600);
        messages.acted();
        assertThat(messages.now(List.of())).containsExactly(LOST);
        messages.stand(600, List.of());
        assertThat(messages.now(List.of())).isEmpty();
    }

    @Test
    void goodNewsGivesWayToTheNextAndGoesByItself() {
        messages.say(0, SAVED);
        messages.say(1, new Mark(Form.DISC, Tone.GOOD, "Saved again"));
        assertThat(messages.now(List.of())).hasSize(1);
        pass(11);
        assertThat(messages.now(List.of())).isEmpty();
    }

    @Test
    void whatWasSaidIsReadAgainWithHowLongAgoItWas() {
        messages.say(10, SETTINGS);
        messages.say(3600, PEDAL);
        messages.say(7270, SAVED);
        assertThat(MessagesPanel.words(messages.all(), 7280))
                .isEqualTo("Just now: Saved\n\n1 h 1 min ago: The pedal is not there\n\n"
                        + "2 h 1 min ago: The settings could not be used");
        assertThat(MessagesPanel.words(List.of(), 0)).isEqualTo("Nothing has been said yet.");
    }

    @Test
    void everythingCanBeReadAgain() {
        messages.say(1, SETTINGS);
        messages.stand(2, List.of(PEDAL));
        messages.stand(3, List.of(PEDAL));
        messages.say(4, SAVED);
        messages.say(5, SAVED);
        assertThat(messages.all())
                .containsExactly(
                        new Messages.Said(5, SAVED), new Messages.Said(2, PEDAL), new Messages.Said(1, SETTINGS));
        for (int i = 0; i < 1000; i++) {
            messages.say(i, new Mark(Form.RING, Tone.CALM, "Message " + i));
        }
        assertThat(messages.all()).hasSize(200);
    }
}
