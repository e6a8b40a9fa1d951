package crowdline.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crowdline.console.pace.Microphone.Listener;
import crowdline.console.pace.Microphone.Listening;
import crowdline.speech.Hearing;
import crowdline.speech.Sounds;
import java.io.ByteArrayInputStream;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** From a line of the platform to what the pace window is told; the device alone is not real. */
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

    /** A line that gives this sound as fast as it is asked and then is unplugged. */
    private static TargetDataLine line(byte[] pcm, AtomicBoolean closed) {
        ByteArrayInputStream sound = new ByteArrayInputStream(pcm);
        return (TargetDataLine) Proxy.newProxyInstance(
                MicrophoneTest.class.getClassLoader(), new Class<?>[] {TargetDataLine.class}, (self, method, args) -> {
                    return switch (method.getName()) {
                        case "isOpen" -> sound.available() > 0;
                        case "available" -> sound.available();
                        case "read" -> sound.read((byte[]) args[0], (int) args[1], (int) args[2]);
                        case "close" -> {
                            closed.set(true);
                            yield null;
                        }
                        default -> null;
                    };
                });
    }

    private Object next() throws InterruptedException {
        return told.poll(LONGEST_WAIT_S, TimeUnit.SECONDS);
    }

    @ParameterizedTest
    @ValueSource(ints = {8000, 44_100, 48_000})
    void theFirstRateThatTheDeviceTakesIsUsedAndUnpluggingIsSaid(int rateHz) throws Exception {
        byte[] pcm = new Sounds(rateHz, 9, 1).field(0.01).voiced(0.1, 2, 4.5).pcm();
        AtomicBoolean closed = new AtomicBoolean();
        JavaSound sound = new JavaSound(format -> {
            if (format.getSampleRate() != rateHz) {
                throw new IllegalArgumentException("not at this rate");
            }
            return line(pcm, closed);
        });
        assertThat(sound.whyNone()).isEmpty();
        Listening listening = new MicrophoneDesk(sound::open, Runnable::run).listen(listener);
        assertThat((Double) next()).isCloseTo(2.5, within(0.05));
        assertThat(next()).isEqualTo(MicrophoneDesk.GONE);
        listening.close();
        assertThat(told).isEmpty();
    }

    @Test
    void noDeviceABusyOneAndAForbiddenOneAreEachSaidInASentence() throws Exception {
        JavaSound none = new JavaSound(format -> {
            throw new IllegalArgumentException("none");
        });
        assertThat(none.whyNone()).contains(JavaSound.NONE);
        new MicrophoneDesk(none::open, Runnable::run).listen(listener);
        assertThat(next()).isEqualTo(JavaSound.NONE);
        JavaSound busy = new JavaSound(format -> {
            throw new LineUnavailableException("busy");
        });
        assertThat(busy.whyNone()).isEmpty();
        new MicrophoneDesk(busy::open, Runnable::run).listen(listener);
        assertThat(next()).isEqualTo(JavaSound.BUSY);
        JavaSound forbidden = new JavaSound(format -> {
            throw new SecurityException("no");
        });
        assertThat(forbidden.whyNone()).contains(JavaSound.FORBIDDEN);
        new MicrophoneDesk(forbidden::open, Runnable::run).listen(listener);
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
            new MicrophoneDesk(
                            new JavaSound(format -> {
                                if (format.getSampleRate() != rateHz) {
                                    throw new IllegalArgumentException("not at this rate");
                                }
                                return line(pcm, new AtomicBoolean());
                            })::open,
                            Runnable::run)
                    .listen(listener);
            assertThat((Double) next()).as(remark).isCloseTo((last - first) / (double) rateHz, within(0.06));
            assertThat(next()).isEqualTo(MicrophoneDesk.GONE);
        }
    }

    private static boolean isThere(String program) {
        return Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }
}
