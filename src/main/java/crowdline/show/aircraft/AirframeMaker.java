package crowdline.show.aircraft;

import crowdline.show.aircraft.Engine.PropellerType;
import crowdline.show.aircraft.Engine.Turns;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Makes an airframe of what was told of it and of what is typical of its kind. */
public final class AirframeMaker {
    private static final Set<String> PROPELLER = Set.of("powerKw", "propellerDiameterM", "propellerRpm");
    private static final Set<String> JET = Set.of("thrustKn", "reheatKn");

    private final @Nullable Kind kind;
    private final Sliders sliders;
    private final Told told;
    private final SortedSet<String> assumed = new TreeSet<>();

    /**
     * What was told of an airframe.
     *
     * @param numbers by their keys in the show file
     * @param glider whether it was said to have no engine
     * @param turns which way its propeller turns, or null
     * @param propellerType how its propeller is made, or null
     */
    public record Told(
            Map<String, Double> numbers,
            boolean glider,
            @Nullable Turns turns,
            @Nullable PropellerType propellerType) {
        public static final Told NOTHING = new Told(Map.of(), false, null, null);

        public Told {
            numbers = Map.copyOf(numbers);
        }
    }

    private AirframeMaker(@Nullable Kind kind, Sliders sliders, Told told) {
        this.kind = kind;
        this.sliders = sliders;
        this.told = told;
    }

    /**
     * The airframe.
     *
     * @param kind one that flies figures, or null if everything was told
     * @throws IllegalArgumentException if something is missing that no kind has, or does not go with the rest, in a sentence
     */
    public static Airframe make(String id, String name, @Nullable Kind kind, Sliders sliders, Told told) {
        if (kind == null && !sliders.equals(Sliders.TYPICAL)) {
            throw new IllegalArgumentException(
                    "heavier, stronger and rollsFaster move the numbers of a kind; name its kind or take them out");
        }
        return new AirframeMaker(kind, sliders, told).made(id, name);
    }

    private Airframe made(String id, String name) {
        Airframe airframe = new Airframe(
                id,
                name,
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
        return kind == null ? airframe : airframe.typicalOf(new Typical(kind, sliders, assumed));
    }

    /** A kind has the engine of its kind; without one the keys say which it is. */
    private Engine engine() {
        boolean jet = kind == null ? isTold("thrustKn") : isOfKind("thrustKn");
        boolean none = kind == null ? told.glider() : !jet && !isOfKind("powerKw");
        String has = (kind == null ? "this aircraft" : "the " + kind.name()) + " has ";
        if (none) {
            refuse(PROPELLER, has + "no engine");
            refuse(JET, has + "no engine");
            return Engine.NONE;
        }
        if (told.glider()) {
            throw new IllegalArgumentException("glider is true and " + has + "an engine; take one out");
        }
        if (jet) {
            refuse(PROPELLER, has + "a jet");
            boolean reheat = isTold("reheatKn") || isOfKind("reheatKn");
            return new Engine.Jet(number("thrustKn"), reheat ? Double.valueOf(number("reheatKn")) : null);
        }
        refuse(JET, has + "a propeller");
        Turns turns = told.turns();
        return new Engine.Propeller(
                number("powerKw"),
                number("propellerDiameterM"),
                number("propellerRpm"),
                turns == null ? Turns.CLOCKWISE : turns,
                propellerType());
    }

    private PropellerType propellerType() {
        PropellerType ofKind = kind == null ? null : kind.propellerType();
        PropellerType said = told.propellerType();
        if (ofKind != null && said == null) {
            assumed.add("propellerType");
            return ofKind;
        }
        return said == null ? PropellerType.CONSTANT_SPEED : said;
    }

    private boolean isTold(String key) {
        return told.numbers().containsKey(key);
    }

    private boolean isOfKind(String key) {
        return kind != null && kind.number(key, sliders) != null;
    }

    private double number(String key) {
        Double said = told.numbers().get(key);
        if (said != null) {
            return said;
        }
        Double ofKind = kind == null ? null : kind.number(key, sliders);
        if (ofKind == null) {
            throw new IllegalArgumentException(
                    key + " is missing" + (kind == null ? "" : " and " + kind.name() + " has none") + "; add it");
        }
        assumed.add(key);
        return ofKind;
    }

    /** Zeros, and which way nothing turns, say nothing: files of gliders have them. */
    private void refuse(Set<String> keys, String why) {
        String of = keys.equals(JET) ? "a jet" : "a propeller";
        for (String key : new TreeSet<>(keys)) {
            if (isTold(key) && !Double.valueOf(0).equals(told.numbers().get(key))) {
                throw new IllegalArgumentException(key + " is for " + of + " and " + why + "; take one out");
            }
        }
        if (keys.equals(PROPELLER) && told.propellerType() != null) {
            throw new IllegalArgumentException("propellerType is for a propeller and " + why + "; take one out");
        }
    }
}
