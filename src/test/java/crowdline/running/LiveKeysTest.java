package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.keys.Command;
import crowdline.console.live.SmallShow;
import crowdline.console.live.day.ToldPresenter;
import crowdline.console.paint.Mark;
import crowdline.live.event.FlightEvent;
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
import crowdline.loaded.ShowLookup;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.SpokenTime;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Keys on a desk that answers when the test says so. */
class LiveKeysTest {
    private final SlowDesk desk = new SlowDesk();
    private Scene scene = Scene.of(words(), desk.snapshot(), (act, variant, figures) -> figure -> 10);
    private final LiveKeys keys = new LiveKeys(desk, told -> scene = scene.with(told, desk.nowS()));

    private static ShowLookup words() {
        return new ShowLookup(
                SmallShow.show(),
                new Catalogue(List.of()),
                text -> new SpokenTime(4, 3.5, 4.5),
                (act, variant) -> ActSheet.NONE);
    }

    @BeforeEach
    void fly() {
        desk.happens(new ShowEvent.ShowOpened(0, "Show", List.of("a1")));
        desk.happens(new FlightEvent.ActChosen(0, "a1", "full", List.of("f1", "f2", "f3"), null));
        desk.happens(new FlightEvent.ActStarted(100));
        desk.nowS = 110;
    }

    private String told() {
        return scene.told(desk.nowS())
                .flatMap(told -> ToldPresenter.of(told, words()))
                .map(Mark::word)
                .orElse("");
    }

    @Test
    void takesBackTheLastKeyAndNamesIt() {
        keys.give(Command.NEXT.key(), FlightEvent.Stepped::new);
        desk.answer();
        keys.takeBack();
        desk.answer();
        assertThat(desk.state.figureId()).isEqualTo("f1");
        assertThat(told()).isEqualTo("Took back: Space (\"Stall turn\" began)");
    }

    @Test
    void takesBackNothingAfterAKeyThatDidNothingAndSaysSoOnce() {
        keys.give(Command.NEXT.key(), FlightEvent.Stepped::new);
        keys.give(Command.UNDROP.key(), FlightEvent.DropUndone::new);
        desk.answer();
        assertThat(told()).isEqualTo("No figure ahead is dropped.");
        keys.takeBack();
        desk.answer();
        assertThat(told()).isEqualTo("The last key (Shift+D) did nothing, so nothing was taken back.");
        assertThat(desk.state.figureId()).isEqualTo("f2");
        keys.takeBack();
        desk.answer();
        assertThat(told()).isEqualTo("Took back: Space (\"Stall turn\" began)");
        assertThat(desk.state.figureId()).isEqualTo("f1");
    }

    @Test
    void waitsToHearWhatTheLastKeyDid() {
        keys.give(Command.NEXT.key(), FlightEvent.Stepped::new);
        keys.give(Command.UNDROP.key(), FlightEvent.DropUndone::new);
        keys.takeBack();
        desk.answer();
        assertThat(desk.state.figureId()).isEqualTo("f2");
        assertThat(told()).startsWith("The last key (Shift+D) did nothing");
    }

    @Test
    void aKeyRefusedBeforeItReachedTheDeskIsNotPassedOverEither() {
        keys.give(Command.NEXT.key(), FlightEvent.Stepped::new);
        desk.answer();
        keys.refuse(Command.FILLER.key(), "No filler is left.");
        assertThat(told()).isEqualTo("No filler is left.");
        keys.takeBack();
        desk.answer();
        assertThat(told()).isEqualTo("The last key (F) did nothing, so nothing was taken back.");
        assertThat(desk.state.figureId()).isEqualTo("f2");
    }

    @Test
    void isToldForSomeSecondsOrUntilTheNextKeyOnly() {
        keys.give(Command.DROP.key(), FlightEvent.NextDropped::new);
        desk.answer();
        assertThat(told()).isEqualTo("Dropped \"Stall turn\"");
        desk.nowS += 4.9;
        assertThat(told()).isNotEmpty();
        desk.nowS += 0.2;
        assertThat(told()).isEmpty();
        keys.give(Command.DROP.key(), FlightEvent.NextDropped::new);
        keys.give(Command.NEXT.key(), FlightEvent.Stepped::new);
        desk.answer();
        assertThat(told()).isEmpty();
    }

    /** Answers nothing before {@link #answer}, then everything in its turn. */
    private static final class SlowDesk implements Desk {
        private record Asked(LiveEvent event, CompletableFuture<Step> done) {}

        private final Queue<Asked> queue = new ArrayDeque<>();
        private LiveState state = LiveState.initial();
        private double nowS;

        void answer() {
            for (Asked asked = queue.poll(); asked != null; asked = queue.poll()) {
                asked.done().complete(happens(asked.event()));
            }
        }

        Step happens(LiveEvent event) {
            Step step = Live.next(state, event);
            if (step instanceof Step.Moved moved) {
                state = moved.state();
            }
            return step;
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
            throw new UnsupportedOperationException("keys ask for no reading");
        }

        @Override
        public CompletableFuture<Step> submit(LiveEvent event) {
            CompletableFuture<Step> done = new CompletableFuture<>();
            queue.add(new Asked(event, done));
            return done;
        }

        @Override
        public void post(DoubleFunction<? extends LiveEvent> event) {
            queue.add(new Asked(event.apply(nowS), new CompletableFuture<>()));
        }

        @Override
        public void useDurations(ActDurations next) {}

        @Override
        public void onChange(Consumer<LiveSnapshot> listener) {}

        @Override
        public void forget(Consumer<LiveSnapshot> listener) {}
    }
}
