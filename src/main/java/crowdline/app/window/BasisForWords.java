package crowdline.app.window;

import crowdline.console.words.WordsBasis;
import crowdline.loaded.LoadedShow;
import crowdline.show.Catalogue;
import crowdline.speech.pace.Pace;
import crowdline.speech.plain.RemarkHints;
import crowdline.speech.say.Spoken;
import crowdline.timing.FigureTime;
import java.util.Optional;
import java.util.function.Supplier;

/** What the words of a show are judged by: its catalogue, its predicted times, and the speaker's pace. */
public final class BasisForWords {
    private BasisForWords() {}

    /**
     * All of it, for one show.
     *
     * @param flown the show by whose times they are judged at the moment
     * @param pace the speaker's of the moment
     */
    public static WordsBasis basis(
            LoadedShow loaded, Supplier<LoadedShow> flown, Catalogue known, Supplier<Pace> pace) {
        Catalogue all = known.with(loaded.show().figures());
        Spoken spoken = new Spoken(loaded.show().sayAs());
        return new WordsBasis(
                RemarkHints.tradeWords(all.entries()),
                figure -> RemarkHints.namesOf(figure, all),
                spoken::expand,
                text -> pace.get().time(spoken.expand(text)),
                (act, figure) -> lasts(flown.get(), act, figure),
                all::nameOf);
    }

    private static Optional<FigureTime> lasts(LoadedShow loaded, String actId, String figureId) {
        return loaded.show().act(actId).stream()
                .flatMap(act -> act.variants().stream())
                .flatMap(variant -> loaded.prediction(actId, variant.name()).stream())
                .flatMap(prediction -> prediction.times().figures().stream())
                .filter(time -> time.figureId().equals(figureId))
                .findFirst();
    }
}
