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

    private static final ButtonStatus READY = new ButtonStatus(ButtonStatus.State.READY, "buttons ready");
    private static final ButtonStatus LISTENING_FIRST =
            new ButtonStatus(ButtonStatus.State.LOOKING, "listening for a moment, in case it is a receiver");

    private final LinkOpener opener;
    private final LongSupplier nanos;
    private final Consumer<HeardSignal> heard;
    private final byte[] buffer = new byte[64];
    private final Map<ControlLine, Boolean> lines = new EnumMap<>(ControlLine.class);
    private @Nullable Link link;
    private FootFilter filter = new FootFilter(0);
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
            filter = new FootFilter(nowS());
            status = LISTENING_FIRST;
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
        double nowS = nowS();
        for (int i = 0; i < count; i++) {
            filter.hear(buffer[i] & 0xFF, nowS);
        }
        filter.let(nowS).forEach(heard);
        tell(nowS);
        for (ControlLine line : ControlLine.values()) {
            boolean on = open.isOn(line);
            if (!Boolean.valueOf(on).equals(lines.put(line, on))) {
                heard.accept(new HeardSignal(new ButtonSignal.Turned(line, on), nowS));
            }
        }
        return 0;
    }

    private void tell(double nowS) {
        ButtonStatus now = filter.isStream(nowS)
                ? new ButtonStatus(
                        ButtonStatus.State.SENDING,
                        opener.name()
                                + " never stops sending, so it is a receiver, not a pedal; choose another port with"
                                + " Ctrl+B")
                : filter.isListeningFirst(nowS) ? LISTENING_FIRST : READY;
        if (!now.equals(status)) {
            status = now;
        }
    }

    private double nowS() {
        return nanos.getAsLong() / 1e9;
    }
}
