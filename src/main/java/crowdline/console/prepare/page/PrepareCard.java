package crowdline.console.prepare.page;

import crowdline.console.theme.Appearance;
import crowdline.show.Show;

/** A page of Prepare that shows what stands in the show. On the event thread. */
public interface PrepareCard {
    /** The show as it is edited now. */
    void edited(Show show);

    /** Puts the focus where one begins; false if it has nowhere to go. */
    boolean takeFocus();

    void wear(Appearance worn);
}
