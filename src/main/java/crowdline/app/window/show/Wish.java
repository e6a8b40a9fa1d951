package crowdline.app.window.show;

import java.nio.file.Path;
import java.util.function.Consumer;

/**
 * A file that is to be opened.
 *
 * @param number counts the wishes
 * @param opened told on the io thread when it turned out to be a show
 */
record Wish(Path file, int number, Consumer<Path> opened) {
    /** Only the last of several is opened. */
    boolean isLastOf(int wishes) {
        return number == wishes;
    }
}
