package crowdline.loaded;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.function.IntSupplier;

/** Names for new passes: the moment, and four letters that two programs at the same moment will hardly share. */
public final class PassIds {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final int LETTERS = 0x10000;

    private final Clock clock;
    private final IntSupplier random;

    /** @param random any whole numbers */
    public PassIds(Clock clock, IntSupplier random) {
        this.clock = clock;
        this.random = random;
    }

    public Instant now() {
        return clock.instant();
    }

    public String next() {
        return MOMENT.format(now()) + String.format(Locale.ROOT, "-%04x", Math.floorMod(random.getAsInt(), LETTERS));
    }
}
