package crowdline.app.sound;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.TargetDataLine;

/**
 * A line of the platform, several channels mixed down to their mean. Never waits in the line: one whose device is gone may
 * never answer.
 */
final class SoundLine implements SoundSource {
    private static final int SAMPLE_BYTES = 2;
    private static final int LOW_BYTE = 0xff;

    private final TargetDataLine line;
    private final int rateHz;
    private final int channels;
    private byte[] frames = new byte[0];

    /** @param format of the line, already open: 16 bits, signed, low byte first */
    SoundLine(TargetDataLine line, AudioFormat format) {
        this.line = line;
        rateHz = (int) format.getSampleRate();
        channels = format.getChannels();
    }

    @Override
    public int rateHz() {
        return rateHz;
    }

    @Override
    public int read(byte[] into) {
        if (!line.isOpen()) {
            return -1;
        }
        int frameBytes = channels * SAMPLE_BYTES;
        int there = Math.min(into.length * channels, line.available());
        int whole = there - there % frameBytes;
        if (whole == 0) {
            return 0;
        }
        byte[] from = channels == 1 ? into : roomFor(whole);
        int read = line.read(from, 0, whole);
        if (read == 0) {
            return -1;
        }
        return channels == 1 ? read : mix(from, read / frameBytes, into);
    }

    private byte[] roomFor(int bytes) {
        if (frames.length < bytes) {
            frames = new byte[bytes];
        }
        return frames;
    }

    private int mix(byte[] from, int count, byte[] into) {
        int at = 0;
        for (int frame = 0; frame < count; frame++) {
            int sum = 0;
            for (int channel = 0; channel < channels; channel++) {
                sum += (short) ((from[at + 1] << Byte.SIZE) | (from[at] & LOW_BYTE));
                at += SAMPLE_BYTES;
            }
            int mean = sum / channels;
            into[SAMPLE_BYTES * frame] = (byte) mean;
            into[SAMPLE_BYTES * frame + 1] = (byte) (mean >> Byte.SIZE);
        }
        return count * SAMPLE_BYTES;
    }

    @Override
    public void close() {
        line.stop();
        line.close();
    }
}
