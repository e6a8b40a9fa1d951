package crowdline.speech.hear;

import java.util.ArrayList;
import java.util.List;

/**
 * Sound samples to levels, one each hundredth of a second, however the samples come in. Two bands are measured: 300 to
 * 3400 Hz, the telephone's (ITU-T G.712, from memory), which leaves out what wind and engines are loudest in, and above
 * 3000 Hz, where s and f are. Not thread-safe.
 */
public final class SoundLevels {
    /** The level of no sound at all, decibels. */
    public static final double SILENT_DB = -100;

    private static final int FRAMES_A_SECOND = 100;
    private static final int LEAST_RATE_HZ = 8000;
    private static final int MOST_RATE_HZ = 192_000;
    private static final double FULL_SCALE = 32_768;
    private static final double VOICE_FROM_HZ = 300;
    private static final double VOICE_TO_HZ = 3400;
    private static final double HISS_FROM_HZ = 3000;

    private final int rateHz;
    private final SecondOrderFilter voiceFrom;
    private final SecondOrderFilter voiceTo;
    private final SecondOrderFilter hissFrom;
    private final SecondOrderFilter hissAgain;
    private int lowByte = -1;
    private long frames;
    private long samples;
    private int inFrame;
    private double voicePower;
    private double hissPower;
    private double peak;

    /**
     * @param rateHz samples a second, 8000 to 192 000
     * @throws IllegalArgumentException for any other rate
     */
    public SoundLevels(int rateHz) {
        if (rateHz < LEAST_RATE_HZ || rateHz > MOST_RATE_HZ) {
            throw new IllegalArgumentException("sound comes at " + rateHz + " samples a second, allowed is "
                    + LEAST_RATE_HZ + " to " + MOST_RATE_HZ + "; choose another rate");
        }
        this.rateHz = rateHz;
        voiceFrom = SecondOrderFilter.highPass(VOICE_FROM_HZ, rateHz);
        voiceTo = SecondOrderFilter.lowPass(VOICE_TO_HZ, rateHz);
        hissFrom = SecondOrderFilter.highPass(HISS_FROM_HZ, rateHz);
        hissAgain = SecondOrderFilter.highPass(HISS_FROM_HZ, rateHz);
    }

    /**
     * Takes more sound; a sample may be cut in two between calls.
     *
     * @param pcm samples of 16 bits, signed, low byte first, one channel
     * @param length how many bytes of it count
     * @return the levels of the hundredths of a second that are complete by now
     */
    public List<SoundLevel> hear(byte[] pcm, int length) {
        List<SoundLevel> levels = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            if (lowByte < 0) {
                lowByte = pcm[i] & 0xff;
            } else {
                double sample = (short) ((pcm[i] << Byte.SIZE) | lowByte) / FULL_SCALE;
                lowByte = -1;
                add(sample, levels);
            }
        }
        return levels;
    }

    private void add(double sample, List<SoundLevel> levels) {
        double voice = voiceTo.next(voiceFrom.next(sample));
        double hiss = hissAgain.next(hissFrom.next(sample));
        voicePower += voice * voice;
        hissPower += hiss * hiss;
        peak = Math.max(peak, Math.abs(sample));
        samples++;
        inFrame++;
        if (samples * FRAMES_A_SECOND >= (frames + 1) * rateHz) {
            levels.add(new SoundLevel(decibels(voicePower / inFrame), decibels(hissPower / inFrame), peak));
            frames++;
            inFrame = 0;
            voicePower = 0;
            hissPower = 0;
            peak = 0;
        }
    }

    private static double decibels(double power) {
        return Math.max(SILENT_DB, 10 * Math.log10(Math.max(power, Double.MIN_NORMAL)));
    }
}
