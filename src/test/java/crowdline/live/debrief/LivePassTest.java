package crowdline.live.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.Source;
import crowdline.live.state.Flown;
import crowdline.live.state.FlownAct;
import crowdline.live.state.Note;
import crowdline.live.state.Sequence;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LivePassTest {
    private static final Instant THEN = Instant.parse("2030-06-01T12:00:00Z");
    private static final List<String> PLAN = List.of("a", "b", "c", "d");

    @Test
    void figuresMarkedByHandAtBothEndsAreTimed() {
        assertThat(timed(
                        List.of("d"),
                        flown("a", 100, 112.0, Source.HAND),
                        flown("b", 112, 120.0, Source.HAND),
                        flown("c", 120, 130.0, Source.HAND)))
                .containsExactly(
                        new Pass.TimedFigure("a", 0, 12),
                        new Pass.TimedFigure("b", 12, 20),
                        new Pass.TimedFigure("c", 20, 30));
    }

    @Test
    void boundaryOfTheClockTeachesNeitherSide() {
        assertThat(ids(
                        List.of(),
                        flown("a", 100, 112.0, Source.HAND),
                        flown("b", 112, 120.0, Source.CLOCK),
                        flown("c", 120, 125.0, Source.HAND),
                        flown("d", 125, 130.0, Source.AIRCRAFT)))
                .isEmpty();
    }

    @Test
    void heldFigureIsNotTimed() {
        assertThat(ids(
                        List.of("c", "d"),
                        new Flown("a", 100, 3, 115.0, Source.HAND),
                        flown("b", 115, 130.0, Source.HAND)))
                .containsExactly("b");
    }

    @Test
    void figureBeforeAJumpOrOffThePlanIsNotTimed() {
        assertThat(ids(
                        List.of(),
                        flown("a", 100, 110.0, Source.HAND),
                        flown("c", 110, 118.0, Source.HAND),
                        flown("d", 121, 130.0, Source.HAND)))
                .containsExactly("d");
    }

    @Test
    void figureBeforeADroppedOneIsTimed() {
        assertThat(ids(List.of("b", "d"), flown("a", 100, 110.0, Source.HAND), flown("c", 110, 130.0, Source.HAND)))
                .containsExactly("a", "c");
    }

    @Test
    void figureInWhichTheActWasBrokenOffIsNotTimed() {
        assertThat(ids(List.of(), flown("a", 100, 110.0, Source.HAND), flown("b", 110, 130.0, Source.HAND)))
                .containsExactly("a");
    }

    @Test
    void figuresFlownInASwappedOrderAreTimed() {
        Flown[] flown = {
            flown("a", 100, 110.0, Source.HAND),
            flown("c", 110, 118.0, Source.HAND),
            flown("b", 118, 124.0, Source.HAND),
            flown("d", 124, 130.0, Source.HAND)
        };

        assertThat(timed(List.of("a", "c", "b", "d"), List.of(), flown))
                .extracting(Pass.TimedFigure::figureId)
                .containsExactly("a", "c", "b", "d");
        assertThat(ids(List.of(), flown)).as("jumped to, nobody knows").containsExactly("d");
    }

    @Test
    void onlyFigureOfAnActIsTimedToItsEnd() {
        assertThat(ids(List.of("b", "c", "d"), flown("a", 100, 130.0, Source.HAND)))
                .containsExactly("a");
    }

    /** Off the plan and back in the same figure: nobody said that it was over. */
    @Test
    void figureBegunAgainIsNotItsOwnEnd() {
        assertThat(ids(
                        List.of("c", "d"),
                        flown("a", 100, 110.0, Source.HAND),
                        flown("a", 110, 118.0, Source.HAND),
                        flown("b", 118, 130.0, Source.HAND)))
                .containsExactly("a", "b");
    }

    @Test
    void notesOfTheRunStayWithThePass() {
        FlownAct act = new FlownAct("dawn", "full", Sequence.planned(PLAN, List.of()), 100, 230, List.of());
        Pass pass = LivePass.of(
                act,
                "p",
                THEN,
                List.of(
                        new Note(99, "before", "dawn", null),
                        new Note(165.9, "smoke late", "dawn", "b"),
                        new Note(170, "", "dawn", "b"),
                        new Note(231, "after", "dawn", null)));
        assertThat(pass.note()).isEqualTo("1:05 smoke late; 1:10 noted");
    }

    private static List<String> ids(List<String> dropped, Flown... flown) {
        List<String> ids =
                timed(dropped, flown).stream().map(Pass.TimedFigure::figureId).toList();
        return ids;
    }

    private static List<Pass.TimedFigure> timed(List<String> dropped, Flown... flown) {
        return timed(PLAN, dropped, flown);
    }

    private static List<Pass.TimedFigure> timed(List<String> order, List<String> dropped, Flown... flown) {
        FlownAct act = new FlownAct(
                "dawn",
                "full",
                new Sequence(PLAN, List.of(), order.stream().map(PLAN::indexOf).toList(), dropped),
                100,
                130,
                List.of(flown));
        Pass pass = LivePass.of(act, "p", THEN, List.of());
        assertThat(pass.how()).isEqualTo(Pass.How.LIVE);
        return pass.figures();
    }

    private static Flown flown(String id, double startS, @Nullable Double endS, Source mark) {
        return new Flown(id, startS, 0, endS, mark);
    }
}
