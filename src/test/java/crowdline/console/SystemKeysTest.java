package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIf;

@Tag("window")
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class SystemKeysTest {
    /** What was posted while the queue went away waited for ever, now and then. */
    @Test
    void whatComesBehindItIsDone() throws Exception {
        for (int i = 0; i < 500; i++) {
            new SystemKeys().close();
            FutureTask<Boolean> next = new FutureTask<>(() -> true);
            SwingUtilities.invokeLater(next);
            assertThat(next.get(20, TimeUnit.SECONDS)).as("time " + i).isTrue();
        }
    }
}
