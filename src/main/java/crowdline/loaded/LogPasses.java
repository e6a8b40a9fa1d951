package crowdline.loaded;

import crowdline.follow.FollowPlan;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.passes.PassesFile;
import crowdline.telemetry.IgcHeight;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Adds a pass from each flight log; a log that cannot be used does not keep the others from being read. */
public final class LogPasses {
    private final Show show;
    private final FollowPlan plan;
    private final PassAdding adding;
    private final PassesFile passes;
    private final Consumer<String> complaints;

    public LogPasses(Show show, FollowPlan plan, PassAdding adding, PassesFile passes, Consumer<String> complaints) {
        this.show = show;
        this.plan = plan;
        this.adding = adding;
        this.passes = passes;
        this.complaints = complaints;
    }

    /** Keeps a pass and says so. */
    public interface Keeping {
        void keep(Pass pass) throws ShowFileException;
    }

    /**
     * Reads one log after the other.
     *
     * @return whether all of them could be used
     * @throws ShowFileException if a pass cannot be kept
     */
    public boolean add(List<Path> logs, Keeping keeping) throws ShowFileException {
        boolean all = true;
        for (Path log : logs) {
            Optional<Pass> pass = read(log);
            if (pass.isPresent()) {
                keep(pass.get(), log, keeping);
            } else {
                all = false;
            }
        }
        return all;
    }

    private Optional<Pass> read(Path log) {
        try {
            LogReadings readings = LogReadings.read(log, show, IgcHeight.GNSS, complaints);
            Optional<Pass> pass = adding.fromLog(plan, readings);
            if (pass.isEmpty()) {
                complaints.accept("no figure of the act was found in " + log + "; crowdline follow says more");
            }
            return pass;
        } catch (ShowFileException e) {
            complaints.accept(String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private void keep(Pass pass, Path log, Keeping keeping) throws ShowFileException {
        Optional<Pass> same =
                passes.read().passes().stream().filter(pass::isSameRun).findFirst();
        if (same.isPresent()) {
            complaints.accept(
                    log + " has been read before, as pass " + same.get().id() + "; it was not added again");
            return;
        }
        keeping.keep(pass.withNote(String.valueOf(log.getFileName())));
        long found = pass.figures().stream()
                .map(Pass.TimedFigure::figureId)
                .distinct()
                .count();
        if (found * 2 < plan.size()) {
            complaints.accept("only " + found + " of " + plan.size() + " figures were found in " + log
                    + "; if it shows another act, --ignore " + pass.id() + " leaves it out");
        }
    }
}
