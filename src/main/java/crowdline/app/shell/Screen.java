package crowdline.app.shell;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Toolkit;
import org.jspecify.annotations.Nullable;

/** The screen this was started on, if there is one. */
public final class Screen {
    private Screen() {}

    /** Why no window can be opened here, or null if one can. */
    public static @Nullable String whyNone() {
        if (GraphicsEnvironment.isHeadless()) {
            return "there is no display here";
        }
        try {
            Toolkit.getDefaultToolkit().getScreenSize();
            return null;
        } catch (AWTError | HeadlessException e) {
            return "the display named in DISPLAY does not answer";
        }
    }
}
