package crowdline.show;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A kind of aircraft, with the numbers that are typical of it.
 *
 * @param name such as "old trainer"
 * @param aliases other names for it
 * @param sentence what it is, in one plain sentence
 * @param propellerType how its propeller is made, or null if it has none
 * @param numbers by the keys an airframe has in a show file; none if its figures are only timed
 * @param usualNumbers how its displays are flown, by the names of {@link Usual}; none if its figures are only timed
 * @param never what its displays never show
 */
public record Kind(
        String name,
        List<String> aliases,
        String sentence,
        Engine.@Nullable PropellerType propellerType,
        Map<String, KindNumber> numbers,
        Map<String, KindNumber> usualNumbers,
        Set<Unshown> never) {

    /** What some kinds never show. */
    public enum Unshown {
        FLICK,
        SPIN,
        HOVER_ROLL,
        TUMBLE,
        SLIDE
    }

    public Kind {
        Most.mustBeText("kind name", name);
        Most.mustBeText("sentence of " + name, sentence);
        Most.ALIASES.must(aliases);
        aliases = List.copyOf(aliases);
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        usualNumbers = Collections.unmodifiableMap(new LinkedHashMap<>(usualNumbers));
        never = never.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(never));
    }

    /** Whether its figures can be computed; otherwise they are only timed. */
    public boolean flies() {
        return !numbers.isEmpty();
    }

    /** Whether its displays ever show an element. */
    public boolean shows(Element element) {
        if (element instanceof Element.Flick) {
            return !never.contains(Unshown.FLICK);
        }
        if (element instanceof Element.Spin) {
            return !never.contains(Unshown.SPIN);
        }
        if (element instanceof Element.HoverRoll) {
            return !never.contains(Unshown.HOVER_ROLL);
        }
        if (element instanceof Element.Tumble) {
            return !never.contains(Unshown.TUMBLE);
        }
        return !(element instanceof Element.Slide) || !never.contains(Unshown.SLIDE);
    }

    /** How its displays are usually flown; empty if its figures are only timed. */
    public Optional<Usual> usual() {
        return flies() ? Optional.of(Usual.of(usualNumbers)) : Optional.empty();
    }

    /**
     * An airframe of which only its kind is known.
     *
     * @throws IllegalArgumentException if the kind's figures are only timed
     */
    public Airframe airframe(String id, String name, Sliders sliders) {
        return AirframeMaker.make(id, name, this, sliders, AirframeMaker.Told.NOTHING);
    }

    /** A number by its key in the show file, moved as the sliders say; null if the kind has none of that key. */
    @Nullable
    Double number(String key, Sliders sliders) {
        KindNumber number = numbers.get(key);
        return number == null ? null : Double.valueOf(number.moved(sliders.of(key)));
    }

    /**
     * An aircraft of this kind of which nobody told a number.
     *
     * @throws IllegalArgumentException if the figures of the kind are only timed
     */
    public Airframe airframe(String id, String airframeName, Sliders sliders) {
        Airframe made = new Airframe(
                id,
                airframeName,
                null,
                engine(sliders),
                must("massKg", sliders),
                must("wingAreaM2", sliders),
                must("spanM", sliders),
                must("lengthM", sliders),
                must("zeroLiftDrag", sliders),
                must("inducedDragFactor", sliders),
                must("maxLiftUpright", sliders),
                must("maxLiftInverted", sliders),
                must("rollRateDegPerS", sliders),
                must("rollRateKt", sliders),
                must("flickRateDegPerS", sliders),
                must("spinRateDegPerS", sliders),
                must("spinDescentFtPerTurn", sliders),
                must("pivotS", sliders),
                must("tumbleRateDegPerS", sliders),
                must("limitPositiveG", sliders),
                must("limitNegativeG", sliders),
                must("neverExceedKt", sliders));
        SortedSet<String> assumed = new TreeSet<>(numbers.keySet());
        if (propellerType != null) {
            assumed.add("propellerType");
        }
        return made.typicalOf(new Typical(this, sliders, assumed));
    }

    private Engine engine(Sliders sliders) {
        if (numbers.containsKey("thrustKn")) {
            return new Engine.Jet(must("thrustKn", sliders), number("reheatKn", sliders));
        }
        if (!numbers.containsKey("powerKw") || propellerType == null) {
            return Engine.NONE;
        }
        return new Engine.Propeller(
                must("powerKw", sliders),
                must("propellerDiameterM", sliders),
                must("propellerRpm", sliders),
                Engine.Turns.CLOCKWISE,
                propellerType);
    }

    private double must(String key, Sliders sliders) {
        Double value = number(key, sliders);
        if (value == null) {
            throw new IllegalArgumentException("the figures of a " + name + " are only timed; it has no " + key);
        }
        return value;
    }

    /** Its name and its aliases. */
    List<String> names() {
        List<String> names = new ArrayList<>(List.of(name));
        names.addAll(aliases);
        return names;
    }
}
