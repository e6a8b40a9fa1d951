package crowdline.app.sound;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import org.jspecify.annotations.Nullable;

/** The microphone that the system has chosen, through the Java platform. */
public final class JavaSound {
    static final String NONE = "There is no microphone; plug one in, or choose one in the system's sound settings.";
    static final String BUSY =
            "The microphone is in use by another program; close that, then choose the microphone again.";
    static final String FORBIDDEN = "The system does not let Crowdline use the microphone; allow it in the system's"
            + " privacy settings, then choose the microphone again.";

    /** In the order they are tried: enough for speech first, then what devices always have. */
    private static final List<Integer> RATES_HZ = List.of(16_000, 44_100, 48_000, 22_050, 32_000, 8000);

    /** Some devices give two channels only. */
    private static final int MOST_CHANNELS = 2;

    private static final int BITS = 16;
    private static final int BLOCKS_A_SECOND = 20;
    private static final int KEPT_BLOCKS = 10;

    private final Lines lines;

    /** Where lines come from. */
    interface Lines {
        /**
         * A line, not yet open.
         *
         * @throws IllegalArgumentException if no device has such a line
         */
        TargetDataLine find(AudioFormat format) throws LineUnavailableException;
    }

    /** Why there is no sound, in one sentence for the user. */
    public static final class NoSoundException extends Exception {
        NoSoundException(String sentence, @Nullable Throwable cause) {
            super(sentence, cause);
        }
    }

    public JavaSound() {
        this(AudioSystem::getTargetDataLine);
    }

    public JavaSound(Lines lines) {
        this.lines = lines;
    }

    /** Why there is no microphone to choose, if there is none; may take a while. */
    public Optional<String> whyNone() {
        for (AudioFormat format : formats()) {
            try {
                lines.find(format);
                return Optional.empty();
            } catch (LineUnavailableException e) {
                return Optional.empty(); // there, but busy: said when it is chosen
            } catch (IllegalArgumentException e) {
                // no device takes sound so: the next format
            } catch (SecurityException e) {
                return Optional.of(FORBIDDEN);
            }
        }
        return Optional.of(NONE);
    }

    /** Opens the microphone at the first rate that it takes, in one channel if it has that. */
    public SoundSource open() throws NoSoundException {
        NoSoundException why = new NoSoundException(NONE, null);
        for (AudioFormat format : formats()) {
            try {
                TargetDataLine line = lines.find(format);
                line.open(format, bytesABlock(format) * KEPT_BLOCKS);
                line.start();
                return new SoundLine(line, format);
            } catch (LineUnavailableException e) {
                why = new NoSoundException(BUSY, e);
            } catch (IllegalArgumentException e) {
                // no device takes sound so: the next format
            } catch (SecurityException e) {
                throw new NoSoundException(FORBIDDEN, e);
            }
        }
        throw why;
    }

    private static List<AudioFormat> formats() {
        return IntStream.rangeClosed(1, MOST_CHANNELS)
                .boxed()
                .flatMap(channels ->
                        RATES_HZ.stream().map(rateHz -> new AudioFormat(rateHz, BITS, channels, true, false)))
                .toList();
    }

    private static int bytesABlock(AudioFormat format) {
        return (int) format.getFrameRate() / BLOCKS_A_SECOND * format.getFrameSize();
    }
}
