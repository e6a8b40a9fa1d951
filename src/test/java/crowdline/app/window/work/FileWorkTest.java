package crowdline.app.window.work;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.ExpectsWarning;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class FileWorkTest {
    private static final System.Logger LOG = System.getLogger(FileWorkTest.class.getName());

    private static Optional<String> fault(FileWork work) {
        return work.fault(LOG, "A test's own", fault -> "sentence for " + fault.getMessage());
    }

    @Test
    void nothingIsSaidOfWhatWentWell() {
        assertThat(fault(() -> {})).isEmpty();
    }

    @Test
    void nothingIsSaidOfWhatWasGivenUp() {
        assertThat(fault(() -> {
                    throw new CancellationException("left");
                }))
                .isEmpty();
    }

    @Test
    void sentenceForTheUserIsSaidAsItIs() {
        assertThat(fault(() -> {
                    throw new ShowFileException("there is no file day.json");
                }))
                .contains("there is no file day.json");
    }

    @Test
    @ExpectsWarning("A test's own")
    void anythingElseIsPutInASentence() {
        assertThat(fault(() -> {
                    throw new IOException("a disk");
                }))
                .contains("sentence for a disk");
        assertThat(fault(() -> {
                    throw new IllegalStateException("a slip");
                }))
                .contains("sentence for a slip");
        assertThat(fault(() -> {
                    throw new StackOverflowError("the depth");
                }))
                .contains("sentence for the depth");
        assertThat(fault(() -> {
                    throw new OutOfMemoryError("the memory");
                }))
                .contains("sentence for the memory");
    }
}
