package crowdline.app;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.storage.ShowFileException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** What is said while a show is opened and predicted again. */
final class OpeningWords {
    static final Mark UNUSABLE =
            new Mark(Form.STOP, Tone.ALARM, "This show cannot be used until what is listed is mended");
    static final Mark FLYING = new Mark(Form.RING, Tone.CALM, "Predicting again in this air");

    private static final System.Logger LOG = System.getLogger(OpeningWords.class.getName());

    private OpeningWords() {}

    static Mark opening(Path file) {
        return new Mark(Form.RING, Tone.CALM, "Opening " + file.getFileName());
    }

    /** @param toBeSaved whether the air stands in the show that is edited */
    static Mark flown(boolean toBeSaved) {
        return new Mark(
                Form.DISC,
                Tone.GOOD,
                "Predicted again in this air"
                        + (toBeSaved
                                ? "; Ctrl+S writes it into the show, Ctrl+Z takes it back"
                                : ", for this session; the file is as it was"));
    }

    /** What is done with a show file, which can go wrong in every way. */
    interface Work {
        void run() throws IOException;
    }

    /** Does it, and says what went wrong; empty if nothing did. At the root of the io thread. */
    static Optional<Mark> faultOf(Path file, Work work) {
        try {
            work.run();
            return Optional.empty();
        } catch (ShowFileException e) {
            return alarm(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Reading " + file, e);
            return alarm(file + " cannot be read; check that it is there");
        } catch (RuntimeException e) {
            // The root of the io thread: one sentence to the user, the rest to the log.
            LOG.log(System.Logger.Level.ERROR, "Opening " + file, e);
            return alarm("The show could not be opened; the log has the reason");
        }
    }

    private static Optional<Mark> alarm(String sentence) {
        return Optional.of(new Mark(Form.STOP, Tone.ALARM, sentence));
    }
}
