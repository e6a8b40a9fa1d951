package crowdline.flight;

import crowdline.show.figure.Element;
import java.util.List;

/** What a prediction has drawn, for tests elsewhere that fly it with something else. */
public final class Drawn {
    private Drawn() {}

    /** The elements of each figure in the order of the variant; none for one that is only timed. */
    public static List<List<Element>> elements(Predictor predictor) {
        return predictor.elements();
    }
}
