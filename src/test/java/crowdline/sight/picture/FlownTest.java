package crowdline.sight.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.show.figure.MomentKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlownTest {
    private static final double RATE = Math.toRadians(90);
    /** A roll of a quarter turn each second while it flies to the right at 50 m/s, from second 20 to 24. */
    private static final Flown ROLL = rolling();

    private static Flown rolling() {
        List<Pose> poses = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            poses.add(exact(20 + i / 10.0));
        }
        return new Flown(
                poses,
                List.of(
                        new Caption(20, MomentKind.ROLLS, "begins"),
                        new Caption(21, MomentKind.ROLLS, "on its side"),
                        new Caption(22, MomentKind.ROLLS, "upside down")));
    }

    private static Pose exact(double tS) {
        double turn = RATE * (tS - 20);
        return new Pose(
                tS,
                new Vec(50 * (tS - 20), 3, 100),
                new Vec(1, 0, 0),
                new Vec(0, -Math.sin(turn), Math.cos(turn)),
                tS - 19);
    }

    @Test
    void betweenTwoPosesItIsTurnedByItsShare() {
        for (double tS = 20; tS <= 24; tS += 0.037) {
            Pose pose = ROLL.at(tS);
            Pose exact = exact(tS);
            assertThat(pose.place().minus(exact.place()).length()).isLessThan(1e-9);
            assertThat(pose.up().minus(exact.up()).length()).isLessThan(2e-4);
            assertThat(pose.up().length()).isCloseTo(1, within(1e-12));
            assertThat(pose.up().dot(pose.nose())).isCloseTo(0, within(1e-12));
            assertThat(pose.g()).isCloseTo(exact.g(), within(1e-9));
        }
    }

    @Test
    void beforeAndAfterItStaysWhereItIs() {
        assertThat(ROLL.at(-5)).isEqualTo(exact(20));
        assertThat(ROLL.at(99)).isEqualTo(exact(24));
    }

    @Test
    void rightWingFollowsNoseAndUp() {
        // To the right and upright the right wing is towards the crowd.
        assertThat(exact(20).right().minus(new Vec(0, -1, 0)).length()).isZero();
    }

    @Test
    void stretchHasItsEndsAndWhatIsBetween() {
        List<Pose> between = ROLL.between(20.25, 20.55);
        assertThat(between).extracting(Pose::tS).hasSize(5);
        assertThat(between.get(0).tS()).isCloseTo(20.25, within(1e-12));
        assertThat(between.get(1).tS()).isCloseTo(20.3, within(1e-12));
        assertThat(between.get(4).tS()).isCloseTo(20.55, within(1e-12));
    }

    @Test
    void momentsFollowOneAnother() {
        assertThat(ROLL.captionAt(19).words()).isEqualTo("begins");
        assertThat(ROLL.captionAt(21.5).words()).isEqualTo("on its side");
        assertThat(ROLL.nextS(20)).hasValue(21);
        assertThat(ROLL.nextS(21)).hasValue(22);
        assertThat(ROLL.nextS(22)).isEmpty();
        assertThat(ROLL.beforeS(22)).hasValue(21);
        assertThat(ROLL.beforeS(21.5)).hasValue(21);
        assertThat(ROLL.beforeS(20)).isEmpty();
    }

    @Test
    void reachIsTheBoxAroundItWhereverItIsMoved() {
        Flown.Reach reach = ROLL.movedBy(-100, 7, -90).reach();
        assertThat(reach.least()).isEqualTo(new Vec(-100, 10, 10));
        assertThat(reach.size()).isEqualTo(new Vec(200, 0, 0));
    }

    @Test
    void nothingFlownHasNoPose() {
        assertThat(Flown.NONE.isEmpty()).isTrue();
        assertThat(Flown.NONE.captionAt(3).words()).isEmpty();
        assertThatThrownBy(() -> Flown.NONE.at(0)).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void inAMirrorItFliesTheOtherWayAndItsCompanyWithIt() {
        Flown pair = ROLL.with(new Company(List.of(Track.keeping(ROLL.poses(), new Vec(-2, 1, 0.5))), null, true));
        Flown mirror = pair.mirrored();

        assertThat(mirror.at(22).place()).isEqualTo(new Vec(-100, 3, 100));
        assertThat(mirror.at(22).nose().x()).isEqualTo(-1);
        assertThat(mirror.at(20.5).up().y()).isCloseTo(ROLL.at(20.5).up().y(), within(1e-9));
        for (double tS : new double[] {20, 20.5, 23}) {
            Vec other = pair.company().others().get(0).drawn(10).at(tS).place();
            Vec seen = mirror.company().others().get(0).drawn(10).at(tS).place();
            assertThat(seen.x()).isCloseTo(-other.x(), within(1e-9));
            assertThat(seen.y()).isCloseTo(other.y(), within(1e-9));
            assertThat(seen.z()).isCloseTo(other.z(), within(1e-9));
        }
        assertThat(mirror.captions()).isEqualTo(ROLL.captions());
    }
}
