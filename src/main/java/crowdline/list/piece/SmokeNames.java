package crowdline.list.piece;

import crowdline.list.word.Manner;
import java.util.List;
import java.util.Set;

/** Tells what is called after smoke from smoke that is switched on. */
final class SmokeNames {
    private static final Set<String> AFTER_SMOKE = Set.of(
            "on", "off", "out", "stop", "end", "system", "go", "running", "white", "red", "blue", "green", "yellow",
            "orange", "purple", "pink", "black");
    private static final Set<String> BEFORE_SMOKE = Set.of("no", "without", "minus", "with", "trailing");

    private SmokeNames() {}

    /** "Smoke heart" is what somebody calls a thing; nothing is switched on. */
    static void keep(List<String> plain) {
        for (int i = 0; i + 1 < plain.size(); i++) {
            boolean isSwitch = !plain.get(i + 1).chars().allMatch(Character::isLetter)
                    || Manner.FILLER.has(plain.get(i + 1))
                    || AFTER_SMOKE.contains(plain.get(i + 1))
                    || (i > 0 && BEFORE_SMOKE.contains(plain.get(i - 1)));
            if (plain.get(i).equals("smoke") && !isSwitch) {
                plain.set(i, "smoke's");
            }
        }
    }
}
