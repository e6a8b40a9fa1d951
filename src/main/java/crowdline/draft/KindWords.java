package crowdline.draft;

import java.util.Map;
import java.util.Optional;

/**
 * What is told of an aircraft of which only the kind is known: what is true of every one of the kind, and nothing of where its
 * wings are, its numbers or its past.
 */
final class KindWords {
    private static final Map<String, String> SAID = Map.of(
            "strong aerobatic monoplane", "Aeroplanes like this one are built for aerobatics, and for nothing else.",
            "aerobatic two-seater", "Aerobatics are taught, and shown, in aeroplanes like this one.",
            "light aerobatic biplane", "A biplane has two wings, one above the other, so each of them can be short.",
            "large biplane", "A big biplane takes its time, so there is time to look at every figure.",
            "old trainer", "Aeroplanes like this one taught people to fly: gently, always trading height for speed.",
            "piston fighter",
                    "A fighter with a propeller flies wide, fast, flowing figures, and has a sound of its own.",
            "jet trainer", "Pilots of fast jets learn to fly them in aeroplanes like this one.",
            "fast jet", "A fast jet needs a lot of sky to turn in.",
            "aerobatic glider", "A glider lives on its height: all it has is what it begins with.");

    private KindWords() {}

    /** @param kind name of the kind */
    static Optional<String> of(String kind) {
        return Optional.ofNullable(SAID.get(kind));
    }
}
