package crowdline.sight.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import crowdline.sight.picture.Track;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** That a sketch shows what the catalogue says of its figure. */
class SketchesTest {
    /** How large aircraft are drawn here, metres. */
    private static final double SPAN_M = 20;

    static List<String> names() {
        return Sketches.names().stream().sorted().toList();
    }

    private static Flown sketch(String name) {
        return Sketches.of(name).orElseThrow();
    }

    /** All that fly, as drawn. */
    private static List<Flown> all(Flown flown) {
        List<Flown> all = new ArrayList<>(List.of(flown));
        flown.company().others().forEach(track -> all.add(track.drawn(SPAN_M)));
        return all;
    }

    /** The furthest from the leader at a share of the time, metres. */
    private static double spread(Flown flown, double share) {
        double atS = flown.fromS() + share * (flown.toS() - flown.fromS());
        Vec leader = flown.at(atS).place();
        return all(flown).stream()
                .mapToDouble(one -> one.at(atS).place().minus(leader).length())
                .max()
                .orElseThrow();
    }

    /** "The pilot pulls out of a dive until the aeroplane flies level again." */
    @Test
    void aPullOutComesDownFromADiveAndEndsLevel() {
        Flown pullOut = sketch("level out");
        Pose first = pullOut.at(pullOut.fromS());
        Pose last = pullOut.at(pullOut.toS());

        assertThat(first.nose().z()).isLessThan(-0.4);
        assertThat(first.place().z() - last.place().z()).isGreaterThan(100);
        assertThat(last.nose().z()).isCloseTo(0, within(0.02));
    }

    @Test
    void everyFigureThatIsNotComputedIsSketchedAndNoOther() {
        assertThat(CatalogueFile.shipped().entries())
                .allSatisfy(entry -> assertThat(Sketches.of(entry.name()).isPresent())
                        .as(entry.name())
                        .isEqualTo(entry.elements().isEmpty()));
        assertThat(names()).allMatch(name -> CatalogueFile.shipped().find(name).isPresent());
    }

    @ParameterizedTest
    @MethodSource("names")
    void itMovesSmoothlyAboveTheGroundAndSaysThatItIsSketched(String name) {
        Flown flown = sketch(name);
        assertThat(flown.company().sketched()).isTrue();
        assertThat(flown.captions()).isNotEmpty().allMatch(c -> c.atS() >= flown.fromS() && c.atS() <= flown.toS());
        for (Flown one : all(flown)) {
            for (int i = 0; i < one.poses().size(); i++) {
                Pose pose = one.poses().get(i);
                assertThat(pose.nose().length()).isCloseTo(1, within(1e-9));
                assertThat(pose.up().length()).isCloseTo(1, within(1e-9));
                assertThat(pose.nose().dot(pose.up())).isCloseTo(0, within(1e-9));
                assertThat(pose.place().z()).isPositive();
                if (i > 0) {
                    Pose before = one.poses().get(i - 1);
                    assertThat(pose.tS() - before.tS()).isBetween(1e-9, 0.15);
                    assertThat(pose.place().minus(before.place()).length()).isLessThan(15);
                    assertThat(pose.nose().dot(before.nose())).isGreaterThan(0.9);
                    assertThat(pose.up().dot(before.up())).isGreaterThan(0.9);
                }
            }
        }
    }

    @Test
    void theyComeTogetherInAJoinUpAndGoApartInABreakABurstAndASplit() {
        assertThat(spread(sketch("join-up"), 0)).isGreaterThan(3 * spread(sketch("join-up"), 1));
        for (String apart : List.of("break", "bomb burst", "synchro split")) {
            assertThat(spread(sketch(apart), 1)).as(apart).isGreaterThan(3 * spread(sketch(apart), 0));
        }
    }

    @Test
    void burstGoesEveryWayAndABreakBothWaysAndASplitLeavesThree() {
        List<Vec> noses = all(sketch("bomb burst")).stream()
                .map(one -> one.at(one.toS()).nose())
                .toList();
        assertThat(noses)
                .hasSize(5)
                .anyMatch(n -> n.x() < -0.9)
                .anyMatch(n -> n.x() > 0.9)
                .anyMatch(n -> n.z() > 0.99);
        assertThat(all(sketch("break")))
                .anyMatch(one -> one.at(6.5).nose().y() > 0.3)
                .anyMatch(one -> one.at(6.5).nose().y() < -0.3);
        assertThat(all(sketch("synchro split")).stream()
                        .filter(one -> one.at(one.toS()).nose().x() > 0.99))
                .hasSize(3);
    }

    @Test
    void shapeChangesAndTheyStayTogether() {
        List<Track> others = sketch("changing shape").company().others();
        assertThat(others).hasSize(4).allSatisfy(track -> {
            Vec first = track.slots().get(0);
            Vec last = track.slots().get(track.slots().size() - 1);
            assertThat(last.minus(first).length()).isGreaterThan(0.4);
            assertThat(Math.abs(last.y())).isLessThan(1e-9);
        });
    }

    @Test
    void ofTwoThatMeetEachFliesTheOthersWayAndOfTwoInAMirrorOneIsOnItsBack() {
        Flown along = new Flown(new Steered(new Vec(-100, 0, 100), 50).on(4).poses(), List.of());
        Flown meeting = Sketches.inCompany("opposition pass", along);
        assertThat(all(meeting)).hasSize(2);
        assertThat(all(meeting).get(1).at(1).nose().x()).isCloseTo(-1, within(1e-9));
        assertThat(all(meeting).get(1).at(2).place().x()).isCloseTo(0, within(1e-6));
        Flown mirror = Sketches.inCompany("mirror pass", along);
        assertThat(all(mirror).get(1).at(1).up().z()).isCloseTo(-1, within(1e-9));
        assertThat(all(mirror).get(1).at(1).place().z())
                .isGreaterThan(all(mirror).get(0).at(1).place().z() + 10);
        assertThat(all(Sketches.inCompany("formation loop", along))).hasSize(5);
        assertThat(Sketches.inCompany("loop", along)).isEqualTo(along);
    }

    @Test
    void helicoptersDoWhatTheirNamesSay() {
        assertThat(sketch("hover").reach().size().length()).isLessThan(2);
        assertThat(sketch("pedal turn").reach().size().length()).isLessThan(1e-6);
        assertThat(sketch("pedal turn").at(5).nose().x()).isCloseTo(-1, within(1e-6));
        assertThat(sketch("bow").at(4.5).nose().z()).isLessThan(-0.5);
        for (String backwards : List.of("backwards flight", "sideways flight")) {
            Flown flown = sketch(backwards);
            Vec way = flown.at(5.1).place().minus(flown.at(5).place()).unit();
            assertThat(way.dot(flown.at(5).nose())).as(backwards).isLessThan(0.1);
        }
        Flown stop = sketch("quick stop");
        assertThat(speed(stop, 1)).isGreaterThan(25);
        assertThat(speed(stop, 9)).isLessThan(2);
        Flown circle = sketch("nose-in circle");
        Vec middle = new Vec(0, 60, 25);
        for (double s = 0; s <= 16; s += 0.5) {
            Vec in = middle.minus(circle.at(s).place()).unit();
            assertThat(in.dot(circle.at(s).nose())).isGreaterThan(0.98);
        }
        assertThat(sketch("spiral climb").reach().size().x()).isLessThan(1e-6);
        assertThat(sketch("helicopter turn-back").at(13).nose().x()).isLessThan(-0.9);
    }

    private static double speed(Flown flown, double atS) {
        return flown.at(atS + 0.1).place().minus(flown.at(atS).place()).length() / 0.1;
    }
}
