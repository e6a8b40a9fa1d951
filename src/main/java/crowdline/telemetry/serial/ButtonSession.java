package crowdline.telemetry.serial;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** Opens a port with buttons, hears bytes and lines, and begins again when it is gone: step by step, without a thread. */
final class ButtonSession implements ReaderThread.Steps {
    /** Lines are looked at this often; a foot holds a pedal for longer. */
    static final int LOOK_MS = 10;

    static final long RETRY_MS = 1000;

    private final LinkOpener opener;
    private final LongSupplier nanos;
    private final Consumer<HeardSignal> heard;
    private final byte[] buffer = new byte[64];
    private final Map<ControlLine, Boolean> lines = new EnumMap<>(ControlLine.class);
    private @Nullable Link link;
    private volatile ButtonStatus status = new ButtonStatus(ButtonStatus.State.LOOKING, "looking for the buttons");

    /**
     * Makes a session that has not begun.
     *
     * @param heard takes each signal, in the reader's thread; must not block
     */
    ButtonSession(LinkOpener opener, LongSupplier nanos, Consumer<HeardSignal> heard) {
        this.opener = opener;
        this.nanos = nanos;
        this.heard = heard;
    }

    @Override
    public long step() {
        Link open = link;
        return open == null ? open() : listen(open);
    }

    @Override
    public void release() {
        Link open = link;
        link = null;
        if (open != null) {
            open.close();
        }
    }

    /** How it stands; from any thread. */
    ButtonStatus status() {
        return status;
    }

    private long open() {
        try {
            Link open = opener.open(
                    opener.speedsBaud().isEmpty() ? 0 : opener.speedsBaud().get(0));
            link = open;
            for (ControlLine line : ControlLine.values()) {
                lines.put(line, open.isOn(line));
            }
            status = new ButtonStatus(ButtonStatus.State.READY, "buttons ready");
            return 0;
        } catch (LinkException e) {
            status = new ButtonStatus(ButtonStatus.State.GONE, String.valueOf(e.getMessage()));
            return e.isLasting() ? -1 : RETRY_MS;
        }
    }

    private long listen(Link open) {
        int count = open.read(buffer, LOOK_MS);
        if (count < 0) {
            release();
            status = new ButtonStatus(ButtonStatus.State.GONE, "buttons gone, looking for them again");
            return RETRY_MS;
        }
        double nowS = nanos.getAsLong() / 1e9;
        for (int i = 0; i < count; i++) {
            heard.accept(new HeardSignal(new ButtonSignal.Sent(buffer[i] & 0xFF), nowS));
        }
        for (ControlLine line : ControlLine.values()) {
            boolean on = open.isOn(line);
            if (!Boolean.valueOf(on).equals(lines.put(line, on))) {
                heard.accept(new HeardSignal(new ButtonSignal.Turned(line, on), nowS));
            }
        }
        return 0;
    }
}
