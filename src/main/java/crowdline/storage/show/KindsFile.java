package crowdline.storage.show;

import crowdline.show.aircraft.Engine.PropellerType;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.KindNumber;
import crowdline.show.aircraft.KindNumber.Trust;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.Outline;
import crowdline.storage.json.DiskNames;
import crowdline.storage.json.Fields;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The kinds of aircraft that come with the program. */
public final class KindsFile {
    private static final ShippedData DATA = new ShippedData(
            "/crowdline/kinds.json",
            "crowdlineKinds",
            "its kinds of aircraft",
            "the kinds of aircraft cannot be read",
            "the kinds of aircraft are damaged");

    private static final DiskNames<Trust> TRUST = new DiskNames<>(Trust.class, trust -> switch (trust) {
        case READ -> "read";
        case DERIVED -> "derived";
        case FROM_MEMORY -> "from memory";
        case COMMON_PRACTICE -> "common practice";
    });

    private static final DiskNames<Kind.Unshown> UNSHOWN = new DiskNames<>(Kind.Unshown.class, what -> switch (what) {
        case FLICK -> "flick";
        case SPIN -> "spin";
        case HOVER_ROLL -> "hover-roll";
        case TUMBLE -> "tumble";
        case SLIDE -> "slide";
    });

    private static final DiskNames<Outline> OUTLINE = new DiskNames<>(Outline.class, outline -> switch (outline) {
        case MONOPLANE -> "monoplane";
        case BIPLANE -> "biplane";
        case JET -> "jet";
        case GLIDER -> "glider";
        case HELICOPTER -> "helicopter";
        case CANOPY -> "canopy";
        case JUMPER -> "jumper";
    });

    private KindsFile() {}

    /** Read once: every show with a kind in it asks for them. */
    private static final class Shipped {
        static final Kinds KINDS = load();
    }

    /**
     * The shipped kinds.
     *
     * @throws IllegalStateException if the program was put together without sound ones
     */
    public static Kinds shipped() {
        return Shipped.KINDS;
    }

    private static Kinds load() {
        return read(DATA.text());
    }

    /** @throws IllegalStateException if the text is no sound list of kinds, with every fault in the message */
    static Kinds read(String text) {
        return new Kinds(DATA.read(text, fields -> fields.list("kinds", KindsFile::kind)));
    }

    private static Kind kind(Fields f) {
        @Nullable
        PropellerType type = f.has("propellerType") ? f.choice("propellerType", ShowNames.PROPELLER_TYPE) : null;
        return new Kind(
                f.text("name"),
                f.texts("aliases"),
                f.text("sentence"),
                f.has("outline") ? f.choice("outline", OUTLINE) : null,
                type,
                numbers(f.group("numbers")),
                numbers(f.group("usual")),
                f.texts("never").stream().map(UNSHOWN::constant).collect(Collectors.toSet()));
    }

    private static Map<String, KindNumber> numbers(Fields f) {
        Map<String, KindNumber> numbers = new LinkedHashMap<>();
        for (String key : f.keys()) {
            Fields number = f.group(key);
            numbers.put(
                    key,
                    new KindNumber(
                            number.number("value"),
                            number.number("low"),
                            number.number("high"),
                            number.text("source"),
                            number.choice("trust", TRUST)));
        }
        return numbers;
    }
}
