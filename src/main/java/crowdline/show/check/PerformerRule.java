package crowdline.show.check;

import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import java.util.function.Consumer;

/** There is something to tell about everybody who flies. */
final class PerformerRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        for (int p = 0; p < show.performers().size(); p++) {
            Performer performer = show.performers().get(p);
            if (performer.facts().isEmpty()) {
                findings.accept(new Finding(
                        Severity.NOTE,
                        "performer-without-facts",
                        "there is no fact about " + performer.name()
                                + "; ask for one and write down where it comes from",
                        "performers[" + p + "]"));
            }
        }
    }
}
