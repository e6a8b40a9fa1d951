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

    /** A pass of what was found in a flight log, begun when it was flown; empty where no figure was. */
    Optional<Pass> fromLog(FollowPlan plan, Boundaries found, LogReadings log) {
        List<Boundaries.Span> sure = found.sure();
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
