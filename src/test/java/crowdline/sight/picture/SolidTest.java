package crowdline.sight.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Facet.Tone;
import crowdline.sight.picture.Solid.Piece;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Which side of an aircraft is seen, by where it is and how it lies. */
class SolidTest {
    private static final Eye EYE = Eye.standing(300);
    private static final Vec RIGHT = new Vec(1, 0, 0);
    private static final Vec AWAY = new Vec(0, 1, 0);
    private static final Vec TOWARDS = new Vec(0, -1, 0);

    private static Pose at(Vec place, Vec nose, Vec up) {
        return new Pose(0, place, nose, up, 1);
    }

    /** How much of each tone is seen, square spans, whatever covers it. */
    private static Map<Tone, Double> areas(Outline outline, Pose pose) {
        Map<Tone, Double> areas = new EnumMap<>(Tone.class);
        for (Piece piece : Solids.of(outline).seen(EYE, pose)) {
            areas.merge(piece.tone(), area(piece.corners()), Double::sum);
        }
        return areas;
    }

    /** By the shoelace formula. */
    private static double area(List<Solid.Corner> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Solid.Corner a = corners.get(i);
            Solid.Corner b = corners.get((i + 1) % corners.size());
            twice += a.right() * b.up() - b.right() * a.up();
        }
        return Math.abs(twice) / 2;
    }

    private static double of(Map<Tone, Double> areas, Tone tone) {
        return areas.getOrDefault(tone, 0.0);
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"HELICOPTER", "CANOPY", "JUMPER"})
    void overheadTheUndersideIsSeenAndUpsideDownTheTop(Outline outline) {
        Vec high = new Vec(0, -150, 400);
        Map<Tone, Double> upright = areas(outline, at(high, RIGHT, Vec.UP));
        assertThat(of(upright, Tone.UNDERSIDE)).isGreaterThan(4 * of(upright, Tone.TOP));
        assertThat(of(upright, Tone.BAND)).isPositive();
        Map<Tone, Double> inverted = areas(outline, at(high, RIGHT, Vec.DOWN));
        assertThat(of(inverted, Tone.TOP)).isGreaterThan(4 * of(inverted, Tone.UNDERSIDE));
        assertThat(of(inverted, Tone.BAND)).isZero();
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"HELICOPTER", "CANOPY", "JUMPER"})
    void onItsSideWithTheWheelsToTheCrowdTheUndersideIsSeenAndElseTheTop(Outline outline) {
        Vec low = new Vec(0, 0, 60);
        Map<Tone, Double> wheels = areas(outline, at(low, RIGHT, AWAY));
        assertThat(of(wheels, Tone.UNDERSIDE)).isGreaterThan(4 * of(wheels, Tone.TOP));
        Map<Tone, Double> canopy = areas(outline, at(low, RIGHT, TOWARDS));
        assertThat(of(canopy, Tone.TOP)).isGreaterThan(4 * of(canopy, Tone.UNDERSIDE));
        assertThat(of(canopy, Tone.BAND)).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void isOneSpanAcross(Outline outline) {
        List<Piece> pieces = Solids.of(outline).seen(EYE, at(new Vec(0, 0, 1.6), TOWARDS, Vec.UP));
        double right = pieces.stream()
                .flatMap(p -> p.corners().stream())
                .mapToDouble(Solid.Corner::right)
                .max()
                .orElseThrow();
        double left = pieces.stream()
                .flatMap(p -> p.corners().stream())
                .mapToDouble(Solid.Corner::right)
                .min()
                .orElseThrow();
        assertThat(right - left).isCloseTo(1, within(1e-9));
        assertThat(right).isCloseTo(-left, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"HELICOPTER", "CANOPY", "JUMPER"})
    void whatIsNearerIsPaintedLater(Outline outline) {
        Solid solid = Solids.of(outline);
        // Towards the crowd the nose is nearer than the fin, and away from it further.
        assertThat(last(solid.seen(EYE, at(new Vec(0, 0, 30), TOWARDS, Vec.UP)), Tone.NOSE))
                .isGreaterThan(last(solid.seen(EYE, at(new Vec(0, 0, 30), TOWARDS, Vec.UP)), Tone.TAIL));
        assertThat(last(solid.seen(EYE, at(new Vec(0, 0, 30), AWAY, Vec.UP)), Tone.TAIL))
                .isGreaterThan(last(solid.seen(EYE, at(new Vec(0, 0, 30), AWAY, Vec.UP)), Tone.NOSE));
    }

    private static int last(List<Piece> pieces, Tone tone) {
        int last = -1;
        for (int i = 0; i < pieces.size(); i++) {
            last = pieces.get(i).tone() == tone ? i : last;
        }
        return last;
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"HELICOPTER", "CANOPY", "JUMPER"})
    void fromFarAlongTheLineItIsSeenFromItsEndAndNotFromItsSide(Outline outline) {
        // Far to the right and flying on to the right, it shows its tail and the whole of its wings.
        List<Piece> pieces = Solids.of(outline).seen(EYE, at(new Vec(30_000, 0, 1.6), RIGHT, Vec.UP));
        double wide = pieces.stream()
                .flatMap(p -> p.corners().stream())
                .mapToDouble(c -> Math.abs(c.right()))
                .max()
                .orElseThrow();
        assertThat(wide).isCloseTo(0.5, within(0.01));
        assertThat(last(pieces, Tone.TAIL)).isGreaterThan(last(pieces, Tone.NOSE));
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"HELICOPTER", "CANOPY", "JUMPER"})
    void straightOverheadItIsSeenFromBeneath(Outline outline) {
        Map<Tone, Double> areas = areas(outline, at(new Vec(0, -300, 400), RIGHT, Vec.UP));
        assertThat(of(areas, Tone.UNDERSIDE)).isGreaterThan(4 * of(areas, Tone.TOP));
        assertThat(areas.values()).allMatch(Double::isFinite);
    }
}
