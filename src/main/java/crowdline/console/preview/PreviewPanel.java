package crowdline.console.preview;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.NamedAction;
import crowdline.paper.SheetKind;
import crowdline.sheet.page.Pages;
import crowdline.show.Show;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Paper to look at: what is chosen at the left, its pages at the right, printed or saved by a key. */
public final class PreviewPanel extends JPanel {
    private static final String KEYS = "Page Up, Page Down: pages\n+ and −: zoom\n0: the whole page";

    private final transient PaperHost host;
    private final transient Show show;
    private final transient Function<String, Optional<Path>> chooser;
    private final PageCanvas canvas;
    private final PreviewChoice choice;
    private final JTextArea said = PlainText.wrapped("What became of it", "");
    private final JLabel where = PlainText.plain(new JLabel(" "));
    private final JProgressBar progress = new JProgressBar();
    private final JButton print;
    private final JButton save;
    private final JButton stop;
    private transient @Nullable Pages pages;
    /** Whose answers are still heard. */
    private int asked;

    /**
     * Begins with the first kind of paper.
     *
     * @param chooser asks for a file, given the name it may have
     */
    public PreviewPanel(
            Appearance appearance,
            PaperHost host,
            Show show,
            SheetKind first,
            Function<String, Optional<Path>> chooser,
            Runnable close) {
        super(new MigLayout(
                "insets " + appearance.room(16) + ", gap " + appearance.room(16) + " " + appearance.room(8),
                "[" + appearance.room(230) + "!,fill][0:0:,grow,fill]",
                "[0:0:,grow,fill][]"));
        this.host = host;
        this.show = show;
        this.chooser = chooser;
        setBackground(appearance.palette().stage());
        canvas = new PageCanvas(appearance);
        choice = new PreviewChoice(appearance, show, first, this::make);
        print = new JButton(new NamedAction("Print…  Ctrl+P", this::print));
        save = new JButton(new NamedAction("Save as PDF…  Ctrl+S", this::save));
        stop = new JButton(new NamedAction("Stop", this::stopped));
        JButton done = new JButton(new NamedAction("Close  Esc", close));
        progress.getAccessibleContext().setAccessibleName("How far it is");
        progress.setVisible(false);
        said.setFont(appearance.plain(TextRole.SMALL));
        where.setFont(appearance.strong(TextRole.SMALL));
        JPanel left = new JPanel(new MigLayout("insets 0, fill, gap 0px " + appearance.room(8), "[0:0:,grow,fill]"));
        left.setOpaque(false);
        left.add(choice, "wmin 0, wrap " + appearance.room(12));
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap " + appearance.room(8) + " 0px", "[]push[][][]"));
        buttons.setOpaque(false);
        buttons.add(where);
        for (JButton button : List.of(print, save, done)) {
            button.setFont(appearance.plain(TextRole.SMALL));
            buttons.add(button);
        }
        JTextArea keys = PlainText.wrapped("Keys", KEYS);
        keys.setFont(appearance.plain(TextRole.LABEL));
        keys.setForeground(appearance.palette().soft());
        left.add(said, "wmin 0, wrap");
        left.add(progress, "wmin 0, hidemode 3, wrap");
        stop.setFont(appearance.plain(TextRole.SMALL));
        left.add(stop, "wmin 0, hidemode 3");
        stop.setVisible(false);
        left.add(keys, "newline push, wmin 0");
        JScrollPane scroll = new JScrollPane(canvas);
        scroll.getVerticalScrollBar().setUnitIncrement(appearance.px(40));
        scroll.getAccessibleContext().setAccessibleName("Pages");
        PreviewChoice.leavePageKeys(scroll, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        JScrollPane choices = new JScrollPane(left);
        choices.setBorder(BorderFactory.createEmptyBorder());
        choices.setOpaque(false);
        choices.getViewport().setOpaque(false);
        choices.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        PreviewChoice.leavePageKeys(choices, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        add(choices, "grow, hmin 0");
        add(scroll, "grow, hmin 0, wmin 0, wrap");
        add(buttons, "spanx, growx, wmin 0");
        getAccessibleContext().setAccessibleName("Print preview");
        keys();
        make();
    }

    private void keys() {
        on("PAGE_DOWN", () -> turn(1));
        on("PAGE_UP", () -> turn(-1));
        on("ctrl END", () -> turn(Integer.MAX_VALUE));
        on("ctrl HOME", () -> turn(-Integer.MAX_VALUE));
        for (String key : List.of("typed +", "ADD", "ctrl PLUS", "ctrl EQUALS")) {
            on(key, () -> canvas.zoom(1));
        }
        for (String key : List.of("typed -", "SUBTRACT", "ctrl MINUS")) {
            on(key, () -> canvas.zoom(-1));
        }
        on("typed 0", () -> canvas.zoom(0));
        on("ctrl P", this::print);
        on("ctrl S", this::save);
    }

    private void on(String key, Runnable done) {
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                done.run();
            }
        });
    }

    /** The keys go to the kinds of paper first. */
    void takeFocus() {
        choice.takeFocus();
    }

    private void turn(int by) {
        canvas.turn(by);
        where.setText(canvas.where());
    }

    /** Makes what is chosen. */
    private void make() {
        show(null);
        said.setText("");
        host.make(show, choice.asked(), answer());
    }

    private void show(@Nullable Pages next) {
        pages = next;
        canvas.show(next);
        where.setText(next == null ? " " : canvas.where());
        print.setEnabled(next != null);
        save.setEnabled(next != null);
    }

    private PaperHost.Answer answer() {
        asked++;
        int mine = asked;
        busy(true);
        return new PaperHost.Answer() {
            @Override
            public void sofar(int number, int all) {
                if (mine == asked) {
                    progress.setMaximum(Math.max(1, all));
                    progress.setValue(number);
                }
            }

            @Override
            public void made(Pages made) {
                if (mine == asked) {
                    busy(false);
                    show(made);
                    made.lacking()
                            .ifPresent(lacking -> said.setText(
                                    "◆ " + Character.toUpperCase(lacking.charAt(0)) + lacking.substring(1) + "."));
                }
            }

            @Override
            public void said(String sentence) {
                if (mine == asked) {
                    busy(false);
                    said.setText(PlainText.unbroken(sentence));
                }
            }
        };
    }

    private void busy(boolean is) {
        progress.setValue(0);
        progress.setVisible(is);
        stop.setVisible(is);
        revalidate();
    }

    private void stopped() {
        asked++;
        host.stop();
        busy(false);
        said.setText("Stopped.");
        takeFocus();
    }

    private void print() {
        Pages now = pages;
        if (now != null) {
            said.setText("");
            host.print(now, answer());
        }
    }

    private void save() {
        Pages now = pages;
        if (now != null) {
            chooser.apply(choice.kind().word() + ".pdf").ifPresent(file -> {
                said.setText("");
                host.save(now, file, answer());
            });
        }
    }
}
