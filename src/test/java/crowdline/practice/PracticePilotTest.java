package crowdline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.practice.Change.Kind;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.sight.picture.Pose;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Many flights of one act, made once: each kind of change is looked for in what is flown, not in what is said of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("slow")
class PracticePilotTest {
    private static final int SEEDS = 10;

    private final Show show;
    private final Act act;
    private final Map<Level, List<PracticeFlight>> flights = new EnumMap<>(Level.class);

    PracticePilotTest() throws ShowFileException, CannotPractise {
        show = PracticeShows.loaded("wrackenholt-evening").show();
        act = show.act("teasel-solo").orElseThrow();
        for (Level level : Level.values()) {
            List<PracticeFlight> own = new ArrayList<>();
            for (long seed = 1; seed <= SEEDS; seed++) {
                own.add(flown(level, seed));
            }
            flights.put(level, own);
        }
    }

    private PracticeFlight flown(Level level, long seed) throws CannotPractise {
        return new PracticePilot(show, CatalogueFile.shipped())
                .fly(act, act.variants().get(0), level, seed);
    }

    private List<PracticeFlight> all() {
        return flights.values().stream().flatMap(List::stream).toList();
    }

    private List<PracticeFlight> with(Kind kind) {
        List<PracticeFlight> found =
                all().stream().filter(f -> f.change(kind).isPresent()).toList();
        assertThat(found).as(kind + " among " + SEEDS + " seeds of each level").isNotEmpty();
        return found;
    }

    private List<String> planned() {
        return act.inOrder(act.variants().get(0)).stream().map(Figure::id).toList();
    }

    private static Change change(PracticeFlight flight, Kind kind) {
        return flight.change(kind).orElseThrow();
    }

    private static Piece piece(PracticeFlight flight, Piece.Kind kind) {
        return flight.pieces().stream()
                .filter(p -> p.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameSeedIsTheSameFlight() throws CannotPractise {
        assertThat(flown(Level.FOUR, 3))
                .isEqualTo(Objects.requireNonNull(flights.get(Level.FOUR)).get(2));
    }

    @Test
    void anotherSeedIsAnotherFlight() {
        assertThat(Objects.requireNonNull(flights.get(Level.ONE)).stream().map(PracticeFlight::startS))
                .doesNotHaveDuplicates();
    }

    @Test
    void lateBeginsAfterItsSlotAndEarlyBeforeIt() {
        assertThat(with(Kind.LATE)).allMatch(f -> f.startS() > f.slotS() + 2);
        assertThat(with(Kind.EARLY)).allMatch(f -> f.startS() < f.slotS() - 2);
    }

    @Test
    void whatIsDroppedIsNotFlownAndIsSeenWhenSomethingElseBeginsInItsPlace() {
        for (PracticeFlight flight : with(Kind.DROPPED)) {
            Change dropped = change(flight, Kind.DROPPED);
            String id = dropped.figureIds().get(0);
            assertThat(flight.figure(id)).isEmpty();
            Piece next = flight.pieces().stream()
                    .filter(p -> p.fromS() == dropped.seenS())
                    .findFirst()
                    .orElseThrow();
            assertThat(planned().indexOf(next.figureId()))
                    .isGreaterThan(planned().indexOf(id));
        }
    }

    @Test
    void whatIsSwappedIsFlownTheOtherWayRound() {
        for (PracticeFlight flight : with(Kind.SWAPPED)) {
            List<String> ids = change(flight, Kind.SWAPPED).figureIds();
            assertThat(planned().indexOf(ids.get(0))).isGreaterThan(planned().indexOf(ids.get(1)));
            assertThat(flight.figure(ids.get(0)).orElseThrow().fromS())
                    .isEqualTo(change(flight, Kind.SWAPPED).seenS())
                    .isLessThan(flight.figure(ids.get(1)).orElseThrow().fromS());
        }
    }

    @Test
    void whatNobodyPlannedIsNotInThePlan() {
        for (PracticeFlight flight : with(Kind.UNPLANNED)) {
            Piece piece = piece(flight, Piece.Kind.UNPLANNED);
            assertThat(piece.toS() - piece.fromS()).isGreaterThan(1);
            assertThat(act.figures().stream().map(Figure::figure)).doesNotContain(piece.name());
            assertThat(change(flight, Kind.UNPLANNED).seenS()).isEqualTo(piece.fromS());
        }
    }

    @Test
    void whoHoldsGoesRoundTwiceAndIsBackWhereTheHoldBegan() {
        for (PracticeFlight flight : with(Kind.HOLD)) {
            Piece hold = piece(flight, Piece.Kind.HOLD);
            List<Pose> poses = flight.flown().between(hold.fromS(), hold.toS());
            double turnedRad = 0;
            for (int i = 1; i < poses.size(); i++) {
                double from = Math.atan2(
                        poses.get(i - 1).nose().y(), poses.get(i - 1).nose().x());
                double to =
                        Math.atan2(poses.get(i).nose().y(), poses.get(i).nose().x());
                turnedRad += Math.IEEEremainder(to - from, 2 * Math.PI);
            }
            assertThat(Math.abs(turnedRad)).isBetween(3.9 * Math.PI, 4.1 * Math.PI);
            Pose first = poses.get(0);
            Pose last = poses.get(poses.size() - 1);
            // The wind carries it along meanwhile.
            assertThat(last.place().minus(first.place()).length()).isLessThan(450);
        }
    }

    @Test
    void whoBreaksOffClimbsAwayInTheMiddleOfAFigure() {
        for (PracticeFlight flight : with(Kind.BREAK_OFF)) {
            Change change = change(flight, Kind.BREAK_OFF);
            Piece left = flight.figure(change.figureIds().get(0)).orElseThrow();
            assertThat(left.toS()).isEqualTo(change.seenS());
            assertThat(flight.pieces().get(flight.pieces().size() - 1).kind()).isEqualTo(Piece.Kind.AWAY);
            Pose from = flight.flown().at(change.seenS());
            Pose to = flight.flown().at(flight.overS());
            assertThat(to.place().y()).isGreaterThan(from.place().y() + 100);
            assertThat(to.place().z()).isGreaterThan(from.place().z());
            assertThat(to.up().z()).as("wings level").isGreaterThan(0.8);
        }
    }

    @Test
    void whoGoesDownIsLastSeenLowAndFurtherFromTheCrowd() {
        for (PracticeFlight flight : with(Kind.INCIDENT)) {
            Pose from = flight.flown().at(change(flight, Kind.INCIDENT).seenS());
            Pose to = flight.flown().at(flight.overS());
            assertThat(to.place().z()).isLessThan(20);
            assertThat(to.place().y()).isGreaterThan(from.place().y());
        }
    }

    @Test
    void gustsRockTheWingsOnTheStraightWayIn() {
        assertThat(with(Kind.GUSTY)).allMatch(f -> rocks(f) > 0.02);
        assertThat(Objects.requireNonNull(flights.get(Level.ONE))).allMatch(f -> rocks(f) < 1e-9);
    }

    /** How far the right wing goes up and down before the act begins. */
    private static double rocks(PracticeFlight flight) {
        return flight.flown().between(0, flight.startS() - 1).stream()
                .mapToDouble(p -> Math.abs(p.right().z()))
                .max()
                .orElseThrow();
    }

    @Test
    void levelsAreOrderedByHowMuchOfThePlanTheyBreak() {
        int before = -1;
        for (Level level : Level.values()) {
            int breaks = 0;
            for (PracticeFlight flight : Objects.requireNonNull(flights.get(level))) {
                breaks += (int) flight.changes().stream()
                        .filter(c -> c.kind().breaksThePlan())
                        .count();
            }
            assertThat(breaks).as(level.name()).isGreaterThan(before);
            before = breaks;
        }
        assertThat(Objects.requireNonNull(flights.get(Level.ONE)))
                .allMatch(f -> f.changes().stream().noneMatch(c -> c.kind().breaksThePlan()));
        assertThat(Objects.requireNonNull(flights.get(Level.FOUR)))
                .allMatch(f -> f.change(Kind.BREAK_OFF).isPresent()
                        || f.change(Kind.INCIDENT).isPresent());
    }

    @Test
    void nothingFliesNearerToTheCrowdOrMoreTowardsItThanThePlanDoes() {
        double crowdM = Objects.requireNonNull(show.venue().crowdToLineM());
        Flight plan =
                new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
        double planned = plan.samples().stream()
                .mapToDouble(s -> ahead(s.place().y(), s.nose().y()))
                .min()
                .orElseThrow();
        for (PracticeFlight flight : all()) {
            for (Pose pose : flight.flown().poses()) {
                assertThat(pose.place().y())
                        .as("level %s, seed %s, at %.1f s", flight.level(), flight.seed(), pose.tS())
                        .isGreaterThan(-crowdM / 2);
                assertThat(ahead(pose.place().y(), pose.nose().y()))
                        .as("level %s, seed %s, at %.1f s", flight.level(), flight.seed(), pose.tS())
                        .isGreaterThan(planned - 40);
            }
        }
    }

    /** Beyond the display line after 200 m more of where the nose points. */
    private static double ahead(double awayM, double noseAway) {
        return awayM + 200 * Math.min(0, noseAway);
    }

    @Test
    void changesAreToldInTheOrderInWhichTheyAreSeen() {
        for (PracticeFlight flight : all()) {
            assertThat(flight.changes().stream().map(Change::seenS)).isSorted();
            assertThat(flight.pieces().stream().map(Piece::fromS)).isSorted();
        }
    }

    @Test
    void anActTooShortForAWholeLevelIsFlownWithLess() throws CannotPractise {
        Act other = show.act("quickthorn-solo").orElseThrow();
        PracticeFlight flight = new PracticePilot(show, CatalogueFile.shipped())
                .fly(other, other.variant("flat").orElseThrow(), Level.FOUR, 1);

        assertThat(flight.changes().stream().filter(c -> c.kind().breaksThePlan()))
                .hasSizeBetween(2, 3);
    }

    @Test
    void anActOfWhichOnlyTimesAreKnownIsRefusedInOneSentence() throws ShowFileException {
        Show timed = PracticeShows.loaded("fenmarsh-air-day").show();
        Act formation = timed.act("brackwater-four").orElseThrow();

        assertThatThrownBy(() -> new PracticePilot(timed, CatalogueFile.shipped())
                        .fly(formation, formation.variants().get(0), Level.ONE, 1))
                .isInstanceOf(CannotPractise.class)
                .hasMessageContaining("only times are known")
                .hasMessageEndingWith("choose an act whose flight is computed.");
    }

    @Test
    void thereIsNoLevelFive() {
        assertThatThrownBy(() -> Level.of(5)).hasMessage("the level is 5; it must be 1 to 4");
        assertThat(Level.of(4)).isEqualTo(Level.FOUR);
    }

    /** Its circles take longer than a slow one's: they ended in the prediction's patience, so that it never held. */
    @Test
    void aFastAeroplaneHoldsToo() throws CannotPractise {
        Act fast = show.act("quickthorn-solo").orElseThrow();
        PracticePilot pilot = new PracticePilot(show, CatalogueFile.shipped());
        int held = 0;
        for (long seed = 1; seed <= 8; seed++) {
            PracticeFlight flown = pilot.fly(fast, fast.variants().get(0), Level.TWO, seed);
            held += flown.change(Kind.HOLD).isPresent() ? 1 : 0;
        }
        assertThat(held).isPositive();
    }
}
