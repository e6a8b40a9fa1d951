package crowdline.app;

import crowdline.follow.Boundaries;
import crowdline.follow.FollowPlan;
import crowdline.show.Act;
import crowdline.show.Figure;
import crowdline.show.Nearest;
import crowdline.show.Variant;
import crowdline.storage.PassTimesFile;
import crowdline.storage.PassTimesFile.Row;
import crowdline.storage.ShowFileException;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes passes of one variant of an act from what was timed elsewhere. */
final class PassAdding {
    private final Act act;
    private final Variant variant;
    private final PassIds ids;

    PassAdding(Act act, Variant variant, PassIds ids) {
        this.act = act;
        this.variant = variant;
        this.ids = ids;
    }

    /**
     * A pass from a table of times.
     *
     * @throws ShowFileException if the table is unsound or names a figure that the variant has not
     */
    Pass fromTable(Path table, boolean walked) throws ShowFileException {
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
        return Pass.of(ids.next(), act.id(), variant.name(), how, ids.now(), figures)
                .fromZero();
    }

    /** A pass of what was followed in a flight log; empty where no figure was found. */
    Optional<Pass> fromLog(FollowPlan plan, LogReadings log) {
        List<Pass.TimedFigure> figures = Boundaries.of(plan, log.readings()).figures().stream()
                .filter(span -> span.endS() > span.startS())
                .map(span -> new Pass.TimedFigure(plan.figureId(span.figureIndex()), span.startS(), span.endS()))
                .toList();
        return figures.isEmpty() ? Optional.empty() : Optional.of(fromBoundaries(figures, Pass.How.BY_LOG));
    }
}
