package crowdline.app.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crowdline.ExpectsWarning;
import crowdline.app.sound.FakeLine.End;
import crowdline.app.window.PaceWindow;
import crowdline.console.pace.Microphone.Listener;
import crowdline.console.pace.Microphone.Listening;
import crowdline.speech.hear.Hearing;
import crowdline.speech.hear.Sounds;
import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From a line of the platform to what the pace window is told; the device alone is not real. */
@Tag("slow")
class MicrophoneTest {
    private static final long LONGEST_WAIT_S = 30;

    /** What the listener was told: how long a remark took, or why nothing more is heard. */
    private final BlockingQueue<Object> told = new LinkedBlockingQueue<>();

    private final Listener listener = new Listener() {
        @Override
        public void hears(List<Hearing> hearings) {
            hearings.stream().map(Hearing::utterance).filter(u -> u != null).forEach(u -> told.add(u.seconds()));
        }

        @Override
        public void lost(String why) {
            told.add(why);
        }
    };

    private Object next() throws InterruptedException {
        return told.poll(LONGEST_WAIT_S, TimeUnit.SECONDS);
    }

    private static JavaSound only(int rateHz, int channels, FakeLine line) {
        return new JavaSound(format -> {
            if (format.getSampleRate() != rateHz || format.getChannels() != channels) {
                throw new IllegalArgumentException("not in this format");
            }
            return line;
        });
    }

    /** Hears a device that has all its sound at once, so without waiting for more of it between reads. */
    private static MicrophoneListener listener(MicrophoneListener.WindowOpener opening) {
        return new MicrophoneListener(opening, Runnable::run, "the keys go on.", 1, 1000 * LONGEST_WAIT_S);
    }

    @ParameterizedTest
    @ValueSource(ints = {8000, 44_100, 48_000})
    void theFirstRateThatTheDeviceTakesIsUsedAndUnpluggingIsSaid(int rateHz) throws Exception {
        FakeLine line = new FakeLine(
                new Sounds(rateHz, 9, 1).field(0.01).voiced(0.1, 2, 4.5).pcm(), End.UNPLUGGED);
        JavaSound sound = only(rateHz, 1, line);
        assertThat(sound.whyNone()).isEmpty();
        Listening listening = listener(sound::open).listen(listener);
        assertThat((Double) next()).isCloseTo(2.5, within(0.05));
        assertThat(next()).isEqualTo("The microphone has gone; the keys go on.");
        assertThat(line.isReleasedWithinS(LONGEST_WAIT_S)).isTrue();
        listening.close();
        assertThat(told).isEmpty();
    }

    /** The voice stands on the left alone, as some headsets give it. */
    @Test
    void aDeviceOfTwoChannelsIsMixedDown() throws Exception {
        byte[] left = new Sounds(16_000, 9, 2).field(0.01).voiced(0.1, 2, 4.5).pcm();
        byte[] right = new Sounds(16_000, 9, 3).field(0.01).pcm();
        byte[] both = new byte[2 * left.length];
        for (int i = 0; i < left.length; i += 2) {
            System.arraycopy(left, i, both, 2 * i, 2);
            System.arraycopy(right, i, both, 2 * i + 2, 2);
        }
        JavaSound sound = only(16_000, 2, new FakeLine(both, End.UNPLUGGED));
        assertThat(sound.whyNone()).isEmpty();
        listener(sound::open).listen(listener);
        assertThat((Double) next()).isCloseTo(2.5, within(0.05));
        assertThat(next()).isEqualTo("The microphone has gone; the keys go on.");
    }

    /** (1000 + 3000) / 2, (-32768 - 32768) / 2, and (5 - 6) / 2, which is cut off towards 0. */
    @Test
    void twoChannelsBecomeTheirMean() {
        byte[] frames = {
            (byte) 0xe8,
            0x03,
            (byte) 0xb8,
            0x0b,
            0x00,
            (byte) 0x80,
            0x00,
            (byte) 0x80,
            0x05,
            0x00,
            (byte) 0xfa,
            (byte) 0xff,
            0x7f
        };
        SoundLine line = new SoundLine(new FakeLine(frames, End.STALLED), new AudioFormat(8000, 16, 2, true, false));
        byte[] into = new byte[64];
        assertThat(line.read(into)).isEqualTo(6);
        assertThat(Arrays.copyOf(into, 6))
                .containsExactly((byte) 0xd0, (byte) 0x07, (byte) 0x00, (byte) 0x80, (byte) 0x00, (byte) 0x00);
    }

    @Test
    void aDeviceThatStallsIsGoneAndLetGo() throws Exception {
        isGoneAndLetGo(End.STALLED);
    }

    @Test
    @ExpectsWarning("listening stopped")
    void aDeviceThatFailsIsGoneAndLetGo() throws Exception {
        isGoneAndLetGo(End.BROKEN);
    }

    private void isGoneAndLetGo(End end) throws Exception {
        FakeLine line = new FakeLine(new Sounds(16_000, 1, 1).field(0.01).pcm(), end);
        new MicrophoneListener(only(16_000, 1, line)::open, Runnable::run, "the keys go on.", 20, 100).listen(listener);
        assertThat(next()).isEqualTo("The microphone has gone; the keys go on.");
        assertThat(line.isReleasedWithinS(LONGEST_WAIT_S)).isTrue();
        assertThat(told).isEmpty();
    }

    @Test
    void aDeviceThatStallsForAMomentIsNotGoneAndWhoClosesIsToldNothing() throws Exception {
        FakeLine line = new FakeLine(new byte[0], End.STALLED);
        Listening listening =
                new MicrophoneListener(only(16_000, 1, line)::open, Runnable::run, "the keys go on.").listen(listener);
        assertThat(line.isOpenedWithinS(LONGEST_WAIT_S)).isTrue();
        assertThat(line.isReleased()).isFalse();
        listening.close();
        assertThat(line.isReleasedWithinS(LONGEST_WAIT_S)).isTrue();
        assertThat(told).isEmpty();
    }

    /** How the pace window is left: the remarks are learned from, M goes back to the key, Escape closes it. */
    @ParameterizedTest
    @ValueSource(strings = {"learned", "by key", "closed"})
    void everyWayOutOfThePaceWindowLetsTheLineGo(String way) throws Exception {
        FakeLine line = new FakeLine(new byte[0], End.STALLED);
        MicrophoneListener desk = new MicrophoneListener(
                only(16_000, 1, line)::open, what -> {}, "the keys go on.", 20, 1000 * LONGEST_WAIT_S);
        List<SpokenText> remarks = Stream.of("Here it comes.", "Look to the left.", "Listen to the engine now.")
                .map(new Spoken(Map.of())::expand)
                .toList();
        PaceWindow window = new PaceWindow(desk, remarks);
        window.begin();
        window.press(KeyEvent.VK_M);
        assertThat(line.isOpenedWithinS(LONGEST_WAIT_S)).isTrue();
        assertThat(line.isReleased()).isFalse();
        switch (way) {
            case "learned" -> {
                for (int i = 0; i < 2 * remarks.size(); i++) {
                    window.press(KeyEvent.VK_SPACE);
                }
                window.press(KeyEvent.VK_ENTER);
            }
            case "by key" -> window.press(KeyEvent.VK_M);
            default -> window.close();
        }
        assertThat(line.isReleasedWithinS(LONGEST_WAIT_S)).isTrue();
    }

    @Test
    void noDeviceABusyOneAndAForbiddenOneAreEachSaidInASentence() throws Exception {
        JavaSound none = new JavaSound(format -> {
            throw new IllegalArgumentException("none");
        });
        assertThat(none.whyNone()).contains(JavaSound.NONE);
        new MicrophoneListener(none::open, Runnable::run, "the keys go on.").listen(listener);
        assertThat(next()).isEqualTo(JavaSound.NONE);
        JavaSound busy = new JavaSound(format -> {
            throw new LineUnavailableException("busy");
        });
        assertThat(busy.whyNone()).isEmpty();
        new MicrophoneListener(busy::open, Runnable::run, "the keys go on.").listen(listener);
        assertThat(next()).isEqualTo(JavaSound.BUSY);
        JavaSound forbidden = new JavaSound(format -> {
            throw new SecurityException("no");
        });
        assertThat(forbidden.whyNone()).contains(JavaSound.FORBIDDEN);
        new MicrophoneListener(forbidden::open, Runnable::run, "the keys go on.").listen(listener);
        assertThat(next()).isEqualTo(JavaSound.FORBIDDEN);
    }

    /** The true edges are those of the clean recording: its first and last sample over a fiftieth of its peak. */
    @Test
    void remarksOfASynthesiserOverNoiseAreTimedAsTheirOwnSamplesSay(@TempDir Path folder) throws Exception {
        assumeTrue(isThere("espeak-ng"), "skipped: espeak-ng is not installed, so nobody speaks");
        List<String> remarks = List.of(
                "Here he comes, low from the left.",
                "Listen to the engine. It tells you when he pulls.",
                "He is upside down now, hanging in his straps, and he still has to steer.");
        for (String remark : remarks) {
            Path wav = folder.resolve("said.wav");
            new ProcessBuilder("espeak-ng", "-v", "en-gb", "-s", "150", "-w", wav.toString(), remark)
                    .start()
                    .waitFor();
            double[] said;
            int rateHz;
            try (AudioInputStream in = AudioSystem.getAudioInputStream(wav.toFile())) {
                rateHz = (int) in.getFormat().getSampleRate();
                byte[] bytes = in.readAllBytes();
                said = new double[bytes.length / 2];
                for (int i = 0; i < said.length; i++) {
                    said[i] = (short) ((bytes[2 * i] & 0xff) | (bytes[2 * i + 1] << 8)) / 32768.0;
                }
            }
            double peak = 0;
            for (double s : said) {
                peak = Math.max(peak, Math.abs(s));
            }
            int first = 0;
            int last = said.length - 1;
            while (Math.abs(said[first]) < peak / 50) {
                first++;
            }
            while (Math.abs(said[last]) < peak / 50) {
                last--;
            }
            byte[] pcm = new Sounds(rateHz, said.length / (double) rateHz + 5, 3)
                    .field(0.004)
                    .recording(said, 2, 0.5 / peak)
                    .pcm();
            FakeLine line = new FakeLine(pcm, End.UNPLUGGED);
            listener(only(rateHz, 1, line)::open).listen(listener);
            assertThat((Double) next()).as(remark).isCloseTo((last - first) / (double) rateHz, within(0.06));
            assertThat(next()).isEqualTo("The microphone has gone; the keys go on.");
        }
    }

    private static boolean isThere(String program) {
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }
}
