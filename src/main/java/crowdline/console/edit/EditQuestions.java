package crowdline.console.edit;

import crowdline.console.paint.PlainText;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.filechooser.FileNameExtensionFilter;

/** What is asked about the edited show and its file. On the event thread; each waits for its answer. */
final class EditQuestions {
    private static final String TITLE = "Crowdline";
    private static final Pattern NOT_IN_NAMES = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int LONGEST_NAME = 60;
    private static final int SEE = 2;
    private static final Dimension LIST = new Dimension(640, 320);

    private final Component owner;

    /** @param owner what is asked over */
    EditQuestions(Component owner) {
        this.owner = owner;
    }

    enum Leaving {
        SAVE,
        LEAVE,
        CANCEL
    }

    enum Outside {
        RELOAD,
        MINE,
        LATER
    }

    enum Unsaved {
        BRING_BACK,
        LEAVE,
        LATER
    }

    Leaving leaving() {
        return switch (ask(0, "The show is not saved yet.", "Save", "Leave without saving", "Cancel")) {
            case 0 -> Leaving.SAVE;
            case 1 -> Leaving.LEAVE;
            default -> Leaving.CANCEL;
        };
    }

    Unsaved bringBack(UnsavedOffer offer) {
        String words = "You had unsaved changes in " + offer.of() + " from " + offer.since() + "."
                + (offer.changedSince() ? "\nThe file was changed since then." : "");
        return switch (ask(0, words, "Bring them back", "Throw them away", "Ask again next time")) {
            case 0 -> Unsaved.BRING_BACK;
            case 1 -> Unsaved.LEAVE;
            default -> Unsaved.LATER;
        };
    }

    /** Shows the differences as often as they are asked for. */
    Outside changedOutside(String file, List<String> differences, boolean isUnsaved) {
        while (true) {
            // Enter pressed without reading gives up nobody's work.
            int answer = ask(
                    SEE,
                    file + " was changed by another program."
                            + (isUnsaved ? "\nReloading it loses what you have not saved." : ""),
                    "Reload it",
                    "Keep mine",
                    "See the differences");
            if (answer == SEE) {
                show(file, differences);
            } else {
                return answer == 0 ? Outside.RELOAD : answer == 1 ? Outside.MINE : Outside.LATER;
            }
        }
    }

    private void show(String file, List<String> differences) {
        JTextArea list = PlainText.wrapped(
                "Differences",
                differences.isEmpty() ? "It says the same in other letters." : String.join("\n", differences));
        list.setCaretPosition(0);
        list.setFocusable(true);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setPreferredSize(LIST);
        JOptionPane.showMessageDialog(owner, scroll, "How " + file + " differs from yours", JOptionPane.PLAIN_MESSAGE);
    }

    boolean saveElsewhere(String why) {
        return ask(0, why + "\nNothing is lost: your changes are still here.", "Save as…", "Not now") == 0;
    }

    private int ask(int first, String words, Object... answers) {
        JTextArea text = PlainText.wrapped("Question", words);
        text.setFocusable(false);
        text.setSize(new Dimension(LIST.width, 1));
        return answered(() -> JOptionPane.showOptionDialog(
                owner,
                text,
                TITLE,
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                answers,
                answers[first]));
    }

    /** The keys go back where they were: not every system gives them back when a question closes. */
    private static <T> T answered(Supplier<T> asking) {
        Component before = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        T answer = asking.get();
        if (before != null) {
            before.requestFocus();
        }
        return answer;
    }

    /**
     * Asks for a file to save in, and whether one that is there may be replaced.
     *
     * @param title of the show, for a name to begin with
     */
    Optional<Path> fileToSaveIn(String title) {
        return answered(() -> askForFile(title));
    }

    private Optional<Path> askForFile(String title) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Save the show as");
        chooser.setFileFilter(new FileNameExtensionFilter("Show files", "json"));
        chooser.setAcceptAllFileFilterUsed(true);
        String name = NOT_IN_NAMES.matcher(title).replaceAll("-");
        chooser.setSelectedFile(chooser.getCurrentDirectory()
                .toPath()
                .resolve(name.substring(0, Math.min(LONGEST_NAME, name.length())) + ".json")
                .toFile());
        if (chooser.showSaveDialog(owner) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path chosen = chooser.getSelectedFile().toPath();
        Path file = String.valueOf(chosen.getFileName()).contains(".")
                ? chosen
                : chosen.resolveSibling(chosen.getFileName() + ".json");
        boolean may = !Files.exists(file)
                || JOptionPane.showConfirmDialog(
                                owner,
                                "There is already a file with that name. Replace it? The old one is kept beside it as .previous.",
                                TITLE,
                                JOptionPane.YES_NO_OPTION)
                        == JOptionPane.YES_OPTION;
        return may ? Optional.of(file) : Optional.empty();
    }
}
