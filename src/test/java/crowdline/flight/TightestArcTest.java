package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** An arc flown as tightly as the wing allows gets what it asks for: it is no pull that falls short. */
class TightestArcTest {
    private static final Forces BIPLANE = Rig.seaLevel(Rig.biplane());
    /** Slow enough that the wing, not the load limit, sets how tight it is. */
    private static final Moment SLOW = Rig.level(30, 500);

    private static Look seen(ArcLeg leg) {
        Look look = new Look();
        leg.look(0, leg.start(), look);
        return look;
    }

    @Test
    void theTightestPullAsksForWhatTheWingGives() {
        Look look = seen(ArcLeg.tightest(BIPLANE, SLOW, Math.PI, 1, 6, 1));

        assertThat(look.g).isBetween(1.0, 2.5);
        assertThat(look.askedG).isEqualTo(look.g);
    }

    @Test
    void aPullByLoadBeyondTheWingStillFallsShort() {
        Look look = seen(ArcLeg.byLoad(BIPLANE, SLOW, Math.PI, 1, 6, 1));

        assertThat(look.askedG).isEqualTo(6);
        assertThat(look.g).isLessThan(2.5);
    }
}
