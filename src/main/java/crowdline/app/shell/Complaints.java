package crowdline.app.shell;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;

/** What more than one command complains of, each in one sentence. */
public final class Complaints {
    private Complaints() {}

    /** An act cannot be predicted: its aircraft is not in the show, or it does not say where it begins. */
    public static ShowFileException notPredicted(Show show, Act act) {
        if (!act.variants().stream().allMatch(Variant::fliesEachOnce)) {
            return new ShowFileException(
                    "act " + act.id() + " has a variant that flies the same figure twice; crowdline check says which");
        }
        if (show.aircraft(act.airframe()).isPresent()) {
            return new ShowFileException(
                    "act " + act.id() + " does not say where it begins; crowdline check says where");
        }
        return new ShowFileException("act " + act.id() + " names the airframe " + act.airframe()
                + ", which the show does not have; crowdline check says where");
    }

    /** An act is only timed, where something needs to know how it is flown. */
    public static ShowFileException onlyTimed(Act act) {
        return new ShowFileException(
                "act " + act.id() + " is only timed; where it flies is not known, so it cannot be followed");
    }

    /**
     * Something could not be written.
     *
     * @param what with its verb, such as "the trace cannot be written"
     */
    public static ShowFileException notWritten(String what, Path to) {
        return new ShowFileException(what + " to " + to + "; choose a folder you may write to");
    }
}
