package crowdline.live.state;

import java.util.ArrayList;
import java.util.List;

/** Takes back the last boundary, with the clock as it would be had it never been marked. */
final class StepBack {
    private StepBack() {}

    static Turn from(Course course, double atS) {
        List<Flown> flown = course.flown();
        if (course.phase() instanceof Phase.ActDone done) {
            List<FlownAct> acts = new ArrayList<>(course.flownActs());
            acts.remove(acts.size() - 1);
            return back(course.withFlownActs(acts), flown.size(), done.endedAtS(), atS);
        }
        if (!course.inTheAir()) {
            return new Turn.No("There is no figure to go back to.");
        }
        if (course.phase() instanceof Phase.OffPlan) {
            return flown.isEmpty() ? notStarted(course) : reopened(course, flown.get(flown.size() - 1), atS);
        }
        double startS = flown.get(flown.size() - 1).startedAtS();
        return back(course.withLastFlown(null), flown.size() - 1, startS, atS);
    }

    /** Back to the last of {@code count} flown figures, or off the plan after it if it ended before {@code boundaryS}. */
    private static Turn back(Course course, int count, double boundaryS, double atS) {
        if (count == 0) {
            return course.phase() instanceof Phase.ActDone
                    ? new Turn.To(course.withPhase(new Phase.OffPlan(-1, startOf(course, boundaryS))))
                    : notStarted(course);
        }
        Flown last = course.flown().get(count - 1);
        Double endS = last.endedAtS();
        if (endS != null && endS < boundaryS) {
            int index = course.figureIds().indexOf(last.figureId());
            return new Turn.To(course.withPhase(new Phase.OffPlan(index, endS)));
        }
        return reopened(course, last, atS);
    }

    private static double startOf(Course course, double otherwiseS) {
        Double startS = course.actStartedAtS();
        return startS == null ? otherwiseS : startS;
    }

    private static Turn reopened(Course course, Flown last, double atS) {
        int index = course.figureIds().indexOf(last.figureId());
        if (index < 0) {
            return new Turn.No("The figure before is not in this variant: press V for the other variant first.");
        }
        Phase flying = new Phase.Flying(index, last.startedAtS(), last.heldS(), Math.max(atS, last.startedAtS()));
        return new Turn.To(course.withLastFlown(last.goesOn()).withPhase(flying));
    }

    private static Turn notStarted(Course course) {
        return new Turn.To(course.withFlown(List.of())
                .withActStart(null)
                .withPhase(new Phase.Waiting())
                .withLead(course.lead().startTakenBack()));
    }
}
