package crowdline;

import java.lang.reflect.AnnotatedElement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Fails each test during which anything logs a warning or worse that the test does not expect ({@link ExpectsWarning}).
 * What other threads log, or is logged between tests, counts to the test that ends next, or else to its class.
 */
public final class UnexpectedWarnings implements BeforeAllCallback, AfterEachCallback, AfterAllCallback {
    private final Warnings warnings = new Warnings();

    @Override
    public void beforeAll(ExtensionContext context) {
        warnings.listen();
    }

    @Override
    public void afterEach(ExtensionContext context) {
        List<LogRecord> logged = warnings.take();
        List<String> wanted = expected(context.getTestMethod());
        failIfAny(unexpected(
                logged,
                Stream.concat(wanted.stream(), expected(context.getTestClass()).stream())
                        .toList()));
        for (String part : wanted) {
            if (context.getExecutionException().isEmpty() && logged.stream().noneMatch(r -> says(r, part))) {
                throw new AssertionError("The test expects the warning \"" + part + "\", and it did not come.");
            }
        }
    }

    @Override
    public void afterAll(ExtensionContext context) {
        failIfAny(unexpected(warnings.take(), expected(context.getTestClass())));
    }

    /** Hears no more. */
    void close() {
        warnings.close();
    }

    private static List<String> expected(Optional<? extends AnnotatedElement> where) {
        return where.map(w -> w.getAnnotation(ExpectsWarning.class))
                .map(e -> List.of(e.value()))
                .orElse(List.of());
    }

    private static List<LogRecord> unexpected(List<LogRecord> logged, List<String> expected) {
        return logged.stream()
                .filter(r -> expected.stream().noneMatch(part -> says(r, part)))
                .toList();
    }

    private static boolean says(LogRecord logged, String part) {
        return text(logged).contains(part) || String.valueOf(logged.getThrown()).contains(part);
    }

    private static String text(LogRecord logged) {
        return new SimpleFormatter().formatMessage(logged);
    }

    private static void failIfAny(List<LogRecord> unexpected) {
        if (!unexpected.isEmpty()) {
            AssertionError failure = new AssertionError("Logged, and not expected with @ExpectsWarning:"
                    + String.join(
                            "",
                            unexpected.stream()
                                    .map(r -> "\n" + r.getLevel() + " " + r.getLoggerName() + ": " + text(r)
                                            + (r.getThrown() == null ? "" : " (" + r.getThrown() + ")"))
                                    .toList()));
            unexpected.stream().map(LogRecord::getThrown).filter(t -> t != null).forEach(failure::addSuppressed);
            throw failure;
        }
    }

    /** Hears all loggers, those of libraries too. */
    private static final class Warnings extends Handler {
        private final Queue<LogRecord> logged = new ConcurrentLinkedQueue<>();

        Warnings() {
            setLevel(Level.WARNING);
        }

        void listen() {
            Logger root = Logger.getLogger("");
            root.removeHandler(this);
            root.addHandler(this);
        }

        List<LogRecord> take() {
            List<LogRecord> taken = new ArrayList<>();
            for (LogRecord next = logged.poll(); next != null; next = logged.poll()) {
                taken.add(next);
            }
            return taken;
        }

        @Override
        public void publish(LogRecord one) {
            if (isLoggable(one)) {
                logged.add(one);
            }
        }

        @Override
        public void flush() {
            // Nothing is written.
        }

        @Override
        public void close() {
            Logger.getLogger("").removeHandler(this);
        }
    }
}
