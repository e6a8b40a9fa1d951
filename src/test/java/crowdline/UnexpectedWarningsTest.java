package crowdline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Proxy;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Tests that are played to the extension, while the one that is registered for all tests hears the same. */
@ExpectsWarning("of this test")
class UnexpectedWarningsTest {
    private static final String OWN = "of this test: {0}";

    private final UnexpectedWarnings warnings = new UnexpectedWarnings();

    static final class Plain {
        void test() {}

        @ExpectsWarning("test: disk")
        void expecting() {}
    }

    @ExpectsWarning("test: disk")
    static final class Expecting {
        void test() {}
    }

    @BeforeEach
    void begin() {
        warnings.beforeAll(context(Plain.class, "test", null));
    }

    @AfterEach
    void end() {
        warnings.close();
    }

    private static ExtensionContext context(Class<?> in, String method, @Nullable Throwable failure) {
        return (ExtensionContext) Proxy.newProxyInstance(
                ExtensionContext.class.getClassLoader(),
                new Class<?>[] {ExtensionContext.class},
                (proxy, asked, arguments) -> switch (asked.getName()) {
                    case "getTestClass" -> Optional.of(in);
                    case "getTestMethod" -> Optional.of(in.getDeclaredMethod(method));
                    case "getExecutionException" -> Optional.ofNullable(failure);
                    default -> throw new UnsupportedOperationException(asked.getName());
                });
    }

    private static void log(Level level, String what) {
        Logger.getLogger("crowdline.some").log(level, OWN, what);
    }

    private void endOf(Class<?> in, String method) {
        warnings.afterEach(context(in, method, null));
    }

    @Test
    void warningOrWorseFailsTheTestItCameIn() {
        log(Level.WARNING, "disk");
        assertThatThrownBy(() -> endOf(Plain.class, "test")).hasMessageContaining("crowdline.some: of this test: disk");
        log(Level.SEVERE, "net");
        assertThatThrownBy(() -> endOf(Plain.class, "test"))
                .hasMessageContaining("SEVERE")
                .hasMessageNotContaining("disk");
        assertThatCode(() -> endOf(Plain.class, "test")).doesNotThrowAnyException();
    }

    @Test
    void lessThanAWarningFailsNothing() {
        log(Level.INFO, "disk");
        assertThatCode(() -> endOf(Plain.class, "test")).doesNotThrowAnyException();
    }

    @Test
    void warningOfAnotherThreadAndThroughTheSystemsLoggerCounts() {
        CompletableFuture<Void> said = new CompletableFuture<>();
        Thread thread = new Thread(() -> {
            System.getLogger("crowdline.other")
                    .log(System.Logger.Level.ERROR, "x", new IllegalStateException("of this test"));
            said.complete(null);
        });
        thread.start();
        said.join();
        assertThatThrownBy(() -> endOf(Plain.class, "test"))
                .hasMessageContaining("of this test")
                .satisfies(e -> assertThat(e.getSuppressed()).hasSize(1));
    }

    @Test
    void expectedWarningMayComeAndOnAMethodMust() {
        log(Level.WARNING, "disk");
        assertThatCode(() -> endOf(Expecting.class, "test")).doesNotThrowAnyException();
        assertThatCode(() -> endOf(Expecting.class, "test")).doesNotThrowAnyException();
        log(Level.WARNING, "disk");
        assertThatCode(() -> endOf(Plain.class, "expecting")).doesNotThrowAnyException();
        assertThatThrownBy(() -> endOf(Plain.class, "expecting"))
                .hasMessageContaining("\"test: disk\", and it did not come");
    }

    @Test
    void anotherWarningThanTheExpectedFails() {
        log(Level.WARNING, "disk");
        log(Level.WARNING, "net");
        assertThatThrownBy(() -> endOf(Plain.class, "expecting"))
                .hasMessageContaining("net")
                .hasMessageNotContaining("disk");
    }

    @Test
    void testThatFailedIsNotToldThatItsWarningIsMissing() {
        assertThatCode(() -> warnings.afterEach(context(Plain.class, "expecting", new AssertionError("failed"))))
                .doesNotThrowAnyException();
    }

    @Test
    void whatComesAfterTheLastTestFailsTheClass() {
        log(Level.WARNING, "disk");
        assertThatThrownBy(() -> warnings.afterAll(context(Plain.class, "test", null)))
                .hasMessageContaining("disk");
        log(Level.WARNING, "disk");
        assertThatCode(() -> warnings.afterAll(context(Expecting.class, "test", null)))
                .doesNotThrowAnyException();
    }
}
