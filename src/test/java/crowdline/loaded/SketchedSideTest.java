package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.flight.Workers;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.picture.Flown;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A figure that is only timed is sketched to the side it was told to fly to, or the one the act begins with. */
class SketchedSideTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();

    private static double alongOfRunIn(String list) {
        Show show = new ShowArranging(CATALOGUE)
                .add(
                        ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null),
                        new ListReader(CATALOGUE).read(list),
                        id -> KindsFile.shipped()
                                .named("aerobatic two-seater")
                                .airframe(id, "The two-seater", Sliders.TYPICAL),
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null))
                .show();
        Act act = show.acts().get(0);
        Flown flown = new LoadedShow(show, CATALOGUE, Paces.DEFAULT, Workers.ALONE, 3)
                .words()
                .sketch(act, "run-in");
        return flown.at(flown.toS()).place().x()
                - flown.at(flown.fromS()).place().x();
    }

    @ParameterizedTest
    @CsvSource({
        "run in from the right;loop;slow roll, -1",
        "run in from the left;loop;slow roll, 1",
        "run in;low pass from the right;loop, -1",
        "run in;low pass from the left;loop, 1"
    })
    void itGoesToItsSide(String list, int side) {
        assertThat(Math.signum(alongOfRunIn(list.replace(';', '\n')))).isEqualTo(side);
    }
}
