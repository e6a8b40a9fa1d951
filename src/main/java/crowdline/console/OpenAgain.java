package crowdline.console;

import crowdline.show.bounds.Written;
import java.awt.event.ActionEvent;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** Opens a file that was open before. */
final class OpenAgain extends AbstractAction {
    private static final long serialVersionUID = 1;
    /** Letters of a name, and of a folder: both have room beside each other in a menu at the largest zoom. */
    private static final int LONGEST = 32;

    private final transient Path path;
    private final transient Consumer<Path> open;

    private OpenAgain(String words, Path path, Consumer<Path> open) {
        super(words);
        this.path = path;
        this.open = open;
        putValue(SHORT_DESCRIPTION, path.toString());
    }

    /** One for each of these files, called by its name and the folder it lies in, of which a long one keeps its end. */
    static List<Action> of(Supplier<List<Path>> recent, Consumer<Path> open) {
        return recent.get().stream()
                .<Action>map(path -> new OpenAgain(name(path), path, open))
                .toList();
    }

    private static String name(Path path) {
        Path folder = path.getParent();
        return Written.brief(String.valueOf(path.getFileName()), LONGEST)
                + (folder == null ? "" : "  in " + end(folder.toString()));
    }

    /** The end of a path, from where one of its folders begins if that leaves anything. */
    private static String end(String folder) {
        if (folder.length() <= LONGEST) {
            return folder;
        }
        String last = folder.substring(folder.length() - LONGEST + 1);
        int separator = last.indexOf(File.separatorChar);
        return "…" + (separator < 0 ? last : last.substring(separator));
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        open.accept(path);
    }
}
