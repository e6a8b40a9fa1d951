package crowdline.speech.hear;

import java.math.BigInteger;
import java.util.Random;

/** Makes sounds whose edges are known. Everything is seeded. */
public final class Sounds {
    /** Samples a second. */
    public final int rateHz;

    private final Random random;
    private final double[] samples;

    /** @param seconds how long, silent so far */
    public Sounds(int rateHz, double seconds, long seed) {
        this.rateHz = rateHz;
        random = new Random(seed);
        samples = new double[at(seconds)];
    }

    private int at(double s) {
        return (int) Math.round(s * rateHz);
    }

    /** An engine on a windy field: low rumble, harmonics of 70 Hz, and hiss, with this RMS of all of it. */
    public Sounds field(double rms) {
        return field(rms, rms, 0, samples.length / (double) rateHz);
    }

    /** The same, growing or falling by equal steps in decibels. */
    public Sounds field(double rmsFirst, double rmsLast, double fromS, double toS) {
        double rumble = 0;
        int from = at(fromS);
        int to = at(toS);
        double[] engine = humming(70, 12, 1);
        for (int i = from; i < to; i++) {
            rumble = 0.98 * rumble + 0.2 * random.nextGaussian();
            double rms = rmsFirst * Math.pow(rmsLast / rmsFirst, (double) (i - from) / (to - from));
            samples[i] += rms * (0.6 * rumble + 0.5 * engine[i % engine.length] + 0.35 * random.nextGaussian()) / 0.88;
        }
        return this;
    }

    /** Noise of equal power at all frequencies. */
    public Sounds white(double rms, double fromS, double toS) {
        for (int i = at(fromS); i < at(toS); i++) {
            samples[i] += rms * random.nextGaussian();
        }
        return this;
    }

    /** A tone of 1000 Hz that does not waver. */
    public Sounds tone(double rms, double fromS, double toS) {
        for (int i = at(fromS); i < at(toS); i++) {
            samples[i] += rms * Math.sqrt(2) * Math.sin(2 * Math.PI * 1000 * i / rateHz);
        }
        return this;
    }

    /** Five syllables a second of a voice at 120 Hz, begun and ended within a hundredth of a second. */
    public Sounds voiced(double rms, double fromS, double toS) {
        double[] voice = humming(120, 25, 0.5);
        for (int i = at(fromS); i < at(toS); i++) {
            samples[i] += rms * syllables(i, fromS, toS) * voice[i % voice.length] / 0.95;
        }
        return this;
    }

    /** Harmonics of a tone that fall off with a power of their number, until they come round to a sample again. */
    private double[] humming(int hz, int harmonics, double falling) {
        int lengthHz = BigInteger.valueOf(hz).gcd(BigInteger.valueOf(rateHz)).intValue();
        double[] round = new double[rateHz / lengthHz];
        for (int i = 0; i < round.length; i++) {
            for (int h = 1; h <= harmonics; h++) {
                round[i] += Math.sin(2 * Math.PI * hz * h * i / rateHz + h * h) / Math.pow(h, falling);
            }
        }
        return round;
    }

    /** The same rhythm in noise, as whispered. */
    public Sounds whispered(double rms, double fromS, double toS) {
        for (int i = at(fromS); i < at(toS); i++) {
            samples[i] += rms * syllables(i, fromS, toS) * 1.45 * random.nextGaussian();
        }
        return this;
    }

    private double syllables(int i, double fromS, double toS) {
        double s = (double) i / rateHz;
        double edge = Math.min(1, Math.min(s - fromS, toS - s) / 0.01);
        return edge * (0.15 + 0.85 * Math.abs(Math.cos(Math.PI * 2.5 * (s - fromS))));
    }

    /** A click: a few milliseconds, as loud as it gets. */
    public Sounds click(double atS) {
        for (int i = 0; i < at(0.004); i++) {
            samples[at(atS) + i] += i % 2 == 0 ? 0.9 : -0.9;
        }
        return this;
    }

    /** A finger on the microphone: a thud of 90 Hz that dies away within a tenth of a second. */
    public Sounds knock(double atS) {
        for (int i = 0; i < at(0.1); i++) {
            double s = (double) i / rateHz;
            samples[at(atS) + i] += 0.9 * Math.exp(-s / 0.02) * Math.sin(2 * Math.PI * 90 * s)
                    + (s < 0.005 ? 0.3 * random.nextGaussian() : 0);
        }
        return this;
    }

    /** A cough: noise that dies away within a third of a second. */
    public Sounds cough(double atS) {
        for (int i = 0; i < at(0.33); i++) {
            samples[at(atS) + i] += 0.4 * Math.exp(-3.0 * i / at(0.33)) * random.nextGaussian();
        }
        return this;
    }

    /** A recording from its own beginning on. */
    public Sounds recording(double[] recorded, double fromS, double gain) {
        for (int i = 0; i < recorded.length; i++) {
            samples[at(fromS) + i] += gain * recorded[i];
        }
        return this;
    }

    /** As a microphone gives it: 16 bits, low byte first, cut off where it is too loud. */
    public byte[] pcm() {
        byte[] pcm = new byte[2 * samples.length];
        for (int i = 0; i < samples.length; i++) {
            int value = (int) Math.round(Math.max(-32768, Math.min(32767, samples[i] * 32768)));
            pcm[2 * i] = (byte) value;
            pcm[2 * i + 1] = (byte) (value >> 8);
        }
        return pcm;
    }
}
