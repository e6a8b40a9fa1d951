package crowdline.app.sound;

import java.io.ByteArrayInputStream;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioFormat.Encoding;
import javax.sound.sampled.Control;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineListener;
import javax.sound.sampled.TargetDataLine;

/** A line that gives a sound as fast as it is asked, and then does as a device may. */
final class FakeLine implements TargetDataLine {
    /** What becomes of it when the sound is over. */
    enum End {
        /** It is no longer open. */
        UNPLUGGED,
        /** It stays open and gives nothing more. */
        STALLED,
        /** It throws. */
        BROKEN
    }

    private final ByteArrayInputStream sound;
    private final End end;
    private final CountDownLatch opened = new CountDownLatch(1);
    private final CountDownLatch released = new CountDownLatch(1);
    private volatile AudioFormat format = new AudioFormat(Encoding.PCM_SIGNED, 8000, 16, 1, 2, 8000, false);

    FakeLine(byte[] pcm, End end) {
        sound = new ByteArrayInputStream(pcm);
        this.end = end;
    }

    boolean isOpenedWithinS(long seconds) throws InterruptedException {
        return opened.await(seconds, TimeUnit.SECONDS);
    }

    boolean isReleasedWithinS(long seconds) throws InterruptedException {
        return released.await(seconds, TimeUnit.SECONDS);
    }

    boolean isReleased() {
        return released.getCount() == 0;
    }

    @Override
    public void open(AudioFormat opening, int bufferSize) {
        format = opening;
        opened.countDown();
    }

    @Override
    public void open(AudioFormat opening) {
        open(opening, 0);
    }

    @Override
    public void open() {
        open(format, 0);
    }

    @Override
    public int read(byte[] into, int from, int length) {
        return Math.max(0, sound.read(into, from, length));
    }

    @Override
    public int available() {
        if (end == End.BROKEN && sound.available() == 0) {
            throw new IllegalStateException("the driver gave up");
        }
        return sound.available();
    }

    @Override
    public boolean isOpen() {
        return !isReleased() && (end != End.UNPLUGGED || sound.available() > 0);
    }

    @Override
    public void close() {
        released.countDown();
    }

    @Override
    public AudioFormat getFormat() {
        return format;
    }

    @Override
    public void start() {}

    @Override
    public void stop() {}

    @Override
    public void drain() {}

    @Override
    public void flush() {}

    @Override
    public boolean isRunning() {
        return isOpen();
    }

    @Override
    public boolean isActive() {
        return isOpen();
    }

    @Override
    public int getBufferSize() {
        return 0;
    }

    @Override
    public int getFramePosition() {
        return 0;
    }

    @Override
    public long getLongFramePosition() {
        return 0;
    }

    @Override
    public long getMicrosecondPosition() {
        return 0;
    }

    @Override
    public float getLevel() {
        return 0;
    }

    @Override
    public Line.Info getLineInfo() {
        return new DataLine.Info(TargetDataLine.class, format);
    }

    @Override
    public Control[] getControls() {
        return new Control[0];
    }

    @Override
    public boolean isControlSupported(Control.Type control) {
        return false;
    }

    @Override
    public Control getControl(Control.Type control) {
        throw new IllegalArgumentException("no " + control);
    }

    @Override
    public void addLineListener(LineListener listener) {}

    @Override
    public void removeLineListener(LineListener listener) {}
}
