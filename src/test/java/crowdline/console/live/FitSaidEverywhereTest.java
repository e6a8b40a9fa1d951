package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Mark;
import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.words.SampleWords;
import crowdline.console.words.WordsBasis;
import crowdline.console.words.WordsModel;
import crowdline.flight.Flight;
import crowdline.live.event.FlightEvent;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Fit;
import crowdline.patter.PatterRules;
import crowdline.patter.Placed;
import crowdline.patter.Room;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.say.SpokenText;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Prepare, Words and Live say the same of one remark that has its figure to itself. */
class FitSaidEverywhereTest {
    private static final String EXPLANATION = "r-say-1";

    @Test
    void theSameRemarkInTheSameFigureFitsAlikeInEveryPlace() {
        SplittableRandom random = new SplittableRandom(86);
        Set<Fit> seen = EnumSet.noneOf(Fit.class);
        for (int i = 0; i < 400; i++) {
            FigureTime lasts = new FigureTime("f1", 0, 10, random.nextDouble(4, 10), random.nextDouble(10, 16));
            double seconds = random.nextDouble(3, 21);
            SpokenTime takes = new SpokenTime(seconds, seconds * 0.8, seconds * random.nextDouble(1, 1.3));

            Fit fit = Fit.of(takes, new Room(10, lasts.lowS(), lasts.highS(), PatterRules.DEFAULT.runPastS()));
            seen.add(fit);
            assertThat(inPrepare(takes, lasts))
                    .as("Prepare, %s in %s", takes, lasts)
                    .startsWith(fit.word());
            assertThat(inWords(takes, lasts))
                    .as("Words, %s in %s", takes, lasts)
                    .startsWith(fit.word());
            // Live counts down to the end that is expected, and holds out no hope of a later one.
            Fit now = fit == Fit.ON_A_GOOD_DAY ? Fit.TOO_LONG : fit;
            assertThat(inLive(takes, lasts)).as("Live, %s in %s", takes, lasts).startsWith(now.word());
        }
        assertThat(seen).containsExactlyInAnyOrder(Fit.values());
    }

    private static String inPrepare(SpokenTime takes, FigureTime lasts) {
        PreparePresenter.Predictions predictions = new PreparePresenter.Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return Optional.empty();
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return Optional.of(new ActTimes("a1", "full", List.of(lasts)));
            }
        };
        return new PreparePresenter(new Catalogue(List.of()), text -> takes, predictions)
                .view(SmallShow.show(), List.of())
                .acts()
                .get(0)
                .variants()
                .get(0)
                .figures()
                .get(0)
                .remarks()
                .get(1)
                .verdict()
                .word();
    }

    private static String inWords(SpokenTime takes, FigureTime lasts) {
        WordsBasis basis = new WordsBasis(
                Map.of(),
                figure -> Set.of(),
                text -> new SpokenText(text, text),
                text -> takes,
                (act, figure) -> Optional.of(lasts),
                figure -> figure.id());
        WordsModel model = new WordsModel(SampleWords.editing(SmallShow.show()), basis);
        model.choosePlace("a1", "f1");
        return model.view().remarks().get(1).verdict().word();
    }

    private static String inLive(SpokenTime takes, FigureTime lasts) {
        ShowLookup words = new ShowLookup(
                SmallShow.show(), new Catalogue(List.of()), text -> takes, (act, variant) -> ActSheet.NONE);
        boolean tight = takes.seconds() > lasts.lowS() + PatterRules.DEFAULT.runPastS();
        Placed placed = new Placed(
                EXPLANATION, "f1", RemarkKind.EXPLANATION, RemarkForm.FULL, 100, 100 + takes.seconds(), tight);
        Mark mark = new LivePresenter(words)
                .view(SmallShow.moment(100, SmallShow.plan(placed), SmallShow.after(new FlightEvent.ActStarted(100))))
                .say()
                .verdict();
        return Objects.requireNonNull(mark).word();
    }
}
