package crowdline.sight.fact;

import crowdline.measure.Units;
import crowdline.show.CrowdUnits;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.sight.Everyday;
import crowdline.sight.Said;
import crowdline.sight.fact.CrowdFact.Kind;
import java.util.Optional;

/** What the aircraft itself tells: strength, weight, size, propeller. */
final class AirframeFacts {
    private final String actId;
    private final Airframe airframe;
    private final CrowdUnits units;

    AirframeFacts(String actId, Airframe airframe, CrowdUnits units) {
        this.units = units;
        this.actId = actId;
        this.airframe = airframe;
    }

    void addTo(FactMaking making) {
        if (airframe.engine() instanceof Engine.Propeller propeller) {
            making.make(Kind.POWER, () -> power(propeller))
                    .make(Kind.PROPELLER, () -> propeller(propeller))
                    .make(Kind.TIP_SPEED, () -> tips(propeller));
        }
        making.make(Kind.MASS, this::mass).make(Kind.SPAN, this::span);
    }

    private Optional<CrowdFact> fact(Kind kind, Said said, double share, String text, String shortText) {
        return Optional.of(CrowdFact.of(new CrowdFact.Subject(actId, null), kind, said, share, text, shortText));
    }

    private Optional<CrowdFact> power(Engine.Propeller propeller) {
        double hpPerTonne = Units.hpFromKw(propeller.powerKw()) / (airframe.massKg() / 1000);
        double car = Everyday.CAR_POWER.value() / (Everyday.CAR_MASS.value() / 1000);
        Said said = Said.many(hpPerTonne, "horsepower", "horsepower");
        return fact(
                Kind.POWER,
                said,
                hpPerTonne / car / 3,
                "The aeroplane has about " + said.words() + " for each tonne. A family car has about "
                        + Said.many(car, "horsepower", "horsepower").words().replace(" horsepower", "") + ".",
                "About " + said.words() + " for each tonne.");
    }

    private Optional<CrowdFact> propeller(Engine.Propeller propeller) {
        Said said = Said.many(propeller.rpm() / 60, "time", "times");
        return fact(
                Kind.PROPELLER,
                said,
                1,
                "At full power the propeller goes round about " + said.words() + " every second.",
                "The propeller goes round about " + said.words() + " a second.");
    }

    private Optional<CrowdFact> tips(Engine.Propeller propeller) {
        double mps = Math.PI * propeller.diameterM() * propeller.rpm() / 60;
        double mph = Units.mphFromMps(mps);
        double airliner = Everyday.AIRLINER.value();
        if (mph < 0.7 * airliner) {
            return Optional.empty();
        }
        Said said = Said.speed(mps, units);
        return fact(
                Kind.TIP_SPEED,
                said,
                1,
                "At full power its propeller tips do about " + said.words() + ", "
                        + (mph > 1.05 * airliner
                                ? "faster than an airliner."
                                : mph < 0.95 * airliner ? "nearly an airliner's speed." : "as fast as an airliner."),
                "The propeller tips do about " + said.words() + ".");
    }

    private Optional<CrowdFact> mass() {
        Said said = Said.kilograms(airframe.massKg());
        double share = airframe.massKg() / Everyday.CAR_MASS.value();
        String against = share < 0.29
                ? "about a quarter as much as"
                : share < 0.42
                        ? "about a third as much as"
                        : share < 0.58
                                ? "about half as much as"
                                : share < 0.71
                                        ? "about two thirds as much as"
                                        : share < 0.9 ? "less than" : share < 1.1 ? "about as much as" : "more than";
        if (share >= 0.2) {
            return fact(
                    Kind.MASS,
                    said,
                    Math.min(1, 0.35 / share),
                    "Ready to perform, it weighs about " + said.words() + ", " + against + " a family car.",
                    "It weighs about " + said.words() + ".");
        }
        return Optional.empty();
    }

    private Optional<CrowdFact> span() {
        if (airframe.spanM() < Everyday.BUS_LENGTH.value() * 1.05) {
            return Optional.empty();
        }
        Said said = Said.length(airframe.spanM(), units);
        return fact(
                Kind.SPAN,
                said,
                1,
                "From tip to tip its wings measure about " + said.words() + ", longer than a double-decker bus.",
                "Its wings measure about " + said.words() + " from tip to tip.");
    }
}
