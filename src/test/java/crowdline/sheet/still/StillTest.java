package crowdline.sheet.still;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.Vec;
import crowdline.sheet.ink.Ink;
import crowdline.show.aircraft.Outline;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.FigureAlone;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StillTest {
    private static final double WIDE = 620;
    private static final double TALL = 400;
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final FigureAlone ALONE = new FigureAlone(CATALOGUE);

    private static Subject figure(String name) {
        return Subject.of(ALONE.fly(CATALOGUE.find(name).orElseThrow()).flown(), Outline.MONOPLANE);
    }

    private static Still still(Subject subject) {
        return Still.of(subject, 0, 0, WIDE, TALL);
    }

    private static List<Pose> standing(String name) {
        return still(figure(name)).standing().along();
    }

    private static Pose pose(double tS, double x, double z, double pitchDeg) {
        double pitch = Math.toRadians(pitchDeg);
        return new Pose(
                tS,
                new Vec(x, 0, z),
                new Vec(Math.cos(pitch), 0, Math.sin(pitch)),
                new Vec(-Math.sin(pitch), 0, Math.cos(pitch)),
                1);
    }

    @Test
    void inThePivotOfAStallTurnAircraftStandBesideEachOther() {
        List<Pose> turning = standing("stall turn").stream()
                .filter(p -> p.place().z() > 400 && Math.abs(p.nose().z()) < 0.9)
                .toList();
        assertThat(turning).as("half way between up and down").hasSizeGreaterThanOrEqualTo(2);
        assertThat(turning)
                .allSatisfy(p -> assertThat(p.nose().y()).as("swinging aside").isGreaterThan(0.4));
    }

    @Test
    void theWayDownOfAStallTurnIsDrawnBesideTheWayUpAndLeavesOnItsOwnSide() {
        Subject subject = figure("stall turn");
        double spanM = still(subject).place().spanM();
        Flown flown = subject.flown();
        Flown longer = Unfolding.of(flown, subject.eye(), spanM).flown();
        double halfS = 4;
        double lateS = 18;
        assertThat(flown.at(halfS).place().x() - flown.at(lateS).place().x())
                .as("as it is flown")
                .isCloseTo(0, within(1.0));
        assertThat(longer.at(halfS).place().x() - longer.at(lateS).place().x())
                .as("as it is drawn, and it leaves to the left")
                .isGreaterThan(1.4 * spanM);
    }

    @Test
    void inATailSlideItStandsAtItsHighestAndFallsToTheSideItsWheelsTell() {
        for (String name : List.of("tail slide", "tail slide wheels up")) {
            List<Pose> standing = standing(name);
            double highest = still(figure(name)).standing().subject().flown().poses().stream()
                    .mapToDouble(p -> p.place().z())
                    .max()
                    .orElseThrow();
            assertThat(standing).as(name).anySatisfy(p -> {
                assertThat(p.place().z()).isCloseTo(highest, within(2.0));
                assertThat(p.nose().z()).isGreaterThan(0.99);
            });
            double across = standing.stream()
                    .filter(p -> Math.abs(p.nose().z()) < 0.7 && p.place().z() > highest / 2)
                    .mapToDouble(p -> p.nose().x())
                    .findFirst()
                    .orElseThrow();
            assertThat(Math.signum(across)).as(name).isEqualTo(name.endsWith("up") ? -1 : 1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"spin", "inverted spin", "flat spin", "inverted flat spin", "lomcovak", "torque roll"})
    void whatTurnsOnTheSpotIsSeenFromSeveralSidesWhileItDoes(String name) {
        Still still = still(figure(name));
        List<Double> extraM = still.standing().extraM();
        List<Pose> poses = still.standing().subject().flown().poses();
        List<Pose> turning = still.standing().along().stream()
                .filter(p -> extraM.get(poses.indexOf(p)) > 0)
                .toList();
        assertThat(still.note()).isNotEmpty();
        assertThat(turning).hasSizeGreaterThanOrEqualTo(4);
        assertThat(turning.stream()
                        .map(p -> Math.signum(p.nose().x()) + "," + Math.signum(p.up().y()))
                        .distinct())
                .hasSizeGreaterThanOrEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"loop", "Cuban eight", "slow roll", "triple roll", "steep turn", "avalanche", "humpty bump"})
    void whatGoesFarEnoughKeepsItsShape(String name) {
        Subject subject = figure(name);
        assertThat(still(subject).note()).isEmpty();
        assertThat(still(subject).standing().subject().flown()).isEqualTo(subject.flown());
    }

    @Test
    void aTurnOnTheSpotTakesAsManySpansAsItsAngleAsks() {
        // Climbs 300 m, pitches over by half a turn without moving, and comes down the same way.
        List<Pose> poses = new ArrayList<>();
        for (int i = 0; i <= 60; i++) {
            poses.add(pose(i / 10.0, 0, 5.0 * i, 90));
        }
        for (int i = 1; i <= 18; i++) {
            poses.add(pose(6 + i / 10.0, 0, 300, 90 - 10.0 * i));
        }
        for (int i = 1; i <= 60; i++) {
            poses.add(pose(7.8 + i / 10.0, 0, 300 - 5.0 * i, -90));
        }
        double spanM = 40;
        Unfolding unfolding = Unfolding.of(new Flown(poses, List.of()), new Eye(400, 1.6), spanM);
        double aside = unfolding.flown().at(13.8).place().x();
        // Half a turn, in radians, times 0.6 spans: the way is nowhere else made longer.
        assertThat(Math.abs(aside)).isCloseTo(Math.PI * 0.6 * spanM, within(0.5));
        assertThat(unfolding.extraM().stream().mapToDouble(m -> m).sum()).isCloseTo(Math.PI * 0.6 * spanM, within(0.5));
    }

    @Test
    void noFigureLeavesItsPictureNorTheAir() {
        for (var entry : CATALOGUE.entries()) {
            Subject subject = figure(entry.name());
            Still still = still(subject);
            assertThat(still.stands()).as(entry.name()).allSatisfy(stand -> {
                assertThat(stand.x()).as(entry.name()).isBetween(0.0, WIDE);
                assertThat(stand.y()).as(entry.name()).isBetween(0.0, TALL);
            });
            double lowest = lowestM(subject.flown());
            assertThat(lowestM(still.standing().subject().flown()))
                    .as(entry.name())
                    .isCloseTo(lowest, within(1e-6));
        }
    }

    private static double lowestM(Flown flown) {
        return flown.reach().least().z();
    }

    @Test
    void onPaperAFormationIsAsManyAircraftAsItHas() {
        long one = noses("loop");
        long five = noses("formation loop");
        int moments = still(figure("formation loop")).groups().size();
        int alone = still(figure("loop")).stands().size();
        assertThat(five / moments).as("aircraft at each moment").isGreaterThanOrEqualTo(4 * one / alone);
    }

    /** Pieces of noses on the paper. */
    private static long noses(String name) {
        Flown flown = figure(name).flown();
        return new PaperStill(flown, Outline.MONOPLANE)
                .inks(0, 0, 200, 200).stream()
                        .filter(ink -> ink instanceof Ink.Fill fill && fill.rgb() == 0x0A4A87)
                        .count();
    }

    @Test
    void nothingIsDrawnOfNothing() {
        assertThat(PaperStill.NONE.isDrawn()).isFalse();
        assertThat(PaperStill.NONE.inks(0, 0, 100, 100)).isEmpty();
        assertThat(PaperStill.NONE.height(100)).isZero();
    }

    @Test
    void onPaperNothingLeavesItsBox() {
        for (var entry : CATALOGUE.entries()) {
            PaperStill still = new PaperStill(figure(entry.name()).flown(), Outline.MONOPLANE);
            for (double wide : new double[] {74, 200}) {
                double tall = still.height(wide);
                assertThat(tall).as(entry.name()).isBetween(0.2 * wide, 1.1 * wide);
                for (Ink ink : still.inks(10, 20, wide, tall)) {
                    points(ink).forEach(point -> {
                        assertThat(point.x()).as(entry.name()).isBetween(9.0, wide + 11);
                        assertThat(point.y()).as(entry.name()).isBetween(19.0, tall + 21);
                    });
                }
            }
        }
    }

    private static Stream<Ink.Point> points(Ink ink) {
        if (ink instanceof Ink.Stroke stroke) {
            return stroke.points().stream();
        }
        return ink instanceof Ink.Fill fill ? fill.corners().stream() : Stream.of();
    }

    @Test
    void inATowAGliderHangsOnARopeBehindAnAeroplane() {
        for (Outline flownBy : List.of(Outline.GLIDER, Outline.BIPLANE)) {
            Subject tow = Subject.of(figure("tow").flown(), flownBy);
            Place place = still(tow).place();
            List<Subject.Seen> all = tow.all(place.spanM());
            assertThat(all).extracting(Subject.Seen::outline).containsExactly(Outline.MONOPLANE, Outline.GLIDER);
            assertThat(all.get(1).size()).as("its wings are longer").isGreaterThan(1.3);
            assertThat(all).extracting(Subject.Seen::onARope).containsExactly(false, true);

            List<Vec> rope = all.get(1).rope(all.get(0), 6, place.spanM());
            Vec tug = all.get(0).flown().at(6).place();
            Vec glider = all.get(1).flown().at(6).place();
            assertThat(rope.get(0).x()).isBetween(glider.x(), tug.x());
            assertThat(rope.get(1).x()).isBetween(glider.x(), rope.get(0).x());
            assertThat(rope.get(0).minus(rope.get(1)).length())
                    .as("long enough to be seen")
                    .isGreaterThan(1.5 * place.spanM());
        }
    }

    @Test
    void theRopeIsDrawnAtEachMomentAndOnlyWhereThereIsOne() {
        Tones tones = new Tones(1, 2, 3, 4, 5, 6, 7, 8, 9);
        assertThat(ropes("tow", tones)).isEqualTo(still(figure("tow")).groups().size());
        assertThat(ropes("join-up", tones)).isZero();
    }

    /** Straight strokes from one point to another in the colour of ropes. */
    private static long ropes(String name, Tones tones) {
        return still(figure(name)).inks(tones, 1).stream()
                .filter(Ink.Stroke.class::isInstance)
                .map(Ink.Stroke.class::cast)
                .filter(stroke -> stroke.points().size() == 2 && stroke.rgb() == tones.path())
                .count();
    }
}
