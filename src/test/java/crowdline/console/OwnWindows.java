package crowdline.console;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import crowdline.ProgramClasses;
import crowdline.console.foot.FootBar;
import crowdline.console.pace.PacePanel;
import crowdline.console.place.Place;
import crowdline.console.practice.SpotPanel;
import crowdline.console.receiver.ReceiverRow;
import java.awt.Component;
import java.awt.FileDialog;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JColorChooser;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JInternalFrame;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JOptionPane;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.PopupFactory;
import javax.swing.ProgressMonitor;
import org.jspecify.annotations.Nullable;

/** Every window the console can open over its own, by the class that makes it, and how a hand at the keys opens it. */
final class OwnWindows {
    private static final Class<?>[] THINGS_IN_FRONT = {
        Window.class,
        JFileChooser.class,
        JOptionPane.class,
        JColorChooser.class,
        JInternalFrame.class,
        JPopupMenu.class,
        JMenu.class,
        JComboBox.class,
        ProgressMonitor.class,
        PopupFactory.class,
        FileDialog.class
    };

    private final RealWindow window;

    OwnWindows(RealWindow window) {
        this.window = window;
    }

    /** Classes of the program that make something which stands in front of the console, but for the console itself. */
    static Set<String> makers() {
        return ProgramClasses.imported().stream()
                .<JavaCall<?>>flatMap(c ->
                        Stream.concat(c.getConstructorCallsFromSelf().stream(), c.getMethodCallsFromSelf().stream()))
                .filter(OwnWindows::opensSomething)
                .map(call -> outermost(call.getOriginOwner()).getName())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static JavaClass outermost(JavaClass one) {
        return one.getEnclosingClass().map(OwnWindows::outermost).orElse(one);
    }

    private static boolean opensSomething(JavaCall<?> call) {
        JavaClass target = call.getTargetOwner();
        boolean console = target.isAssignableTo(ConsoleFrame.class)
                || call.getOriginOwner().isAssignableTo(ConsoleFrame.class);
        boolean made = call.getTarget().getName().equals("<init>") || target.isEquivalentTo(JOptionPane.class);
        boolean inFront = Stream.of(THINGS_IN_FRONT).anyMatch(target::isAssignableTo);
        boolean printing =
                Set.of("printDialog", "pageDialog").contains(call.getTarget().getName());
        return !console && ((made && inFront) || printing);
    }

    /** How each of them is opened, by its name under the class that makes it. */
    static Map<String, Map<String, Consumer<OwnWindows>>> all() {
        Map<String, Map<String, Consumer<OwnWindows>>> all = new LinkedHashMap<>();
        all.put("crowdline.console.Windows", Map.of("a show to open", own -> own.in(Place.LIVE, KeyEvent.VK_O)));
        Map<String, Consumer<OwnWindows>> plain = new LinkedHashMap<>(Map.of(
                "messages",
                OwnWindows::messages,
                "METAR",
                own -> own.in(Place.PREPARE, KeyEvent.VK_M),
                "cells",
                OwnWindows::cells,
                "help",
                own -> own.in(Place.WORDS, KeyEvent.VK_F1),
                "print",
                OwnWindows::preview,
                "receiver",
                own -> own.in(Place.LIVE, KeyEvent.VK_R),
                "pace",
                own -> own.in(Place.GLOSSARY, KeyEvent.VK_U),
                "pace, while a speaker is timed",
                OwnWindows::timing));
        plain.put("a practice flight", own -> own.in(Place.LIVE, KeyEvent.VK_G));
        plain.put("what the pilot changed", OwnWindows::spotting);
        all.put("crowdline.console.window.OwnWindow", plain);
        all.put("crowdline.console.pedals.PortPart", Map.of("pedals", own -> own.in(Place.DEBRIEF, KeyEvent.VK_B)));
        all.put("crowdline.console.receiver.ReceiverDialog", Map.of("a flight log", OwnWindows::flightLog));
        all.put(
                "crowdline.console.edit.EditQuestions",
                Map.of(
                        "save as", OwnWindows::saveAs,
                        "replace a file", own -> own.replace(own::saveAs),
                        "leave without saving", OwnWindows::unsaved));
        all.put(
                "crowdline.console.debrief.DebriefPlace",
                Map.of(
                        "save the debrief",
                        OwnWindows::saveDebrief,
                        "replace the debrief",
                        own -> own.replace(own::saveDebrief)));
        all.put(
                "crowdline.console.preview.PreviewWindow",
                Map.of("save a PDF", OwnWindows::savePdf, "replace a PDF", own -> own.replace(own::savePdf)));
        all.put("crowdline.app.window.paper.PaperKeeper", Map.of("a printer", OwnWindows::print));
        return all;
    }

    private void go(Place place) {
        RealWindow.onEventThread(() -> {
            window.frame.go(place);
            return 0;
        });
        window.await("the keys are in " + place, window.frame::isFocused);
    }

    private void in(Place place, int ctrl) {
        go(place);
        window.pressUntil(
                "a window is open", () -> window.otherWindows().findAny().isPresent(), ctrl, KeyEvent.VK_CONTROL);
        window.inFront();
    }

    private void spotting() {
        in(Place.LIVE, KeyEvent.VK_G);
        window.pressUntil(
                "it is asked what was changed",
                () -> window.otherWindows()
                        .anyMatch(w -> RealWindow.all(w).stream().anyMatch(SpotPanel.class::isInstance)),
                KeyEvent.VK_O,
                KeyEvent.VK_ALT);
        window.inFront();
    }

    private void timing() {
        in(Place.PREPARE, KeyEvent.VK_U);
        RealWindow.onEventThread(() -> {
            find(window.inFrontNow(), PacePanel.class).begin();
            return 0;
        });
    }

    private void messages() {
        go(Place.LIVE);
        window.begin(() -> {
            FootBar bar = find(window.frame, FootBar.class);
            bar.dispatchEvent(new MouseEvent(bar, MouseEvent.MOUSE_CLICKED, 1000, 0, 5, 5, 1, false));
        });
        window.inFront();
    }

    private void flightLog() {
        in(Place.LIVE, KeyEvent.VK_R);
        window.begin(() -> {
            JList<?> rows = find(window.inFrontNow(), JList.class);
            for (int i = 0; i < rows.getModel().getSize(); i++) {
                if (rows.getModel().getElementAt(i) instanceof ReceiverRow row && row.way() == ReceiverRow.Way.LOG) {
                    rows.setSelectedIndex(i);
                }
            }
            rows.getActionForKeyStroke(KeyStroke.getKeyStroke("ENTER"))
                    .actionPerformed(new ActionEvent(rows, ActionEvent.ACTION_PERFORMED, ""));
        });
        window.await("a file can be chosen", () -> window.otherWindows().anyMatch(OwnWindows::choosesFile));
    }

    private void words() {
        go(Place.WORDS);
        window.await("words are open", () -> !window.frame.getTitle().equals("Crowdline"));
    }

    private void cells() {
        words();
        go(Place.PREPARE);
        window.pressUntil(
                "cells can be pasted",
                () -> window.otherWindows().findAny().isPresent(),
                KeyEvent.VK_I,
                KeyEvent.VK_CONTROL,
                KeyEvent.VK_SHIFT);
        window.inFront();
    }

    private void saveAs() {
        words();
        window.pressUntil(
                "a file can be chosen",
                () -> window.otherWindows().anyMatch(OwnWindows::choosesFile),
                KeyEvent.VK_S,
                KeyEvent.VK_CONTROL,
                KeyEvent.VK_SHIFT);
    }

    private void unsaved() {
        words();
        window.pressUntil(
                "something is not saved",
                () -> window.frame.getTitle().contains("not saved"),
                KeyEvent.VK_K,
                KeyEvent.VK_CONTROL);
        window.pressUntil(
                "it asks what to do",
                () -> window.otherWindows().findAny().isPresent(),
                KeyEvent.VK_Q,
                KeyEvent.VK_CONTROL);
        window.inFront();
    }

    private void saveDebrief() {
        go(Place.DEBRIEF);
        window.pressUntil(
                "a file can be chosen", () -> window.otherWindows().anyMatch(OwnWindows::choosesFile), KeyEvent.VK_S);
    }

    private void replace(Runnable choosing) {
        choosing.run();
        File there;
        try {
            there = Files.createTempFile("there", ".pdf").toFile();
            there.deleteOnExit();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        window.begin(() -> {
            JFileChooser chooser = find(window.inFrontNow(), JFileChooser.class);
            chooser.setSelectedFile(there);
            chooser.approveSelection();
        });
        window.await(
                "it asks whether to replace the file",
                () -> window.otherWindows()
                        .anyMatch(w -> RealWindow.all(w).stream().anyMatch(JOptionPane.class::isInstance)));
    }

    private void preview() {
        words();
        in(Place.DEBRIEF, KeyEvent.VK_P);
    }

    private void savePdf() {
        preview();
        window.pressUntil(
                "a file can be chosen",
                () -> window.otherWindows().anyMatch(OwnWindows::choosesFile),
                KeyEvent.VK_S,
                KeyEvent.VK_CONTROL);
    }

    /** The toolkit's own dialog needs a printer; it is a modal dialog as this one. */
    private void print() {
        window.host.printing = () -> {
            JDialog dialog = new JDialog(window.frame, "Print", true);
            dialog.setSize(300, 200);
            dialog.setVisible(true);
        };
        preview();
        window.pressUntil(
                "it asks how to print", () -> window.otherWindows().count() > 1, KeyEvent.VK_P, KeyEvent.VK_CONTROL);
        window.inFront();
    }

    /**
     * Gives the keys to a component of a kind that is not among those walked, and says which; null if there is none. What has
     * just been opened still lays itself out, so that scroll bars come and go: one that is gone is chosen anew.
     */
    static @Nullable Class<?> focusAnother(RealWindow window, String name, Set<Class<?>> walked) {
        window.inFront();
        AtomicReference<@Nullable Component> chosen = new AtomicReference<>();
        window.await("the keys are in " + name, () -> {
            Component next = chosen.get();
            if (next == null || !next.isShowing()) {
                next = RealWindow.focusable(window.inFrontNow()).stream()
                        .filter(c -> !walked.contains(c.getClass()))
                        .findFirst()
                        .orElse(null);
                chosen.set(next);
            }
            if (next != null) {
                next.requestFocusInWindow();
            }
            return next == null || next.isFocusOwner();
        });
        Component component = chosen.get();
        return component == null ? null : component.getClass();
    }

    /** Whether the window in front has a component that can have the keys, of a kind that is not among those walked. */
    static boolean hasAnother(RealWindow window, Set<Class<?>> walked) {
        return RealWindow.focusable(window.inFront()).stream().anyMatch(c -> !walked.contains(c.getClass()));
    }

    private static boolean choosesFile(Window shown) {
        return RealWindow.all(shown).stream().anyMatch(JFileChooser.class::isInstance);
    }

    private static <C extends Component> C find(Window shown, Class<C> kind) {
        return RealWindow.all(shown).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }
}
