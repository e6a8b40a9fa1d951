package crowdline.console.walk;

import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Practice;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The remarks read aloud in a practice run, as the keys tell of them. Times are seconds of the act. */
final class ReadAloud {
    /** A remark can still be read this long after its time in the plan; later it counts as left out. A design choice. */
    private static final double STILL_S = 3;

    private final Plan plan;
    private final double fromS;
    private final List<Practice.Said> said = new ArrayList<>();
    private @Nullable Placed open;
    private double openSinceS;

    ReadAloud(Plan plan, double fromS) {
        this.plan = plan;
        this.fromS = fromS;
    }

    double fromS() {
        return fromS;
    }

    /** What is to be read now or next, or null at the end. */
    @Nullable
    Placed due(double atS) {
        return open != null
                ? open
                : plan.placed().stream()
                        .filter(p -> p.endS() + STILL_S > atS
                                && said.stream().noneMatch(s -> s.remarkId().equals(p.remarkId())))
                        .findFirst()
                        .orElse(null);
    }

    boolean speaking() {
        return open != null;
    }

    /** A remark begins, or the one that is being read ends. */
    void key(double atS) {
        Placed reading = open;
        if (reading != null) {
            said.add(new Practice.Said(reading.remarkId(), openSinceS, Math.max(openSinceS, atS)));
            open = null;
        } else {
            open = due(atS);
            openSinceS = atS;
        }
    }

    /** A remark has just ended; where its start was not marked, it began as long ago as it takes to say. */
    void ended(double atS) {
        Placed due = due(atS);
        if (open == null && due != null) {
            open = due;
            openSinceS = atS - (due.endS() - due.startS());
        }
        if (open != null) {
            key(atS);
        }
    }

    /** Everything read until now. */
    List<Practice.Said> said(double atS) {
        if (open != null) {
            key(atS);
        }
        return List.copyOf(said);
    }
}
