package crowdline.console.debrief;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** What the Debrief place asks of the rest of the program. On the event thread; what takes longer answers in the foot line. */
public interface DebriefHost {

    /** The debrief as it stands. */
    DebriefView view();

    /** Answers with the days that can be set beside this one, the newest first; the answer may come on any thread. */
    void days(Consumer<List<DayChoice>> answer);

    /** Sets the day beside this one that a journal tells; what is wrong with it is said in the foot line. */
    void beside(Path journal);

    /** Shows this day alone again. */
    void alone();

    /** Writes the whole debrief as text. */
    void saveText(Path file);

    /** Writes the figures as comma-separated values. */
    void saveTable(Path file);

    /** Writes acts, duties and talk of the day as comma-separated values. */
    void saveDay(Path file);

    /** Writes everything as JSON. */
    void saveJson(Path file);
}
