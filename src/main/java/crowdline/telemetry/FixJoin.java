package crowdline.telemetry;

import java.time.LocalTime;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Joins what a receiver says about one instant in several sentences: GGA has the height, RMC the date, speed and track,
 * VTG speed and track but no time. They belong together by their UTC time, in whatever order they come; VTG belongs to
 * the sentence with a time before it. A fix is given as soon as all sentences that this receiver sends are there, or
 * when the next instant begins.
 */
final class FixJoin {
    /** Instants a sentence that stayed away is still waited for. Tuned: the radio may lose a few in a row. */
    private static final int WAIT_INSTANTS = 5;

    private final ReceiverScale scale = new ReceiverScale();
    private final Consumer<Fix> fixes;

    private @Nullable LocalTime instant;
    private Sentence.@Nullable Gga gga;
    private Sentence.@Nullable Rmc rmc;
    private Sentence.@Nullable Vtg vtg;
    private boolean settled = true;

    private int instants;
    private int lastRmc;
    private int lastVtg;

    private long withoutFix;
    private long withoutHeight;
    private long guessed;
    private long notForward;

    FixJoin(Consumer<Fix> fixes) {
        this.fixes = fixes;
    }

    void accept(Sentence sentence) {
        if (sentence instanceof Sentence.Gga next) {
            turnTo(next.utc());
            gga = next;
        } else if (sentence instanceof Sentence.Rmc next) {
            turnTo(next.utc());
            rmc = next;
            lastRmc = instants;
        } else if (sentence instanceof Sentence.Vtg next) {
            lastVtg = instants;
            vtg = settled ? null : next;
        }
        if (!settled && isComplete()) {
            settle();
        }
    }

    /** No more sentences come. */
    void finish() {
        settle();
    }

    /** Instants for which the receiver says that it has no position. */
    long withoutFix() {
        return withoutFix;
    }

    /** Instants with a position but no height, as of a receiver that sends no GGA. */
    long withoutHeight() {
        return withoutHeight;
    }

    /** Instants whose position the receiver guessed: in a loop it carries on in a straight line. */
    long guessed() {
        return guessed;
    }

    /** Instants that did not lie after the one before. */
    long notForward() {
        return notForward;
    }

    private void turnTo(@Nullable LocalTime utc) {
        if (utc != null && utc.equals(instant)) {
            return;
        }
        settle();
        gga = null;
        rmc = null;
        vtg = null;
        instant = utc;
        settled = false;
        instants++;
    }

    private boolean isComplete() {
        return gga != null && (rmc != null || (!awaits(lastRmc) && (vtg != null || !awaits(lastVtg))));
    }

    private boolean awaits(int last) {
        return instants - last <= WAIT_INSTANTS;
    }

    private void settle() {
        if (settled) {
            return;
        }
        settled = true;
        Sentence.Gga high = gga;
        Sentence.Rmc fast = rmc;
        LocalTime utc = instant;
        boolean trusted = fast == null || fast.valid();
        if (utc == null || !trusted || (high != null && high.place() == null)) {
            withoutFix++;
        } else if (high == null) {
            withoutHeight++;
        } else {
            give(utc, high, fast);
        }
    }

    private void give(LocalTime utc, Sentence.Gga high, Sentence.@Nullable Rmc fast) {
        Sentence.Place place = high.place();
        FixQuality quality = high.quality();
        Double heightM = high.heightM();
        if (place == null || quality == null) {
            withoutFix++;
        } else if (heightM == null) {
            withoutHeight++;
        } else if (!quality.isMeasured() || (fast != null && fast.guessed())) {
            guessed++;
        } else {
            ReceiverScale.Moment at = scale.next(utc, fast == null ? null : fast.date());
            if (at == null) {
                notForward++;
                return;
            }
            fixes.accept(new Fix(
                    at.tS(),
                    at.utc(),
                    place.latDeg(),
                    place.lonDeg(),
                    heightM,
                    HeightKind.SEA_LEVEL,
                    speedMps(fast),
                    trackDeg(fast),
                    quality));
        }
    }

    private @Nullable Double speedMps(Sentence.@Nullable Rmc fast) {
        if (fast != null && fast.speedMps() != null) {
            return fast.speedMps();
        }
        return vtg == null ? null : vtg.speedMps();
    }

    private @Nullable Double trackDeg(Sentence.@Nullable Rmc fast) {
        if (fast != null && fast.trackDeg() != null) {
            return fast.trackDeg();
        }
        return vtg == null ? null : vtg.trackDeg();
    }
}
