package crowdline.telemetry.serial;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A port whose device speaks at one speed only; a read that hears nothing lets the time pass it may wait. */
final class FakePort implements LinkOpener {
    static final int ANY = 0;

    final List<Integer> opened = new ArrayList<>();
    final Set<ControlLine> on = EnumSet.noneOf(ControlLine.class);
    int open;
    int closes;

    @Nullable
    LinkException refusal;

    private final TestClock clock;
    private final List<Integer> speeds;
    private final int deviceBaud;
    private final Deque<byte[]> waiting = new ArrayDeque<>();
    private boolean unplugged;

    FakePort(TestClock clock, List<Integer> speeds, int deviceBaud) {
        this.clock = clock;
        this.speeds = speeds;
        this.deviceBaud = deviceBaud;
    }

    void send(String text) {
        waiting.add(text.getBytes(StandardCharsets.US_ASCII));
    }

    void unplug() {
        unplugged = true;
        waiting.clear();
    }

    void plug() {
        unplugged = false;
    }

    @Override
    public String name() {
        return "ttyFAKE0";
    }

    @Override
    public List<Integer> speedsBaud() {
        return speeds;
    }

    @Override
    public Link open(int baud) throws LinkException {
        if (refusal != null) {
            throw refusal;
        }
        if (unplugged) {
            throw new LinkException("ttyFAKE0 is not there; plug it in", false);
        }
        opened.add(baud);
        open++;
        return new FakeLink(baud);
    }

    private final class FakeLink implements Link {
        private final int baud;
        private boolean closed;

        FakeLink(int baud) {
            this.baud = baud;
        }

        @Override
        public int read(byte[] buffer, int waitMs) {
            if (unplugged || closed) {
                return -1;
            }
            byte[] bytes = waiting.poll();
            if (bytes == null) {
                clock.passMs(waitMs);
                return 0;
            }
            for (int i = 0; i < bytes.length; i++) {
                // At a wrong speed the same number of bytes arrives, and none is right.
                buffer[i] = deviceBaud == ANY || baud == deviceBaud ? bytes[i] : (byte) (bytes[i] ^ 0xA5);
            }
            return bytes.length;
        }

        @Override
        public boolean isOn(ControlLine line) {
            return on.contains(line);
        }

        @Override
        public void close() {
            if (!closed) {
                closed = true;
                closes++;
                open--;
            }
        }
    }
}
