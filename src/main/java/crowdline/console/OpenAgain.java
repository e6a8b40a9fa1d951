package crowdline.console;

import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** Opens a file that was open before. */
final class OpenAgain extends AbstractAction {
    private static final long serialVersionUID = 1;

    private final transient Path path;
    private final transient Consumer<Path> open;

    private OpenAgain(String words, Path path, Consumer<Path> open) {
        super(words);
        this.path = path;
        this.open = open;
        putValue(SHORT_DESCRIPTION, path.toString());
    }

    /** One for each of these files, called by its whole path. */
    static List<Action> byPath(Supplier<List<Path>> recent, Consumer<Path> open) {
        return recent.get().stream()
                .<Action>map(path -> new OpenAgain(path.toString(), path, open))
                .toList();
    }

    /** One for each of these files, called by its name and the folder it lies in. */
    static List<Action> byName(Supplier<List<Path>> recent, Consumer<Path> open) {
        return recent.get().stream()
                .<Action>map(path -> new OpenAgain(name(path), path, open))
                .toList();
    }

    private static String name(Path path) {
        Path folder = path.getParent();
        return path.getFileName() + (folder == null ? "" : "  in " + folder);
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        open.accept(path);
    }
}
