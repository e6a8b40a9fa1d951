package crowdline.app.window.edit;

import crowdline.app.window.time.LoadedPredictions;
import crowdline.console.ConsoleFrame;
import crowdline.console.words.WordsPlan;
import crowdline.loaded.ActPlans;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowRemarks;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.ShowRules;
import crowdline.speech.plain.ActReading;
import crowdline.speech.say.Spoken;
import crowdline.storage.show.ShowDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Says what becomes of the edited show: its flights, plan and findings, to Prepare and Words. Only what an edit changes is
 * computed anew. On the {@code io} thread.
 */
final class EditJudge {
    private final Supplier<Catalogue> catalogue;
    private final Consumer<Consumer<ConsoleFrame>> window;
    private final RememberedPlans plans = new RememberedPlans();
    private Map<String, String> sayAs = Map.of();
    private ActReading reading = reading(Map.of());
    /** The show without its words whose facts were told last. */
    private @Nullable Show factsOf;

    EditJudge(Supplier<Catalogue> catalogue, Consumer<Consumer<ConsoleFrame>> window) {
        this.catalogue = catalogue;
        this.window = window;
    }

    /** Another show is edited from now on. */
    void begin() {
        factsOf = null;
    }

    /**
     * Tells what becomes of a show.
     *
     * @param document the file, if the show stands in it as it is: then findings have lines
     * @param superseded whether nobody wants to know any more
     */
    void judge(LoadedShow loaded, @Nullable ShowDocument document, BooleanSupplier superseded) {
        Show show = loaded.show();
        List<LocatedFinding> findings = findings(loaded, document, catalogue.get());
        if (!loaded.hasBands()) {
            // Nobody waits for the flights behind the bands.
            var atOnce = LoadedPredictions.viewAtOnce(loaded, findings);
            window.accept(frame -> frame.showPrepare(atOnce));
            if (superseded.getAsBoolean()) {
                return;
            }
        }
        var view = LoadedPredictions.view(loaded, findings);
        window.accept(frame -> frame.showPrepare(view));
        if (superseded.getAsBoolean()) {
            return;
        }
        if (!show.sayAs().equals(sayAs)) {
            sayAs = show.sayAs();
            reading = reading(sayAs);
        }
        WordsPlan plan = new WordsPlan(
                RemarkStandings.of(
                        ActPlans.of(loaded, show.acts(), act -> act.variants().get(0), plans::of)),
                reading.all(show));
        plans.turn();
        window.accept(frame -> frame.showPlan(plan));
        Show flown = ShowRemarks.none(show);
        if (!flown.equals(factsOf) && !superseded.getAsBoolean()) {
            factsOf = flown;
            var facts = ShowFacts.of(loaded);
            window.accept(frame -> frame.showFacts(facts));
        }
    }

    /** The same as of a show that is opened: by its rules, and by flying it. */
    static List<LocatedFinding> findings(LoadedShow loaded, @Nullable ShowDocument document, Catalogue catalogue) {
        List<Finding> ofShow = new ArrayList<>(ShowRules.check(loaded.show(), catalogue));
        ofShow.addAll(loaded.slips());
        List<LocatedFinding> findings = new ArrayList<>(
                document == null ? ofShow.stream().map(EditJudge::inNoLine).toList() : document.locate(ofShow));
        findings.addAll(loaded.findings());
        return findings;
    }

    /** What is edited stands in no line until it is saved. */
    private static LocatedFinding inNoLine(Finding found) {
        return new LocatedFinding(found.severity(), found.code(), found.message(), "", 0, 0, found.path());
    }

    private static ActReading reading(Map<String, String> sayAs) {
        return new ActReading(new Spoken(sayAs)::expand);
    }
}
