package crowdline.telemetry.serial;

import java.util.List;

/** Opens one link, again whenever it was lost. */
public interface LinkOpener {
    /** What to call it on the screen, such as {@code ttyUSB0}. */
    String name();

    /** The speeds it may have, in baud, likeliest first; empty where it has none, as a file. */
    List<Integer> speedsBaud();

    /**
     * Opens it; DTR and RTS are on afterwards where there are such lines.
     *
     * @param baud one of its speeds; of no meaning where it has none
     */
    Link open(int baud) throws LinkException;
}
