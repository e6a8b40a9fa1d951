package crowdline.measure;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody reads speeds and heights in. The program reckons and speaks in knots and feet; on the way to whoever reads,
 * this puts them into their units, and what they type back.
 *
 * @param speeds what speeds are read in
 * @param heights what heights are read in
 */
public record Measures(SpeedUnit speeds, LengthUnit heights) {
    /** Knots and feet, as aircraft are flown. */
    public static final Measures USUAL = new Measures(SpeedUnit.KNOTS, LengthUnit.FEET);

    private static final String NUMBER = "(?<![\\p{L}\\d.,])[-−+]?\\d[\\d,]*(?:\\.\\d+)?";
    private static final Pattern NUMBERS = Pattern.compile(NUMBER);
    /** A number or a span of them, with knots or feet behind it; and what stands in quotes, which somebody else wrote. */
    private static final Pattern TOLD = Pattern.compile("\"[^\"]*\"|“[^”]*”|" + NUMBER
            + "(?:(?:–| to |-|/)[-−+]?\\d[\\d,]*(?:\\.\\d+)?)*[ \u00a0](kt|ft)(?![\\p{L}\\d])");
    /** A unit as the end of a label, such as "Begins at, ft" or "Entry kt". */
    private static final Pattern LABELLED = Pattern.compile("(?<![\\d][ \u00a0])(?<=[, (])(kt|ft)(?![\\p{L}])");

    private static final String PLAIN = "[-−+]?\\d+(\\.\\d+)?";
    private static final Pattern TYPED = Pattern.compile("([-−+]?\\d{1,7}(?:\\.\\d{1,6})?)\\s*(\\S.*)?");

    /** What a number that is typed or shown may be. */
    public enum Dimension {
        /** Kept in knots. */
        SPEED,
        /** Kept in feet. */
        HEIGHT,
        /** Kept in metres. */
        LENGTH,
        /** None of these. */
        OTHER;

        /** By the unit at the end of a label, such as "Begins at, ft". */
        public static Dimension of(String label) {
            return label.matches(".*[, ]kt")
                    ? SPEED
                    : label.matches(".*[, ]ft( .*)?") ? HEIGHT : label.matches(".*[, ]m") ? LENGTH : OTHER;
        }
    }

    /**
     * The units that somebody asked for, such as "km/h,m"; what is not named stays as usual.
     *
     * @throws IllegalArgumentException if that is no unit, with what is allowed
     */
    public static Measures of(String asked) {
        Measures measures = USUAL;
        for (String name : asked.split(",", -1)) {
            Optional<SpeedUnit> speed = speed(name);
            Optional<LengthUnit> height = length(name);
            if (speed.isEmpty() && height.isEmpty()) {
                throw new IllegalArgumentException("“" + name.strip()
                        + "” is no unit; speeds are in kt, km/h or mph and" + " heights in ft or m, such as km/h,m");
            }
            measures = new Measures(speed.orElse(measures.speeds), height.orElse(measures.heights));
        }
        return measures;
    }

    /** As {@link #of} takes them. */
    public String asAsked() {
        return speeds.sign() + "," + heights.sign();
    }

    private static Optional<SpeedUnit> speed(String name) {
        return named(name, SpeedUnit.values());
    }

    private static Optional<LengthUnit> length(String name) {
        return named(name, LengthUnit.values());
    }

    private static <U extends ReadUnit> Optional<U> named(String name, U[] units) {
        return Arrays.stream(units)
                .filter(u -> u.names().contains(name.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    public Measures with(SpeedUnit other) {
        return new Measures(other, heights);
    }

    public Measures with(LengthUnit other) {
        return new Measures(speeds, other);
    }

    /** A speed to the whole unit, such as "93 kt". */
    public String speed(double kt) {
        return whole(kt * speeds.perKt()) + " " + speeds.sign();
    }

    /** A height to the whole unit, such as "1,250 ft". */
    public String height(double ft) {
        return whole(ft * heights.perFt()) + " " + heights.sign();
    }

    /** A height as near as a prediction is worth, to ten feet or five metres, such as "1,250 ft". */
    public String roughly(double ft) {
        return String.format(Locale.UK, "%,d", near(ft)) + " " + heights.sign();
    }

    /** The same number for a column, such as "1250". */
    public String roughlyNumber(double ft) {
        return Long.toString(near(ft));
    }

    private long near(double ft) {
        int step = heights == LengthUnit.FEET ? 10 : 5;
        return Math.round(ft * heights.perFt() / step) * step;
    }

    private static String whole(double value) {
        return String.format(Locale.UK, "%,.0f", value + 0.0);
    }

    /** A number of knots or feet in these units; others stay as they are. */
    public double in(double value, Dimension dimension) {
        return switch (dimension) {
            case SPEED -> value * speeds.perKt();
            case HEIGHT -> value * heights.perFt();
            case LENGTH, OTHER -> value;
        };
    }

    /** Every number of a text that holds nothing but knots or feet, such as "800–1,250". */
    public String numbers(String text, Dimension dimension) {
        return isAsKept(dimension) ? text : NUMBERS.matcher(text).replaceAll(m -> converted(m, dimension));
    }

    private boolean isAsKept(Dimension dimension) {
        return switch (dimension) {
            case SPEED -> speeds == SpeedUnit.KNOTS;
            case HEIGHT -> heights == LengthUnit.FEET;
            case LENGTH, OTHER -> true;
        };
    }

    private String converted(MatchResult found, Dimension dimension) {
        String text = found.group().replace(",", "").replace('−', '-');
        double value = in(Double.parseDouble(text), dimension);
        String sign = found.group().startsWith("+") ? "+" : "";
        boolean fine = text.contains(".");
        return sign
                + String.format(Locale.UK, fine ? "%,.1f" : "%,.0f", value + 0.0)
                        .replace('-', '−');
    }

    /** A sentence of the program, which speaks in knots and feet. What stands in quotes stays as it is. */
    public String told(String sentence) {
        return this.equals(USUAL)
                ? sentence
                : TOLD.matcher(sentence).replaceAll(m -> Matcher.quoteReplacement(quantity(m)));
    }

    private String quantity(MatchResult found) {
        String unit = found.group(1);
        if (unit == null) {
            return found.group();
        }
        Dimension dimension = unit.equals("kt") ? Dimension.SPEED : Dimension.HEIGHT;
        if (isAsKept(dimension)) {
            return found.group();
        }
        String values = found.group().substring(0, found.group().length() - unit.length());
        return numbers(values, dimension) + sign(dimension);
    }

    /** A label with a unit in it, such as "Begins at, ft", and perhaps an example. */
    public String label(String label) {
        return LABELLED.matcher(told(label))
                .replaceAll(m -> sign(m.group().equals("kt") ? Dimension.SPEED : Dimension.HEIGHT));
    }

    /** A number as it stands in a field, in the fewest digits, to a tenth; text that is none stays as it is. */
    public String shown(String text, Dimension dimension) {
        if (isAsKept(dimension) || !text.matches(PLAIN)) {
            return text;
        }
        return written(Math.rint(in(Double.parseDouble(text.replace('−', '-')), dimension) * 10) / 10);
    }

    /** What was typed into a field, with the unit it is meant in behind it, for {@link #read}; what has one keeps it. */
    public String meant(String typed, Dimension dimension) {
        return isAsKept(dimension) || !plain(typed).matches(PLAIN) ? typed : typed.strip() + " " + sign(dimension);
    }

    /**
     * A number as it was typed, with its unit or without, in the unit it is kept in.
     *
     * @return nothing if it is no number, or its unit measures something else
     */
    public static OptionalDouble read(String typed, Dimension dimension) {
        Matcher found = TYPED.matcher(plain(typed));
        if (!found.matches()) {
            return OptionalDouble.empty();
        }
        double number = Double.parseDouble(found.group(1));
        String unit = found.group(2);
        double per = unit == null ? 1 : perKept(unit, dimension);
        if (Double.isNaN(per)) {
            return OptionalDouble.empty();
        }
        // Finer than anybody flies by, and coarse enough to be read in a show file.
        return OptionalDouble.of(per == 1 ? number : Math.rint(number / per * 100) / 100);
    }

    static String plain(String typed) {
        return typed.strip().replace(",", "").replace('−', '-');
    }

    private static double perKept(String unit, Dimension dimension) {
        return switch (dimension) {
            case SPEED ->
                speed(unit)
                        .map(SpeedUnit::perKt)
                        .orElse(unit.equalsIgnoreCase("m/s") ? Units.mpsFromKt(1) : Double.NaN);
            case HEIGHT -> perFt(unit);
            case LENGTH -> perFt(unit) / LengthUnit.METRES.perFt();
            case OTHER -> unit.matches("[\\p{L}°%²/ ]+") ? 1 : Double.NaN;
        };
    }

    /** Feet, metres, and what long ways are told in. */
    private static double perFt(String unit) {
        return length(unit).map(LengthUnit::perFt).orElseGet(() -> switch (unit.toLowerCase(Locale.ROOT)) {
            case "km", "kilometre", "kilometres" -> Units.mFromFt(1) / 1000;
            case "mi", "mile", "miles" -> Units.milesFromM(Units.mFromFt(1));
            case "nm", "nautical miles" -> Units.nauticalMilesFromM(Units.mFromFt(1));
            default -> Double.NaN;
        });
    }

    private static String written(double value) {
        return value == Math.rint(value) ? String.format(Locale.UK, "%.0f", value + 0.0) : String.valueOf(value);
    }

    private String sign(Dimension dimension) {
        return switch (dimension) {
            case SPEED -> speeds.sign();
            case HEIGHT -> heights.sign();
            case LENGTH -> LengthUnit.METRES.sign();
            case OTHER -> "";
        };
    }
}
