package crowdline.loaded;

import crowdline.follow.Boundaries;
import crowdline.follow.FollowPlan;
import crowdline.follow.LogDistance;
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
    private final boolean anyway;
    private final Consumer<String> complaints;

    /** @param anyway whether a log is also taken in which most of the act is not found */
    public LogPasses(
            Show show,
            FollowPlan plan,
            PassAdding adding,
            PassesFile passes,
            boolean anyway,
            Consumer<String> complaints) {
        this.show = show;
        this.plan = plan;
        this.adding = adding;
        this.passes = passes;
        this.anyway = anyway;
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
            Boundaries found = Boundaries.of(plan, readings.readings());
            Optional<Pass> pass = adding.fromLog(plan, found, readings);
            if (pass.isEmpty()) {
                complaints.accept(log + " was not added: no figure of the act was found in it. " + distance(readings));
            } else if (!anyway && !found.show(plan)) {
                complaints.accept(log + " was not added: " + found.recognised(plan) + " of the " + plan.recognisable()
                        + " figures whose path is known were found in it in the order planned, so it shows another flight or only a part of the"
                        + " act; --anyway adds it all the same. " + distance(readings));
                return Optional.empty();
            }
            return pass;
        } catch (ShowFileException e) {
            complaints.accept(String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private String distance(LogReadings log) {
        return LogDistance.of(plan, log.readings()).words();
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
    }
}
