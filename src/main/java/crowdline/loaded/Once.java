package crowdline.loaded;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What takes a moment to work out, worked out by whoever asks first while others wait for it. No lock is held meanwhile. What
 * failed is tried again by the next who asks.
 */
final class Once<T> {
    private final Supplier<T> work;
    private final AtomicReference<@Nullable CompletableFuture<T>> begun = new AtomicReference<>();

    Once(Supplier<T> work) {
        this.work = work;
    }

    /** @throws RuntimeException what the work failed with */
    T get() {
        CompletableFuture<T> mine = new CompletableFuture<>();
        CompletableFuture<T> first = begun.compareAndExchange(null, mine);
        if (first != null) {
            return await(first);
        }
        try {
            T made = work.get();
            mine.complete(made);
            return made;
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            begun.set(null);
            mine.completeExceptionally(e);
            throw e;
        }
    }

    /** What was worked out; empty while it was not, which begins no work. */
    Optional<T> known() {
        CompletableFuture<T> now = begun.get();
        return now == null || !now.isDone() || now.isCompletedExceptionally()
                ? Optional.empty()
                : Optional.of(now.join());
    }

    private static <T> T await(CompletableFuture<T> first) {
        try {
            return first.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw e;
        }
    }
}
