package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.SlotTime;
import crowdline.live.event.TalkEvent;
import crowdline.live.now.DayNow;
import crowdline.live.now.Duties;
import crowdline.live.now.DutyNow;
import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.now.TakenAsSaid;
import crowdline.live.state.FlownAct;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Gaps;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalOpening;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A day of twenty acts at speed, on clocks of the test's own: a commentator who marks two of three remarks and forgets the
 * rest, a wind that delays everything from the third act on, an act cancelled, two that change places, and a machine that
 * goes off in the middle. Nothing is said twice that is for once, and every duty is said as often as asked, or owed.
 */
@Tag("slow")
class DayByRobotTest {
    private static final ZoneId UTC = ZoneId.of("UTC");
    private static final LocalDate DAY = LocalDate.of(2027, 6, 1);
    /** The session begins at 13:50, ten minutes before the first slot; slots are eight minutes apart. */
    private static final Instant ZERO = Instant.parse("2027-06-01T13:50:00Z");

    private static final int ACTS = 20;
    private static final double STEP_S = 3;
    private static final JournalShow FILE = new JournalShow("/shows/long-day.json", "aa");

    @TempDir
    Path folder;

    private final Show show = show();
    private final PlanAhead ahead = new PlanAhead(show, DayByRobotTest::spoken);
    private final Planner planner = new Planner();
    private double nowS;
    private int folders;
    private JournalOpening opening;
    private LiveState state;
    private TakenAsSaid aired = new TakenAsSaid();
    private Plan plan = Plan.NOT_YET;
    private Random random = new Random(0);
    /** What the crowd heard, and when each was over: all that stood on the screen in its time, marked or not. */
    private final Map<String, List<Double>> heard = new HashMap<>();

    DayByRobotTest(@TempDir Path first) {
        opening = open(first);
        state = opening.state();
    }

    private static SpokenTime spoken(String text) {
        double seconds = 3 + text.length() / 14.0;
        return new SpokenTime(seconds, seconds * 0.9, seconds * 1.1);
    }

    private static Remark duty(String id, DutyTimes asked) {
        return Remark.of(id, RemarkKind.DUTY, "Ladies and gentlemen, something about the " + id + ".")
                .asked(asked);
    }

    private static Show show() {
        List<Act> acts = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i <= ACTS; i++) {
            acts.add(act("a" + i, LocalTime.of(14, 0).plusMinutes(8L * (i - 1))));
            if (i % 3 == 0) {
                pieces.add(new Piece(
                        "to-a" + i, "Who comes next", "a" + i, List.of(new Piece.Part("Next is somebody new.", 0))));
            }
        }
        for (int i = 0; i < 6; i++) {
            pieces.add(new Piece(
                    "talk" + i,
                    "An interview",
                    null,
                    List.of(
                            new Piece.Part("Who are you?", 20),
                            new Piece.Part("And since when?", 15),
                            new Piece.Part("Thank you.", 0))));
        }
        List<Remark> remarks = new ArrayList<>(List.of(
                duty("dairy", new DutyTimes(4, 25.0, LocalTime.of(17, 0), null, null, false)),
                duty("rope", new DutyTimes(3, 20.0, null, null, null, true)),
                duty("gate", new DutyTimes(1, null, null, "a3", null, false)),
                duty("first-aid", new DutyTimes(2, 10.0, null, null, "a10", false)),
                duty("cancelled", new DutyTimes(1, null, null, "a7", null, false)),
                duty("plain", DutyTimes.ONCE),
                duty("impossible", new DutyTimes(9, 30.0, null, "a19", null, false))));
        for (int i = 0; i < 25; i++) {
            remarks.add(Remark.of("joke" + i, RemarkKind.FILLER, "A joke of some length about hangars, " + i + "."));
        }
        remarks.add(new Remark("for-once", RemarkKind.FACT, "A fact for once.", null, null, null, 1, true));
        return new Show(
                        "Long Day",
                        DAY,
                        new Venue("Nowhere", 52, 0, 0, 90, 200, UTC, Venue.Limits.NONE),
                        DayAir.STANDARD,
                        List.of(),
                        List.of(),
                        acts,
                        remarks)
                .withGaps(new Gaps(60, pieces));
    }

    private static Act act(String id, LocalTime slot) {
        return new Act(
                id,
                id,
                "who",
                "what",
                slot,
                6,
                null,
                List.of(Figure.of(id + "-all", "loop")),
                List.of(new Variant("full", null, List.of(id + "-all"))),
                List.of(Remark.of(id + "-welcome", RemarkKind.FACT, "A word on the act.")));
    }

    private static ActTimes lasts(String actId) {
        return new ActTimes(actId, "full", List.of(new FigureTime(actId + "-all", 0, 240, 220, 260)));
    }

    private JournalOpening open(Path where) {
        JournalMachine machine = new JournalMachine(
                () -> Math.round(nowS * 1e9), () -> ZERO.plusNanos(Math.round(nowS * 1e9)), "boot-1");
        return new JournalShelf(where, machine, 12 * 3600).open(FILE);
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            opening.journal().append(event);
            state = moved.state();
        }
    }

    /** Goes off without a word; what comes up again has what lies on the disk. */
    private void crash() throws IOException {
        Path left = folder.resolve("left" + folders++);
        Files.createDirectories(left);
        Path journal = opening.journal().path();
        assertThat(journal).isNotNull();
        Files.copy(journal, left.resolve(journal.getFileName()));
        // What ended within these seconds and was not marked yet, nobody can know of.
        heard.values().forEach(ends -> ends.removeIf(endS -> endS > nowS - 3 - 2 * STEP_S));
        nowS += 15;
        opening = open(left);
        assertThat(opening.resumed()).isTrue();
        state = opening.state();
        aired = new TakenAsSaid();
        plan = Plan.NOT_YET;
    }

    private LiveNow now() {
        return LiveNow.of(state, index -> 240, nowS, ZERO.plusMillis(Math.round(nowS * 1000)));
    }

    /** A step of the program, and of the commentator. */
    private void step() {
        String actId = state.actId();
        assertThat(actId).isNotNull();
        for (Placed placed : plan.placed()) {
            boolean ends = placed.endS() > nowS - STEP_S && placed.endS() <= nowS;
            if (ends) {
                heard.computeIfAbsent(placed.remarkId(), id -> new ArrayList<>())
                        .add(placed.endS());
            }
            if (ends && random.nextInt(3) > 0) {
                happens(new TalkEvent.RemarkSaid(placed.endS(), placed.remarkId(), placed.form()));
            }
        }
        LiveNow now = now();
        aired.follow(state, plan, nowS, ahead::isOfTheDay);
        aired.toWriteDown(state, nowS).forEach(this::happens);
        plan = planner.plan(aired.request(ahead.request(state, now, lasts(actId), Optional.of(plan), aired.ids(), 0)));
        nowS += STEP_S;
    }

    private void choose(String id) {
        Act act = show.act(id).orElseThrow();
        happens(new FlightEvent.ActChosen(
                nowS,
                id,
                "full",
                List.of(id + "-all"),
                List.of(),
                null,
                new SlotTime.OnClock(show.slotStart(act), UTC)));
    }

    private double slotS(String id) {
        LocalDateTime slot = DayNow.slot(state, show, show.act(id).orElseThrow());
        return Duration.between(LocalDateTime.ofInstant(ZERO, UTC), slot).toSeconds();
    }

    private void runTheDay(int crashAfter) throws IOException {
        happens(new ShowEvent.ShowOpened(
                0, show.title(), show.acts().stream().map(Act::id).toList()));
        choose("a1");
        boolean more = true;
        while (more) {
            String id = state.actId();
            assertThat(id).isNotNull();
            double startS = slotS(id) + random.nextInt(60);
            boolean crashes = state.course().flownActs().size() == crashAfter;
            while (nowS < startS) {
                step();
                if (crashes && nowS > startS - 60) {
                    crashes = false;
                    crash();
                }
                if (id.equals("a3") && state.day().laterS("a3") == 0 && nowS > startS - 90) {
                    happens(new ShowEvent.ActsMoved(nowS, state.day().from("a3"), 720));
                    startS += 720;
                }
            }
            happens(new FlightEvent.ActStarted(nowS));
            double endS = nowS + 225 + random.nextInt(40);
            while (nowS < endS) {
                step();
            }
            happens(new FlightEvent.ActEnded(nowS));
            if (id.equals("a5")) {
                happens(new ShowEvent.ActCancelled(nowS, "a7"));
                happens(new ShowEvent.ActsSwapped(nowS, "a9", "a10", 480, -480));
            }
            double nextS = nowS + 4 + random.nextInt(20);
            while (nowS < nextS) {
                step();
            }
            more = state.nextActId().isPresent();
            state.nextActId().ifPresent(this::choose);
        }
        for (int i = 0; i < 30; i++) {
            step();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 5})
    void nothingIsSaidTwiceAndEveryDutyIsSaidOrOwed(long seed) throws IOException {
        random = new Random(seed);
        runTheDay(7 + (int) seed);

        assertThat(state.course().flownActs())
                .extracting(FlownAct::actId)
                .hasSize(ACTS - 1)
                .doesNotContain("a7");
        List<String> forOnce = Stream.concat(
                        show.gaps().remarks(), show.remarks().stream().filter(r -> r.kind() != RemarkKind.DUTY))
                .map(Remark::id)
                .toList();
        assertThat(forOnce)
                .allSatisfy(id ->
                        assertThat(heard.getOrDefault(id, List.of())).as(id).hasSizeLessThanOrEqualTo(1));
        assertThat(forOnce.stream().filter(heard::containsKey).count()).isGreaterThan(20);

        List<DutyNow> duties = Duties.of(show, state, now());
        assertThat(duties).allSatisfy(d -> {
            assertThat(d.told().size())
                    .as(d.remark().id())
                    .isLessThanOrEqualTo(d.asked().times());
            assertThat(heard.getOrDefault(d.remark().id(), List.of()))
                    .as("heard of %s", d.remark().id())
                    .hasSizeLessThanOrEqualTo(d.asked().times());
            for (int i = 1; i < d.told().size(); i++) {
                assertThat(d.told().get(i).atS() - d.told().get(i - 1).atS())
                        .as(d.remark().id())
                        .isGreaterThanOrEqualTo(d.asked().apartS());
            }
        });
        assertThat(duties.stream()
                        .filter(d -> d.missing() > 0)
                        .map(d -> d.remark().id()))
                .as("what is owed")
                .containsExactly("impossible");
        assertThat(duties.get(0).told()).allSatisfy(t -> assertThat(t.atS()).isLessThanOrEqualTo(11_400));
        assertThat(between(duties.get(0))).as("only between acts").isTrue();
        assertThat(duties.get(2).told().get(0).atS()).isGreaterThan(endS("a3"));
        assertThat(duties.get(3).told()).allSatisfy(t -> assertThat(t.atS()).isLessThan(startS("a10")));
        assertThat(duties.get(4).told().get(0).atS()).isGreaterThan(startS("a8"));
    }

    private boolean between(DutyNow duty) {
        return duty.told().stream()
                .noneMatch(t -> state.course().flownActs().stream()
                        .anyMatch(a -> t.atS() > a.startedAtS() + 1 && t.atS() < a.endedAtS()));
    }

    private double endS(String id) {
        return flown(id).endedAtS();
    }

    private double startS(String id) {
        return flown(id).startedAtS();
    }

    private FlownAct flown(String id) {
        return state.course().flownActs().stream()
                .filter(a -> a.actId().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
