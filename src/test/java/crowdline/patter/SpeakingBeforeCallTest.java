package crowdline.patter;

import static crowdline.patter.Acts.candidate;
import static crowdline.patter.Acts.slot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is being said while a loop comes in at 20 s. */
class SpeakingBeforeCallTest {
    private final Planner planner = new Planner();
    private final List<Slot> loop = List.of(slot("loop", 20, 32));

    /** The call in full must begin at 14.9 s, in its short form at 17.9 s; a tenth and a breath are kept before it. */
    @Test
    void whatIsBeingSaidLeavesTimeForTheShortFormOfACallWhereTheFullOneHasNone() {
        Candidate call = candidate("call", RemarkKind.CALL, "loop", 4, 1);
        Candidate story = candidate("story", RemarkKind.EXPLANATION, null, 12);
        assertThat(endOfStory(call, story, 5)).isCloseTo(17, within(1e-9));
        assertThat(endOfStory(call, story, 6)).isCloseTo(14.2, within(1e-9));
        assertThat(endOfStory(call, story, 15)).isCloseTo(17.2, within(1e-9));
    }

    private double endOfStory(Candidate call, Candidate story, double nowS) {
        Plan plan = planner.plan(new PlanRequest(
                nowS,
                loop,
                List.of(call, story),
                Set.of(),
                Optional.empty(),
                new Speaking("story", RemarkForm.FULL, Math.min(nowS, 6), false),
                PatterRules.DEFAULT));
        assertThat(plan.find("call").orElseThrow().endS()).isLessThanOrEqualTo(19 + 1e-9);
        return plan.find("story").orElseThrow().endS();
    }
}
