package crowdline.telemetry.serial;

import crowdline.telemetry.Fix;
import crowdline.telemetry.ReceiverFeed;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** Opens a receiver's link, finds its speed, reads, and begins again when it is gone: step by step, without a thread. */
final class ReceiverSession implements ReaderThread.Steps {
    static final long RETRY_MS = 1000;
    /** One read waits this long at most, so that closing does not have to wait longer. */
    static final int READ_MS = 200;

    /** Positions are overdue after this many usual intervals, but not before {@link #SILENT_S}. Tuned. */
    private static final double SILENT_INTERVALS = 3;

    private static final double SILENT_S = 2;

    private final LinkOpener opener;
    private final LongSupplier nanos;
    private final Consumer<Fix> fixes;
    private final SpeedSearch search;
    private final FeedHealth health = new FeedHealth();
    private final byte[] buffer = new byte[4096];

    private @Nullable Link link;
    private ReceiverFeed feed = new ReceiverFeed();
    private ReceiverStatus.State state = ReceiverStatus.State.SEARCHING;
    private long withoutFixAtFix;
    private String trouble = "looking for it";
    private volatile Facts facts;

    /** What the status is made of; handed to other threads as one. */
    private record Facts(
            ReceiverStatus.State state,
            @Nullable Integer baud,
            @Nullable Long lastNs,
            double perS,
            double lostShare,
            double badShare,
            String trouble) {}

    /**
     * Makes a session that has not begun.
     *
     * @param nanos the machine's monotonic clock
     * @param fixes takes each position, in the reader's thread; must not block
     */
    ReceiverSession(LinkOpener opener, LongSupplier nanos, Consumer<Fix> fixes) {
        this.opener = opener;
        this.nanos = nanos;
        this.fixes = fixes;
        search = new SpeedSearch(opener.speedsBaud());
        facts = new Facts(state, null, null, 0, 0, 0, trouble);
    }

    @Override
    public long step() {
        Link open = link;
        long waitMs = open == null ? open() : read(open);
        publish();
        return waitMs;
    }

    @Override
    public void release() {
        drop();
        if (state != ReceiverStatus.State.ENDED) {
            turn(ReceiverStatus.State.CLOSED, "closed");
        }
        publish();
    }

    private long open() {
        try {
            link = opener.open(search.baud());
        } catch (LinkException e) {
            String message = String.valueOf(e.getMessage());
            turn(e.isLasting() ? ReceiverStatus.State.ENDED : ReceiverStatus.State.REFUSED, message);
            return e.isLasting() ? -1 : RETRY_MS;
        }
        long nowNs = nanos.getAsLong();
        feed = new ReceiverFeed();
        withoutFixAtFix = 0;
        health.restart(nowNs);
        search.begin(nowNs);
        turn(ReceiverStatus.State.SEARCHING, "listening");
        return 0;
    }

    private long read(Link open) {
        int count = open.read(buffer, READ_MS);
        long nowNs = nanos.getAsLong();
        if (count < 0) {
            feed.finish().forEach(fix -> give(nowNs, fix));
            drop();
            turn(ReceiverStatus.State.GONE, "gone, looking for it again");
            return opener.speedsBaud().isEmpty() ? 0 : RETRY_MS;
        }
        List<Fix> read = feed.accept(buffer, count);
        read.forEach(fix -> give(nowNs, fix));
        ReceiverFeed.Counts counts = feed.counts();
        if (!read.isEmpty()) {
            withoutFixAtFix = counts.withoutFix() + counts.guessed();
        }
        health.sentences(nowNs, counts);
        if (search.moveOn(nowNs, count, counts.good())) {
            drop();
            turn(ReceiverStatus.State.SEARCHING, searching());
            return 0;
        }
        judge(counts);
        return 0;
    }

    private void judge(ReceiverFeed.Counts counts) {
        if (!search.isFound()) {
            turn(ReceiverStatus.State.SEARCHING, searching());
        } else if (counts.fixes() > 0) {
            boolean lost = counts.withoutFix() + counts.guessed() > withoutFixAtFix;
            turn(ReceiverStatus.State.RECEIVING, lost ? "lost its position" : "last position");
        } else if (counts.withoutHeight() > 0) {
            turn(ReceiverStatus.State.NO_FIX, "sends no heights; switch on its GGA sentences");
        } else if (counts.withoutFix() > 0) {
            turn(ReceiverStatus.State.NO_FIX, "has no position yet");
        } else {
            turn(ReceiverStatus.State.NO_FIX, "sends no positions; switch on its GGA and RMC sentences");
        }
    }

    private String searching() {
        return String.format(Locale.ROOT, "listening at %,d baud", search.baud())
                + (search.hearsBytes() ? ", nothing readable yet" : ", nothing heard yet");
    }

    private void give(long nowNs, Fix fix) {
        health.reading(nowNs, fix.tS());
        fixes.accept(fix);
    }

    private void turn(ReceiverStatus.State next, String words) {
        state = next;
        trouble = words;
    }

    private void drop() {
        Link open = link;
        link = null;
        if (open != null) {
            open.close();
        }
    }

    private void publish() {
        long nowNs = nanos.getAsLong();
        Integer baud = search.isFound() && search.baud() > 0 ? (Integer) search.baud() : null;
        facts = new Facts(
                state, baud, health.lastNs(), health.perS(nowNs), health.lostShare(), health.badShare(), trouble);
    }

    /** How it stands now; from any thread. */
    ReceiverStatus status() {
        Facts now = facts;
        Long lastNs = now.lastNs();
        Double ageS = lastNs == null ? null : (Double) Math.max(0, (nanos.getAsLong() - lastNs) / 1e9);
        ReceiverStatus.State shown = now.state();
        String text = now.trouble();
        if (shown == ReceiverStatus.State.RECEIVING && ageS != null) {
            double overdueS = Math.max(SILENT_S, now.perS() > 0 ? SILENT_INTERVALS / now.perS() : 0);
            if (ageS > overdueS) {
                shown = ReceiverStatus.State.SILENT;
                text += " " + Math.round(ageS) + " s ago";
            } else {
                text = ReceiverStatus.rates(now.perS(), ageS, now.lostShare(), now.badShare());
            }
        }
        return new ReceiverStatus(
                shown, opener.name(), now.baud(), ageS, now.perS(), now.lostShare(), now.badShare(), text);
    }
}
