package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.leg.Sample;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Outline;
import crowdline.sight.SideView.Craft;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class ActSheetTest {
    private final Flight flight;

    ActSheetTest() throws ShowFileException {
        Show show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                .show());
        Act act = show.acts().get(0);
        flight =
                new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
    }

    private Craft craft(int figure, double share) {
        return Objects.requireNonNull(ActSheet.of(flight, 180.0, Outline.MONOPLANE)
                .at(figure, share, null)
                .craft());
    }

    @Test
    void aPredictedAircraftLiesAsItIsFlownAndOneThatIsReadAsNobodyKnows() {
        for (int i = 0; i < flight.figures().size(); i++) {
            if (flight.figures().get(i).simulated()) {
                FigureFlight figure = flight.figures().get(i);
                double tS = (figure.startS() + figure.endS()) / 2;
                Sample at = flight.samples().stream()
                        .filter(s -> s.tS() >= tS)
                        .findFirst()
                        .orElseThrow();
                SideView.Lies lies = Objects.requireNonNull(craft(i, 0.5).lies());
                // Within a tenth of a second even a flick turns by less than a radian.
                assertThat(lies.pose().up().dot(at.up())).as(figure.name()).isGreaterThan(0.5);
                assertThat(lies.pose().tS()).isCloseTo(tS, within(1e-9));
            }
        }
        Craft read = Craft.read(new SideView.Spot(0, 0, 100), 0, 0, List.of(), 0.2);
        assertThat(Objects.requireNonNull(ActSheet.of(flight, 180.0, Outline.MONOPLANE)
                                .at(1, 0.5, read)
                                .craft())
                        .lies())
                .isNull();
    }

    @Test
    void aPredictedAircraftPointsAlongItsPathOverTheGround() {
        int compared = 0;
        for (int i = 0; i < flight.figures().size(); i++) {
            FigureFlight figure = flight.figures().get(i);
            for (double share = 0.05; figure.simulated() && share < 1; share += 0.1) {
                double tS = figure.startS() + share * figure.durationS();
                Sample at = flight.samples().stream()
                        .filter(s -> s.tS() >= tS)
                        .findFirst()
                        .orElseThrow();
                double levelShare = Math.hypot(at.nose().x(), at.nose().y());
                // Flick, tumble and fall point elsewhere than they go; so does anything steep.
                if (levelShare > 0.97 && at.g() > 0.8 && at.g() < 1.2) {
                    double noseRad = Math.atan2(at.nose().y(), at.nose().x());
                    assertThat(Math.cos(craft(i, share).headingRad() - noseRad))
                            .as("%s at %.2f", figure.name(), share)
                            .isGreaterThan(0.9);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    @Test
    void onAVerticalLineTheArrowFromAboveStaysAsItWas() {
        int index = List.of(
                        flight.figures().stream().map(FigureFlight::figureId).toArray(String[]::new))
                .indexOf("stall-turn");
        double entryRad = craft(index, 0).headingRad();
        int vertical = 0;
        for (double share = 0.2; share < 0.6; share += 0.01) {
            Craft craft = craft(index, share);
            if (Math.abs(craft.pathRad() - Math.PI / 2) < 0.28) {
                assertThat(Math.cos(craft.headingRad() - entryRad)).isCloseTo(1, within(0.05));
                vertical++;
            }
        }
        assertThat(vertical).isGreaterThan(5);
    }

    @Test
    void theCrowdLineOfTheVenueIsPartOfTheView() {
        assertThat(ActSheet.of(flight, 180.0, Outline.MONOPLANE).path(-1).crowdM())
                .isEqualTo(180.0);
    }
}
