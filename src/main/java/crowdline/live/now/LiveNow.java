package crowdline.live.now;

import crowdline.live.event.SlotTime;
import crowdline.live.state.ClockAdvance;
import crowdline.live.state.Course;
import crowdline.live.state.Durations;
import crowdline.live.state.IncidentSpan;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What can be read off the state at one moment. All times in seconds; {@code nowS} on the session's scale.
 *
 * @param nowS the moment
 * @param figure what is being flown, or null if nothing in the plan is
 * @param offPlanS how long the aircraft has been off the plan, or null if it is not
 * @param upcoming the figures ahead that are not dropped, nearest first
 * @param actTimeS how long the act has been going, or went; null if none has started or the show is over
 * @param lateS how late the current figure is expected to end against the plan with every figure in it, negative when
 *     early; off the plan, how late the next can begin at best; null outside an act
 * @param toSlotS seconds until the chosen act's slot begins on the day, negative when it has begun; null unless an act is chosen, has
 *     not started, and its slot is known
 * @param nextActId what comes after the chosen act in running order, or null
 * @param incidentS how long the incident page has been open, or null
 * @param wall the same moment by the clock on the wall
 */
public record LiveNow(
        double nowS,
        @Nullable FigureNow figure,
        @Nullable Double offPlanS,
        List<Upcoming> upcoming,
        @Nullable Double actTimeS,
        @Nullable Double lateS,
        @Nullable Double toSlotS,
        @Nullable String nextActId,
        @Nullable Double incidentS,
        Instant wall) {
    /** So long before its slot hands lie on the keys, and so long after it an act still comes, seconds; design choices. */
    private static final double SOON_S = 300;

    private static final double LATE_S = 1800;

    public LiveNow {
        upcoming = List.copyOf(upcoming);
    }

    /** Whether the chosen act may begin at any moment, so that the next key may be meant for it. */
    public boolean mayBegin() {
        return toSlotS != null && toSlotS < SOON_S && toSlotS > -LATE_S;
    }

    /**
     * The reading at {@code nowS}, the plan counted from the start of the act.
     *
     * @param wall the same moment by the clock on the wall, for slots
     */
    public static LiveNow of(LiveState state, Durations durations, double nowS, Instant wall) {
        Course course = state.course();
        FigureNow figure = figure(state, durations, nowS);
        Phase phase = course.phase();
        SlotTime slot = course.slot();
        String actId = course.actId();
        Double slotInS = slot == null || actId == null
                ? null
                : Double.valueOf(slot.secondsUntil(nowS, wall) + state.day().laterS(actId));
        Double toSlotS = phase instanceof Phase.Waiting ? slotInS : null;
        double untilNextS = figure != null ? figure.untilNextS() : toSlotS != null ? Math.max(0, toSlotS) : 0;
        boolean known = figure != null || toSlotS != null;
        List<Upcoming> upcoming = upcoming(course, durations, known, untilNextS);
        boolean inAir = course.inTheAir();
        Double startedAtS = course.actStartedAtS();
        Double lateS = null;
        if (inAir && startedAtS != null) {
            lateS = nowS + untilNextS - startedAtS - plannedS(course, durations, course.placeOf(course.position()) + 1);
        }
        return new LiveNow(
                nowS,
                figure,
                phase instanceof Phase.OffPlan off ? Double.valueOf(Math.max(0, nowS - off.sinceS())) : null,
                upcoming,
                actTimeS(course, nowS),
                lateS,
                toSlotS,
                state.nextActId().orElse(null),
                incidentS(state, nowS),
                wall);
    }

    private static @Nullable FigureNow figure(LiveState state, Durations durations, double nowS) {
        Course course = state.course();
        String figureId = course.figureId();
        double clockS;
        boolean held = course.phase() instanceof Phase.Held;
        if (course.phase() instanceof Phase.Flying flying) {
            clockS = nowS - flying.startedAtS() - flying.heldS();
        } else if (course.phase() instanceof Phase.Held h) {
            clockS = Math.min(nowS, h.heldSinceS()) - h.startedAtS() - h.heldS();
        } else {
            return null;
        }
        if (figureId == null) {
            return null;
        }
        double timeInS = Math.max(0, clockS);
        double leftS = durations.secondsOf(course.position()) - timeInS;
        double pauseS = ClockAdvance.pauseS(course, durations);
        return new FigureNow(
                course.position(),
                figureId,
                timeInS,
                Math.max(0, leftS),
                Math.max(0, -leftS - pauseS),
                FigureNow.Pause.at(pauseS, -leftS),
                held,
                ClockAdvance.waitsForHand(state, durations));
    }

    private static List<Upcoming> upcoming(Course course, Durations durations, boolean known, double untilNextS) {
        List<Upcoming> ahead = new ArrayList<>();
        double inS = untilNextS;
        int index = course.nextIndex().orElse(-1);
        while (index >= 0) {
            ahead.add(new Upcoming(index, course.figureIds().get(index), known ? Double.valueOf(inS) : null));
            int next = course.nextIndexAfter(index).orElse(-1);
            inS += durations.secondsOf(index) + (next < 0 ? 0 : durations.pauseS(index, next));
            index = next;
        }
        return ahead;
    }

    /** How long the first figures take, in the order flown, with what lies between them and to the next. */
    private static double plannedS(Course course, Durations durations, int count) {
        List<Integer> order = course.sequence().order();
        double sumS = 0;
        for (int i = 0; i < count; i++) {
            double pauseS = i + 1 < order.size() ? durations.pauseS(order.get(i), order.get(i + 1)) : 0;
            sumS += durations.secondsOf(order.get(i)) + pauseS;
        }
        return sumS;
    }

    private static @Nullable Double incidentS(LiveState state, double nowS) {
        if (!state.incidentOpen()) {
            return null;
        }
        IncidentSpan open = state.incidents().get(state.incidents().size() - 1);
        return Math.max(0, nowS - open.openedAtS());
    }

    private static @Nullable Double actTimeS(Course course, double nowS) {
        Double startS = course.actStartedAtS();
        if (startS == null) {
            return null;
        }
        if (course.phase() instanceof Phase.ActDone done) {
            return done.endedAtS() - startS;
        }
        return course.inTheAir() ? Double.valueOf(Math.max(0, nowS - startS)) : null;
    }
}
