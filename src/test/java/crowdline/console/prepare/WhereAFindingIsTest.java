package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A finding says of which figure or act it is, as the window calls it, and not in which line of a file. */
class WhereAFindingIsTest {
    private final Show show = ActsFixture.solo();
    private final Act act = show.acts().get(0);
    private final PreparePresenter presenter = new PreparePresenter(
            SampleTools.CATALOGUE, text -> new SpokenTime(4, 3.5, 4.5), new PreparePresenter.Predictions() {
                @Override
                public Optional<Flight> flight(Act of, Variant variant) {
                    return Optional.empty();
                }

                @Override
                public Optional<ActTimes> times(Act of, Variant variant) {
                    return Optional.empty();
                }
            });

    private String where(String path, String message) {
        return presenter
                .view(show, List.of(new LocatedFinding(Severity.NOTE, "code", message, "a.json", 945, 3, path)))
                .findings()
                .get(0)
                .where();
    }

    @Test
    void ofAFigureItIsItsName() {
        int loop = act.figures().indexOf(act.figure("loop").orElseThrow());
        assertThat(where("acts[0].figures[" + loop + "].remarks[0].text", "is long"))
                .isEqualTo("loop");
    }

    @Test
    void ofAnActItsTitle() {
        assertThat(where("acts[0].slotStart", "is early")).isEqualTo("Solo");
    }

    @Test
    void nothingIsSaidTwiceNorOfWhatIsOfNoAct() {
        assertThat(where("acts[0].slotStart", "Solo is early")).isEmpty();
        assertThat(where("venue.latDeg", "is not given")).isEmpty();
        assertThat(where("acts[77].slotStart", "is early")).isEmpty();
        assertThat(where("acts[0].figures[9999].look", "is long")).isEqualTo("Solo");
    }

    @Test
    void aFileThatIsNoShowKeepsItsLines() {
        PrepareView view = PreparePresenter.unusable(
                "a.json", List.of(new LocatedFinding(Severity.ERROR, "code", "no comma", "a.json", 945, 3, "acts[0]")));
        assertThat(view.findings().get(0).where()).isEqualTo("line 945");
        assertThat(view.findings().get(0).message()).isEqualTo("No comma");
    }
}
