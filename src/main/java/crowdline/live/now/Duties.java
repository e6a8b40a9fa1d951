package crowdline.live.now;

import crowdline.live.now.DutyNow.Told;
import crowdline.live.state.LiveState;
import crowdline.live.state.RemarkEntry;
import crowdline.live.state.Talk;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The duties of the day: one ledger of what was asked for and of what was said, read off the show and the state, so that it
 * is the same after a restart. Duties of an act belong to that act and are not in it.
 */
public final class Duties {
    private final Show show;
    private final LiveState state;
    private final double nowS;
    private final double listenedFromS;
    private final LocalDateTime here;

    private Duties(Show show, LiveState state, LiveNow now) {
        this.show = show;
        this.state = state;
        nowS = now.nowS();
        listenedFromS = Listeners.fromS(show, state, now);
        here = LocalDateTime.ofInstant(now.wall(), show.venue().timeZone());
    }

    /** The remarks that are duties of the day, in the order of the show. */
    public static Stream<Remark> in(Show show) {
        return show.remarks().stream().filter(r -> r.kind() == RemarkKind.DUTY);
    }

    /** How each duty stands at a moment, in the order of the show. */
    public static List<DutyNow> of(Show show, LiveState state, LiveNow now) {
        Duties duties = new Duties(show, state, now);
        return in(show).map(duties::duty).toList();
    }

    /** Each time a remark was said or shown on the day, oldest first; a key that says so of what was just shown is no second time. */
    public static List<Told> told(String remarkId, List<RemarkEntry> entries) {
        List<Told> told = new ArrayList<>();
        for (RemarkEntry entry : entries) {
            boolean said = entry.outcome() == RemarkEntry.Outcome.SAID;
            if (!entry.remarkId().equals(remarkId) || !(said || entry.outcome() == RemarkEntry.Outcome.SHOWN)) {
                continue;
            }
            Told last = told.isEmpty() ? null : told.get(told.size() - 1);
            if (last != null && last.said() != said && entry.endedAtS() - last.atS() < Talk.AGAIN_S) {
                told.set(told.size() - 1, new Told(last.atS(), true));
            } else {
                told.add(new Told(entry.endedAtS(), said));
            }
        }
        return told;
    }

    private DutyNow duty(Remark remark) {
        DutyTimes asked = remark.dutyTimes();
        List<Told> told = told(remark.id(), state.talk().entries());
        int missing = asked.times() - told.size();
        if (missing <= 0) {
            return new DutyNow(remark, told, DutyNow.State.DONE, null, null, false);
        }
        if (isOver(asked.beforeAct(), true)) {
            return new DutyNow(remark, told, DutyNow.State.MISSED, null, null, false);
        }
        Double lastS = lastS(asked);
        Double untilS = lastS == null ? null : Double.valueOf(lastS - (missing - 1) * asked.apartS());
        if (asked.afterAct() != null && show.act(asked.afterAct()).isPresent() && !isOver(asked.afterAct(), false)) {
            return new DutyNow(remark, told, DutyNow.State.LATER, null, untilS, false);
        }
        // An hour that was given is kept, whenever the first act is.
        double heardS = untilS == null ? listenedFromS : Math.min(listenedFromS, untilS - Listeners.BEFORE_S);
        double againS = told.isEmpty()
                ? heardS
                : Math.max(heardS, told.get(told.size() - 1).atS() + asked.apartS());
        if (nowS < againS) {
            return new DutyNow(remark, told, DutyNow.State.LATER, againS, untilS, false);
        }
        boolean hasTime = asked.inActs() || !state.course().inTheAir();
        return new DutyNow(
                remark,
                told,
                untilS != null && nowS > untilS ? DutyNow.State.OVERDUE : DutyNow.State.DUE,
                null,
                untilS,
                hasTime && !isPutOff(remark, told));
    }

    /** Left out by a key since it was last said: not again in the same run of the act. */
    private boolean isPutOff(Remark remark, List<Told> told) {
        double sinceS = told.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : told.get(told.size() - 1).atS();
        return state.talk().entries().stream()
                .anyMatch(e -> e.remarkId().equals(remark.id())
                        && e.outcome() == RemarkEntry.Outcome.SKIPPED
                        && e.endedAtS() >= sinceS
                        && state.isOfThisRun(e));
    }

    /** When the last of all times is asked for at the latest, on the session's scale, or null. */
    private @Nullable Double lastS(DutyTimes asked) {
        Double lastS = asked.by() == null ? null : Double.valueOf(inSession(show.onTheDay(asked.by())));
        Act before =
                asked.beforeAct() == null ? null : show.act(asked.beforeAct()).orElse(null);
        if (before != null && !state.day().isCancelled(before.id())) {
            double slotS = inSession(DayNow.slot(state, show, before));
            lastS = lastS == null ? slotS : Math.min(lastS, slotS);
        }
        return lastS;
    }

    private double inSession(LocalDateTime at) {
        return nowS + Duration.between(here, at).toMillis() / 1000.0;
    }

    /**
     * True if an act is over, or has begun. A cancelled one counts as both once an act behind it has begun, or none is left
     * to come.
     */
    private boolean isOver(@Nullable String actId, boolean orBegun) {
        if (actId == null) {
            return false;
        }
        if (orBegun ? state.hasBegun(actId) : state.flown(actId)) {
            return true;
        }
        if (!state.day().isCancelled(actId)) {
            return false;
        }
        List<String> from = state.day().from(actId);
        return from.stream().anyMatch(state::hasBegun)
                || state.runningOrder().stream()
                        .allMatch(id -> state.flown(id) || state.day().isCancelled(id));
    }
}
