package crowdline.app.window.work;

import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Function;

/** What is done with files on the {@code io} thread, where everything can go wrong. */
@FunctionalInterface
public interface FileWork {
    void run() throws IOException;

    /**
     * Does it at the root of the thread. What went wrong is one sentence to the user, and what that does not tell goes to the
     * log.
     *
     * @param log where what went wrong is logged
     * @param about what it was done for, for the log
     * @param sentence for what has no sentence of its own: an {@link IOException} or a fault of the program
     * @return what to say, or empty if nothing went wrong
     */
    default Optional<String> fault(System.Logger log, String about, Function<Throwable, String> sentence) {
        try {
            run();
            return Optional.empty();
        } catch (CancellationException left) {
            // Whoever gave it up knows.
            return Optional.empty();
        } catch (ShowFileException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            log.log(System.Logger.Level.WARNING, about, e);
            return Optional.of(sentence.apply(e));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            log.log(System.Logger.Level.ERROR, about, e);
            return Optional.of(sentence.apply(e));
        }
    }
}
