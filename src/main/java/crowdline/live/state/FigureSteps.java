package crowdline.live.state;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** How figures begin and are held. */
final class FigureSteps {
    private FigureSteps() {}

    static Turn next(Course course, FlightEvent event) {
        double atS = event.atS();
        if (event instanceof FlightEvent.NextDropped
                || event instanceof FlightEvent.DropUndone
                || event instanceof FlightEvent.NextSwapped) {
            return OrderSteps.next(course, event);
        }
        if (event instanceof FlightEvent.SteppedBack) {
            return StepBack.from(course, atS);
        }
        if (!course.inTheAir()) {
            return ActSteps.notInTheAir(course);
        }
        if (event instanceof FlightEvent.Stepped) {
            return stepped(course, atS);
        }
        if (event instanceof FlightEvent.ClockAdvanced clock) {
            return clockAdvanced(course, clock);
        }
        if (event instanceof FlightEvent.AircraftSeen seen) {
            return aircraftSeen(course, seen);
        }
        if (event instanceof FlightEvent.AircraftStrayed) {
            return strayed(course, atS);
        }
        if (event instanceof FlightEvent.Held) {
            return course.phase() instanceof Phase.Flying
                    ? new Turn.To(stopped(course, atS))
                    : new Turn.No(
                            course.phase() instanceof Phase.Held
                                    ? "The act is already on hold: press H to carry on."
                                    : "Off the plan there is no clock to stop.");
        }
        if (event instanceof FlightEvent.Released) {
            return released(course, atS);
        }
        if (event instanceof FlightEvent.WentOffPlan) {
            return offPlan(course, atS);
        }
        if (event instanceof FlightEvent.CameBack back) {
            return course.phase() instanceof Phase.OffPlan
                    ? jumped(course, back.index(), atS, Source.HAND)
                    : new Turn.No("The act is not off the plan.");
        }
        return new Turn.No("That cannot be done now.");
    }

    private static Turn stepped(Course course, double atS) {
        if (course.phase() instanceof Phase.Flying flying && marksSameBoundary(course, flying, atS)) {
            return new Turn.To(sameBoundary(course, flying, atS));
        }
        OptionalInt next = course.nextIndex();
        return next.isPresent()
                ? new Turn.To(begun(course, next.getAsInt(), atS, Source.HAND))
                : ActSteps.ended(course, atS);
    }

    private static boolean marksSameBoundary(Course course, Phase.Flying flying, double atS) {
        Flown last = course.flown().get(course.flown().size() - 1);
        // A start by the aircraft is known some seconds after it; the hand answers what the screen has just said.
        double markedS = course.begunByAircraft() ? flying.confirmedAtS() : flying.startedAtS();
        return last.mark() != Source.HAND && atS - markedS < Live.SAME_BOUNDARY_S;
    }

    private static Course sameBoundary(Course course, Phase.Flying flying, double atS) {
        int count = course.flown().size();
        Flown last = course.flown().get(count - 1);
        double startS = atS;
        List<Flown> flown = new ArrayList<>(course.flown());
        if (count > 1) {
            Flown before = flown.get(count - 2);
            startS = Math.max(atS, before.startedAtS());
            Double beforeEndS = before.endedAtS();
            // Off the plan in between, the figure before ended on its own.
            if (beforeEndS != null && beforeEndS >= last.startedAtS()) {
                flown.set(count - 2, before.ended(startS, before.heldS()));
            }
        }
        flown.set(count - 1, new Flown(last.figureId(), startS, last.heldS(), null, Source.HAND));
        Course right = course.begunByAircraft() ? course.withActStart(startS) : course;
        return right.withFlown(flown).withPhase(new Phase.Flying(flying.index(), startS, flying.heldS(), startS));
    }

    private static Turn clockAdvanced(Course course, FlightEvent.ClockAdvanced event) {
        if (course.lead().now() != Source.CLOCK) {
            return new Turn.No("The clock is not being followed now.");
        }
        OptionalInt next = course.nextIndex();
        if (!(course.phase() instanceof Phase.Flying flying)
                || next.isEmpty()
                || next.getAsInt() != event.index()
                || event.atS() < flying.startedAtS()) {
            return new Turn.No("The clock's step does not fit where the act is now.");
        }
        return new Turn.To(begun(course, event.index(), event.atS(), Source.CLOCK));
    }

    private static Turn aircraftSeen(Course course, FlightEvent.AircraftSeen event) {
        if (course.lead().now() != Source.AIRCRAFT) {
            return new Turn.No(Refusals.NOT_FOLLOWED);
        }
        if (course.phase() instanceof Phase.Held) {
            return new Turn.No("The act is on hold: press H to carry on.");
        }
        return jumped(
                OrderSteps.isPassedOver(course, event) ? course.withMoved(event.index(), course.position()) : course,
                event.index(),
                event.atS(),
                Source.AIRCRAFT);
    }

    private static Turn strayed(Course course, double atS) {
        if (course.lead().now() != Source.AIRCRAFT) {
            return new Turn.No(Refusals.NOT_FOLLOWED);
        }
        return course.phase() instanceof Phase.Held
                ? new Turn.No("The act is on hold: press H to carry on.")
                : offPlan(course, atS);
    }

    private static Turn jumped(Course course, int index, double atS, Source mark) {
        int count = course.figureIds().size();
        if (index >= count) {
            return new Turn.No("This variant has no such figure.");
        }
        List<String> dropped =
                OrderSteps.without(course.droppedIds(), course.figureIds().get(index));
        return new Turn.To(begun(course.withDropped(dropped), index, atS, mark));
    }

    private static Turn released(Course course, double atS) {
        if (!(course.phase() instanceof Phase.Held held)) {
            return new Turn.No("The act is not on hold.");
        }
        double releaseS = Math.max(atS, held.heldSinceS());
        return new Turn.To(course.withPhase(
                new Phase.Flying(held.index(), held.startedAtS(), heldAt(course, releaseS), releaseS)));
    }

    private static Turn offPlan(Course course, double atS) {
        if (course.phase() instanceof Phase.OffPlan) {
            return new Turn.No("The act is already off the plan.");
        }
        double sinceS = notBeforeFigure(course, atS);
        return new Turn.To(figureEnded(course, sinceS).withPhase(new Phase.OffPlan(course.position(), sinceS)));
    }

    /** A figure begins, whatever was before it. */
    static Course begun(Course course, int index, double atS, Source mark) {
        double startS = notBeforeFigure(course, atS);
        return figureEnded(course, startS)
                .plusFlown(new Flown(course.figureIds().get(index), startS, 0, null, mark))
                .withPhase(new Phase.Flying(index, startS, 0, startS));
    }

    /** The current figure, if there is one, ends. */
    static Course figureEnded(Course course, double atS) {
        return course.figureId() == null
                ? course
                : course.withLastFlown(
                        course.flown().get(course.flown().size() - 1).ended(atS, heldAt(course, atS)));
    }

    /** The figure's clock stands still from here; other phases stay. */
    static Course stopped(Course course, double atS) {
        return course.phase() instanceof Phase.Flying flying
                ? course.withPhase(new Phase.Held(
                        flying.index(), flying.startedAtS(), flying.heldS(), notBeforeFigure(course, atS)))
                : course;
    }

    /** The hand, or the aircraft while it was seen, says that the figure on screen is the right one. */
    static Course confirmed(Course course, double atS) {
        return course.phase() instanceof Phase.Flying flying
                ? course.withPhase(new Phase.Flying(
                        flying.index(), flying.startedAtS(), flying.heldS(), Math.max(flying.confirmedAtS(), atS)))
                : course;
    }

    /** The time, or the start of what is being flown if that is later: keys and clock may cross by milliseconds. */
    static double notBeforeFigure(Course course, double atS) {
        if (course.phase() instanceof Phase.Flying flying) {
            return Math.max(atS, flying.startedAtS());
        }
        if (course.phase() instanceof Phase.Held held) {
            return Math.max(atS, held.heldSinceS());
        }
        return course.phase() instanceof Phase.OffPlan off ? Math.max(atS, off.sinceS()) : atS;
    }

    private static double heldAt(Course course, double atS) {
        if (course.phase() instanceof Phase.Held held) {
            return held.heldS() + Math.max(0, atS - held.heldSinceS());
        }
        return course.phase() instanceof Phase.Flying flying ? flying.heldS() : 0;
    }
}
