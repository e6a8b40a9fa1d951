package crowdline.live.now;

import crowdline.live.state.Course;
import crowdline.live.state.FlownAct;
import crowdline.live.state.LiveState;
import crowdline.show.Act;
import crowdline.show.Show;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The running order at one moment, with when each act is to be expected. All hours by the clocks of the venue.
 *
 * @param acts in the order they are to be flown, cancelled ones in their place
 */
public record DayNow(List<Line> acts) {

    /** What has become of an act. */
    public enum Fate {
        WAITING,
        /** Chosen, and not begun. */
        NEXT,
        FLYING,
        FLOWN,
        CANCELLED
    }

    /**
     * One act.
     *
     * @param slot when its slot begins, with what it was moved by
     * @param laterS by how much it was moved, seconds; negative for earlier
     * @param beginsAt when it began, if it has, or else when it is to be expected; null if it is cancelled
     * @param lastsS how long it took or is expected to take, seconds
     */
    public record Line(
            Act act,
            Fate fate,
            LocalDateTime slot,
            double laterS,
            @Nullable LocalDateTime beginsAt,
            double lastsS) {}

    public DayNow {
        acts = List.copyOf(acts);
    }

    /** When the slot of an act begins on the day. */
    public static LocalDateTime slot(LiveState state, Show show, Act act) {
        return state.day().slot(act.id(), show.slotStart(act));
    }

    /**
     * The reading at a moment.
     *
     * @param show with the acts that were put in
     * @param lastsS how long an act is expected to take, seconds
     */
    public static DayNow of(LiveState state, Show show, ToDoubleFunction<Act> lastsS, LiveNow now) {
        ZoneId zone = show.venue().timeZone();
        LocalDateTime here = LocalDateTime.ofInstant(now.wall(), zone);
        List<Line> lines = new ArrayList<>();
        LocalDateTime free = null;
        for (String id : state.runningOrder()) {
            Act act = show.act(id).orElse(null);
            if (act == null) {
                continue;
            }
            Line line = line(state, show, act, lastsS.applyAsDouble(act), now, here, free);
            lines.add(line);
            LocalDateTime begins = line.beginsAt();
            if (begins != null) {
                LocalDateTime ends = later(begins, line.lastsS());
                LocalDateTime earliest = line.fate() == Fate.FLYING && ends.isBefore(here) ? here : ends;
                free = free == null || earliest.isAfter(free) ? earliest : free;
            }
        }
        return new DayNow(lines);
    }

    private static Line line(
            LiveState state,
            Show show,
            Act act,
            double lastsS,
            LiveNow now,
            LocalDateTime here,
            @Nullable LocalDateTime free) {
        Course course = state.course();
        double laterS = state.day().laterS(act.id());
        LocalDateTime slot = slot(state, show, act);
        boolean isChosen = act.id().equals(state.actId());
        Double startedAtS = course.actStartedAtS();
        if (isChosen && course.inTheAir() && startedAtS != null) {
            Double lateS = now.lateS();
            return new Line(
                    act,
                    Fate.FLYING,
                    slot,
                    laterS,
                    later(here, startedAtS - now.nowS()),
                    lastsS + (lateS == null ? 0 : lateS));
        }
        if (state.day().isCancelled(act.id())) {
            return new Line(act, Fate.CANCELLED, slot, laterS, null, lastsS);
        }
        if (state.flown(act.id()) && !(isChosen && course.isWaiting())) {
            FlownAct last = course.flownActs().stream()
                    .filter(flown -> flown.actId().equals(act.id()))
                    .reduce((before, after) -> after)
                    .orElseThrow();
            return new Line(
                    act,
                    Fate.FLOWN,
                    slot,
                    laterS,
                    later(here, last.startedAtS() - now.nowS()),
                    last.endedAtS() - last.startedAtS());
        }
        LocalDateTime expected = slot.isBefore(here) ? here : slot;
        return new Line(
                act,
                isChosen ? Fate.NEXT : Fate.WAITING,
                slot,
                laterS,
                free != null && free.isAfter(expected) ? free : expected,
                lastsS);
    }

    private static LocalDateTime later(LocalDateTime from, double seconds) {
        return from.plusNanos(Math.round(seconds * 1e9));
    }
}
