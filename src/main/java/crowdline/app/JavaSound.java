package crowdline.app;

import java.util.List;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import org.jspecify.annotations.Nullable;

/** The microphone that the system has chosen, through the Java platform. */
final class JavaSound {
    static final String NONE = "There is no microphone; plug one in, or choose one in the system's sound settings.";
    static final String BUSY =
            "The microphone is in use by another program; close that, then choose the microphone again.";
    static final String FORBIDDEN = "The system does not let Crowdline use the microphone; allow it in the system's"
            + " privacy settings, then choose the microphone again.";

    /** In the order they are tried: enough for speech first, then what devices always have. */
    private static final List<Integer> RATES_HZ = List.of(16_000, 44_100, 48_000, 22_050, 32_000, 8000);

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
    static final class NoSoundException extends Exception {
        NoSoundException(String sentence, @Nullable Throwable cause) {
            super(sentence, cause);
        }
    }

    JavaSound() {
        this(AudioSystem::getTargetDataLine);
    }

    JavaSound(Lines lines) {
        this.lines = lines;
    }

    /** Why there is no microphone to choose, if there is none; may take a while. */
    Optional<String> whyNone() {
        for (int rateHz : RATES_HZ) {
            try {
                lines.find(format(rateHz));
                return Optional.empty();
            } catch (LineUnavailableException e) {
                return Optional.empty(); // there, but busy: said when it is chosen
            } catch (IllegalArgumentException e) {
                // no device takes sound so: the next rate
            } catch (SecurityException e) {
                return Optional.of(FORBIDDEN);
            }
        }
        return Optional.of(NONE);
    }

    /** Opens the microphone at the first rate that it takes. */
    SoundSource open() throws NoSoundException {
        NoSoundException why = new NoSoundException(NONE, null);
        for (int rateHz : RATES_HZ) {
            AudioFormat format = format(rateHz);
            try {
                TargetDataLine line = lines.find(format);
                line.open(format, bytesABlock(rateHz) * KEPT_BLOCKS);
                line.start();
                return new Line(line, rateHz);
            } catch (LineUnavailableException e) {
                why = new NoSoundException(BUSY, e);
            } catch (IllegalArgumentException e) {
                // no device takes sound so: the next rate
            } catch (SecurityException e) {
                throw new NoSoundException(FORBIDDEN, e);
            }
        }
        throw why;
    }

    private static AudioFormat format(int rateHz) {
        return new AudioFormat(rateHz, BITS, 1, true, false);
    }

    private static int bytesABlock(int rateHz) {
        return rateHz / BLOCKS_A_SECOND * (BITS / Byte.SIZE);
    }

    /** Never waits in the line: one whose device is gone may never answer. */
    private record Line(TargetDataLine line, int rateHz) implements SoundSource {
        @Override
        public int read(byte[] into) {
            if (!line.isOpen()) {
                return -1;
            }
            int there = Math.min(into.length, line.available());
            int whole = there - there % (BITS / Byte.SIZE);
            if (whole == 0) {
                return 0;
            }
            int read = line.read(into, 0, whole);
            return read == 0 ? -1 : read;
        }

        @Override
        public void close() {
            line.stop();
            line.close();
        }
    }
}
