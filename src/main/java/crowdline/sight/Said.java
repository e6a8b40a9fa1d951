package crowdline.sight;

import crowdline.measure.Units;
import crowdline.show.CrowdUnits;

/**
 * A number as it is said: rounded as people round, with its unit.
 *
 * @param value as computed
 * @param unit of value and rounded, such as "ft"
 * @param rounded what the words say
 * @param step to which it was rounded; it lies within half of it
 * @param words such as "twelve hundred feet"
 */
public record Said(double value, String unit, double rounded, double step, String words) {
    /** What differs by no more than this share is called the same; by judgement. */
    private static final double NEAR_ENOUGH = 0.05;

    /** The words of a rounded number; what cannot be said is told as it was computed, with its unit. */
    private static String words(double rounded, double value, String unit) {
        if (!CountedWords.has(rounded)) {
            throw new Unsayable(value, " " + unit);
        }
        return CountedWords.of(rounded);
    }

    private static Said of(double value, String unit, double step, String one, String many) {
        double rounded = Math.rint(value / step) * step + 0.0;
        String words = words(rounded, value, unit) + " " + (rounded == 1 ? one : many);
        return new Said(value, unit, rounded, step, words);
    }

    /** A height or a change of height, as this crowd measures. */
    public static Said height(double m, CrowdUnits units) {
        return units == CrowdUnits.MILES ? feet(m) : metres(m);
    }

    /** A speed, as this crowd measures. */
    public static Said speed(double mps, CrowdUnits units) {
        if (units == CrowdUnits.MILES) {
            return mph(mps);
        }
        double kmh = Units.kmhFromMps(mps);
        return of(kmh, "km/h", kmh < 12 ? 1 : kmh < 97.5 ? 5 : 10, "kilometre an hour", "kilometres an hour");
    }

    /** A height or a change of height in feet. */
    static Said feet(double m) {
        double ft = Units.ftFromM(m);
        return of(ft, "ft", ft < 975 ? 50 : ft < 4950 ? 100 : 500, "foot", "feet");
    }

    public static Said mph(double mps) {
        double mph = Units.mphFromMps(mps);
        return of(mph, "mph", mph < 12 ? 1 : mph < 97.5 ? 5 : 10, "mile an hour", "miles an hour");
    }

    /** A speed too small to be told from none. */
    public static Said standstill(double mps) {
        return new Said(Units.mphFromMps(mps), "mph", 0, 5, "no speed at all");
    }

    public static Said seconds(double s) {
        if (s >= 0.25 && s < 0.625) {
            return new Said(s, "s", 0.5, 0.5, "half a second");
        }
        if (s >= 0.625 && s < 0.875) {
            return new Said(s, "s", 0.75, 0.25, "three quarters of a second");
        }
        if (s >= 1.25 && s < 1.75) {
            return new Said(s, "s", 1.5, 0.5, "a second and a half");
        }
        if (s >= 57.5) {
            return minutes(s / 60);
        }
        return of(s, "s", s < 2.75 ? 0.5 : s < 20.5 ? 1 : 5, "second", "seconds");
    }

    private static Said minutes(double min) {
        double rounded = Math.rint(min * 2) / 2;
        String words = rounded == 1
                ? "a minute"
                : rounded == 1.5 ? "a minute and a half" : words(rounded, min, "min") + " minutes";
        return new Said(min, "min", rounded, 0.5, words);
    }

    /** A part of something, or some times it: "half", "three quarters of", "once", "one and a half times". */
    public static Said share(double ratio, String unit) {
        double rounded = Math.rint(ratio * 4) / 4;
        if (rounded >= 1) {
            return times(ratio, unit);
        }
        String words = rounded == 0.5 ? "half" : words(rounded, ratio, unit) + " of";
        return new Said(ratio, unit, rounded, 0.25, words);
    }

    /** A load or a ratio: "twice", "three and a half times". */
    public static Said times(double ratio, String unit) {
        double rounded = Math.rint(ratio * 2) / 2;
        return new Said(ratio, unit, rounded, 0.5, timesWords(rounded, ratio, unit));
    }

    private static String timesWords(double rounded, double ratio, String unit) {
        return rounded == 2 ? "twice" : rounded == 1 ? "once" : words(rounded, ratio, unit) + " times";
    }

    /**
     * A load or a ratio with how it is rounded: "about twice", "nearly three times". What is not near a half is told against
     * the whole or half below or above it: 2.3 times is "more than twice".
     */
    public static Said roughly(double ratio, String unit) {
        double near = Math.rint(ratio * 2) / 2;
        boolean whole = near == Math.rint(near);
        if (Math.abs(ratio - near) <= NEAR_ENOUGH * ratio) {
            return new Said(ratio, unit, near, 0.5, "about " + timesWords(near, ratio, unit));
        }
        if (whole && ratio < near) {
            return new Said(ratio, unit, near, 0.5, "nearly " + timesWords(near, ratio, unit));
        }
        double below = Math.floor(ratio * 2) / 2;
        return new Said(ratio, unit, below, 1, "more than " + timesWords(below, ratio, unit));
    }

    /** A large count. */
    public static Said many(double count, String one, String many) {
        return of(count, many, count < 20.5 ? 1 : count < 97.5 ? 5 : 10, one, many);
    }

    public static Said kilograms(double kg) {
        return of(kg, "kg", kg < 97.5 ? 1 : 10, "kilogram", "kilograms");
    }

    /** A small length, as this crowd measures. */
    public static Said length(double m, CrowdUnits units) {
        if (units == CrowdUnits.METRIC) {
            return metres(m);
        }
        double ft = Units.ftFromM(m);
        return of(ft, "ft", ft < 20.5 ? 1 : ft < 97.5 ? 5 : ft < 975 ? 50 : 100, "foot", "feet");
    }

    /** A small length. */
    public static Said metres(double m) {
        return of(m, "m", m < 20.5 ? 1 : m < 97.5 ? 5 : 50, "metre", "metres");
    }

    /** A distance over the field: metres or feet when near, miles or kilometres when far. */
    public static Said distance(double m, CrowdUnits units) {
        double miles = Units.milesFromM(m);
        if (miles < 0.45) {
            return length(m, units);
        }
        if (units == CrowdUnits.METRIC) {
            return kilometres(m / 1000);
        }
        double step = miles < 1.125 ? 0.25 : miles < 4.75 ? 0.5 : 1;
        double rounded = Math.rint(miles / step) * step;
        String words = rounded == 0.25 || rounded == 0.75
                ? CountedWords.of(rounded) + " of a mile"
                : rounded == 0.5
                        ? "half a mile"
                        : rounded == 1
                                ? "a mile"
                                : rounded == 1.5 ? "a mile and a half" : words(rounded, miles, "miles") + " miles";
        return new Said(miles, "miles", rounded, step, words);
    }

    private static Said kilometres(double km) {
        double step = km < 4.75 ? 0.5 : 1;
        double rounded = Math.rint(km / step) * step;
        String words = rounded == 0.5
                ? "half a kilometre"
                : rounded == 1
                        ? "a kilometre"
                        : rounded == 1.5 ? "a kilometre and a half" : words(rounded, km, "kilometres") + " kilometres";
        return new Said(km, "km", rounded, step, words);
    }
}
