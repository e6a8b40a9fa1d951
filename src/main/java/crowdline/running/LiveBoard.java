package crowdline.running;

import crowdline.live.now.LiveSnapshot;
import crowdline.live.state.LiveState;
import crowdline.storage.journal.JournalOpening;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The newest snapshot of a running show, and who is told of it. Written by the {@code live} thread, read by any. */
final class LiveBoard {
    private static final System.Logger LOG = System.getLogger(LiveBoard.class.getName());

    private final boolean resumed;
    private final List<String> notices;
    private final List<Consumer<LiveSnapshot>> listeners = new CopyOnWriteArrayList<>();
    private volatile LiveSnapshot snapshot;

    LiveBoard(JournalOpening opening) {
        resumed = opening.resumed();
        notices = opening.notices();
        snapshot = new LiveSnapshot(1, opening.state(), opening.journal().health(), 0, resumed, notices, null);
    }

    LiveSnapshot snapshot() {
        return snapshot;
    }

    void onChange(Consumer<LiveSnapshot> listener) {
        listeners.add(listener);
    }

    void forget(Consumer<LiveSnapshot> listener) {
        listeners.remove(listener);
    }

    /** When something must be told though nothing happens. */
    OptionalDouble nextDueS(JournalProgress progress) {
        OptionalDouble slowAtS = progress.slowAtS();
        boolean told =
                slowAtS.isPresent() && progress.health(slowAtS.getAsDouble()).equals(snapshot.journal());
        return told ? OptionalDouble.empty() : slowAtS;
    }

    /** Tells again what is told of the journal, if that has changed. */
    void look(JournalProgress progress, double nowS) {
        LiveSnapshot now = snapshot;
        if (!progress.health(nowS).equals(now.journal())) {
            publish(now.state(), now.refusal(), progress, nowS);
        } else if (progress.unwritten() != now.unwritten()) {
            // Nobody need look: nothing that is shown has changed.
            snapshot = now.withUnwritten(progress.unwritten());
        }
    }

    void publish(LiveState state, @Nullable String refusal, JournalProgress progress, double nowS) {
        LiveSnapshot next = new LiveSnapshot(
                snapshot.number() + 1, state, progress.health(nowS), progress.unwritten(), resumed, notices, refusal);
        snapshot = next;
        for (Consumer<LiveSnapshot> listener : listeners) {
            try {
                listener.accept(next);
            } catch (RuntimeException e) {
                LOG.log(System.Logger.Level.ERROR, "A listener of the live desk failed", e);
            }
        }
    }
}
