package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.request;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A loop and a roll with two remarks each, and one that floats. */
class InOrderTest {
    private final PlanRequest request = request(
            0,
            List.of(slot("loop", 0, 20), slot("roll", 20, 40)),
            candidate("loop 1", RemarkKind.FACT, "loop", 4),
            candidate("loop 2", RemarkKind.FACT, "loop", 4),
            candidate("roll 1", RemarkKind.FACT, "roll", 4),
            candidate("roll 2", RemarkKind.FACT, "roll", 4),
            candidate("free", RemarkKind.FACT, null, 4));
    private final Workload work = Workload.of(request, Horizon.of(request, null));

    private List<String> order(String... planned) {
        List<Placed> placed = Stream.of(planned)
                .map(id -> new Placed(id, null, RemarkKind.FACT, RemarkForm.FULL, 0, 4, false))
                .toList();
        return InOrder.orderOf(new Plan(placed, List.of(), 0, 0, true), work).stream()
                .map(Item::id)
                .toList();
    }

    @Test
    void orderOfAPlanIsKept() {
        assertThat(order("loop 1", "free", "roll 1", "roll 2")).containsExactly("loop 1", "free", "roll 1", "roll 2");
    }

    @Test
    void whatIsNoMoreInTheOrderOfFiguresIsLeftOut() {
        assertThat(order("roll 1", "loop 1", "free", "loop 2", "roll 2")).containsExactly("roll 1", "free", "roll 2");
        assertThat(order("free", "loop 2", "loop 1", "roll 1")).containsExactly("free", "loop 2", "roll 1");
    }

    @Test
    void whatIsNoMoreToBeSaidIsLeftOutAndNothingIsSaidTwice() {
        assertThat(order("gone", "loop 1", "free", "free", "loop 1")).containsExactly("loop 1", "free");
    }

    /** 20 s and 3 s past them; each at least half a second inside, with a breath between. */
    @Test
    void bestOfAnOrderLeavesOutWhatIsWorthLeast() {
        PlanRequest crowded = request(
                0,
                List.of(slot("loop", 0, 20)),
                candidate("a", RemarkKind.FACT, "loop", 11),
                candidate("b", RemarkKind.EXPLANATION, "loop", 11),
                candidate("c", RemarkKind.FACT, "loop", 10));
        Workload three = Workload.of(crowded, Horizon.of(crowded, null));
        Sequence best = InOrder.bestOf(three, three.bound());
        assertThat(best.steps()).extracting(step -> step.item().id()).containsExactly("b", "c");
    }
}
