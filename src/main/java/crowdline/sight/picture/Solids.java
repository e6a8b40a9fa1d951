package crowdline.sight.picture;

import crowdline.show.aircraft.Outline;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * The shapes of aircraft. Their proportions are those usual for the kind, by eye; no aircraft that exists is drawn.
 */
public final class Solids {
    private static final Map<Outline, Solid> ALL = all();

    private Solids() {}

    public static Solid of(Outline outline) {
        return Objects.requireNonNull(ALL.get(outline));
    }

    private static Map<Outline, Solid> all() {
        Map<Outline, Solid> all = new EnumMap<>(Outline.class);
        for (Outline outline : Outline.values()) {
            all.put(outline, made(outline));
        }
        return Map.copyOf(all);
    }

    private static Solid made(Outline outline) {
        return switch (outline) {
            case MONOPLANE ->
                new SolidMaker()
                        .body(0.44, 0.055, 0.075, 0.40)
                        .canopy(0.13, -0.13, 0.04, 0.125)
                        .wing(0.17, -0.09, 0.10, -0.03, -0.005)
                        .tail(-0.30, -0.43, 0.19, 0.18)
                        .made();
            case BIPLANE ->
                new SolidMaker()
                        .body(0.44, 0.07, 0.09, 0.44)
                        .canopy(-0.02, -0.14, 0.035, 0.135)
                        .wing(0.10, -0.08, 0.09, -0.07, -0.07)
                        .wing(0.20, 0.02, 0.19, 0.03, 0.19)
                        .struts(0.09, -0.07, 0.19, 0.34)
                        .tail(-0.31, -0.45, 0.20, 0.18)
                        .made();
            case JET ->
                new SolidMaker()
                        .body(0.68, 0.075, 0.075, 0.56)
                        .canopy(0.40, 0.12, 0.045, 0.135)
                        .wing(0.16, -0.22, -0.14, -0.30, -0.02)
                        .tail(-0.38, -0.58, 0.25, 0.27)
                        .made();
            case HELICOPTER -> new SlowSolids().cabin().rotor().skids().tail().made();
            case CANOPY -> new SlowSolids().canopy().hanging().made();
            case JUMPER -> new SlowSolids().lying().made();
            case GLIDER ->
                new SolidMaker()
                        .body(0.22, 0.028, 0.034, 0.24)
                        .canopy(0.16, 0.02, 0.022, 0.052)
                        .wing(0.045, -0.035, 0.02, -0.012, 0.02)
                        .tail(-0.205, -0.255, 0.09, 0.095)
                        .made();
        };
    }
}
