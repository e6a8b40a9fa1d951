package crowdline.console.prepare.field;

import crowdline.console.theme.Appearance;

/** Whether everything finds its room side by side, in a window 1280 wide. */
public final class Roomy {
    private static final double BELOW_ZOOM = 1.3;

    private Roomy() {}

    public static boolean in(Appearance worn) {
        return worn.zoom().factor() < BELOW_ZOOM;
    }
}
