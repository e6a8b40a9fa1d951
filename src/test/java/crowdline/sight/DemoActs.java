package crowdline.sight;

import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Airframe;
import crowdline.show.Catalogue;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.storage.CatalogueFile;
import crowdline.storage.ShowFile;
import crowdline.storage.ShowFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The acts of the demo show, flown. */
final class DemoActs {
    private static final Path DEMO = Path.of("demo-shows", "fenmarsh-air-day.json");

    private DemoActs() {}

    /** One variant of one act with its facts. */
    record Told(Show show, Airframe airframe, Flight flight, List<CrowdFact> facts) {}

    static Show show() throws ShowFileException {
        return Objects.requireNonNull(new ShowFile().read(DEMO).show());
    }

    /** Every variant of every act. */
    static List<Told> all() throws ShowFileException {
        Show show = show();
        Catalogue catalogue = CatalogueFile.shipped();
        List<Told> told = new ArrayList<>();
        for (Act act : show.acts()) {
            Airframe airframe = show.airframe(act.airframe()).orElseThrow();
            for (Variant variant : act.variants()) {
                Flight flight = new Predictor(show, catalogue, act, variant).predict();
                told.add(new Told(show, airframe, flight, CrowdFacts.of(show, airframe, flight)));
            }
        }
        return told;
    }
}
