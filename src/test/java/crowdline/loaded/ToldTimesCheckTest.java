package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.arrange.ShowArranging;
import crowdline.flight.Workers;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.ToldTimes;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A list with a clock of its own: its times are used, and said where they are far from what is predicted. */
class ToldTimesCheckTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();

    private static Show made(String list) {
        return new ShowArranging(CATALOGUE)
                .add(
                        ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null),
                        new ListReader(CATALOGUE).read(list),
                        id -> KindsFile.shipped().named("old trainer").airframe(id, "The trainer", Sliders.TYPICAL),
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null))
                .show();
    }

    private static List<String> said(String list) {
        return FlownCheck.of(made(list), CATALOGUE).stream()
                .filter(finding -> finding.code().equals(ToldTimesCheck.CODE))
                .map(Finding::message)
                .toList();
    }

    @Test
    void timesFarFromThePredictedOnesAreSaidOnce() {
        assertThat(said("0:00 loop\n0:14 stall turn\n2:40 slow roll\n2:50 low pass"))
                .singleElement()
                .asString()
                .contains("from stall turn to the next", "146 s where");
        assertThat(said("loop\nstall turn\nslow roll")).isEmpty();
    }

    @Test
    void figuresBeginWhenTheListSays() {
        Show show = made("0:00 take-off\n0:50 loop\n1:30 stall turn\n2:15 low pass");
        Act act = show.acts().get(0);
        LoadedShow loaded = new LoadedShow(show, CATALOGUE, Paces.DEFAULT, Workers.ALONE, 3);

        ActTimes times = loaded.prediction(act.id(), act.variants().get(0).name())
                .orElseThrow()
                .times();

        for (var begins : ToldTimes.of(act).beginsS().entrySet()) {
            FigureTime time = times.figures().stream()
                    .filter(f -> f.figureId().equals(begins.getKey()))
                    .findFirst()
                    .orElseThrow();
            assertThat(time.startS()).as(begins.getKey()).isCloseTo(begins.getValue(), within(1e-6));
        }
    }
}
