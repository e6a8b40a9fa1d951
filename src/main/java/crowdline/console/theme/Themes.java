package crowdline.console.theme;

import java.awt.Color;
import java.util.List;

/** The themes there are. */
public final class Themes {
    private static final String PLAIN = "Inter";
    private static final String STRONG = "Inter SemiBold";

    /** Black on white, heavy type: for a screen in the sun. */
    public static final Theme SUNLIGHT = new Theme(
            "sunlight",
            "Sunlight",
            false,
            new Palette(
                    rgb(0xffffff),
                    rgb(0xffffff),
                    rgb(0xc9c9c9),
                    rgb(0x3a3a3a),
                    rgb(0x000000),
                    rgb(0x2b2b2b),
                    rgb(0x6a6a6a),
                    rgb(0x00358a),
                    rgb(0x00358a),
                    rgb(0xffffff),
                    rgb(0x00358a),
                    rgb(0x5e5e5e),
                    rgb(0x00471f),
                    rgb(0x5e3500),
                    rgb(0x8f0012),
                    rgb(0x767676),
                    rgb(0x00358a)),
            new Typeface(STRONG, PLAIN, true, Typeface.SIZES_PX));

    /** Dark on a soft light ground: for a tent, a tower, a cloudy day. */
    public static final Theme DAY = new Theme(
            "day",
            "Day",
            false,
            new Palette(
                    rgb(0xf1f0ec),
                    rgb(0xfffefb),
                    rgb(0xdad8d0),
                    rgb(0xbdbab0),
                    rgb(0x17202a),
                    rgb(0x4d5560),
                    rgb(0x62676e),
                    rgb(0x0d4a80),
                    rgb(0x0d4a80),
                    rgb(0xffffff),
                    rgb(0x0d4a80),
                    rgb(0x56616c),
                    rgb(0x0b5230),
                    rgb(0x6f3d00),
                    rgb(0x8f1016),
                    rgb(0x7a838d),
                    rgb(0x0d4a80)),
            new Typeface(PLAIN, STRONG, false, Typeface.SIZES_PX));

    /** Warm light on near black: for dusk, and eyes that must see the sky. */
    public static final Theme NIGHT = new Theme(
            "night",
            "Night",
            true,
            new Palette(
                    rgb(0x0d1014),
                    rgb(0x14181e),
                    rgb(0x2c333c),
                    rgb(0x38414b),
                    rgb(0xe6ddcd),
                    rgb(0xa9a699),
                    rgb(0x858377),
                    rgb(0x8fbfe6),
                    rgb(0x24435c),
                    rgb(0xf2ebdd),
                    rgb(0x3f6c92),
                    rgb(0x5e6772),
                    rgb(0x86d3a0),
                    rgb(0xf0bd63),
                    rgb(0xff9d90),
                    rgb(0x67727e),
                    rgb(0x8fbfe6)),
            new Typeface(PLAIN, STRONG, false, Typeface.SIZES_PX));

    private static final List<Theme> ALL = List.of(SUNLIGHT, DAY, NIGHT);

    private Themes() {}

    public static List<Theme> all() {
        return ALL;
    }

    /** The theme after this one, round and round. */
    public static Theme after(Theme theme) {
        return ALL.get((ALL.indexOf(theme) + 1) % ALL.size());
    }

    /** The theme with this id, or Day if there is none. */
    public static Theme byId(String id) {
        return ALL.stream().filter(t -> t.id().equals(id)).findFirst().orElse(DAY);
    }

    private static Color rgb(int rgb) {
        return new Color(rgb);
    }
}
