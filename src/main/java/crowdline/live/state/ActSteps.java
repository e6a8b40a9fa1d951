package crowdline.live.state;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;

/** How acts are chosen, start and end; what happens to single figures is in {@link FigureSteps}. */
final class ActSteps {
    private ActSteps() {}

    static Turn next(Course course, FlightEvent event) {
        if (event instanceof FlightEvent.ActChosen chosen) {
            return chosen(course, chosen);
        }
        if (event instanceof FlightEvent.SourceChosen source) {
            if (course.source() == source.source()) {
                return new Turn.No(
                        course.clockStandsIn()
                                ? "The clock stands in until there is a position again."
                                : alreadyFollowing(course.source()));
            }
            // The figure on screen is right at this moment; the new source starts from here.
            return new Turn.To(FigureSteps.confirmed(course.withLead(Lead.of(source.source())), event.atS()));
        }
        if (event instanceof FlightEvent.AircraftLost lost) {
            return lost(course, lost);
        }
        if (event instanceof FlightEvent.AircraftFound) {
            return course.clockStandsIn()
                    ? new Turn.To(course.withLead(course.lead().standingIn(false)))
                    : new Turn.No("The clock is not standing in for the aircraft.");
        }
        if (course.actId() == null) {
            return new Turn.No(Refusals.NO_ACT_CHOSEN);
        }
        if (event instanceof FlightEvent.VariantChosen variant) {
            return variant(course, variant);
        }
        if (event instanceof FlightEvent.ActStarted) {
            return started(course, event.atS());
        }
        if (event instanceof FlightEvent.AircraftBegan began) {
            return began(course, began);
        }
        if (event instanceof FlightEvent.ActEnded) {
            return course.inTheAir() ? ended(course, event.atS()) : notInTheAir(course);
        }
        return FigureSteps.next(course, event);
    }

    private static String alreadyFollowing(Source source) {
        return switch (source) {
            case HAND -> "The keys are already being followed.";
            case CLOCK -> "The clock is already being followed.";
            case AIRCRAFT -> "The aircraft is already being followed.";
        };
    }

    /** The clock goes on from what the aircraft was last seen to fly; what it says of the time since may be so. */
    private static Turn lost(Course course, FlightEvent.AircraftLost event) {
        if (course.source() != Source.AIRCRAFT || course.clockStandsIn() || !course.inTheAir()) {
            return new Turn.No(Refusals.NOT_FOLLOWED);
        }
        return new Turn.To(FigureSteps.confirmed(course.withLead(course.lead().standingIn(true)), event.seenS()));
    }

    static Turn notInTheAir(Course course) {
        return course.phase() instanceof Phase.Waiting
                ? new Turn.No("The act has not begun: press Space when it does.")
                : new Turn.Over();
    }

    private static Turn chosen(Course course, FlightEvent.ActChosen event) {
        if (course.inTheAir()) {
            return new Turn.No(Refusals.ACT_IN_THE_AIR);
        }
        if (hasTwice(event.figureIds())) {
            return new Turn.No("This variant has a figure in it twice, so it cannot be flown here.");
        }
        Course chosen = new Course(
                event.actId(),
                event.variant(),
                Sequence.planned(event.figureIds(), event.transitIds()),
                event.slotTime(),
                null,
                new Phase.Waiting(),
                Lead.of(course.source()),
                List.of(),
                course.flownActs());
        return new Turn.To(chosen);
    }

    private static Turn variant(Course course, FlightEvent.VariantChosen event) {
        if (!course.inTheAir() && !(course.phase() instanceof Phase.Waiting)) {
            return notInTheAir(course);
        }
        if (hasTwice(event.figureIds())) {
            return new Turn.No("This variant has a figure in it twice, so it cannot be flown here.");
        }
        Course next = course.withVariant(event);
        String figureId = course.figureId();
        if (course.phase() instanceof Phase.Waiting) {
            return new Turn.To(next);
        }
        int index = figureId == null ? -1 : event.figureIds().indexOf(figureId);
        if (index >= 0 && course.phase() instanceof Phase.Flying flying) {
            next = next.withPhase(new Phase.Flying(index, flying.startedAtS(), flying.heldS(), flying.confirmedAtS()));
        } else if (index >= 0 && course.phase() instanceof Phase.Held held) {
            next = next.withPhase(new Phase.Held(index, held.startedAtS(), held.heldS(), held.heldSinceS()));
        } else {
            // What is being flown is not in this variant: off its plan, after the last figure both have.
            double sinceS = course.phase() instanceof Phase.OffPlan off
                    ? off.sinceS()
                    : FigureSteps.notBeforeFigure(course, event.atS());
            next = FigureSteps.figureEnded(course, sinceS)
                    .withVariant(event)
                    .withPhase(new Phase.OffPlan(lastShared(course, event.figureIds()), sinceS));
        }
        return new Turn.To(next);
    }

    private static int lastShared(Course course, List<String> figureIds) {
        for (int i = course.flown().size() - 1; i >= 0; i--) {
            int index = figureIds.indexOf(course.flown().get(i).figureId());
            if (index >= 0) {
                return index;
            }
        }
        return -1;
    }

    private static Turn started(Course course, double atS) {
        if (!(course.phase() instanceof Phase.Waiting)) {
            return course.inTheAir() ? new Turn.No("The act has already begun.") : new Turn.Over();
        }
        Course started = course.withActStart(atS);
        int first = started.nextIndex().orElse(-1);
        Course flying = first >= 0
                ? FigureSteps.begun(started, first, atS, Source.HAND)
                : started.withPhase(new Phase.OffPlan(-1, atS));
        return new Turn.To(flying);
    }

    /** The aircraft begins an act only where it leads, and not again after somebody has said that it was wrong. */
    private static Turn began(Course course, FlightEvent.AircraftBegan event) {
        if (course.inTheAir()) {
            return begunAt(course, event);
        }
        OptionalInt first = course.nextIndex();
        if (!(course.phase() instanceof Phase.Waiting) || first.isEmpty()) {
            return new Turn.No("The act is not waiting for its first figure.");
        }
        if (!course.aircraftMayBegin()) {
            return new Turn.No("The aircraft is not to begin this act.");
        }
        Course flying = FigureSteps.begun(
                course.withActStart(event.sinceS()), first.getAsInt(), event.sinceS(), Source.AIRCRAFT);
        return new Turn.To(FigureSteps.confirmed(flying, event.atS()));
    }

    /** A start that the aircraft told is known better; the hand's word on a boundary stands above it. */
    private static Turn begunAt(Course course, FlightEvent.AircraftBegan event) {
        if (course.source() != Source.AIRCRAFT
                || course.flown().isEmpty()
                || course.flown().stream().anyMatch(f -> f.mark() != Source.AIRCRAFT)) {
            return new Turn.No("The aircraft is not to begin this act.");
        }
        Flown first = course.flown().get(0);
        Double endS = first.endedAtS();
        double sinceS = endS == null ? event.sinceS() : Math.min(event.sinceS(), endS);
        List<Flown> flown = new ArrayList<>(course.flown());
        flown.set(0, new Flown(first.figureId(), sinceS, first.heldS(), endS, Source.AIRCRAFT));
        Course right = course.withFlown(flown).withActStart(sinceS);
        if (flown.size() > 1) {
            return new Turn.To(right);
        }
        if (!(course.phase() instanceof Phase.Flying flying)) {
            return new Turn.No("The first figure is not being flown.");
        }
        return new Turn.To(
                right.withPhase(new Phase.Flying(flying.index(), sinceS, flying.heldS(), flying.confirmedAtS())));
    }

    /** The act over; the course must be in the air. */
    static Turn ended(Course course, double atS) {
        double endS = FigureSteps.notBeforeFigure(course, atS);
        Course over = FigureSteps.figureEnded(course, endS).withPhase(new Phase.ActDone(endS));
        Double startS = over.actStartedAtS();
        String actId = over.actId();
        String variant = over.variant();
        if (startS == null || actId == null || variant == null) {
            return new Turn.No("The act has not begun: press Space when it does.");
        }
        List<FlownAct> acts = new ArrayList<>(over.flownActs());
        acts.add(new FlownAct(actId, variant, over.sequence(), startS, endS, over.flown()));
        return new Turn.To(over.withFlownActs(acts));
    }

    private static boolean hasTwice(List<String> ids) {
        return new HashSet<>(ids).size() < ids.size();
    }
}
