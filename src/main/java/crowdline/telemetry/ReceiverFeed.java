package crowdline.telemetry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * From the bytes of a receiver to its positions: NMEA 0183, GGA with RMC or VTG, any talker. Bytes may be cut anywhere
 * and mixed with anything. Not thread-safe.
 */
public final class ReceiverFeed {
    private final Framer framer = new Framer();
    private final List<Fix> ready = new ArrayList<>();
    private final FixJoin join = new FixJoin(ready::add);
    private final BiConsumer<Integer, String> refusals;
    private long good;
    private long bad;
    private long fixes;

    /**
     * What came in since the feed was made.
     *
     * @param good sentences that were whole, of whatever kind
     * @param bad sentences that were damaged
     * @param fixes positions given
     * @param withoutFix instants for which the receiver said that it had no position
     * @param withoutHeight instants with a position but no height, as of a receiver that sends no GGA
     * @param guessed instants whose position the receiver carried on or was told, and which are not given
     * @param notForward instants that did not lie after the one before
     */
    public record Counts(
            long good, long bad, long fixes, long withoutFix, long withoutHeight, long guessed, long notForward) {}

    public ReceiverFeed() {
        this((line, reason) -> {});
    }

    /** @param refusals told the line, from 1, and why each damaged sentence is not used */
    ReceiverFeed(BiConsumer<Integer, String> refusals) {
        this.refusals = refusals;
    }

    /**
     * Takes the first {@code length} bytes.
     *
     * @return the positions they complete, mostly none
     */
    public List<Fix> accept(byte[] bytes, int length) {
        for (int i = 0; i < length; i++) {
            Optional<Frame> frame = framer.accept(bytes[i]);
            if (frame.isPresent()) {
                decode(frame.get());
            }
        }
        return taken();
    }

    /** No more bytes come: gives the position that waits for more sentences, if one does. */
    public List<Fix> finish() {
        Optional<Frame> rest = framer.finish();
        rest.ifPresent(this::decode);
        join.finish();
        return taken();
    }

    public Counts counts() {
        return new Counts(good, bad, fixes, join.withoutFix(), join.withoutHeight(), join.guessed(), join.notForward());
    }

    private void decode(Frame frame) {
        Sentence sentence = NmeaDecoder.decode(frame);
        if (sentence instanceof Sentence.Refused refused) {
            bad++;
            refusals.accept(frame.line(), refused.reason());
        } else {
            good++;
            join.accept(sentence);
        }
    }

    private List<Fix> taken() {
        if (ready.isEmpty()) {
            return List.of();
        }
        List<Fix> taken = List.copyOf(ready);
        ready.clear();
        fixes += taken.size();
        return taken;
    }
}
