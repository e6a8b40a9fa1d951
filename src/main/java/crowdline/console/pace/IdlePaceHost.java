package crowdline.console.pace;

import crowdline.speech.pace.Pace;
import java.util.function.Consumer;

/** Has a microphone, and does nothing else. */
public record IdlePaceHost(Microphone microphone) implements PaceHost {
    /** Does nothing at all. */
    public static final PaceHost NONE = new IdlePaceHost(Microphone.NONE);

    @Override
    public void find(Consumer<Found> found) {}

    @Override
    public void use(String speaker) {}

    @Override
    public void useNext() {}

    @Override
    public void keep(Pace pace) {}
}
