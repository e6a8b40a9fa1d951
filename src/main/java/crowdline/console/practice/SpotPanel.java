package crowdline.console.practice;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.MarkLine;
import crowdline.console.paint.PlainText;
import crowdline.console.path.CrowdPicture;
import crowdline.console.path.Player;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** A flight to be watched as the crowd sees it, and what the pilot may have changed in it; by keys alone. */
public final class SpotPanel extends JPanel {
    private static final int FRAME_MS = 16;
    private static final Mark OPEN = new Mark(Form.RING, Tone.CALM, "What did the pilot change?");
    private static final String KEYS =
            "Space flies it or stops it, + and − change the speed, ← and → go 5 s back and on, 1 to 4 answer, N is the next"
                    + " flight, Esc ends";
    private static final double STEP_S = 5;

    private final transient Spotted asked;
    private final transient DoubleSupplier clockS;
    private final transient Player player = new Player();
    private final CrowdPicture sky;
    private final MarkLine verdict;
    private final JTextArea how = PlainText.wrapped("How fast", "");
    private final transient List<JTextArea> answers = new ArrayList<>();
    private final Timer timer = new Timer(FRAME_MS, e -> look());
    private boolean answered;

    /**
     * @param clockS seconds on a clock that never goes back
     * @param next told when another flight is wanted
     */
    public SpotPanel(Appearance appearance, Spotted asked, DoubleSupplier clockS, Consumer<PracticeChoice> next) {
        this.asked = asked;
        this.clockS = clockS;
        sky = new CrowdPicture(appearance);
        sky.wear(appearance, 1);
        verdict = new MarkLine("What it was", appearance);
        verdict.show(OPEN);
        setLayout(new MigLayout(
                "insets " + appearance.room(16) + ", gap 0 " + appearance.room(6),
                "[0:0:,grow,fill]",
                "[][0:0:,grow,fill]" + "[]".repeat(asked.choices().size() + 4)));
        add(text(appearance, "Flight", asked.title(), true), "wmin 0, wrap");
        add(sky, "grow, wmin 0, hmin 0, wrap");
        add(text(appearance, "The plan", "Planned: " + String.join(", ", asked.plan()) + ".", false), "wmin 0, wrap");
        add(verdict, "wmin 0, growx, wrap");
        for (int i = 0; i < asked.choices().size(); i++) {
            JTextArea answer = text(appearance, "Answer " + (i + 1), line(i), false);
            answers.add(answer);
            add(answer, "wmin 0, wrap");
        }
        how.setFont(appearance.plain(TextRole.BODY));
        how.setFocusable(false);
        add(how, "wmin 0, wrap");
        add(text(appearance, "Keys", KEYS, false), "wmin 0");
        setFocusable(true);
        getAccessibleContext().setAccessibleName("What did the pilot change?");
        keys(next);
        player.load(asked.fromS(), asked.toS());
        player.play(clockS.getAsDouble());
        timer.setCoalesce(true);
        timer.start();
        look();
    }

    private static JTextArea text(Appearance appearance, String name, String words, boolean strong) {
        JTextArea area = PlainText.wrapped(name, words);
        area.setFont(strong ? appearance.strong(TextRole.BODY) : appearance.plain(TextRole.BODY));
        area.setFocusable(false);
        return area;
    }

    private void keys(Consumer<PracticeChoice> next) {
        on(this::toggle, "SPACE");
        on(() -> change(1), "typed +", "ADD");
        on(() -> change(-1), "typed -", "SUBTRACT");
        on(() -> go(STEP_S), "RIGHT");
        on(() -> go(-STEP_S), "LEFT");
        on(() -> next.accept(asked.choice().next()), "N");
        for (int i = 0; i < asked.choices().size(); i++) {
            int choice = i;
            on(() -> answer(choice), String.valueOf(i + 1), "NUMPAD" + (i + 1));
        }
    }

    private void on(Runnable done, String... keys) {
        for (String key : keys) {
            registerKeyboardAction(e -> done.run(), KeyStroke.getKeyStroke(key), WHEN_IN_FOCUSED_WINDOW);
        }
    }

    private void toggle() {
        player.toggle(clockS.getAsDouble());
        look();
    }

    private void change(int steps) {
        player.change(steps, clockS.getAsDouble());
        look();
    }

    private void go(double byS) {
        double nowS = clockS.getAsDouble();
        player.goTo(player.positionS(nowS) + byS, nowS);
        look();
    }

    private void look() {
        double nowS = clockS.getAsDouble();
        double atS = player.positionS(nowS);
        sky.show(asked.sky().at(atS));
        how.setText(Math.round(atS - asked.fromS()) + " s of " + Math.round(asked.toS() - asked.fromS()) + " s, "
                + player.inWords() + (player.playing(nowS) ? "" : ", stopped"));
    }

    /** Takes the first answer, from 0, and says what is right; later ones count for nothing. */
    void answer(int choice) {
        if (answered) {
            return;
        }
        answered = true;
        verdict.show(
                choice == asked.right()
                        ? new Mark(Form.DISC, Tone.GOOD, "Right")
                        : new Mark(Form.CROSS, Tone.CAUTION, "No: it was " + (asked.right() + 1)));
        for (int i = 0; i < answers.size(); i++) {
            answers.get(i).setText(line(i));
        }
    }

    private String line(int i) {
        return (i + 1) + "  " + asked.choices().get(i) + (answered && i == asked.right() ? " (this one)" : "");
    }

    @Override
    public void removeNotify() {
        timer.stop();
        super.removeNotify();
    }
}
