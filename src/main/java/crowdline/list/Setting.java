package crowdline.list;

import crowdline.list.word.Manner;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;

/** What is set in the cockpit between figures, and is none: "gear down", "airbrakes", "clean up, accelerate". */
final class Setting {
    private static final Set<String> PARTS = Set.of(
            "gear",
            "nose",
            "undercarriage",
            "wheel",
            "flap",
            "airbrake",
            "brake",
            "speedbrake",
            "hook",
            "light",
            "jet",
            "engine",
            "motor",
            "lamp",
            "strobe",
            "ramp",
            "door",
            "throttle",
            "power",
            "burner",
            "reheat",
            "ab",
            "afterburner");

    private static final Set<String> DONE = Set.of(
            "accelerate",
            "accelerating",
            "accel",
            "acceleration",
            "decelerate",
            "decelerating",
            "clean",
            "dirty",
            "silence",
            "silent",
            "configure",
            "stay",
            "slow");

    /** Beside either of them. */
    private static final Set<String> HOW = Set.of(
            "up",
            "down",
            "in",
            "out",
            "open",
            "bomb",
            "bay",
            "cargo",
            "rear",
            "closed",
            "on",
            "off",
            "low",
            "idle",
            "full",
            "extend",
            "extended",
            "retract",
            "retracted",
            "air",
            "speed",
            "right",
            "hard",
            "back",
            "away");

    private Setting() {}

    /** Whether all these words say only how the aircraft is set. */
    static boolean isAll(List<Word> words) {
        return words.stream().anyMatch(word -> isSet(word.plain()))
                && words.stream()
                        .allMatch(word -> isSet(word.plain()) || HOW.contains(word.plain()) || Manner.FILLER.has(word));
    }

    private static boolean isSet(String plain) {
        return PARTS.contains(plain) || DONE.contains(plain);
    }
}
