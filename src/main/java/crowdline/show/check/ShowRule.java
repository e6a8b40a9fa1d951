package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import java.util.function.Consumer;

/** One thing to check in a show whose parts are each sound by themselves. */
interface ShowRule {
    void check(Show show, Catalogue catalogue, Consumer<Finding> findings);
}
