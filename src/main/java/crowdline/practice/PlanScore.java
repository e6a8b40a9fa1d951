package crowdline.practice;

import crowdline.live.state.LiveState;
import crowdline.practice.Change.Kind;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** What the commentator did when the flight did not keep to the plan. */
final class PlanScore {
    /** Whoever sees something coming may be so much before it, seconds; tuned. */
    private static final double FORESEEN_S = 10;
    /** Seen after what was flown is over, it was not seen; so much later it still counts, seconds. */
    private static final double GRACE_S = 2;
    /** Seen within this time it was seen well, seconds: somebody who looks at the sky needs no longer. Tuned. */
    private static final double SOON_S = 8;

    private static final double SOON_INCIDENT_S = 6;
    private static final double IN_STEP_S = 3;

    private final PracticeFlight flight;
    private final PracticeRun run;

    PlanScore(PracticeFlight flight, PracticeRun run) {
        this.flight = flight;
        this.run = run;
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        flight.changes().stream()
                .filter(c -> c.kind() != Kind.GUSTY && run.hadTimeAfter(c.seenS()))
                .forEach(c -> lines.add(line(c)));
        OptionalDouble opened = run.incidentS();
        double incidentS = flight.change(Kind.INCIDENT).map(Change::seenS).orElse(Double.POSITIVE_INFINITY);
        if (opened.isPresent() && opened.getAsDouble() < incidentS) {
            lines.add(new Line(About.PLAN, false, "You opened the incident page though nothing had gone wrong."));
        }
        return List.copyOf(lines);
    }

    private Line line(Change change) {
        double seenS = change.seenS();
        return switch (change.kind()) {
            case LATE -> begun("late", flight.startS() - flight.slotS());
            case EARLY -> begun("early", flight.slotS() - flight.startS());
            case GUSTY -> throw new IllegalArgumentException("gusts ask for nothing");
            case DROPPED -> dropped(change);
            case SWAPPED -> swapped(change);
            case UNPLANNED ->
                seen(
                        PracticeWords.front(change.name()) + " was not in the plan",
                        seenS,
                        end(OtherOrder.UNPLANNED_ID),
                        s -> PracticeRun.offPlan(s) || PracticeRun.held(s));
            case HOLD ->
                seen(
                        "The aircraft went round and waited",
                        seenS,
                        end(OtherOrder.HOLD_ID),
                        s -> PracticeRun.held(s) || PracticeRun.offPlan(s));
            case BREAK_OFF ->
                seen(
                        PracticeWords.front(change.name()) + " was broken off",
                        seenS,
                        Double.POSITIVE_INFINITY,
                        s -> PracticeRun.offPlan(s) || PracticeRun.over(s) || PracticeRun.held(s));
            case INCIDENT -> incident(seenS);
        };
    }

    private Line begun(String how, double byS) {
        String what = "The act began " + Math.round(byS) + " s " + how;
        OptionalDouble begun = run.begunS();
        if (begun.isEmpty()) {
            return new Line(About.PLAN, false, what + "; you never began it.");
        }
        double laterS = begun.getAsDouble() - flight.startS();
        // Where the act begins with a way to its first figure, nobody sees where the way begins.
        double untilS = flight.pieces().stream()
                .filter(p -> p.kind() != Piece.Kind.WAY)
                .findFirst()
                .orElseThrow()
                .fromS();
        return new Line(
                About.PLAN,
                laterS >= -IN_STEP_S && begun.getAsDouble() <= untilS + IN_STEP_S,
                what + "; you began it "
                        + (Math.round(Math.abs(laterS)) == 0 ? "with it." : PracticeWords.against(laterS) + " that."));
    }

    private Line dropped(Change change) {
        String id = change.figureIds().get(0);
        Piece next = flight.pieces().stream()
                .filter(p -> p.kind() == Piece.Kind.FIGURE && p.fromS() >= change.seenS())
                .findFirst()
                .orElseThrow();
        return seen(
                PracticeWords.front(change.name()) + " was dropped",
                change.seenS(),
                next.toS() + GRACE_S,
                s -> s.course().droppedIds().contains(id)
                        || next.figureId().equals(s.figureId())
                        || PracticeRun.offPlan(s));
    }

    private Line swapped(Change change) {
        String first = change.figureIds().get(0);
        return seen(
                PracticeWords.capital(change.name()) + " changed places",
                change.seenS(),
                end(first),
                s -> first.equals(s.figureId())
                        || !s.course()
                                .swappedWith(s.course().figureIds().indexOf(first))
                                .isEmpty()
                        || PracticeRun.offPlan(s));
    }

    private double end(String id) {
        return flight.pieces().stream()
                        .filter(p -> p.figureId().equals(id))
                        .findFirst()
                        .orElseThrow()
                        .toS()
                + GRACE_S;
    }

    private Line seen(String what, double seenS, double untilS, Predicate<LiveState> done) {
        OptionalDouble at = run.first(seenS - FORESEEN_S, untilS, done);
        if (at.isEmpty()) {
            return new Line(About.PLAN, false, what + "; you did not see it.");
        }
        double afterS = at.getAsDouble() - seenS;
        return new Line(About.PLAN, afterS <= SOON_S, what + "; you saw it " + PracticeWords.after(afterS) + ".");
    }

    private Line incident(double seenS) {
        String what = "The aircraft went down out of sight; ";
        OptionalDouble at = run.first(seenS, Double.POSITIVE_INFINITY, LiveState::incidentOpen);
        if (at.isEmpty()) {
            return new Line(About.PLAN, false, what + "you did not open the incident page (F12).");
        }
        double afterS = at.getAsDouble() - seenS;
        return new Line(
                About.PLAN,
                afterS <= SOON_INCIDENT_S,
                what + "you opened the incident page " + PracticeWords.after(afterS) + ".");
    }
}
