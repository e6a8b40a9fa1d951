package crowdline.telemetry.serial;

/** An open source of bytes. Not thread-safe. */
public interface Link {
    /**
     * Waits for bytes, but no longer than told where that is possible.
     *
     * @param waitMs milliseconds, 1 or more
     * @return how many bytes are now at the beginning of the buffer; 0 when none came; negative when the device is gone
     */
    int read(byte[] buffer, int waitMs);

    /** Whether a control line is on; false where there are none. */
    boolean isOn(ControlLine line);

    /** Releases the device. Does nothing the second time, or once the device is gone. */
    void close();
}
