package crowdline.app.window.device;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.pace.Microphone;
import crowdline.console.paint.Mark;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Live listens only where that was chosen, and goes on without a microphone. */
class LiveEarTest {
    private final List<Boolean> kept = new ArrayList<>();
    private final List<Mark> said = new ArrayList<>();
    private int closed;
    private Microphone.@Nullable Listener listener;

    private final LiveEar ear = new LiveEar(this::listen, () -> null, kept::add, said::add);

    private Microphone.Listening listen(Microphone.Listener told) {
        listener = told;
        return new Microphone.Listening() {
            @Override
            public void forget() {}

            @Override
            public void close() {
                closed++;
            }
        };
    }

    @Test
    void nothingIsOpenedUntilItIsChosen() {
        ear.look();

        assertThat(listener).isNull();
        assertThat(ear.isOn()).isFalse();
    }

    @Test
    void theKeyTurnsItOnAndOffAndTheChoiceIsKept() {
        ear.turn();
        assertThat(ear.isOn()).isTrue();
        ear.turn();

        assertThat(ear.isOn()).isFalse();
        assertThat(closed).isOne();
        assertThat(kept).containsExactly(true, false);
        assertThat(said).extracting(Mark::word).first().asString().contains("nothing is recorded");
    }

    @Test
    void aMicrophoneThatVanishesIsSaidAndLetGoAndTheKeyTriesItAgain() {
        ear.turn();
        lose("The microphone is gone; Live goes on by keys.");

        assertThat(ear.isOn()).isFalse();
        assertThat(ear.trouble()).isEqualTo("The microphone is gone; Live goes on by keys.");
        assertThat(closed).isOne();

        ear.turn();
        assertThat(ear.isOn()).isTrue();
        assertThat(ear.trouble()).isEmpty();
        assertThat(kept).containsExactly(true, true);
    }

    private void lose(String why) {
        Microphone.Listener told = listener;
        assertThat(told).isNotNull();
        if (told != null) {
            told.lost(why);
        }
    }
}
