package crowdline.app.window.device;

import crowdline.app.sound.MicrophoneListener;
import crowdline.console.pace.Microphone;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.now.Desk;
import crowdline.speech.hear.Hearing;
import crowdline.speech.hear.SoundLevel;
import crowdline.speech.hear.Utterance;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Measures talk and quiet in the running show, where the commentator has chosen that. What is heard becomes levels at once
 * ({@link MicrophoneListener}); nothing is recorded. On the event thread.
 */
public final class LiveEar implements AutoCloseable {
    /** How Live goes on without a microphone. */
    public static final String WITHOUT = "Live goes on by keys, and Ctrl+H listens again.";

    private final Microphone microphone;
    private final Supplier<@Nullable Desk> running;
    private final Consumer<Boolean> kept;
    private final Consumer<Mark> say;
    private Microphone.@Nullable Listening listening;
    private String trouble = "";
    /** The show that was told last whether it is listened to. */
    private @Nullable Desk told;
    /** Levels heard since listening began. */
    private long levels;

    /**
     * @param running the show being run, if any
     * @param kept told whether to listen at the next start
     * @param say says a sentence in the foot line
     */
    public LiveEar(
            Microphone microphone, Supplier<@Nullable Desk> running, Consumer<Boolean> kept, Consumer<Mark> say) {
        this.microphone = microphone;
        this.running = running;
        this.kept = kept;
        this.say = say;
    }

    /** Listens, or no longer; after the microphone was lost, tries it again. */
    public void turn() {
        if (listening == null) {
            kept.accept(true);
            begin();
            say.accept(new Mark(
                    Form.DISC, Tone.GOOD, "Live is listening: talk and quiet are measured, and nothing is recorded"));
        } else {
            kept.accept(false);
            close();
            say.accept(new Mark(Form.DISC, Tone.GOOD, "Live has stopped listening"));
        }
    }

    /** Listens from now on. */
    public void begin() {
        trouble = "";
        levels = 0;
        listening = microphone.listen(new Microphone.Listener() {
            @Override
            public void hears(List<Hearing> hearings) {
                LiveEar.this.hears(hearings);
            }

            @Override
            public void lost(String why) {
                trouble = why;
                close();
            }
        });
        told = null;
        look();
    }

    /** Tells a show that was opened meanwhile whether it is listened to. */
    public void look() {
        Desk show = running.get();
        if (show == told) {
            return;
        }
        told = show;
        if (listening != null) {
            happens(HeardEvent.ListeningBegan::new);
        } else if (show != null && show.snapshot().state().listened().isOn()) {
            happens(HeardEvent.ListeningEnded::new); // it was left so by a crash
        }
    }

    private void hears(List<Hearing> hearings) {
        look();
        levels += hearings.size();
        double heardS = levels * SoundLevel.FRAME_S;
        for (int i = 0; i < hearings.size(); i++) {
            Utterance utterance = hearings.get(i).utterance();
            if (utterance != null) {
                happens(nowS -> talk(nowS, heardS - utterance.startS(), heardS - utterance.endS()));
            }
        }
    }

    /** What began and ended so long ago, seconds. */
    private static HeardEvent talk(double nowS, double beganS, double endedS) {
        double fromS = Math.max(0, nowS - beganS);
        return new HeardEvent.TalkHeard(nowS, fromS, Math.max(fromS, nowS - endedS));
    }

    private void happens(DoubleFunction<? extends LiveEvent> event) {
        Desk show = told;
        if (show != null) {
            show.post(event);
        }
    }

    /** What is wrong with the microphone, in one sentence; empty if nothing is, or it is not used. */
    public String trouble() {
        return trouble;
    }

    public boolean isOn() {
        return listening != null;
    }

    @Override
    public void close() {
        Microphone.Listening last = listening;
        listening = null;
        if (last != null) {
            last.close();
            happens(HeardEvent.ListeningEnded::new);
        }
    }
}
