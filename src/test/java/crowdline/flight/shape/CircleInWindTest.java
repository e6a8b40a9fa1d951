package crowdline.flight.shape;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.DayAir;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Sliders;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A weak aircraft circles gently to keep its speed, but never so gently that nobody waits for the end. */
class CircleInWindTest {
    @ParameterizedTest
    @CsvSource({"old trainer, 1.0", "old trainer, 1.06", "old trainer, 1.1", "large biplane, 1.1", "jet trainer, 1.1"})
    void aSteepTurnComesRoundInAnyWind(String kind, double share) {
        Airframe airframe = KindsFile.shipped().named(kind).airframe("a", "The aircraft", Sliders.TYPICAL);
        double mps = share * Units.mpsFromKt(airframe.usual().rollKt());
        for (int fromDeg = 0; fromDeg < 360; fromDeg += 45) {
            for (int kt = 0; kt <= 20; kt += 5) {
                DayAir day = new DayAir(1013.25, 15, fromDeg, kt, List.of(), null);
                FigureTrial trial = new FigureTrial(airframe, new Air(new StandardAtmosphere(), Wind.of(day, 90)));
                FigureTrial.Outcome turned = trial.drawn(
                        CatalogueFile.shipped().find("steep turn").orElseThrow().elements(),
                        FlightState.along(new Vec(0, 0, 300), mps, true));

                assertThat(turned.lack()).as(kind + " " + fromDeg + "/" + kt).isNull();
                assertThat(turned.seconds()).isLessThan(45);
            }
        }
    }
}
