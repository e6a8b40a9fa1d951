package crowdline.app.window.show;

import crowdline.app.window.work.FileWork;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.live.state.LiveState;
import crowdline.running.RunningShow;
import crowdline.show.bounds.Written;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.storage.file.OtherKind;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What is said while a show is opened and predicted again. */
public final class OpeningMessages {
    static final Mark FLYING = new Mark(Form.RING, Tone.CALM, "Predicting again in this air");

    /** Of an error, so that the foot line can hold it. */
    private static final int MOST_LETTERS = 160;

    private static final System.Logger LOG = System.getLogger(OpeningMessages.class.getName());

    private OpeningMessages() {}

    /** Names the file, for it is not the show in sight, and the first of its errors. */
    static Mark unusable(Path file, List<LocatedFinding> findings) {
        List<LocatedFinding> errors =
                findings.stream().filter(f -> f.severity() == Severity.ERROR).toList();
        String first = errors.isEmpty()
                ? ""
                : ": "
                        + (errors.get(0).line() > 0 ? "line " + errors.get(0).line() + ", " : "")
                        + errors.get(0).message();
        String more = errors.size() > 1 ? ", and " + (errors.size() - 1) + " more" : "";
        return new Mark(
                Form.STOP,
                Tone.ALARM,
                file.getFileName() + " cannot be used until its errors are fixed" + Written.brief(first, MOST_LETTERS)
                        + more);
    }

    static Mark refused(String why) {
        return new Mark(Form.DIAMOND, Tone.CAUTION, why);
    }

    /** @throws ShowFileException if it is a picture or whatever else no show can be */
    static void mustBeText(Path file, byte[] content) throws ShowFileException {
        Optional<String> other = OtherKind.of(content);
        if (other.isPresent()) {
            throw new ShowFileException(file.getFileName() + " is " + other.get()
                    + " and not a show, so nothing was opened; open a show file, or paste a pilot's list with Ctrl+I in"
                    + " Prepare");
        }
    }

    /** Why Live does not run a show that was edited. */
    static String cannotRun(List<LocatedFinding> findings) {
        return "Live cannot run this: "
                + findings.stream()
                        .filter(f -> f.severity() == Severity.ERROR)
                        .findFirst()
                        .map(LocatedFinding::message)
                        .orElse("it has errors");
    }

    /** What is said of a show that goes on in the middle of an act. */
    static Optional<Mark> wentOn(RunningShow show) {
        LiveState state = show.desk().snapshot().state();
        if (!state.course().inTheAir()) {
            return Optional.empty();
        }
        String figureId = state.figureId();
        String figure = figureId == null
                ? "off the plan"
                : show.loaded()
                        .words()
                        .name(
                                show.loaded()
                                        .show()
                                        .act(String.valueOf(state.actId()))
                                        .orElse(null),
                                state.variant(),
                                figureId);
        Double inAct = show.now().actTimeS();
        return Optional.of(new Mark(
                Form.DISC,
                Tone.GOOD,
                "Carried on where it was: " + figure
                        + (inAct == null ? "" : ", " + Seconds.clock(inAct) + " in the act")));
    }

    /** @param toBeSaved whether the air stands in the show that is edited */
    static Mark flown(boolean toBeSaved) {
        return new Mark(
                Form.DISC,
                Tone.GOOD,
                "Predicted again in this air, the acts as they were laid out"
                        + (toBeSaved
                                ? "; Ctrl+Shift+L in Prepare lays one out afresh, Ctrl+S saves the air, Ctrl+Z takes"
                                        + " it back"
                                : ", for this session; the file is as it was"));
    }

    /** Does something with a show file, and says what went wrong; empty if nothing did. At the root of the io thread. */
    static Optional<Mark> faultOf(Path file, FileWork work) {
        return work.fault(LOG, "Opening " + file, fault -> sentence(file, fault))
                .map(why -> new Mark(Form.STOP, Tone.ALARM, why));
    }

    private static String sentence(Path file, Throwable fault) {
        if (fault instanceof IOException) {
            return file + " cannot be read; check that it is there";
        }
        if (fault instanceof OutOfMemoryError) {
            return file.getFileName()
                    + " needs more memory than there is; check that it is the right file, or split it";
        }
        if (fault instanceof StackOverflowError) {
            return file.getFileName() + " is nested too deeply to be read; check that it is a show file";
        }
        return "The show could not be opened; the log has the reason";
    }

    /** What is said of a fault that nobody else has taken, in whatever thread. */
    public static Mark faultIn(Thread thread, Throwable fault) {
        LOG.log(System.Logger.Level.ERROR, "In the thread " + thread.getName(), fault);
        return new Mark(
                Form.STOP,
                Tone.ALARM,
                fault instanceof OutOfMemoryError
                        ? "Something needed more memory than there is and was not done; the show goes on"
                        : "Something went wrong inside the program; the show goes on, and the log has the reason");
    }
}
