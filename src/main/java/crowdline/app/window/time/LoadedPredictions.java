package crowdline.app.window.time;

import crowdline.console.passes.PassesPresenter;
import crowdline.console.passes.PassesView;
import crowdline.console.path.SkyView;
import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.Prediction;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.check.LocatedFinding;
import crowdline.timing.ActTimes;
import crowdline.timing.LearnedTimes;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What Prepare shows of the predictions of a show.
 *
 * @param learned the times of a prediction
 */
public record LoadedPredictions(LoadedShow loaded, Function<Prediction, LearnedTimes> learned)
        implements PreparePresenter.Predictions {
    @Override
    public Optional<Flight> flight(Act act, Variant variant) {
        return loaded.prediction(act.id(), variant.name()).map(Prediction::flight);
    }

    @Override
    public Optional<ActTimes> times(Act act, Variant variant) {
        return loaded.prediction(act.id(), variant.name())
                .map(p -> learned.apply(p).times());
    }

    @Override
    public SkyView sketch(Act act, String figureId) {
        return SkyView.whole(loaded.words().sketch(act, figureId), loaded.show().outline(act));
    }

    @Override
    public PassesView passes(Act act, Variant variant) {
        return loaded.prediction(act.id(), variant.name())
                .map(p -> view(act, variant, p))
                .orElse(PassesView.NONE);
    }

    private PassesView view(Act act, Variant variant, Prediction prediction) {
        PassesPresenter presenter = new PassesPresenter(
                id -> prediction.outline().figure(id).map(FigureFlight::name).orElse(id),
                loaded.show().venue().timeZone());
        return presenter.view(learned.apply(prediction), LearnedTimes.ofAct(loaded.passes(), act.id(), variant.name()));
    }

    /** The show at a glance, with what was found in it. */
    public static PrepareView view(LoadedShow loaded, List<LocatedFinding> findings) {
        return view(loaded, Prediction::learned, findings);
    }

    /** The same, with bands that wait for no flights. */
    public static PrepareView viewAtOnce(LoadedShow loaded, List<LocatedFinding> findings) {
        return view(loaded, Prediction::learnedAtOnce, findings);
    }

    private static PrepareView view(
            LoadedShow loaded, Function<Prediction, LearnedTimes> learned, List<LocatedFinding> findings) {
        return new PreparePresenter(loaded.catalogue(), loaded.voices(), new LoadedPredictions(loaded, learned))
                .view(loaded.show(), findings);
    }
}
