package crowdline.console.walk;

import crowdline.show.FigureNote;
import java.util.List;

/** The notes on the figures of the open show. Called on the event thread; must return at once. */
public interface Notes {

    List<FigureNote> all();

    /** Keeps these from now on. */
    void keep(List<FigureNote> notes);
}
