package crowdline.app.window.work;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.settings.Settings;
import crowdline.storage.settings.SettingsFile;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class KeptSettingsTest {
    private final Queue<Runnable> io = new ArrayDeque<>();

    @TempDir
    Path folder;

    private SettingsFile file;
    private KeptSettings kept;

    @BeforeEach
    void begin() {
        file = new SettingsFile(folder);
        kept = new KeptSettings(file, Settings.DEFAULT, io::add);
    }

    private void write() {
        for (Runnable work = io.poll(); work != null; work = io.poll()) {
            work.run();
        }
    }

    @Test
    void changesMadeAtTheSameTimeAreBothKept() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch other = new CountDownLatch(1);
        CompletableFuture<Void> slow = new CompletableFuture<>();
        Thread thread = new Thread(() -> {
            kept.change(settings -> {
                Settings next = settings.withSpeaker("Ada Quillan");
                begun.countDown();
                await(other);
                return next;
            });
            slow.complete(null);
        });
        thread.start();

        begun.await();
        kept.change(settings -> settings.withTheme("night"));
        other.countDown();
        slow.get();
        thread.join();
        write();

        Settings both = Settings.DEFAULT.withSpeaker("Ada Quillan").withTheme("night");
        assertThat(kept.get()).isEqualTo(both);
        assertThat(file.read().settings()).isEqualTo(both);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void nothingIsWrittenButOnTheThreadForFiles() {
        kept.change(settings -> settings.withZoom(2));
        assertThat(folder).isEmptyDirectory();

        write();

        assertThat(file.read().settings()).isEqualTo(Settings.DEFAULT.withZoom(2));
    }

    @Test
    void whateverIsWrittenLastHoldsEveryChange() {
        kept.change(settings -> settings.withZoom(2));
        Runnable late = io.remove();
        kept.change(settings -> settings.withTheme("night"));
        write();

        late.run();

        assertThat(file.read().settings())
                .isEqualTo(Settings.DEFAULT.withZoom(2).withTheme("night"));
    }
}
