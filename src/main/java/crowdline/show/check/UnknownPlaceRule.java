package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import java.util.function.Consumer;

/** Says once what a venue's missing numbers leave out. */
final class UnknownPlaceRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        show.leftOut().ifPresent(said -> findings.accept(new Finding(Severity.NOTE, "venue-unknown", said, "venue")));
    }
}
