package crowdline;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.AbstractCollection;
import java.util.AbstractMap;
import java.util.Arrays;
import java.util.Collection;
import java.util.Date;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.Timer;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.stream.BaseStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.swing.SwingWorker;
import org.junit.jupiter.api.Test;

/** Holds who alone may read clocks, draw random numbers, start threads, print and touch files. */
class OwnershipTest {

    private static final String APP = "crowdline.app..";

    /**
     * Packages that may start a thread: the running show, the wiring with its devices (the microphone's thread owns the sound
     * line), and the reader that owns its port.
     */
    private static final String[] THREAD_OWNERS = {"crowdline.running", APP, "crowdline.telemetry.serial.."};

    private static final JavaClasses CLASSES = ProgramClasses.imported();

    @Test
    void domainTouchesNoFilesAndNoNetwork() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "crowdline.show..",
                        "crowdline.flight..",
                        "crowdline.sight..",
                        "crowdline.timing..",
                        "crowdline.patter..",
                        "crowdline.follow..",
                        "crowdline.live..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.nio.file..", "java.net.http..", "java.nio.channels..")
                        .or(describe(
                                "open files or sockets",
                                type -> type.getName()
                                        .matches("java\\.io\\.(File|RandomAccess).*|java\\.net\\..*Socket.*"))))
                .because("the domain is handed what it needs, so that the same input gives the same output")
                .allowEmptyShould(false)
                .check(CLASSES);
    }

    @Test
    void onlyTheAppReadsClocks() {
        noClasses()
                .that(areOutside(APP))
                .should()
                .accessTargetWhere(describe("read the clock of the machine", OwnershipTest::readsClock))
                .because("time is a parameter: a replay must give the same state, and no test may wait")
                .check(CLASSES);
    }

    @Test
    void onlyTheAppDrawsUnseededRandomNumbers() {
        noClasses()
                .that(areOutside(APP))
                .should()
                .accessTargetWhere(describe("draw numbers without a seed", OwnershipTest::drawsUnseeded))
                .because("a prediction made twice must be the same prediction")
                .check(CLASSES);
    }

    @Test
    void onlyOwnersStartThreads() {
        noClasses()
                .that(areOutside(THREAD_OWNERS))
                .should()
                .accessTargetWhere(describe("start a thread", OwnershipTest::startsThread))
                .because("every thread has a name and an owner that closes it")
                .check(CLASSES);
    }

    @Test
    void nobodyWorksOnThreadsThatNobodyOwns() {
        noClasses()
                .should()
                .accessTargetWhere(describe("work on the common pool", OwnershipTest::isOnCommonPool))
                .because(
                        "the common pool has no owner: what runs there is neither named nor closed, and waits for strangers")
                .check(CLASSES);
    }

    @Test
    void everyWayOntoTheCommonPoolIsSeen() {
        assertThat(new ClassFileImporter()
                        .importClass(CommonPool.class).getMethods().stream()
                                .filter(method ->
                                        method.getAccessesFromSelf().stream().anyMatch(OwnershipTest::isOnCommonPool))
                                .map(JavaMethod::getName))
                .containsExactlyInAnyOrder(
                        "stream",
                        "numbers",
                        "list",
                        "reference",
                        "async",
                        "then",
                        "late",
                        "pool",
                        "sort",
                        "fill",
                        "map");
    }

    /** Each way once; the last is none. */
    static final class CommonPool {
        long stream(Stream<String> all) {
            return all.parallel().count();
        }

        int numbers() {
            return IntStream.range(0, 9).parallel().sum();
        }

        long list(List<String> all) {
            return all.parallelStream().count();
        }

        Function<List<String>, Stream<String>> reference() {
            return List::parallelStream;
        }

        CompletableFuture<Void> async(Runnable work) {
            return CompletableFuture.runAsync(work);
        }

        CompletableFuture<String> then(CompletableFuture<String> before) {
            return before.thenApplyAsync(text -> text + "!");
        }

        Object late() {
            return CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS);
        }

        Object pool() {
            return ForkJoinPool.commonPool();
        }

        void sort(double[] numbers) {
            Arrays.parallelSort(numbers);
        }

        void fill(double[] numbers) {
            Arrays.parallelSetAll(numbers, i -> i);
        }

        long map(ConcurrentHashMap<String, String> map) {
            return map.reduceValuesToLong(1, String::length, 0, Long::sum);
        }

        CompletableFuture<Long> owned(Runnable work, Executor owner, Stream<String> all) {
            return CompletableFuture.runAsync(work, owner)
                    .thenApplyAsync(none -> all.sequential().count(), owner);
        }
    }

    @Test
    void staticFieldsAreFinal() {
        fields().that()
                .areStatic()
                .should()
                .beFinal()
                .because("static mutable state is shared by every test and every window")
                .allowEmptyShould(true) // a young tree may have no static field at all
                .check(CLASSES);
    }

    @Test
    void staticFieldsHoldNothingThatChanges() {
        List<Class<?>> changing = List.of(
                AbstractMap.class,
                AbstractCollection.class,
                ConcurrentMap.class,
                Queue.class,
                StringBuilder.class,
                AtomicBoolean.class,
                AtomicInteger.class,
                AtomicLong.class,
                AtomicReference.class,
                ThreadLocal.class);

        noFields()
                .that()
                .areStatic()
                .should()
                .haveRawType(describe("that changes", type -> changing.stream().anyMatch(type::isAssignableTo)))
                .because("a final reference to something that changes is static mutable state all the same")
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void onlyTheAppPrints() {
        noClasses()
                .that(areOutside(APP))
                .should(ACCESS_STANDARD_STREAMS)
                .because("standard output belongs to the commands; everything else returns what it found")
                .check(CLASSES);
    }

    @Test
    void onlyTheAppKnowsWhereLogsGo() {
        noClasses()
                .that(areOutside(APP))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.util.logging..", "org.slf4j..", "org.apache.commons.logging..")
                .because("System.Logger is enough to log with; the app decides where it ends")
                .check(CLASSES);
    }

    private static DescribedPredicate<JavaClass> areOutside(String... packages) {
        return DescribedPredicate.not(resideInAnyPackage(packages));
    }

    private static boolean readsClock(JavaAccess<?> access) {
        AccessTarget target = access.getTarget();
        String owner = target.getOwner().getName();
        String name = target.getName();
        if (owner.equals(System.class.getName())) {
            return name.equals("currentTimeMillis") || name.equals("nanoTime");
        }
        if (owner.equals(Clock.class.getName())) {
            return name.startsWith("system") || name.startsWith("tick");
        }
        if (owner.equals(Date.class.getName())) {
            return target instanceof CodeUnitAccessTarget unit
                    && name.equals("<init>")
                    && unit.getRawParameterTypes().isEmpty();
        }
        return owner.startsWith("java.time.")
                && name.equals("now")
                && target instanceof CodeUnitAccessTarget unit
                && unit.getRawParameterTypes().stream().noneMatch(type -> type.isEquivalentTo(Clock.class));
    }

    private static boolean drawsUnseeded(JavaAccess<?> access) {
        AccessTarget target = access.getTarget();
        JavaClass owner = target.getOwner();
        String name = target.getName();
        if (owner.isEquivalentTo(Math.class)) {
            return name.equals("random");
        }
        if (owner.isEquivalentTo(UUID.class)) {
            return name.equals("randomUUID");
        }
        if (owner.isEquivalentTo(ThreadLocalRandom.class) || owner.isAssignableTo(SecureRandom.class)) {
            return true;
        }
        return (owner.isEquivalentTo(Random.class) || owner.isEquivalentTo(SplittableRandom.class))
                && name.equals("<init>")
                && target instanceof CodeUnitAccessTarget unit
                && unit.getRawParameterTypes().isEmpty();
    }

    private static boolean startsThread(JavaAccess<?> access) {
        JavaClass owner = access.getTarget().getOwner();
        if (owner.isEquivalentTo(Executors.class)) {
            return true;
        }
        return access.getTarget().getName().equals("<init>")
                && Stream.of(Thread.class, Timer.class, ForkJoinPool.class, ThreadPoolExecutor.class, SwingWorker.class)
                        .anyMatch(owner::isAssignableTo);
    }

    private static boolean isOnCommonPool(JavaAccess<?> access) {
        if (!(access.getTarget() instanceof CodeUnitAccessTarget target)) {
            return false;
        }
        JavaClass owner = target.getOwner();
        String name = target.getName();
        List<JavaClass> given = target.getRawParameterTypes();
        if (owner.isAssignableTo(CompletionStage.class)) {
            return (name.endsWith("Async") || name.equals("delayedExecutor"))
                    && given.stream().noneMatch(type -> type.isAssignableTo(Executor.class));
        }
        if (owner.isAssignableTo(ConcurrentHashMap.class)) {
            // The first number says from how many on it is done in parallel.
            return !given.isEmpty() && given.get(0).isEquivalentTo(long.class);
        }
        return (name.equals("parallel") && owner.isAssignableTo(BaseStream.class))
                || (name.equals("parallelStream") && owner.isAssignableTo(Collection.class))
                || (name.startsWith("parallel") && owner.isEquivalentTo(Arrays.class))
                || (name.equals("stream") && owner.isEquivalentTo(StreamSupport.class))
                || owner.isAssignableTo(ForkJoinTask.class)
                || (name.equals("commonPool") && owner.isEquivalentTo(ForkJoinPool.class));
    }
}
