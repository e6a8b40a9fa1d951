package crowdline.console.pace;

import crowdline.console.pace.Microphone.Listening;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.speech.hear.Hearing;
import crowdline.speech.hear.Hearing.NotSpeech;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The switch between key and microphone, and what the microphone hears. Takes no focus: M changes it. */
final class ListeningStrip extends JPanel {
    private static final String NOTHING_KEPT =
            "Only the start and the end of each reading are noted; no sound is kept.";

    private final JRadioButton byKey = new JRadioButton("By key", true);
    private final JRadioButton byMicrophone = new JRadioButton("By microphone (M)");
    private final JTextArea note;
    private final LevelMeter meter;
    private final transient Microphone microphone;
    private transient DoubleConsumer heard = seconds -> {};
    private transient Consumer<String> say = why -> {};
    private transient Runnable changed = () -> {};
    private transient Listening listening = Listening.NONE;
    private transient @Nullable Hearing last;

    /** @param why why there is no microphone; empty if there is one */
    ListeningStrip(Appearance appearance, String why, Microphone microphone) {
        super(new MigLayout("insets 0, hidemode 3", "[][]" + appearance.room(12) + "[0:0:,grow,fill]", "[][]"));
        this.microphone = microphone;
        note = PlainText.wrapped("About the microphone", why.isEmpty() ? NOTHING_KEPT : why);
        meter = new LevelMeter(appearance);
        ButtonGroup one = new ButtonGroup();
        for (JRadioButton button : List.of(byKey, byMicrophone)) {
            one.add(button);
            button.setFocusable(false);
            button.setFont(appearance.plain(TextRole.BODY));
            add(button);
        }
        byMicrophone.setEnabled(why.isEmpty());
        byKey.addActionListener(e -> switched());
        byMicrophone.addActionListener(e -> switched());
        note.setFocusable(false);
        note.setFont(appearance.plain(TextRole.BODY));
        meter.setVisible(false);
        add(meter, "wrap");
        add(note, "span 3, growx");
    }

    /**
     * Says who is told.
     *
     * @param heardIn told how long a remark took, seconds
     * @param said told a sentence for the speaker
     * @param switchedOver told when key and microphone have changed places
     */
    void tell(DoubleConsumer heardIn, Consumer<String> said, Runnable switchedOver) {
        heard = heardIn;
        say = said;
        changed = switchedOver;
    }

    boolean isOn() {
        return byMicrophone.isSelected();
    }

    /** How long the speaker has been heard, seconds; 0 outside speech. */
    double soFarS() {
        Hearing now = last;
        return isOn() && now != null ? now.soFarS() : 0;
    }

    void forget() {
        last = null;
        listening.forget();
    }

    /** From key to microphone, or back. */
    void change() {
        if (byMicrophone.isEnabled()) {
            (isOn() ? byKey : byMicrophone).setSelected(true);
            switched();
        }
    }

    /** Listens again, if that is how the speaker is timed. */
    void resume() {
        rest();
        if (isOn()) {
            meter.show(LevelMeter.Level.WAITING);
            listening = microphone.listen(new Ear());
        }
    }

    /** Lets the microphone go. */
    void rest() {
        listening.close();
        listening = Listening.NONE;
        last = null;
    }

    private void switched() {
        meter.setVisible(isOn());
        resume();
        revalidate();
        changed.run();
    }

    private final class Ear implements Microphone.Listener {
        @Override
        public void hears(List<Hearing> hearings) {
            for (Hearing hearing : hearings) {
                last = hearing;
                if (hearing.utterance() != null) {
                    heard.accept(hearing.utterance().seconds());
                } else if (hearing.notSpeech() != null) {
                    say.accept(sentence(hearing.notSpeech()));
                }
            }
            meter.show(LevelMeter.Level.of(hearings.get(hearings.size() - 1)));
        }

        @Override
        public void lost(String why) {
            rest();
            byKey.setSelected(true);
            meter.setVisible(false);
            note.setText(why);
            revalidate();
            changed.run();
            say.accept(why);
        }
    }

    private static String sentence(NotSpeech not) {
        return switch (not) {
            case SHORT -> "That was too short for a remark and does not count.";
            case STEADY -> "That was a steady sound, not speech, and does not count.";
            case ENDLESS -> "It never went quiet, so the end could not be found; say it again, or time it with Space.";
        };
    }
}
