package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whole acts with figures longer and shorter than planned, dropped, and held back, spoken to the plan. */
@Tag("slow")
class SimulatedActTest {
    private record Utterance(Candidate candidate, double startS, double endS) {}

    /** One act from the first call to the last word, half a second at a time. */
    private static final class Show {
        private final Random random;
        private final PlanRequest base;
        private final Planner planner = new Planner();
        private final List<Utterance> said = new ArrayList<>();
        private final Set<String> saidIds = new HashSet<>();
        private final String name;
        private List<Slot> slots;
        private @Nullable Speaking speaking;
        private double speakingEndS;
        private Optional<Plan> plan = Optional.empty();
        private int lateCalls;

        Show(int seed) {
            random = new Random(seed);
            name = "act " + seed;
            base = Acts.random(random, 8, 2, 8);
            slots = new ArrayList<>(base.slots());
        }

        void run() {
            for (double nowS = 0; !slots.isEmpty() || speaking != null; nowS += 0.5) {
                disturb(nowS);
                finishSpeaking(nowS);
                replan(nowS);
                speak(nowS);
            }
        }

        private void disturb(double nowS) {
            slots.removeIf(s -> s.endS() <= nowS);
            if (slots.size() < 2) {
                return;
            }
            int what = random.nextInt(60);
            if (what == 0) {
                slots.remove(1 + random.nextInt(slots.size() - 1));
            } else if (what < 3) {
                shiftAfter(nowS, Acts.tenths(random, 2, 15));
            } else if (what < 20) {
                shiftAfter(nowS, Acts.tenths(random, -0.8, 1.2));
            }
        }

        /** Everything not yet begun starts earlier or later; never before now or the end of the figure being flown. */
        private void shiftAfter(double nowS, double byS) {
            double leastS = nowS;
            List<Slot> shifted = new ArrayList<>();
            for (Slot slot : slots) {
                if (slot.startS() <= nowS) {
                    shifted.add(slot);
                    leastS = Math.max(leastS, slot.endS());
                    continue;
                }
                double startS = Math.round(Math.max(slot.startS() + byS, leastS) * 10) / 10.0;
                double moveS = startS - slot.startS();
                double endS = slot.endS() + moveS;
                shifted.add(new Slot(
                        slot.figureId(), startS, endS, slot.endLowS() + moveS, slot.endHighS() + moveS, slot.quiets()));
                leastS = endS;
            }
            slots = shifted;
        }

        private void finishSpeaking(double nowS) {
            if (speaking != null && speakingEndS <= nowS) {
                saidIds.add(speaking.remarkId());
                speaking = null;
            }
        }

        private void replan(double nowS) {
            double breathedS = said.isEmpty() || speaking != null
                    ? nowS
                    : Math.max(
                            nowS,
                            said.get(said.size() - 1).endS() + base.rules().breathS());
            PlanRequest request =
                    new PlanRequest(breathedS, slots, base.candidates(), saidIds, plan, speaking, base.rules());
            Plan made = planner.plan(request);
            Judge.check(name + " at " + nowS, request, made);
            plan = Optional.of(made);
        }

        /** Begins what the plan has for the coming half second. */
        private void speak(double nowS) {
            for (Placed next : plan.orElseThrow().placed()) {
                if (speaking == null && next.startS() >= nowS - 1e-9 && next.startS() < nowS + 0.5 - 1e-9) {
                    boolean breath = said.isEmpty()
                            || next.startS() >= said.get(said.size() - 1).endS() + 0.6 - 1e-6;
                    assertThat(breath).as(name + ": a breath before " + next).isTrue();
                    Candidate candidate = Judge.candidate(
                            new PlanRequest(
                                    nowS, slots, base.candidates(), Set.of(), Optional.empty(), null, base.rules()),
                            next.remarkId());
                    speaking = new Speaking(next.remarkId(), next.form(), next.startS(), false);
                    speakingEndS = next.endS();
                    said.add(new Utterance(candidate, next.startS(), next.endS()));
                    checkCall(next);
                }
            }
        }

        private void checkCall(Placed next) {
            for (Slot slot : slots) {
                if (next.kind() == RemarkKind.CALL && slot.figureId().equals(next.figureId())) {
                    lateCalls += next.endS() > slot.startS() - 1 + 0.05 + 1e-6 ? 1 : 0;
                }
            }
        }
    }

    @Test
    void nothingOverlapsNoCallIsLateAndEveryDutyIsSaidOrReported() {
        for (int seed = 0; seed < 15; seed++) {
            Show show = new Show(seed);
            show.run();
            Set<String> ids = new HashSet<>();
            double lastEndS = Double.NEGATIVE_INFINITY;
            for (Utterance u : show.said) {
                assertThat(ids.add(u.candidate().remark().id())).as("said once").isTrue();
                assertThat(u.startS()).as("no overlap").isGreaterThanOrEqualTo(lastEndS);
                lastEndS = u.endS();
            }
            assertThat(show.lateCalls).as("late calls in act " + seed).isZero();
            Set<String> reported = new HashSet<>(ids);
            show.plan.orElseThrow().placed().forEach(p -> reported.add(p.remarkId()));
            show.plan.orElseThrow().unplaced().forEach(u -> reported.add(u.remarkId()));
            for (Candidate candidate : show.base.candidates()) {
                if (candidate.remark().kind() == RemarkKind.DUTY) {
                    assertThat(reported).contains(candidate.remark().id());
                }
            }
        }
    }

    @Test
    void dutiesThatFloatAreSaidInAnActWithRoom() {
        int floatingDuties = 0;
        int said = 0;
        for (int seed = 100; seed < 112; seed++) {
            Show show = new Show(seed);
            show.run();
            for (Candidate candidate : show.base.candidates()) {
                if (candidate.remark().kind() == RemarkKind.DUTY && candidate.figureId() == null) {
                    floatingDuties++;
                    said += show.saidIds.contains(candidate.remark().id()) ? 1 : 0;
                }
            }
        }
        assertThat(said).isEqualTo(floatingDuties).isGreaterThan(20);
    }
}
