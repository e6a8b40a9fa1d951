package crowdline.loaded;

import crowdline.follow.Boundaries;
import crowdline.follow.FollowPlan;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.bounds.Nearest;
import crowdline.show.figure.Figure;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.passes.PassTimesFile;
import crowdline.storage.passes.PassTimesFile.Row;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes passes of one variant of an act from what was timed elsewhere. */
public final class PassAdding {
    /**
     * Figures believed in less than this teach nothing, 0 to 1. Tuned: those of an act flown as planned have 0.88 and
     * more, those seen in a flight of another act down to 0.2.
     */
    private static final double SURE_ENOUGH = 0.6;

    private final Act act;
    private final Variant variant;
    private final PassIds ids;

    public PassAdding(Act act, Variant variant, PassIds ids) {
        this.act = act;
        this.variant = variant;
        this.ids = ids;
    }

    /**
     * A pass from a table of times.
     *
     * @throws ShowFileException if the table is unsound or names a figure that the variant has not
     */
    public Pass fromTable(Path table, boolean walked) throws ShowFileException {
        List<String> known = act.inOrder(variant).stream().map(Figure::id).toList();
        List<Pass.TimedFigure> figures = new ArrayList<>();
        for (Row row : PassTimesFile.read(table)) {
            if (!known.contains(row.figureId())) {
                throw new ShowFileException(table + ", line " + row.line() + ": there is no figure " + row.figureId()
                        + " in variant \"" + variant.name() + "\" of act " + act.id() + "; it has "
                        + String.join(", ", known) + Nearest.hint(row.figureId(), known));
            }
            figures.add(new Pass.TimedFigure(row.figureId(), row.startS(), row.endS()));
        }
        return fromBoundaries(figures, walked ? Pass.How.WALKED : Pass.How.BY_HAND);
    }

    /** A pass from figures with their starts and ends on any one scale, as a table or a reader of flight logs has them. */
    Pass fromBoundaries(List<Pass.TimedFigure> figures, Pass.How how) {
        return pass(figures, how, ids.now());
    }

    private Pass pass(List<Pass.TimedFigure> figures, Pass.How how, Instant begunAt) {
        return Pass.of(ids.next(), act.id(), variant.name(), how, begunAt, figures)
                .fromZero();
    }

    /** A pass of what was followed in a flight log, begun when it was flown; empty where no figure was found. */
    Optional<Pass> fromLog(FollowPlan plan, LogReadings log) {
        List<Boundaries.Span> sure = Boundaries.of(plan, log.readings()).figures().stream()
                .filter(span -> span.endS() > span.startS() && span.confidence() >= SURE_ENOUGH)
                .toList();
        if (sure.isEmpty()) {
            return Optional.empty();
        }
        List<Pass.TimedFigure> figures = sure.stream()
                .map(span -> new Pass.TimedFigure(plan.figureId(span.figureIndex()), span.startS(), span.endS()))
                .toList();
        Instant logBegun = log.begunAt();
        Instant begunAt = logBegun == null
                ? ids.now()
                : logBegun.plusMillis(Math.round(sure.get(0).startS() * 1000));
        return Optional.of(pass(figures, Pass.How.BY_LOG, begunAt));
    }
}
