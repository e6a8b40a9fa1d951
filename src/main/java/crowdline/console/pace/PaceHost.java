package crowdline.console.pace;

import crowdline.speech.pace.Pace;
import crowdline.speech.say.SpokenText;
import java.util.List;
import java.util.function.Consumer;

/** What the choice of a speaker asks of the rest of the program; on the event thread, at once. */
public interface PaceHost {
    /** What listens to the speaker, if there is a microphone. */
    default Microphone microphone() {
        return Microphone.NONE;
    }

    /**
     * What there is to choose from.
     *
     * @param speakers names of those who were timed
     * @param current whose pace is used; empty for the default's
     * @param remarks to time a speaker with
     * @param whyNoMicrophone why nobody can be timed by microphone, in a sentence; empty if they can
     */
    record Found(List<String> speakers, String current, List<SpokenText> remarks, String whyNoMicrophone) {
        public Found {
            speakers = List.copyOf(speakers);
            remarks = List.copyOf(remarks);
        }
    }

    /** Looks what there is, and answers on the event thread. */
    void find(Consumer<Found> found);

    /** Goes by the pace of a speaker who was timed, or by the default's if empty, from now on. */
    void use(String speaker);

    /** Goes by the pace of the next speaker who was timed; after the last, by the default's. */
    void useNext();

    /** Keeps a speaker's pace and uses it from now on. */
    void keep(Pace pace);
}
