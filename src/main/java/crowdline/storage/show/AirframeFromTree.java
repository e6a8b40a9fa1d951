package crowdline.storage.show;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.AirframeMaker;
import crowdline.show.aircraft.AirframeMaker.Told;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.storage.json.Fields;
import crowdline.storage.json.Quoted;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * An aircraft from the tree of its file: what it says is told, and of what it leaves out the numbers are those of its
 * kind.
 */
final class AirframeFromTree {
    private static final Set<String> NO_NUMBERS =
            Set.of("glider", "propellerTurns", "propellerType", "heavier", "stronger", "rollsFaster");

    private AirframeFromTree() {}

    static Aircraft aircraft(Fields f) {
        Kinds.Named named = f.has("kind") ? KindsFile.shipped().counted(f.text("kind")) : null;
        if (named != null && !named.kind().flies()) {
            for (String key : f.keys()) {
                if (ShowNames.AIRFRAME_KEYS.contains(key)) {
                    throw new IllegalArgumentException("nothing is computed for a kind of "
                            + Quoted.text(named.kind().name()) + ", so " + key + " has no use; take it out");
                }
            }
            return new TimedAircraft(f.text("id"), f.text("name"), named.kind(), named.number());
        }
        Map<String, Double> numbers = new HashMap<>();
        for (String key : f.keys()) {
            if (ShowNames.AIRFRAME_KEYS.contains(key) && !NO_NUMBERS.contains(key)) {
                numbers.put(key, f.number(key));
            }
        }
        return AirframeMaker.make(
                f.text("id"),
                f.text("name"),
                named == null ? null : named.kind(),
                new Sliders(f.number("heavier", 0), f.number("stronger", 0), f.number("rollsFaster", 0)),
                new Told(
                        numbers,
                        f.flag("glider"),
                        f.has("propellerTurns") ? f.choice("propellerTurns", ShowNames.PROPELLER_TURNS) : null,
                        f.has("propellerType") ? f.choice("propellerType", ShowNames.PROPELLER_TYPE) : null));
    }
}
