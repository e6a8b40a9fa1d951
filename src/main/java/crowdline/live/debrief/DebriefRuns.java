package crowdline.live.debrief;

import crowdline.live.debrief.Debrief.Fate;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.OffPlan;
import crowdline.live.debrief.Debrief.RemarkRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.Debrief.Told;
import crowdline.live.event.Source;
import crowdline.live.state.Course;
import crowdline.live.state.Flown;
import crowdline.live.state.FlownAct;
import crowdline.live.state.LiveState;
import crowdline.live.state.RemarkEntry;
import crowdline.live.state.Sequence;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Sets what was flown beside what was planned, act by act. */
final class DebriefRuns {
    /** Two marks this close are one boundary, not a stretch off the plan, seconds; tuned. */
    private static final double GAP_S = 0.5;

    private final Show show;
    private final LiveState state;
    private final DebriefSources sources;

    DebriefRuns(Show show, LiveState state, DebriefSources sources) {
        this.show = show;
        this.state = state;
        this.sources = sources;
    }

    /** An act that is over or in the air; {@code endS} is null for the latter. */
    private record Flight(
            String actId,
            String variant,
            Sequence sequence,
            double startS,
            @Nullable Double endS,
            List<Flown> flown) {
        List<String> figureIds() {
            return sequence.figureIds();
        }

        boolean dropped(String id) {
            return sequence.droppedIds().contains(id);
        }

        /** True if the act was broken off in a figure flown: it was cut short, and its length says nothing. */
        boolean isCutShort(int index) {
            if (endS == null || index + 1 < flown.size()) {
                return false;
            }
            List<String> order = sequence.idsAsFlown();
            int at = order.indexOf(flown.get(index).figureId());
            return at >= 0 && !sequence.droppedIds().containsAll(order.subList(at + 1, order.size()));
        }

        /**
         * True if the aircraft was found in a figure that does not follow the one before: nobody saw when that ended and
         * when this began.
         */
        boolean isJumpedTo(int index) {
            if (index == 0 || index == flown.size() || flown.get(index).mark() != Source.AIRCRAFT) {
                return false;
            }
            List<String> order = sequence.idsAsFlown();
            int from = order.indexOf(flown.get(index - 1).figureId());
            int to = order.indexOf(flown.get(index).figureId());
            return from >= 0 && to > from + 1 && !sequence.droppedIds().containsAll(order.subList(from + 1, to));
        }

        boolean isTransit(String id) {
            return sequence.isTransit(figureIds().indexOf(id));
        }

        /** True if another figure changed sides with it, and was not dropped. */
        boolean swapped(String id) {
            return !sequence.swappedWith(figureIds().indexOf(id)).isEmpty();
        }
    }

    List<Run> all() {
        List<Flight> flights = new ArrayList<>();
        for (FlownAct act : state.course().flownActs()) {
            flights.add(new Flight(
                    act.actId(), act.variant(), act.sequence(), act.startedAtS(), act.endedAtS(), act.flown()));
        }
        Course course = state.course();
        String actId = course.actId();
        String variant = course.variant();
        Double startS = course.actStartedAtS();
        if (course.inTheAir() && actId != null && variant != null && startS != null) {
            flights.add(new Flight(actId, variant, course.sequence(), startS, null, course.flown()));
        }
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < flights.size(); i++) {
            runs.add(run(flights, i));
        }
        return runs;
    }

    private Run run(List<Flight> flights, int index) {
        Flight flight = flights.get(index);
        Optional<Act> act = show.act(flight.actId());
        Optional<ActTimes> times = sources.times(flight.actId(), flight.variant());
        List<Flight> before = flights.subList(0, index).stream()
                .filter(f -> f.actId().equals(flight.actId()))
                .toList();
        boolean last = flights.subList(index + 1, flights.size()).stream()
                .noneMatch(f -> f.actId().equals(flight.actId()));
        Double endOfLast =
                before.isEmpty() ? null : before.get(before.size() - 1).endS();
        double fromS = endOfLast == null ? Double.NEGATIVE_INFINITY : endOfLast;
        Double endS = flight.endS();
        double toS = last || endS == null ? Double.POSITIVE_INFINITY : endS;
        List<RemarkEntry> entries = state.talk().entries().stream()
                .filter(e -> flight.actId().equals(e.actId()) && e.endedAtS() > fromS && e.endedAtS() <= toS)
                .toList();
        return new Run(
                flight.actId(),
                act.map(Act::title).orElse(flight.actId()),
                flight.variant(),
                before.size() + 1,
                flight.startS(),
                endS,
                times.map(ActTimes::totalS).orElse(null),
                figures(flight, times.orElse(null)),
                offPlan(flight),
                act.map(a -> remarks(a, flight, entries)).orElse(List.of()));
    }

    private List<FigureRun> figures(Flight flight, @Nullable ActTimes times) {
        List<FigureRun> runs = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        List<Flown> flown = flight.flown();
        for (int i = 0; i < flown.size(); i++) {
            Flown figure = flown.get(i);
            FigureTime planned = time(times, figure.figureId());
            // A figure is flown until the next begins, so what lies between the two was planned with it.
            double pauseS = times == null || i + 1 == flown.size()
                    ? 0
                    : times.pauseS(figure.figureId(), flown.get(i + 1).figureId());
            Double endS = figure.endedAtS();
            Source after = i + 1 < flown.size() ? flown.get(i + 1).mark() : Source.HAND;
            boolean again = !seen.add(figure.figureId());
            runs.add(new FigureRun(
                    figure.figureId(),
                    sources.name(flight.actId(), flight.variant(), figure.figureId()),
                    again ? Fate.AGAIN : flight.swapped(figure.figureId()) ? Fate.SWAPPED : Fate.FLOWN,
                    planned == null ? null : planned.startS(),
                    planned == null ? null : planned.durationS() + pauseS,
                    figure.startedAtS() - flight.startS(),
                    endS == null ? null : Math.max(0, endS - figure.startedAtS() - figure.heldS()),
                    figure.heldS(),
                    figure.mark(),
                    endS != null
                            && figure.mark() != Source.CLOCK
                            && after != Source.CLOCK
                            && !flight.isCutShort(i)
                            && !flight.isJumpedTo(i)
                            && !flight.isJumpedTo(i + 1)));
        }
        for (String id : flight.figureIds()) {
            // A way that was not flown goes without saying; the figure it led to says what became of it.
            if (!seen.contains(id) && !flight.isTransit(id) && (flight.endS() != null || flight.dropped(id))) {
                FigureTime planned = time(times, id);
                runs.add(new FigureRun(
                        id,
                        sources.name(flight.actId(), flight.variant(), id),
                        flight.dropped(id) ? Fate.DROPPED : Fate.NOT_FLOWN,
                        planned == null ? null : planned.startS(),
                        planned == null ? null : planned.durationS(),
                        null,
                        null,
                        0,
                        null,
                        false));
            }
        }
        return runs;
    }

    private static @Nullable FigureTime time(@Nullable ActTimes times, String figureId) {
        return times == null
                ? null
                : times.figures().stream()
                        .filter(t -> t.figureId().equals(figureId))
                        .findFirst()
                        .orElse(null);
    }

    /** Off the plan is where one figure has ended and the next has not begun. */
    private static List<OffPlan> offPlan(Flight flight) {
        List<OffPlan> stretches = new ArrayList<>();
        double sinceS = flight.startS();
        for (Flown figure : flight.flown()) {
            gap(stretches, flight, sinceS, figure.startedAtS());
            Double endS = figure.endedAtS();
            sinceS = endS == null ? Double.POSITIVE_INFINITY : endS;
        }
        Double endS = flight.endS();
        if (endS != null) {
            gap(stretches, flight, sinceS, endS);
        }
        return stretches;
    }

    private static void gap(List<OffPlan> stretches, Flight flight, double fromS, double toS) {
        if (toS - fromS > GAP_S) {
            stretches.add(new OffPlan(fromS - flight.startS(), toS - flight.startS()));
        }
    }

    private static List<RemarkRun> remarks(Act act, Flight flight, List<RemarkEntry> entries) {
        List<RemarkRun> all = new ArrayList<>();
        for (String id : flight.figureIds()) {
            for (Remark remark : act.figure(id).map(Figure::remarks).orElse(List.of())) {
                all.add(remark(remark, id, entries.stream()));
            }
        }
        act.remarks().forEach(r -> all.add(remark(r, null, entries.stream())));
        return all;
    }

    /** What the entries say of a remark; having been said outweighs anything else. */
    static RemarkRun remark(Remark remark, @Nullable String figureId, Stream<RemarkEntry> entries) {
        List<RemarkEntry> own =
                entries.filter(e -> e.remarkId().equals(remark.id())).toList();
        RemarkEntry best = null;
        for (RemarkEntry entry : own) {
            if (best == null || entry.outcome() == RemarkEntry.Outcome.SAID || (!best.settles() && entry.settles())) {
                best = entry;
            }
        }
        Told told = Told.NOT_MARKED;
        if (best != null) {
            told = switch (best.outcome()) {
                case SAID -> Told.SAID;
                case SKIPPED -> Told.SKIPPED;
                case CUT_SHORT -> Told.CUT_SHORT;
                case SHOWN -> Told.SHOWN;
            };
        }
        return new RemarkRun(
                remark.id(),
                remark.kind(),
                remark.text(),
                figureId,
                told,
                best != null && best.form() == RemarkForm.SHORT,
                best == null ? null : Double.valueOf(best.endedAtS()));
    }
}
