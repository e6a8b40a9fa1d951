package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Chooses what to say when.
 *
 * <p><b>What is decided.</b> A plan is a set of remarks, each at most once, each in one form with one start, counted in
 * tenths of a second, such that
 *
 * <ul>
 *   <li>no two overlap, and a {@linkplain PatterRules#breathS() breath} lies between any two; none overlaps a quiet;
 *   <li>none starts before now, nor before what is being said is over and a breath taken; what is being said is over, at
 *       the latest, when a call must begin;
 *   <li>a call ends from {@link PatterRules#callEndsAtMostBeforeS()} to {@link PatterRules#callEndsAtLeastBeforeS()}
 *       before its figure and starts at most {@link PatterRules#callStartsAtMostBeforeS()} before it;
 *   <li>any other remark of a figure starts at its earliest time or the figure's start, and ends by its latest time and
 *       at most {@link PatterRules#runPastS()} past the figure's end; its own times only ever narrow its window; one
 *       without an end of its own runs no further past the figure than half of its length, unless it begins with its window;
 *   <li>remarks of figures come in the order of figures; within a figure as written, the call before what is said of the
 *       figure once it flies;
 *   <li>a remark tied to a moment of its figure has its times against that, begins at most
 *       {@link PatterRules#pastMomentS()} after it unless it has an end of its own, and comes in the order of moments;
 *   <li>no duty, fact or filler overlaps the stretch around a moment worth watching, unless it is tied to a moment itself;
 *   <li>once a figure that is near has been spoken of, nothing more is said of those before it;
 *   <li>a remark that was not on the previous plan in the same form lies {@link PatterRules#spareS()} inside every edge
 *       that may drift: its window's, a quiet's, the far end of the plan. One that was there may also stay exactly where
 *       it was, as long as the rules above allow it. A call, a duty, and a remark with its own latest time may use the
 *       whole window if they fit no other way.
 * </ul>
 *
 * <p><b>What is best.</b> Among all such plans the greatest sum of worths; {@link Worth} says what counts how much.
 * {@link Plan#provenBest()} tells whether that was shown or the search was cut short; up to about ten floating remarks it
 * is shown in practice, beyond that it depends. Fillers take no part in it: they go into what is left over afterwards
 * ({@link Fillers}).
 *
 * <p><b>What stays.</b> Of plans worth the same, the one already on the screen is kept; starts stay where they are as
 * long as the rules allow. In a plan that is new, duties that float come as early as they can at no loss, for an act may
 * be cut short.
 */
public final class Planner {
    public Plan plan(PlanRequest request) {
        Placed speaking = speaking(request);
        Horizon horizon = Horizon.of(request, speaking);
        Workload work = Workload.of(request, horizon);
        Search.Result result = Search.improve(work, known(work, request));
        Sequence sequence =
                result.sequence().filled().dutiesEarly(Tick.at(request.rules().spareS()));
        List<Placement.Timed> timed = Placement.of(sequence, work);

        Gaps left = new Gaps(horizon, horizon.closed(), work.breath());
        timed.forEach(t -> left.take(t.start(), t.end()));
        List<Fillers.Filled> fillers = new ArrayList<>();
        Gap gap = request.gap();
        if (gap != null) {
            fillers.addAll(GapTalk.into(request, gap, left, talk(timed, speaking)));
            left.take(Tick.up(request.nowS()), Tick.at(gap.endS()));
        }
        fillers.addAll(Fillers.into(left, request, fillers));

        List<Placed> placed = new ArrayList<>();
        Tightness tightness = new Tightness(request, timed);
        for (Placement.Timed t : timed) {
            placed.add(placed(t.step().item().candidate(), t.step().choice().form(), t.start(), t.end(), tightness));
        }
        for (Fillers.Filled f : fillers) {
            placed.add(placed(f.candidate(), f.form(), f.start(), f.end(), tightness));
        }
        Reasons reasons = new Reasons(request, horizon, placed);
        placed.sort(Comparator.comparingDouble(Placed::startS));
        if (speaking != null) {
            placed.add(0, speaking);
        }
        double talkS = placed.stream()
                .mapToDouble(p -> p.endS() - Math.max(p.startS(), Math.min(p.endS(), request.nowS())))
                .sum();
        double wholeS = Math.max(0, Tick.seconds(horizon.end()) - request.nowS());
        return new Plan(
                placed, unplaced(request, placed, reasons), Math.max(0, wholeS - talkS), talkS, result.provenBest());
    }

    private static List<Starts.Stretch> talk(List<Placement.Timed> timed, @Nullable Placed speaking) {
        List<Starts.Stretch> talk = new ArrayList<>();
        timed.forEach(t -> talk.add(new Starts.Stretch(t.start(), t.end())));
        if (speaking != null) {
            talk.add(new Starts.Stretch(Tick.at(speaking.startS()), Tick.up(speaking.endS())));
        }
        return talk;
    }

    /** The best plan found without search; where two are worth the same, the one closer to the screen. */
    private static Sequence known(Workload work, PlanRequest request) {
        Sequence fresh = InOrder.bestOf(work, work.bound()).filled();
        if (request.previous().isEmpty()) {
            return fresh;
        }
        List<Item> order = InOrder.orderOf(request.previous().get(), work);
        Sequence kept = InOrder.bestOf(work, order).filled();
        return kept.value() >= fresh.value() ? kept : fresh;
    }

    private static @Nullable Placed speaking(PlanRequest request) {
        Speaking speaking = request.speaking();
        if (speaking == null) {
            return null;
        }
        for (Candidate candidate : request.everything().toList()) {
            if (candidate.remark().id().equals(speaking.remarkId())) {
                SpokenLength length = candidate.length(speaking.form());
                double seconds = (length == null ? candidate.full() : length).seconds();
                double saidS = Math.max(request.nowS(), speaking.startedAtS() + seconds);
                double endS = Math.max(
                        speaking.startedAtS(), Math.min(saidS, callFromS(request, speaking.remarkId(), saidS)));
                RemarkKind kind = candidate.remark().kind();
                return new Placed(
                        speaking.remarkId(),
                        candidate.figureId(),
                        kind,
                        speaking.form(),
                        speaking.startedAtS(),
                        endS,
                        false);
            }
        }
        return null;
    }

    /**
     * When what is being said must be over for a call to find its time, seconds; infinite if none comes. Where the call has
     * no time in full, or only its short form leaves time for all that is being said, it is the short form that counts.
     *
     * @param saidS when what is being said would be over by itself
     */
    private static double callFromS(PlanRequest request, String speakingId, double saidS) {
        double fromS = Double.POSITIVE_INFINITY;
        for (Candidate call : request.candidates()) {
            String id = call.remark().id();
            if (call.remark().kind() == RemarkKind.CALL
                    && !id.equals(speakingId)
                    && !request.alreadySaid().contains(id)) {
                for (Slot slot : request.slots()) {
                    if (slot.figureId().equals(call.figureId())) {
                        fromS = Math.min(fromS, callFromS(request, slot, call, saidS));
                    }
                }
            }
        }
        return fromS;
    }

    private static double callFromS(PlanRequest request, Slot slot, Candidate call, double saidS) {
        double full = untilS(request, slot, call.full());
        SpokenLength brief = call.shortForm();
        if (brief == null) {
            return full;
        }
        double inShort = untilS(request, slot, brief);
        boolean shortened = full == Double.POSITIVE_INFINITY || (full < saidS && saidS <= inShort);
        return shortened ? inShort : full;
    }

    /** When all else must be over for a call of this length; infinite if it is too late for that. */
    private static double untilS(PlanRequest request, Slot slot, SpokenLength call) {
        PatterRules rules = request.rules();
        double lastS = slot.startS() - rules.callEndsAtLeastBeforeS() - call.seconds() - Tick.seconds(1);
        return lastS < request.nowS() ? Double.POSITIVE_INFINITY : lastS - rules.breathS() - Tick.seconds(1);
    }

    private static Placed placed(Candidate candidate, RemarkForm form, int start, int end, Tightness tightness) {
        return new Placed(
                candidate.remark().id(),
                candidate.figureId(),
                candidate.remark().kind(),
                form,
                Tick.seconds(start),
                Tick.seconds(end),
                tightness.isTight(candidate, form, start, end));
    }

    private static List<Unplaced> unplaced(PlanRequest request, List<Placed> placed, Reasons reasons) {
        Set<String> done = new HashSet<>(request.alreadySaid());
        placed.forEach(p -> done.add(p.remarkId()));
        Speaking speaking = request.speaking();
        if (speaking != null) {
            done.add(speaking.remarkId());
        }
        return request.candidates().stream()
                .filter(c -> !done.contains(c.remark().id()))
                .map(reasons::of)
                .toList();
    }
}
