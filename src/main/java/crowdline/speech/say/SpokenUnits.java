package crowdline.speech.say;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Unit symbols and how they are said: "kg" is kilograms, or kilogram after one and before the thing ("a 90-kg"). */
public final class SpokenUnits {

    private record Name(String one, String many) {}

    private static final Map<String, Name> NAMES = names();

    /** What is measured against time or a thing: after the stroke in "km/hour", "hp/tonne". */
    private static final Map<String, String> EACH = each();

    /** Matches a unit symbol, or one over another ("gal/h"), with nothing of a word behind it; no groups. */
    static final String REGEX = "(?:" + anyOf(NAMES.keySet()) + "|(?:" + anyOf(NAMES.keySet()) + ") ?/ ?(?:"
            + anyOf(EACH.keySet()) + "))(?![\\p{L}\\p{N}°²³])(?!/\\p{L})";

    /** Matches what stands after the stroke of a rate; no groups. */
    static final String EACH_REGEX = "(?:" + anyOf(EACH.keySet()) + ")(?![\\p{L}\\p{N}°²³])";

    private SpokenUnits() {}

    static String say(String symbol, boolean one) {
        Name name = NAMES.get(symbol);
        int stroke = symbol.indexOf('/');
        if (name == null && stroke > 0) {
            return say(symbol.substring(0, stroke).strip(), one) + " "
                    + each(symbol.substring(stroke + 1).strip());
        }
        if (name == null) {
            throw new IllegalArgumentException("no unit is written \"" + symbol + "\"");
        }
        return one ? name.one() : name.many();
    }

    /** "an hour", "a square metre". */
    static String each(String symbol) {
        String name = EACH.get(symbol);
        if (name == null) {
            throw new IllegalArgumentException("nothing is measured for each \"" + symbol + "\"");
        }
        return name;
    }

    /** "a 300-ft pole": joined by a hyphen, the unit stands before a thing and is said as one. */
    static boolean beforeThing(Matcher m, int unitGroup) {
        int start = m.start(unitGroup);
        return start > m.start() && m.group().charAt(start - 1 - m.start()) == '-';
    }

    private static String anyOf(Set<String> symbols) {
        return symbols.stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    private static Map<String, String> each() {
        Map<String, String> each = new LinkedHashMap<>();
        for (String symbol : List.of(
                "s", "sec", "min", "h", "hr", "m", "km", "mi", "kg", "lb", "t", "hp", "kW", "l", "L", "gal", "m²", "m2",
                "sq m", "ft²", "ft2", "sq ft", "m³", "m3", "ft", "ha", "g")) {
            String one = Objects.requireNonNull(NAMES.get(symbol)).one();
            each.put(symbol, (one.equals("hour") ? "an " : "a ") + one);
        }
        each.put("hour", "an hour");
        for (String word : List.of(
                "second", "minute", "day", "week", "month", "year", "person", "head", "pilot", "turn", "roll", "tonne",
                "litre", "gallon", "metre", "kilo", "mile", "side", "way", "team", "ticket", "car")) {
            each.put(word, "a " + word);
        }
        return Map.copyOf(each);
    }

    public static boolean isUnit(String symbol) {
        return NAMES.containsKey(symbol);
    }

    private static Map<String, Name> names() {
        Map<String, Name> names = new LinkedHashMap<>();
        lengths(names);
        speeds(names);
        masses(names);
        others(names);
        return Map.copyOf(names);
    }

    private static void lengths(Map<String, Name> names) {
        put(names, new Name("foot", "feet"), "ft", "FT", "Ft");
        regular(names, "metre", "m");
        regular(names, "kilometre", "km", "KM", "Km");
        regular(names, "centimetre", "cm");
        regular(names, "millimetre", "mm");
        // "in" is no unit: "12 in the air".
        put(names, new Name("inch", "inches"), "ins");
        regular(names, "yard", "yd", "yds");
        regular(names, "mile", "mi");
        regular(names, "nautical mile", "nm", "NM", "nmi");
        regular(names, "square metre", "m²", "m2", "sq m");
        put(names, new Name("square foot", "square feet"), "ft²", "ft2", "sq ft");
        regular(names, "cubic metre", "m³", "m3");
        regular(names, "hectare", "ha");
        put(names, new Name("cubic foot", "cubic feet"), "cu ft", "ft³", "ft3");
        put(names, new Name("cubic inch", "cubic inches"), "cu in", "cu. in.", "cu in.", "in³");
    }

    private static void speeds(Map<String, Name> names) {
        regular(names, "knot", "kt", "kts", "kn", "KT", "KTS", "Kts", "Kt");
        put(names, new Name("mile an hour", "miles an hour"), "mph", "MPH", "m.p.h.", "m.p.h", "mi/h");
        put(names, new Name("kilometre an hour", "kilometres an hour"), "km/h", "km/hr", "kph", "kmh", "KPH");
        put(names, new Name("metre a second", "metres a second"), "m/s", "mps");
        put(names, new Name("metre a second squared", "metres a second squared"), "m/s²", "m/s2");
        put(names, new Name("foot a second", "feet a second"), "ft/s", "fps");
        put(names, new Name("foot a minute", "feet a minute"), "ft/min", "fpm");
        put(names, new Name("degree a second", "degrees a second"), "°/s", "deg/s", "deg/sec", "°/sec");
        put(names, new Name("revolution a minute", "revolutions a minute"), "rpm", "RPM", "r.p.m.", "r.p.m", "rev/min");
        put(names, new Name("mile to the gallon", "miles to the gallon"), "mpg", "m.p.g.", "m.p.g");
    }

    private static void masses(Map<String, Name> names) {
        regular(names, "kilogram", "kg", "KG", "Kg");
        put(names, new Name("kilogram a square metre", "kilograms a square metre"), "kg/m²", "kg/m2");
        put(names, new Name("g", "g"), "g", "G");
        put(names, new Name("gee", "gees"), "Gs", "gs", "g's", "G's");
        put(names, new Name("pound a square foot", "pounds a square foot"), "lb/sq ft", "lbs/sq ft", "lb/ft²");
        regular(names, "pound", "lb", "lbs", "LB", "LBS", "lbf");
        regular(names, "tonne", "t");
        regular(names, "ounce", "oz");
        put(names, new Name("stone", "stone"), "st");
    }

    private static void others(Map<String, Name> names) {
        put(names, new Name("horsepower", "horsepower"), "hp", "HP", "Hp", "h.p.", "h.p");
        put(names, new Name("brake horsepower", "brake horsepower"), "bhp", "BHP", "b.h.p.", "b.h.p");
        put(names, new Name("shaft horsepower", "shaft horsepower"), "shp", "SHP");
        put(names, new Name("pound a square inch", "pounds a square inch"), "psi");
        put(names, new Name("inch of mercury", "inches of mercury"), "inHg", "in Hg");
        regular(names, "cylinder", "cyl");
        regular(names, "kilowatt", "kW", "KW", "kw");
        regular(names, "watt", "W");
        regular(names, "newton", "N");
        regular(names, "kilonewton", "kN");
        regular(names, "newton metre", "Nm");
        regular(names, "degree", "°", "deg", "degs");
        put(names, new Name("degree Celsius", "degrees Celsius"), "°C", "° C");
        put(names, new Name("degree Fahrenheit", "degrees Fahrenheit"), "°F", "° F");
        put(names, new Name("per cent", "per cent"), "%");
        regular(names, "second", "s", "sec", "secs");
        regular(names, "minute", "min", "mins");
        regular(names, "hour", "h", "hr", "hrs");
        regular(names, "litre", "l", "L");
        regular(names, "gallon", "gal", "gals");
        put(names, new Name("c c", "c c"), "cc");
        put(names, new Name("litre an hour", "litres an hour"), "l/h", "L/h", "l/hr", "lph");
        put(names, new Name("hectopascal", "hectopascals"), "hPa");
        regular(names, "millibar", "mb", "mbar");
        put(names, new Name("megahertz", "megahertz"), "MHz");
        put(names, new Name("kilohertz", "kilohertz"), "kHz");
        regular(names, "decibel", "dB");
    }

    private static void regular(Map<String, Name> names, String one, String... symbols) {
        put(names, new Name(one, one + "s"), symbols);
    }

    private static void put(Map<String, Name> names, Name name, String... symbols) {
        for (String symbol : symbols) {
            names.put(symbol, name);
        }
    }
}
