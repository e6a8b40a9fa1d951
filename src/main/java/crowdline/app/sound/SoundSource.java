package crowdline.app.sound;

/** Sound as it comes in: 16 bits, signed, low byte first, one channel. Not thread-safe. */
public interface SoundSource extends AutoCloseable {
    /** Samples a second. */
    int rateHz();

    /**
     * Reads what there is, without waiting.
     *
     * @return how many bytes; 0 if there is nothing yet; less than 0 if nothing will come any more
     */
    int read(byte[] into);

    /** Releases the device; may be called more than once. */
    @Override
    void close();
}
