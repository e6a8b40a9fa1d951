package crowdline.edit.act;

import crowdline.draft.DraftWords;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Pace;

/** A first draft of what is said in an act, for whoever made one. */
public final class FirstDraft {
    private final Catalogue shipped;
    private final DraftWords words;
    private final double share;

    /**
     * A draft for one speaker.
     *
     * @param share how much of an act is talk at most, 0 to 1; 0 for no words at all
     */
    public FirstDraft(Catalogue shipped, Pace pace, double share) {
        this.shipped = shipped;
        words = new DraftWords(pace, share);
        this.share = share;
    }

    /** The show with words in every figure of an act that has none yet; itself where the act cannot be predicted. */
    public Show of(Show show, Act act) {
        if (share == 0 || !show.canBePredicted(act) || act.figures().isEmpty()) {
            return show;
        }
        Catalogue all = shipped.with(show.figures());
        Flight flight = new Predictor(show, all, act, act.variants().get(0)).predict();
        return show.withAct(words.of(show, act, flight, all));
    }
}
