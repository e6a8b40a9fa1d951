package crowdline.app.window.device;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.pace.Microphone;
import crowdline.console.paint.Mark;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.Desk;
import crowdline.live.now.JournalHealth;
import crowdline.live.now.LiveNow;
import crowdline.live.now.LiveSnapshot;
import crowdline.live.state.ActDurations;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.speech.hear.Hearing;
import crowdline.speech.hear.Utterance;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Live listens only where that was chosen, and goes on without a microphone. */
class LiveEarTest {
    private final List<Boolean> kept = new ArrayList<>();
    private final List<Mark> said = new ArrayList<>();
    private int closed;
    private @Nullable DayDesk desk;
    private Microphone.@Nullable Listener listener;

    private final LiveEar ear = new LiveEar(this::listen, () -> desk, kept::add, said::add);

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
        lose("The microphone has gone; Live goes on by keys.");

        assertThat(ear.isOn()).isFalse();
        assertThat(ear.trouble()).isEqualTo("The microphone has gone; Live goes on by keys.");
        assertThat(closed).isOne();

        ear.turn();
        assertThat(ear.isOn()).isTrue();
        assertThat(ear.trouble()).isEmpty();
        assertThat(kept).containsExactly(true, true);
    }

    @Test
    void talkIsToldWithWhenItBeganAndEnded() {
        DayDesk day = new DayDesk();
        desk = day;
        day.nowS = 100;
        ear.turn();
        day.nowS = 105;
        hear(500, new Utterance(1.5, 3.5));
        day.nowS = 107;
        hear(200, null);
        ear.turn();

        assertThat(day.posted)
                .containsExactly(
                        new HeardEvent.ListeningBegan(100),
                        new HeardEvent.TalkHeard(105, 101.5, 103.5),
                        new HeardEvent.ListeningEnded(107));
    }

    @Test
    void aShowThatWasOpenedMeanwhileIsToldAndOneLeftByACrashToo() {
        DayDesk first = new DayDesk();
        desk = first;
        ear.turn();
        DayDesk second = new DayDesk();
        desk = second;
        ear.look();
        assertThat(second.posted).containsExactly(new HeardEvent.ListeningBegan(0));

        ear.turn();
        DayDesk crashed = new DayDesk();
        crashed.post(HeardEvent.ListeningBegan::new);
        crashed.posted.clear();
        desk = crashed;
        ear.look();
        assertThat(crashed.posted).containsExactly(new HeardEvent.ListeningEnded(0));
    }

    /** So many hundredths of a second, with something that was over at the end of them. */
    private void hear(int levels, @Nullable Utterance utterance) {
        List<Hearing> hearings = new ArrayList<>();
        for (int i = 1; i <= levels; i++) {
            hearings.add(new Hearing(Hearing.State.QUIET, 0, false, 0, i == levels ? utterance : null, null));
        }
        Microphone.Listener told = listener;
        assertThat(told).isNotNull();
        if (told != null) {
            told.hears(hearings);
        }
    }

    /** A show that is open, and what was posted to it. */
    private static final class DayDesk implements Desk {
        private final List<LiveEvent> posted = new ArrayList<>();
        private LiveState state;
        private double nowS;

        DayDesk() {
            state = after(LiveState.initial(), new ShowEvent.ShowOpened(0, "Day", List.of()));
        }

        private static LiveState after(LiveState before, LiveEvent event) {
            return ((Step.Moved) Live.next(before, event)).state();
        }

        @Override
        public LiveSnapshot snapshot() {
            return new LiveSnapshot(1, state, new JournalHealth.Writing(), 0, false, List.of(), null);
        }

        @Override
        public double nowS() {
            return nowS;
        }

        @Override
        public LiveNow now(Instant wall) {
            throw new UnsupportedOperationException("the ear asks for no reading");
        }

        @Override
        public CompletableFuture<Step> submit(LiveEvent event) {
            throw new UnsupportedOperationException("the ear waits for nothing");
        }

        @Override
        public void post(DoubleFunction<? extends LiveEvent> event) {
            LiveEvent happened = event.apply(nowS);
            posted.add(happened);
            state = after(state, happened);
        }

        @Override
        public void useDurations(ActDurations next) {}

        @Override
        public void onChange(Consumer<LiveSnapshot> told) {}

        @Override
        public void forget(Consumer<LiveSnapshot> told) {}
    }

    private void lose(String why) {
        Microphone.Listener told = listener;
        assertThat(told).isNotNull();
        if (told != null) {
            told.lost(why);
        }
    }
}
