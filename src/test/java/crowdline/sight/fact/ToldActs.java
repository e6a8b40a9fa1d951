package crowdline.sight.fact;

import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The acts of the demo show, flown. */
final class ToldActs {
    private static final Path DEMO = Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json");
    private static final Path EVENING = Path.of("src/test/resources/crowdline/shows", "wrackenholt-evening.json");

    private ToldActs() {}

    /** One variant of one act with its facts. */
    record Told(Show show, Airframe airframe, Flight flight, List<CrowdFact> facts) {}

    /** Every variant of every act of a show of a biplane and a glider. */
    static List<Told> all() throws ShowFileException {
        return of(DEMO);
    }

    /** The same, and of a show of two solos. */
    static List<Told> ofBothShows() throws ShowFileException {
        List<Told> told = new ArrayList<>(of(DEMO));
        told.addAll(of(EVENING));
        return told;
    }

    private static List<Told> of(Path file) throws ShowFileException {
        Show show = Objects.requireNonNull(new ShowFile().read(file).show());
        Catalogue catalogue = CatalogueFile.shipped();
        List<Told> told = new ArrayList<>();
        for (Act act : show.acts()) {
            Airframe airframe = show.airframe(act.airframe()).orElseThrow();
            for (Variant variant : act.variants()) {
                Flight flight = new Predictor(show, catalogue, act, variant).predict();
                told.add(new Told(
                        show,
                        airframe,
                        flight,
                        CrowdFacts.of(show, airframe, flight).facts()));
            }
        }
        return told;
    }
}
