package crowdline.practice;

import crowdline.live.event.Source;
import crowdline.live.state.Flown;
import crowdline.loaded.ShowLookup;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Count;
import crowdline.practice.PracticeScore.Line;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How well the screen kept in step with what was flown. The ways between figures are not asked for: few can see their ends. */
final class StepScore {
    /** A step so near to a figure's beginning is in step, seconds; tuned. */
    private static final double IN_STEP_S = 3;
    /** From so many on they have something in common; tuned. */
    private static final int SEVERAL = 3;

    private final PracticeFlight flight;
    private final PracticeRun run;
    private final @Nullable Act act;

    StepScore(PracticeFlight flight, PracticeRun run, ShowLookup words) {
        this.flight = flight;
        this.run = run;
        act = words.act(flight.actId()).orElse(null);
    }

    /** @param counts takes how many figures were stepped in time */
    List<Line> lines(List<Count> counts) {
        List<Line> lines = new ArrayList<>();
        List<Piece> figures = flight.pieces().stream()
                .filter(p -> p.kind() == Piece.Kind.FIGURE && run.hadTimeAfter(p.fromS()))
                .toList();
        int inStep = 0;
        int early = 0;
        int late = 0;
        for (Piece piece : figures) {
            Optional<Flown> mark = run.mark(piece.figureId(), piece.fromS());
            if (mark.isEmpty() && wasOffPlan(piece)) {
                inStep++;
                continue;
            }
            if (mark.isEmpty()) {
                lines.add(new Line(
                        About.STEPS, false, PracticeWords.front(piece.name()) + " was flown without a step from you."));
                continue;
            }
            double laterS = mark.get().startedAtS() - piece.fromS();
            if (Math.abs(laterS) <= IN_STEP_S) {
                inStep++;
            } else {
                early += laterS < 0 ? 1 : 0;
                late += laterS > 0 ? 1 : 0;
                lines.add(new Line(
                        About.STEPS,
                        false,
                        stepped(mark.get().mark()) + " " + PracticeWords.against(laterS) + " "
                                + PracticeWords.the(piece.name()) + " began."));
            }
        }
        if (!figures.isEmpty()) {
            counts.add(new Count(About.STEPS, inStep, figures.size()));
        }
        boolean all = inStep == figures.size();
        lines.add(
                0,
                new Line(
                        About.STEPS,
                        all,
                        all
                                ? "You were in step with every figure, within 3 s of its start."
                                : "You were in step with " + inStep + " of " + figures.size()
                                        + " figures, within 3 s of their start."));
        allOneWay(early, late).ifPresent(line -> lines.add(1, line));
        notFlown().forEach(lines::add);
        return List.copyOf(lines);
    }

    /** What to do about it, where every step out of time was so in one way. */
    private static Optional<Line> allOneWay(int early, int late) {
        if (early + late < SEVERAL || (early > 0 && late > 0)) {
            return Optional.empty();
        }
        return Optional.of(new Line(
                About.STEPS,
                false,
                early > 0
                        ? "All of these came early: you were ahead of the flight. Step when you see a figure begin."
                        : "All of these came late: look up before a figure ends, and step as the next begins."));
    }

    /** A figure that comes when the plan has left it behind can only be called off the plan. */
    private boolean wasOffPlan(Piece piece) {
        return run.first(piece.fromS() - IN_STEP_S, piece.fromS() + IN_STEP_S, PracticeRun::offPlan)
                .isPresent();
    }

    private static String stepped(Source source) {
        return switch (source) {
            case HAND -> "You stepped";
            case CLOCK -> "The clock stepped";
            case AIRCRAFT -> "The aircraft stepped";
        };
    }

    /** Figures of the plan that stand as flown, and were not. */
    private List<Line> notFlown() {
        List<Line> lines = new ArrayList<>();
        Act known = act;
        if (known == null) {
            return lines;
        }
        for (Figure figure : known.figures()) {
            Optional<Flown> mark = run.mark(figure.id(), 0);
            if (!figure.transit() && flight.figure(figure.id()).isEmpty() && mark.isPresent()) {
                String name = flight.plannedName(figure.id());
                lines.add(new Line(
                        About.STEPS,
                        false,
                        stepped(mark.get().mark()) + " into " + PracticeWords.the(name)
                                + (name.contains(",") ? " " : ", ") + "which was not flown."));
            }
        }
        return lines;
    }
}
