package crowdline.show.aircraft;

import crowdline.show.bounds.Most;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A kind of aircraft, with the numbers that are typical of it.
 *
 * @param name such as "old trainer"
 * @param aliases other names for it
 * @param sentence what it is, in one plain sentence
 * @param outline what shape it has, or null if its figures are only timed
 * @param propellerType how its propeller is made, or null if it has none
 * @param numbers by the keys an airframe has in a show file; none if its figures are only timed
 * @param usualNumbers how its displays are flown, by the names of {@link Usual}; none if its figures are only timed
 * @param never what its displays never show
 */
public record Kind(
        String name,
        List<String> aliases,
        String sentence,
        @Nullable Outline outline,
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
        if (element instanceof Element.Line line) {
            return line.middle().stream().allMatch(this::shows);
        }
        if (!usualNumbers.containsKey("pushG") && isPushed(element)) {
            return false;
        }
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

    /** Whether it is nothing without a push: a spin on its back, or a turn that rolls. */
    private static boolean isPushed(Element element) {
        return (element instanceof Element.Spin spin && spin.kind().isInverted())
                || (element instanceof Element.Turn turn && turn.rolls() > 0);
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

    /** Its name and its aliases. */
    public List<String> names() {
        List<String> names = new ArrayList<>(List.of(name));
        names.addAll(aliases);
        return names;
    }
}
