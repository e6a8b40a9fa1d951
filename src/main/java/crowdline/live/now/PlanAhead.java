package crowdline.live.now;

import crowdline.flight.moment.FigureMoments;
import crowdline.live.state.Course;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.RemarkEntry;
import crowdline.patter.Candidate;
import crowdline.patter.Gap;
import crowdline.patter.PatterRules;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Slot;
import crowdline.patter.Speaking;
import crowdline.patter.SpokenLength;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.Voices;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Turns the running show at one moment into the question what to say when. */
public final class PlanAhead {
    /** So long before its slot an act is first talked about, seconds. Tuned: a welcome and what the gaps hold. */
    static final double TALK_BEFORE_S = 180;
    /** An act further off than this is on another day, seconds; when its figures begin is not yet planned for. */
    private static final double ANOTHER_DAY_S = 86_400;
    /** Shortest a text counts for, seconds: a word. */
    private static final double LEAST_S = 0.2;

    private final Show show;
    private final Afterwards afterwards;
    private final Shortened shortened;
    private final GapAhead gaps;
    private final Voices voices;
    private final Introduction introduction;
    /** Said once, it is not said again on that day, whatever the act. */
    private final Set<String> onceADay = new HashSet<>();

    private final Set<String> duties = new HashSet<>();

    /** @param voices how long remarks take */
    public PlanAhead(Show show, Voices voices) {
        this.show = show;
        afterwards = new Afterwards(show);
        shortened = new Shortened(show);
        gaps = new GapAhead(show, remark -> candidate(remark, null));
        this.voices = voices;
        introduction = new Introduction(
                (remark, form) -> length(remark, form == RemarkForm.SHORT).seconds());
        Duties.in(show).forEach(r -> duties.add(r.id()));
        show.everyRemark()
                .filter(r -> !duties.contains(r.id()))
                .filter(r -> r.once() || r.kind() == RemarkKind.FILLER)
                .forEach(r -> onceADay.add(r.id()));
    }

    /** True if what became of a remark counts for the whole day, and not only for the act. */
    public boolean isOfTheDay(String remarkId) {
        return onceADay.contains(remarkId) || duties.contains(remarkId);
    }

    /**
     * What to plan at this moment.
     *
     * @param times of the variant being flown
     * @param previous the plan on the screen, if any
     */
    public PlanRequest request(LiveState state, LiveNow now, ActTimes times, Optional<Plan> previous) {
        return request(state, now, times, previous, Set.of(), 0);
    }

    /**
     * The same, knowing what stood on the screen in its time, and where the aircraft is.
     *
     * @param aired ids of remarks taken to be said though no key said so
     * @param behindS how much later the moments of the figure being flown come than by its clock, seconds
     */
    public PlanRequest request(
            LiveState state, LiveNow now, ActTimes times, Optional<Plan> previous, Set<String> aired, double behindS) {
        Act act = Optional.ofNullable(state.actId()).flatMap(show::act).orElse(null);
        Set<String> done = done(state, now);
        done.addAll(aired);
        done.addAll(shortened.untrue(act, state.course()));
        List<Slot> slots = List.of();
        if (act != null) {
            slots = slots(act, now, times, behindS, NextStart.shiftS(state, now, callRoomS(act, now, done)));
        }
        boolean beforeTalk = beforeTalk(state, now);
        Gap gap = gaps.of(state, now, beforeTalk || state.phase() instanceof Phase.ActDone);
        List<Candidate> candidates = beforeTalk
                ? Duties.in(show).map(r -> candidate(r, null)).toList()
                : candidates(
                        act,
                        slots,
                        leftBehind(act, state.course()),
                        afterwards.ofJustFlown(act, state.course()),
                        false);
        return new PlanRequest(
                now.nowS(),
                slots,
                gap == null ? candidates : without(gap.loose(), candidates),
                done,
                previous,
                speaking(act, state, now, done, previous),
                gap == null
                        ? PatterRules.DEFAULT
                        : PatterRules.DEFAULT.withOpenEnd(
                                Math.max(PatterRules.DEFAULT.openEndS(), gap.endS() - now.nowS())),
                gap);
    }

    /** The whole act from its start, as on paper: nothing said, nothing dropped. */
    public PlanRequest wholeAct(Act act, ActTimes times) {
        List<Slot> slots = times.figures().stream()
                .map(t -> Slot.of(t, quiets(act, t.figureId())))
                .toList();
        double startS = slots.isEmpty() ? 0 : slots.get(0).startS();
        return new PlanRequest(
                startS - PatterRules.DEFAULT.callStartsAtMostBeforeS(),
                slots,
                candidates(act, slots, List.of(), List.of(), true),
                Set.of(),
                Optional.empty(),
                null,
                PatterRules.DEFAULT);
    }

    private @Nullable Speaking speaking(
            @Nullable Act act, LiveState state, LiveNow now, Set<String> done, Optional<Plan> previous) {
        Speaking taken = state.talk().speaking();
        return taken != null
                ? taken
                : introduction.due(act, state, now, done, previous).orElse(null);
    }

    /** What is told when there is quiet for it is not told at once. */
    private static List<Candidate> without(List<Candidate> loose, List<Candidate> candidates) {
        return candidates.stream().filter(c -> !loose.contains(c)).toList();
    }

    /** Long before an act nothing is said of it, or what is for its gaps would be gone when it comes. */
    private static boolean beforeTalk(LiveState state, LiveNow now) {
        Double toSlotS = now.toSlotS();
        return state.talk().speaking() == null && toSlotS != null && toSlotS > TALK_BEFORE_S;
    }

    /** What the calls of the next figure that are still to be said need before it. */
    private double callRoomS(Act act, LiveNow now, Set<String> done) {
        PatterRules rules = PatterRules.DEFAULT;
        return now.upcoming().stream()
                .limit(1)
                .flatMap(next -> act.figure(next.figureId()).stream())
                .flatMap(figure -> figure.remarks().stream())
                .filter(r -> r.kind() == RemarkKind.CALL && !done.contains(r.id()))
                .mapToDouble(r -> length(r, false).seconds() + rules.callEndsAtLeastBeforeS() + 2 * rules.spareS())
                .max()
                .orElse(0);
    }

    private static List<Slot> slots(Act act, LiveNow now, ActTimes times, double behindS, double shiftS) {
        List<Slot> slots = new ArrayList<>();
        FigureNow figure = now.figure();
        if (figure != null) {
            double startS = now.nowS() - figure.timeInS();
            double endS = now.nowS() + figure.leftS();
            FigureTime time = time(times, figure.figureId());
            double lowS = time == null ? endS : Math.max(now.nowS(), startS + time.lowS());
            double highS = time == null ? endS : startS + time.highS();
            slots.add(new Slot(
                    figure.figureId(),
                    startS,
                    endS,
                    Math.min(lowS, endS),
                    Math.max(highS, endS),
                    quiets(act, figure.figureId()),
                    time == null
                            ? FigureMoments.timed(endS - startS)
                            : time.moments().later(behindS)));
        }
        for (Upcoming ahead : now.upcoming()) {
            Double inS = ahead.inS();
            FigureTime time = time(times, ahead.figureId());
            if (inS != null && inS < ANOTHER_DAY_S && time != null) {
                slots.add(Slot.of(time.startingAt(now.nowS() + inS + shiftS), quiets(act, ahead.figureId())));
            }
        }
        return slots;
    }

    private static @Nullable FigureTime time(ActTimes times, String figureId) {
        return times.figures().stream()
                .filter(t -> t.figureId().equals(figureId))
                .findFirst()
                .orElse(null);
    }

    private static List<Quiet> quiets(Act act, String figureId) {
        return act.figure(figureId).map(Figure::quiets).orElse(List.of());
    }

    /**
     * Duties of figures that are over or dropped: they must be said all the same, wherever there is time. Those of the
     * figure being flown are among them, but belong to its slot first.
     */
    private static List<Remark> leftBehind(@Nullable Act act, Course course) {
        if (act == null) {
            return List.of();
        }
        List<String> order = course.idsAsFlown();
        int place = course.placeOf(course.position());
        return order.stream()
                .filter(id -> order.indexOf(id) <= place || course.droppedIds().contains(id))
                .flatMap(id -> act.figure(id).stream())
                .flatMap(figure -> figure.remarks().stream())
                .filter(r -> r.kind() == RemarkKind.DUTY)
                .toList();
    }

    /**
     * @param waited what waited for the figure before the first slot
     * @param toTheEnd true for the whole act and nothing but it: with what the last figure leaves, though no figure comes after
     *     it, and without what is said only between acts
     */
    private List<Candidate> candidates(
            @Nullable Act act, List<Slot> slots, List<Remark> leftBehind, List<Remark> waited, boolean toTheEnd) {
        Map<String, Candidate> all = new LinkedHashMap<>();
        List<Remark> waiting = waited;
        for (Slot slot : slots) {
            List<Remark> own = act == null
                    ? List.of()
                    : act.figure(slot.figureId()).map(Figure::remarks).orElse(List.of());
            waiting.forEach(r -> put(all, r, slot.figureId()));
            waiting = own.stream().filter(afterwards::waits).toList();
            own.stream().filter(r -> !afterwards.waits(r)).forEach(r -> put(all, r, slot.figureId()));
        }
        if (slots.isEmpty()) {
            waiting.forEach(r -> put(all, r, null));
        } else if (toTheEnd) {
            waiting.forEach(r -> put(all, r, slots.get(slots.size() - 1).figureId()));
        }
        leftBehind.forEach(r -> put(all, r, null));
        if (act != null) {
            act.remarks().forEach(r -> put(all, r, null));
        }
        show.remarks().stream()
                .filter(r -> !toTheEnd
                        || r.kind() != RemarkKind.DUTY
                        || r.dutyTimes().inActs())
                .forEach(r -> put(all, r, null));
        return List.copyOf(all.values());
    }

    private void put(Map<String, Candidate> all, Remark remark, @Nullable String figureId) {
        all.putIfAbsent(remark.id(), candidate(remark, figureId));
    }

    private Candidate candidate(Remark remark, @Nullable String figureId) {
        return new Candidate(
                remark, figureId, length(remark, false), remark.shortText() == null ? null : length(remark, true));
    }

    private SpokenLength length(Remark remark, boolean shortForm) {
        SpokenTime time = voices.time(remark, shortForm);
        double seconds = Math.max(LEAST_S, time.seconds());
        return new SpokenLength(
                seconds, Math.max(LEAST_S / 2, Math.min(time.lowS(), seconds)), Math.max(time.highS(), seconds));
    }

    /**
     * What was said or skipped in this run of the act, what is said once a day and was, and the duties of the day that are
     * not due.
     */
    private Set<String> done(LiveState state, LiveNow now) {
        Set<String> ids = new HashSet<>();
        for (RemarkEntry entry : state.talk().entries()) {
            String id = entry.remarkId();
            if (entry.settles() && !duties.contains(id) && (state.isOfThisRun(entry) || onceADay.contains(id))) {
                ids.add(id);
            }
        }
        Duties.of(show, state, now).stream()
                .filter(d -> !d.wanted())
                .forEach(d -> ids.add(d.remark().id()));
        return ids;
    }
}
