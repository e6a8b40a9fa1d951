package crowdline.console.prepare;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Sliders;
import crowdline.speech.pace.SpokenTime;
import crowdline.storage.show.KindsFile;
import crowdline.timing.ActTimes;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/** Shows made of a list, and how Prepare shows them as they are flown. */
final class Listed {
    private Listed() {}

    /** One act in a two-seater. */
    static Show show(String list) {
        return new ShowArranging(SampleTools.CATALOGUE)
                .add(
                        ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null),
                        new ListReader(SampleTools.CATALOGUE).read(list),
                        id -> KindsFile.shipped()
                                .named("aerobatic two-seater")
                                .airframe(id, "The two-seater", Sliders.TYPICAL),
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null))
                .show();
    }

    /** Every act as it is predicted, with no pass timed. */
    static PrepareView flown(Show show) {
        PreparePresenter.Predictions predictions = new PreparePresenter.Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return Optional.of(new Predictor(show, SampleTools.CATALOGUE, act, variant).predict());
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return Optional.empty();
            }
        };
        return new PreparePresenter(SampleTools.CATALOGUE, text -> new SpokenTime(4, 3.5, 4.5), predictions)
                .view(show, List.of());
    }
}
