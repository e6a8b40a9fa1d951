package crowdline.console.pace;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/**
 * Shows one remark at a time, large, and hears the keys of the watch. The watch takes the time at which a key was
 * pressed, not by when the screen came to hear of it.
 */
final class TimingPage extends JPanel {
    /** On X11 a held key is reported as release and press with the same time; anything this close is that. */
    private static final long SAME_MOMENT_MS = 2;

    private static final double MS_PER_S = 1000;

    private final JTextArea count = PlainText.wrapped("Progress", "");
    private final JTextArea remark = PlainText.wrapped("Say this", "");
    private final JTextArea hint = PlainText.wrapped("Keys", "");
    private final JTextArea said = PlainText.wrapped("Result", "");
    private final ListeningStrip listening;
    private final transient Consumer<PaceRun> enough;
    private final transient Appearance appearance;
    private transient @Nullable PaceRun run;

    /**
     * @param listening how the speaker is timed
     * @param enough told of a run that is to be learned from
     */
    TimingPage(Appearance appearance, ListeningStrip listening, Consumer<PaceRun> enough) {
        super(new MigLayout(
                "insets " + appearance.room(16) + ", gap " + appearance.room(6) + " " + appearance.room(10),
                "[0:0:,grow,fill]",
                "[][0:0:,grow,fill][][][]"));
        this.appearance = appearance;
        this.listening = listening;
        this.enough = enough;
        count.setFont(appearance.strong(TextRole.BODY));
        remark.setFont(appearance.strong(TextRole.NEXT));
        hint.setFont(appearance.plain(TextRole.BODY));
        said.setFont(appearance.plain(TextRole.BODY));
        // Lines end ragged at the right, where the room is wanted at the largest zoom.
        remark.setBorder(BorderFactory.createEmptyBorder(0, appearance.px(5), 0, 0));
        count.setFocusable(false);
        hint.setFocusable(false);
        said.setFocusable(false);
        remark.addKeyListener(new WatchKeys());
        add(count, "wrap");
        add(new JScrollPane(remark), "grow, wrap");
        add(hint, "wrap");
        add(listening, "wrap");
        add(said);
        listening.tell(this::heard, this::sayLost, () -> {
            if (run != null) {
                show(run);
            }
        });
    }

    void begin(PaceRun first) {
        show(first);
        listening.resume();
    }

    /** Lets the microphone go while nobody is timed. */
    void rest() {
        listening.rest();
    }

    private void heard(double seconds) {
        if (run != null) {
            show(run.heard(seconds));
        }
    }

    private void sayLost(String why) {
        if (run != null) {
            show(run.saying(why));
        }
    }

    void takeFocus() {
        remark.requestFocusInWindow();
    }

    @Nullable
    PaceRun run() {
        return run;
    }

    private void show(PaceRun next) {
        run = next;
        count.setText(next.speaker() + ": " + next.count() + (next.isRunning() ? ", timing" : ""));
        if (!remark.getText().equals(next.text())) {
            remark.setText(next.text());
            remark.setCaretPosition(0);
        }
        remark.setForeground(
                next.isRunning()
                        ? appearance.palette().accent()
                        : appearance.palette().text());
        String keys = listening.isOn() ? next.hintByMicrophone() : next.hint();
        hint.setText(keys);
        said.setText(next.said());
        // A screen reader hears of each step where the focus is.
        remark.getAccessibleContext().setAccessibleDescription(next.said() + " " + next.count() + ". " + keys);
    }

    void press(int key, double atS) {
        PaceRun now = run;
        if (now == null) {
            return;
        }
        switch (key) {
            case KeyEvent.VK_SPACE -> {
                double soFarS = listening.soFarS();
                listening.forget();
                show(soFarS > 0 && !now.isRunning() ? now.taken(soFarS, atS) : now.startOrStop(atS));
            }
            case KeyEvent.VK_BACK_SPACE -> {
                boolean speaking = listening.soFarS() > 0 && !now.isRunning();
                listening.forget();
                show(speaking ? now.saying("That reading does not count; say it again.") : now.again());
            }
            case KeyEvent.VK_M -> listening.change();
            default -> {
                if (now.isEnough()) {
                    enough.accept(now);
                }
            }
        }
    }

    /** A key held down counts once. */
    private final class WatchKeys extends KeyAdapter {
        private int down = KeyEvent.VK_UNDEFINED;
        private int last = KeyEvent.VK_UNDEFINED;
        private long releasedMs;

        @Override
        public void keyPressed(KeyEvent event) {
            int key = event.getKeyCode();
            if (key != KeyEvent.VK_SPACE
                    && key != KeyEvent.VK_BACK_SPACE
                    && key != KeyEvent.VK_ENTER
                    && key != KeyEvent.VK_M) {
                return;
            }
            boolean held = key == down || (key == last && event.getWhen() - releasedMs <= SAME_MOMENT_MS);
            down = key;
            event.consume();
            if (!held) {
                press(key, event.getWhen() / MS_PER_S);
            }
        }

        @Override
        public void keyReleased(KeyEvent event) {
            last = event.getKeyCode();
            down = KeyEvent.VK_UNDEFINED;
            releasedMs = event.getWhen();
        }
    }
}
