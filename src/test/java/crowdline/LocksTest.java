package crowdline;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Nothing calls out while it holds a lock: not what was handed in, not who listens, and nothing that waits for a thread. */
class LocksTest {
    private static final Set<String> OUT = Set.of(
            "java/lang/Runnable",
            "java/lang/Thread",
            name(Callable.class),
            name(Future.class),
            name(CompletableFuture.class),
            name(CountDownLatch.class));

    private static String name(Class<?> type) {
        return type.getName().replace('.', '/');
    }

    private static Set<String> waysOut(JavaClasses classes) {
        LockedCalls calls = new LockedCalls();
        Set<String> handedIn = new HashSet<>();
        for (JavaClass type : classes) {
            calls.read(bytes(type));
            if ((type.isInterface() && !isSealed(type)) || type.isAssignableTo(Executor.class)) {
                handedIn.add(type.getName().replace('.', '/'));
            }
        }
        return calls.waysOut(owner -> OUT.contains(owner)
                || handedIn.contains(owner)
                || owner.startsWith("java/util/function/")
                || (owner.startsWith("java/util/concurrent/") && owner.contains("Execut")));
    }

    private static boolean isSealed(JavaClass type) {
        return type.reflect().isSealed();
    }

    private static byte[] bytes(JavaClass type) {
        try (InputStream in = type.getSource().orElseThrow().getUri().toURL().openStream()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void nothingCallsOutWhileItHoldsALock() {
        assertThat(waysOut(ProgramClasses.imported())).isEmpty();
    }

    /** The rule above sees no other lock. */
    @Test
    void everyLockIsASynchronizedMethodOrBlock() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.util.concurrent.locks..")
                .because("what is called under these is not seen")
                .check(ProgramClasses.imported());
    }

    @Test
    void whatIsCalledUnderALockIsSeenHoweverItIsReached() {
        JavaClasses sample = new ClassFileImporter().importClasses(Sample.class, Sample.Handed.class);
        assertThat(sample.get(Sample.class).getMethods())
                .anyMatch(method -> method.getModifiers().contains(JavaModifier.SYNCHRONIZED));

        assertThat(waysOut(sample))
                .extracting(way -> way.replaceAll("^[^.]*\\.(\\w+)\\(.*", "$1"))
                .containsExactlyInAnyOrder("method", "block", "blockLeftEarly", "throughAnother", "nested", "ownPort");
    }

    /** Those whose names begin with "fine" do not call out. */
    static final class Sample {
        private final Supplier<String> supplier;
        private final Handed handed;
        private int count;

        interface Handed {
            int number();
        }

        Sample(Supplier<String> supplier, Handed handed) {
            this.supplier = supplier;
            this.handed = handed;
        }

        synchronized String method() {
            return supplier.get();
        }

        String block() {
            synchronized (this) {
                count++;
                return supplier.get();
            }
        }

        String blockLeftEarly() {
            synchronized (this) {
                if (count > 3) {
                    return "";
                }
                if (count > 2) {
                    throw new IllegalStateException();
                }
                return supplier.get();
            }
        }

        synchronized String throughAnother() {
            return fineByItself();
        }

        String fineByItself() {
            return supplier.get();
        }

        String nested(Object other) {
            synchronized (this) {
                synchronized (other) {
                    count++;
                }
                return supplier.get();
            }
        }

        synchronized int ownPort() {
            return handed.number();
        }

        String fineBehindTheBlock() {
            synchronized (this) {
                if (count == 0) {
                    return "";
                }
                count++;
            }
            return supplier.get();
        }

        String fineBehindTwo(Object other) {
            synchronized (this) {
                count++;
            }
            String got = supplier.get();
            synchronized (other) {
                count++;
            }
            return got + supplier.get();
        }

        synchronized int fine() {
            return ++count;
        }
    }
}
