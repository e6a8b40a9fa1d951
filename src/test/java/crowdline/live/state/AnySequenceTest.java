package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.now.LiveNow;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What holds after any event whatever. */
class AnySequenceTest {
    private static final int SEEDS = 300;
    private static final int EVENTS = 200;
    private static final Durations TEN = index -> 10;

    private static final Instant WALL = Instant.parse("2026-06-12T13:00:00Z");

    private interface Check {
        void of(LiveState before, LiveEvent event, Step step);
    }

    private static void everywhere(Check check) {
        for (long seed = 0; seed < SEEDS; seed++) {
            LiveState state = LiveState.initial();
            for (LiveEvent event : new RandomEvents(seed).next(EVENTS)) {
                Step step = Live.next(state, event);
                try {
                    check.of(state, event, step);
                } catch (AssertionError | RuntimeException e) {
                    throw new AssertionError("seed " + seed + ", " + event + " on " + state.course(), e);
                }
                if (step instanceof Step.Moved moved) {
                    state = moved.state();
                }
            }
        }
    }

    private static LiveState after(LiveState before, Step step) {
        return step instanceof Step.Moved moved ? moved.state() : before;
    }

    @Test
    void figureBeingFlownIsTheLastFlownAndHasNotEnded() {
        everywhere((before, event, step) -> {
            Course course = after(before, step).course();
            if (course.figureId() != null) {
                Flown last = course.flown().get(course.flown().size() - 1);
                assertThat(last.figureId()).isEqualTo(course.figureId());
                assertThat(last.endedAtS()).isNull();
            }
        });
    }

    @Test
    void figuresFlownFollowOneAnotherInTime() {
        everywhere((before, event, step) -> {
            List<Flown> flown = after(before, step).course().flown();
            for (int i = 0; i + 1 < flown.size(); i++) {
                assertThat(flown.get(i).endedAtS())
                        .isNotNull()
                        .isBetween(flown.get(i).startedAtS(), flown.get(i + 1).startedAtS());
            }
        });
    }

    @Test
    void stepTakenBackLeavesTheFigureAndItsStart() {
        everywhere((before, event, step) -> {
            LiveState state = after(before, step);
            if (state.phase() instanceof Phase.Flying flying && !state.incidentOpen()) {
                double atS = Math.max(flying.startedAtS(), flying.confirmedAtS()) + 5;
                LiveState forth = after(state, Live.next(state, new FlightEvent.Stepped(atS)));
                LiveState back = after(forth, Live.next(forth, new FlightEvent.SteppedBack(atS + 1)));
                assertThat(back.phase())
                        .isEqualTo(new Phase.Flying(
                                flying.index(),
                                flying.startedAtS(),
                                flying.heldS(),
                                Math.max(atS + 1, flying.startedAtS())));
            }
        });
    }

    @Test
    void refusalsHaveAReason() {
        everywhere((before, event, step) -> {
            if (step instanceof Step.Refused refused) {
                assertThat(refused.reason()).endsWith(".");
            }
        });
    }

    @Test
    void whatIsReadOffIsANumber() {
        everywhere((before, event, step) -> {
            LiveNow now = LiveNow.of(after(before, step), TEN, event.atS() + 1, WALL);
            assertThat(now.upcoming()).allSatisfy(u -> {
                if (u.inS() != null) {
                    assertThat(u.inS()).isNotNegative().isFinite();
                }
            });
            if (now.lateS() != null) {
                assertThat(now.lateS()).isFinite();
            }
        });
    }

    @Test
    void nothingButLeavingNotesAnnouncementsAndListeningMovesAnOpenIncident() {
        everywhere((before, event, step) -> {
            if (before.incidentOpen() && step instanceof Step.Moved moved) {
                assertThat(event)
                        .isInstanceOfAny(
                                IncidentEvent.IncidentClosed.class,
                                LiveEvent.NoteMade.class,
                                LiveEvent.NoteWritten.class,
                                HeardEvent.class,
                                AnnouncementEvent.class);
                assertThat(moved.state().course()).isEqualTo(before.course());
            }
        });
    }

    @Test
    void everyKindOfEventIsBothPossibleAndRefusedSomewhere() {
        Set<Class<?>> moved = new HashSet<>();
        Set<Class<?>> refused = new HashSet<>();
        everywhere((before, event, step) -> (step instanceof Step.Moved ? moved : refused).add(event.getClass()));

        assertThat(moved).isEqualTo(kindsOf(LiveEvent.class));
        assertThat(refused).hasSizeGreaterThan(20);
    }

    /** Every record below a sealed type. */
    private static Set<Class<?>> kindsOf(Class<?> type) {
        if (!type.isSealed()) {
            return Set.of(type);
        }
        Set<Class<?>> kinds = new HashSet<>();
        for (Class<?> below : type.getPermittedSubclasses()) {
            kinds.addAll(kindsOf(below));
        }
        return kinds;
    }
}
