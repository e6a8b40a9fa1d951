package crowdline.storage.show;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Engine.PropellerType;
import crowdline.show.aircraft.Engine.Turns;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.aircraft.Typical;
import crowdline.storage.json.ObjectKeys;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** An airframe as the tree of its file: its kind, and of its numbers those that were told. */
final class AirframeToTree {
    private final ObjectKeys keys;
    private final Set<String> assumed;

    private AirframeToTree(ObjectKeys keys, Set<String> assumed) {
        this.keys = keys;
        this.assumed = assumed;
    }

    static JsonNode node(Aircraft aircraft, ObjectKeys keys) {
        if (aircraft instanceof Airframe airframe) {
            return node(airframe, keys);
        }
        TimedAircraft timed = (TimedAircraft) aircraft;
        return keys.text("id", timed.id())
                .text("name", timed.name())
                .text("kind", timed.what())
                .node();
    }

    private static JsonNode node(Airframe a, ObjectKeys keys) {
        keys.text("id", a.id()).text("name", a.name());
        Typical typical = a.typical();
        if (typical != null) {
            Sliders sliders = typical.sliders();
            keys.text("kind", typical.kind().name())
                    .number("heavier", sliders.heavier(), 0)
                    .number("stronger", sliders.stronger(), 0)
                    .number("rollsFaster", sliders.rollsFaster(), 0);
        }
        keys.flag("glider", a.glider(), typical != null && a.glider());
        new AirframeToTree(keys, a.assumed()).numbers(a);
        return keys.node();
    }

    private void numbers(Airframe a) {
        told("massKg", a.massKg());
        told("wingAreaM2", a.wingAreaM2());
        told("spanM", a.spanM());
        told("lengthM", a.lengthM());
        engine(a.engine(), a.typical() == null);
        told("zeroLiftDrag", a.zeroLiftDrag());
        told("inducedDragFactor", a.inducedDragFactor());
        told("maxLiftUpright", a.maxLiftUpright());
        told("maxLiftInverted", a.maxLiftInverted());
        told("rollRateDegPerS", a.rollRateDegPerS());
        told("rollRateKt", a.rollRateKt());
        told("flickRateDegPerS", a.flickRateDegPerS());
        told("spinRateDegPerS", a.spinRateDegPerS());
        told("spinDescentFtPerTurn", a.spinDescentFtPerTurn());
        told("pivotS", a.pivotS());
        told("tumbleRateDegPerS", a.tumbleRateDegPerS());
        told("limitPositiveG", a.limitPositiveG());
        told("limitNegativeG", a.limitNegativeG());
        told("neverExceedKt", a.neverExceedKt());
    }

    private void engine(Engine engine, boolean allTold) {
        if (engine instanceof Engine.Propeller propeller) {
            told("powerKw", propeller.powerKw());
            told("propellerDiameterM", propeller.diameterM());
            told("propellerRpm", propeller.rpm());
            keys.choice("propellerTurns", ShowNames.PROPELLER_TURNS, propeller.turns(), Turns.CLOCKWISE);
            if (allTold) {
                keys.choice("propellerType", ShowNames.PROPELLER_TYPE, propeller.type(), PropellerType.CONSTANT_SPEED);
            } else if (!assumed.contains("propellerType")) {
                keys.choice("propellerType", ShowNames.PROPELLER_TYPE, propeller.type());
            }
        } else if (engine instanceof Engine.Jet jet) {
            told("thrustKn", jet.thrustKn());
            Double reheatKn = jet.reheatKn();
            if (reheatKn != null) {
                told("reheatKn", reheatKn);
            }
        } else if (allTold) {
            // A glider's file may say 0 for each; where it does it goes on doing so.
            keys.number("powerKw", 0, 0).number("propellerDiameterM", 0, 0).number("propellerRpm", 0, 0);
        }
    }

    private void told(String key, double value) {
        if (!assumed.contains(key)) {
            keys.number(key, value);
        }
    }
}
