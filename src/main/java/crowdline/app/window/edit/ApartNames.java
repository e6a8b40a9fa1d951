package crowdline.app.window.edit;

import java.time.Clock;

/** Names for what is edited and has no file, which no other window gives. Belongs to one thread. */
final class ApartNames {
    private final Clock wall;
    private int given;

    ApartNames(Clock wall) {
        this.wall = wall;
    }

    String next() {
        given++;
        return "new-" + Long.toHexString(wall.instant().toEpochMilli()) + "-"
                + ProcessHandle.current().pid() + "-" + given;
    }
}
