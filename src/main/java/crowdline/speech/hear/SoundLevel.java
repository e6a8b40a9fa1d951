package crowdline.speech.hear;

/**
 * How loud a hundredth of a second of sound is, in decibels against the loudest that 16 bits hold.
 *
 * @param voiceDb in the band of the voice, {@link SoundLevels#SILENT_DB} to about 0
 * @param hissDb in the band of s and f, likewise
 * @param peak the greatest sample, 0 to 1, as it came from the microphone
 */
public record SoundLevel(double voiceDb, double hissDb, double peak) {
    /** Length of one, seconds. */
    public static final double FRAME_S = 0.01;

    public SoundLevel {
        if (!Double.isFinite(voiceDb) || !Double.isFinite(hissDb) || !(peak >= 0 && peak <= 1)) {
            throw new IllegalArgumentException("a sound level of " + voiceDb + " and " + hissDb + " dB with peak "
                    + peak + "; levels must be numbers, and the peak 0 to 1");
        }
    }
}
