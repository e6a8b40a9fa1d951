package crowdline.storage.show;

import crowdline.show.Aircraft;
import crowdline.show.Airframe;
import crowdline.show.Engine;
import crowdline.show.Engine.PropellerType;
import crowdline.show.Engine.Turns;
import crowdline.show.Kind;
import crowdline.show.Kinds;
import crowdline.show.Sliders;
import crowdline.show.TimedAircraft;
import crowdline.show.Typical;
import crowdline.storage.json.Fields;
import crowdline.storage.json.Quoted;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * An airframe from the tree of its file: what it says is told, and of what it leaves out the numbers are those of its
 * kind.
 */
final class AirframeFromTree {
    private static final Set<String> PROPELLER =
            Set.of("powerKw", "propellerDiameterM", "propellerRpm", "propellerTurns", "propellerType");
    private static final Set<String> JET = Set.of("thrustKn", "reheatKn");

    private final Fields f;
    private final @Nullable Kind kind;
    private final Sliders sliders;
    private final SortedSet<String> assumed = new TreeSet<>();

    private AirframeFromTree(Fields f, @Nullable Kind kind) {
        this.f = f;
        this.kind = kind;
        sliders = new Sliders(f.number("heavier", 0), f.number("stronger", 0), f.number("rollsFaster", 0));
        if (kind == null && !sliders.equals(Sliders.TYPICAL)) {
            throw new IllegalArgumentException(
                    "heavier, stronger and rollsFaster move the numbers of a kind; name its kind or take them out");
        }
    }

    static Aircraft aircraft(Fields f) {
        Kinds.Named named = f.has("kind") ? KindsFile.shipped().counted(f.text("kind")) : null;
        if (named == null || named.kind().flies()) {
            return new AirframeFromTree(f, named == null ? null : named.kind()).made();
        }
        for (String key : f.keys()) {
            if (ShowNames.AIRFRAME_KEYS.contains(key)) {
                throw new IllegalArgumentException("nothing is computed for a kind of "
                        + Quoted.text(named.kind().name()) + ", so " + key + " has no use; take it out");
            }
        }
        return new TimedAircraft(f.text("id"), f.text("name"), named.kind(), named.number());
    }

    private Airframe made() {
        Airframe told = new Airframe(
                f.text("id"),
                f.text("name"),
                null,
                engine(),
                number("massKg"),
                number("wingAreaM2"),
                number("spanM"),
                number("lengthM"),
                number("zeroLiftDrag"),
                number("inducedDragFactor"),
                number("maxLiftUpright"),
                number("maxLiftInverted"),
                number("rollRateDegPerS"),
                number("rollRateKt"),
                number("flickRateDegPerS"),
                number("spinRateDegPerS"),
                number("spinDescentFtPerTurn"),
                number("pivotS"),
                number("tumbleRateDegPerS"),
                number("limitPositiveG"),
                number("limitNegativeG"),
                number("neverExceedKt"));
        return kind == null ? told : told.typicalOf(new Typical(kind, sliders, assumed));
    }

    /** A kind has the engine of its kind; without one the keys say which it is. */
    private Engine engine() {
        boolean jet = kind == null ? f.has("thrustKn") : isOfKind("thrustKn");
        boolean none = kind == null ? f.flag("glider") : !jet && !isOfKind("powerKw");
        String has = (kind == null ? "this aircraft" : "the " + kind.name()) + " has ";
        if (none) {
            refuse(PROPELLER, has + "no engine");
            refuse(JET, has + "no engine");
            return Engine.NONE;
        }
        if (f.flag("glider")) {
            throw new IllegalArgumentException("glider is true and " + has + "an engine; take one out");
        }
        if (jet) {
            refuse(PROPELLER, has + "a jet");
            boolean reheat = f.has("reheatKn") || isOfKind("reheatKn");
            return new Engine.Jet(number("thrustKn"), reheat ? Double.valueOf(number("reheatKn")) : null);
        }
        refuse(JET, has + "a propeller");
        return new Engine.Propeller(
                number("powerKw"),
                number("propellerDiameterM"),
                number("propellerRpm"),
                f.choice("propellerTurns", ShowNames.PROPELLER_TURNS, Turns.CLOCKWISE),
                propellerType());
    }

    private PropellerType propellerType() {
        PropellerType ofKind = kind == null ? null : kind.propellerType();
        if (ofKind != null && !f.has("propellerType")) {
            assumed.add("propellerType");
            return ofKind;
        }
        return f.choice("propellerType", ShowNames.PROPELLER_TYPE, PropellerType.CONSTANT_SPEED);
    }

    private boolean isOfKind(String key) {
        return kind != null && kind.number(key, sliders) != null;
    }

    private double number(String key) {
        Double ofKind = kind == null ? null : kind.number(key, sliders);
        if (f.has(key)) {
            return f.number(key);
        }
        if (ofKind == null) {
            throw new IllegalArgumentException(
                    key + " is missing" + (kind == null ? "" : " and " + kind.name() + " has none") + "; add it");
        }
        assumed.add(key);
        return ofKind;
    }

    /** Zeros, and which way nothing turns, say nothing: files of gliders have them. */
    private void refuse(Set<String> keys, String why) {
        for (String key : f.keys()) {
            if (keys.contains(key) && (f.number(key) != 0 || key.equals("propellerType"))) {
                String of = keys.equals(JET) ? "a jet" : "a propeller";
                throw new IllegalArgumentException(key + " is for " + of + " and " + why + "; take one out");
            }
        }
    }
}
