package crowdline.app.sound;

import crowdline.app.shell.WindowOpener;
import crowdline.app.sound.JavaSound.NoSoundException;
import crowdline.console.pace.Microphone;
import crowdline.running.NamedThread;
import crowdline.speech.hear.Hearing;
import crowdline.speech.hear.SoundLevels;
import crowdline.speech.hear.SpeechEdges;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/**
 * Listens to the microphone on the thread {@code microphone}, which opens it and lets it go. Sound becomes levels at once
 * and goes nowhere else.
 */
public final class MicrophoneListener implements Microphone {
    private static final String GONE = "The microphone has gone; ";

    private static final Logger LOG = System.getLogger(MicrophoneListener.class.getName());
    private static final long BETWEEN_READS_MS = 20;
    /** A device that gives nothing for so long is gone, milliseconds. Tuned: ten times the longest block. */
    private static final long GONE_AFTER_MS = 2000;

    private static final int MOST_BYTES = 1 << 14;

    private final WindowOpener opening;
    private final Executor screen;
    private final String gone;
    private final long betweenReadsMs;
    private final long goneAfterMs;
    private @Nullable Thread last;

    /** Opens the microphone. */
    public interface WindowOpener {
        SoundSource open() throws NoSoundException;
    }

    /**
     * @param screen runs what the listener is told, in order
     * @param without how it goes on without the microphone, the end of a sentence
     */
    public MicrophoneListener(WindowOpener opening, Executor screen, String without) {
        this(opening, screen, without, BETWEEN_READS_MS, GONE_AFTER_MS);
    }

    /**
     * @param betweenReadsMs milliseconds, 1 or more
     * @param goneAfterMs a device that gives nothing for so long is gone, milliseconds
     */
    MicrophoneListener(WindowOpener opening, Executor screen, String without, long betweenReadsMs, long goneAfterMs) {
        gone = GONE + without;
        this.opening = opening;
        this.screen = screen;
        this.betweenReadsMs = betweenReadsMs;
        this.goneAfterMs = goneAfterMs;
    }

    @Override
    public Listening listen(Listener listener) {
        Run run = new Run(listener, last);
        Thread thread = NamedThread.of("microphone", run);
        last = thread;
        thread.start();
        return run;
    }

    private final class Run implements Runnable, Listening {
        private final CountDownLatch closed = new CountDownLatch(1);
        private final AtomicBoolean forget = new AtomicBoolean();
        private final Listener listener;
        private final @Nullable Thread before;

        Run(Listener listener, @Nullable Thread before) {
            this.listener = listener;
            this.before = before;
        }

        @Override
        public void forget() {
            forget.set(true);
        }

        @Override
        public void close() {
            closed.countDown();
        }

        @Override
        public void run() {
            try {
                if (before != null) {
                    before.join(goneAfterMs); // it may still hold the device
                }
                try (SoundSource source = opening.open()) {
                    hear(source);
                }
            } catch (NoSoundException e) {
                LOG.log(Level.INFO, "no microphone", e);
                tell(() -> listener.lost(String.valueOf(e.getMessage())));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (RuntimeException e) { // the thread's root: the key goes on timing
                LOG.log(Level.WARNING, "listening stopped", e);
                tell(() -> listener.lost(gone));
            }
        }

        private void hear(SoundSource source) throws InterruptedException {
            SoundLevels levels = new SoundLevels(source.rateHz());
            SpeechEdges edges = new SpeechEdges();
            byte[] block = new byte[MOST_BYTES];
            long emptyMs = 0;
            while (!closed.await(betweenReadsMs, TimeUnit.MILLISECONDS)) {
                int read = source.read(block);
                emptyMs = read > 0 ? 0 : emptyMs + betweenReadsMs;
                if (read < 0 || emptyMs >= goneAfterMs) {
                    tell(() -> listener.lost(gone));
                    return;
                }
                if (forget.getAndSet(false)) {
                    edges.forget();
                }
                List<Hearing> heard =
                        levels.hear(block, read).stream().map(edges::hear).toList();
                if (!heard.isEmpty()) {
                    tell(() -> {
                        if (!forget.get()) {
                            listener.hears(heard);
                        }
                    });
                }
            }
        }

        private void tell(Runnable what) {
            screen.execute(() -> {
                if (closed.getCount() > 0) {
                    what.run();
                }
            });
        }
    }
}
