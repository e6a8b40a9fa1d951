package crowdline.show.aircraft;

import crowdline.show.bounds.Quantity;

/**
 * Which way an aircraft differs from what is typical of its kind. Each goes from -1 to 1; 0 is typical, 1 the high end of
 * the kind's range and -1 the low end, in proportion between.
 *
 * @param heavier moves the mass
 * @param stronger moves the power of the engine, or the thrust of a jet
 * @param rollsFaster moves the roll rate
 */
public record Sliders(double heavier, double stronger, double rollsFaster) {
    public static final Sliders TYPICAL = new Sliders(0, 0, 0);

    public Sliders {
        Quantity.HEAVIER.must(heavier);
        Quantity.STRONGER.must(stronger);
        Quantity.ROLLS_FASTER.must(rollsFaster);
    }

    /** How far a number is moved, by its key in the show file. */
    double of(String key) {
        return switch (key) {
            case "massKg" -> heavier;
            case "powerKw", "thrustKn", "reheatKn" -> stronger;
            case "rollRateDegPerS" -> rollsFaster;
            default -> 0;
        };
    }
}
