package crowdline.console.debrief;

import java.nio.file.Path;

/** What the Debrief place asks of the rest of the program. On the event thread; what takes longer answers in the foot line. */
public interface DebriefHost {

    /** The debrief as it stands. */
    DebriefView view();

    /** Writes the whole debrief as text. */
    void saveText(Path file);

    /** Writes the figures as comma-separated values. */
    void saveTable(Path file);

    /** Writes acts, duties and talk of the day as comma-separated values. */
    void saveDay(Path file);

    /** Writes everything as JSON. */
    void saveJson(Path file);
}
