package crowdline.show.weather;

import crowdline.show.DayAir;
import crowdline.show.bounds.Written;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads wind, temperature, pressure and cloud base out of an aerodrome's routine or special report (WMO-No. 306, Manual
 * on Codes, volume I.1, FM 15 METAR and FM 16 SPECI, with the inches of mercury of region IV). Everything else is left
 * out, and a note names it. Directions in a METAR are true.
 */
public final class Metar {
    /** A report says nothing of the wind higher up. */
    public static final String WINDS_STAY = "The winds higher up stay as they were";

    private static final int LONGEST = 2000;
    /** Conventional inch of mercury, hPa (ISO 80000-4 annex; NIST SP 811, appendix B.8: 3.386389 kPa). */
    private static final double HPA_PER_INCH = 33.86389;

    private static final Pattern TEMPERATURES = Pattern.compile("(M?\\d{2}|//)/(M?\\d{2}|//)?");
    private static final Pattern TEMPERATURES_MEANT = Pattern.compile("[-+M]*\\d{1,3}/([-+M]*\\d{0,3}|//)");
    private static final Pattern PRESSURE = Pattern.compile("[QA](\\d{4}|////)");
    private static final Pattern PRESSURE_MEANT = Pattern.compile("Q.*|A[\\d/].*");
    private static final Pattern TIME = Pattern.compile("(0[1-9]|[12]\\d|3[01])([01]\\d|2[0-3])[0-5]\\dZ");
    private static final Pattern TREND = Pattern.compile("BECMG|TEMPO|NOSIG|RMK");

    private final DayAir before;
    private final MetarCloud cloud = new MetarCloud();
    private final List<String> read = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<String> unused = new ArrayList<>();
    private MetarWind.@Nullable Mean wind;
    private boolean windSeen;
    private @Nullable Double temperatureC;
    private boolean temperatureSeen;
    private @Nullable Double qnhHpa;
    private boolean pressureSeen;

    private Metar(DayAir before) {
        this.before = before;
    }

    /**
     * Reads a report.
     *
     * @param text one report, as it was sent
     * @param before the air until now; what the report does not say stays
     * @throws IllegalArgumentException in one sentence, if it is no report or a group of it is wrong
     */
    public static MetarAir read(String text, DayAir before) {
        String plain = text.strip().toUpperCase(Locale.ROOT);
        if (plain.length() > LONGEST) {
            throw new IllegalArgumentException("the text has " + plain.length() + " characters; one METAR has at most "
                    + LONGEST + ", so paste only that");
        }
        if (plain.endsWith("=")) {
            plain = plain.substring(0, plain.length() - 1);
        }
        List<String> groups =
                plain.isBlank() ? List.of() : Arrays.asList(plain.strip().split("\\s+"));
        return new Metar(before).all(groups);
    }

    private MetarAir all(List<String> groups) {
        for (int i = 0; i < groups.size(); i++) {
            String group = groups.get(i);
            if (TREND.matcher(group).matches()) {
                String rest = shown(String.join(" ", groups.subList(i, groups.size())));
                notes.add((group.equals("RMK") ? "Remarks are" : "The trend is") + " not used: " + rest);
                break;
            }
            if (!header(group, i == 0)) {
                take(group);
            }
        }
        return air();
    }

    /** Takes a group of the report's head. */
    private boolean header(String group, boolean first) {
        switch (group) {
            case "METAR", "SPECI" -> {
                if (!first) {
                    throw new IllegalArgumentException(group + " appears twice; paste one report only");
                }
            }
            case "TAF" -> throw new IllegalArgumentException("TAF is a forecast; paste a METAR, which is a report");
            case "NIL" ->
                throw new IllegalArgumentException(
                        "NIL means that there is no report; wait for the next one or type the air in");
            case "COR" -> notes.add("COR: a corrected report");
            case "AUTO" -> notes.add("AUTO: nobody checked it, so cloud may be missing");
            default -> {
                if (group.matches("\\d{6}Z?") && !TIME.matcher(group).matches()) {
                    throw new IllegalArgumentException(
                            group + " is not a time; it must be day, hour and minute and Z, such as 121220Z");
                }
                return TIME.matcher(group).matches();
            }
        }
        return true;
    }

    private void take(String group) {
        if (MetarWind.isMeant(group)) {
            wind(group);
        } else if (group.matches("\\d{3}V\\d{3}")) {
            sector(group);
        } else if (PRESSURE_MEANT.matcher(group).matches()) {
            pressure(group);
        } else if (TEMPERATURES.matcher(group).matches()
                || TEMPERATURES_MEANT.matcher(group).matches()) {
            temperatures(group);
        } else if (!cloud.take(group)) {
            unused.add(shown(group));
        }
    }

    private void wind(String group) {
        MetarWind taken = MetarWind.read(group);
        if (windSeen) {
            notes.add(group + " is a second wind and is not used");
            return;
        }
        windSeen = true;
        wind = taken.wind();
        notes.addAll(taken.notes());
    }

    private void sector(String group) {
        double from = Double.parseDouble(group.substring(0, 3));
        double to = Double.parseDouble(group.substring(4));
        if (from > 360 || to > 360) {
            throw new IllegalArgumentException(
                    group + " is not a range of wind directions; each must be from 000 to 360");
        }
        notes.add("The wind varies between " + group.substring(0, 3) + "° and " + group.substring(4)
                + "°; its mean direction is used");
    }

    private void pressure(String group) {
        if (!PRESSURE.matcher(group).matches()) {
            throw new IllegalArgumentException(shown(group) + " is not a pressure; it must be Q and four digits of"
                    + " hectopascals or A and four of hundredths of an inch, such as Q1018 or A2992");
        }
        if (group.endsWith("////")) {
            notes.add("The pressure is missing in " + group + "; it stays as it was unless another group gives it");
            return;
        }
        if (pressureSeen) {
            notes.add(group + " is a second pressure and is not used");
            return;
        }
        double number = Double.parseDouble(group.substring(1));
        double hpa = group.startsWith("Q") ? number : Math.rint(number * HPA_PER_INCH / 10) / 10;
        if (hpa < 850 || hpa > 1100) {
            throw new IllegalArgumentException(
                    String.format(Locale.UK, "%s is %.0f hPa; it must be from 850 to 1100 hPa", group, hpa));
        }
        pressureSeen = true;
        qnhHpa = hpa;
    }

    private void temperatures(String group) {
        if (!TEMPERATURES.matcher(group).matches()) {
            throw new IllegalArgumentException(
                    group + " is not a temperature and dew point; each must be two digits, with"
                            + " M before them below zero, such as 17/16 or M04/M06");
        }
        String first = group.substring(0, group.indexOf('/', group.startsWith("//") ? 2 : 0));
        if (temperatureSeen) {
            notes.add(group + " is a second temperature and is not used");
            return;
        }
        temperatureSeen = true;
        if (first.equals("//")) {
            notes.add("The temperature is missing in " + group + "; it stays as it was");
            return;
        }
        double degrees = Double.parseDouble(first.replace('M', '-'));
        if (Math.abs(degrees) > 60) {
            throw new IllegalArgumentException(
                    String.format(Locale.UK, "%s is %.0f °C; it must be from -60 to 60 °C", group, degrees));
        }
        temperatureC = degrees + 0.0;
        notes.add("The dew point of " + group + " is not used");
    }

    private MetarAir air() {
        if (wind == null && temperatureC == null && qnhHpa == null && !cloud.told()) {
            throw new IllegalArgumentException(
                    "there is no wind, temperature, pressure or cloud to read; paste the whole"
                            + " report, such as METAR XXXX 121220Z 24008KT 9999 BKN035 19/11 Q1016");
        }
        notes.addAll(cloud.notes());
        stays(windSeen, "wind");
        stays(temperatureSeen, "temperature");
        stays(qnhHpa != null || notes.stream().anyMatch(n -> n.startsWith("The pressure")), "pressure");
        stays(cloud.told(), "cloud");
        if (!before.windsAloft().isEmpty()) {
            notes.add(WINDS_STAY);
        }
        if (!unused.isEmpty()) {
            notes.add("Not used: " + String.join(", ", unused));
        }
        MetarWind.Mean blows = wind;
        Double qnh = qnhHpa;
        Double warm = temperatureC;
        DayAir air = new DayAir(
                qnh == null ? before.qnhHpa() : qnh,
                warm == null ? before.temperatureC() : warm,
                blows == null ? before.windFromDeg() : blows.fromDeg(),
                blows == null ? before.windKt() : blows.kt(),
                before.windsAloft(),
                cloud.told() ? cloud.baseFt() : before.cloudBaseFt());
        words(air, blows != null, warm != null, qnh != null);
        return new MetarAir(air, read, notes);
    }

    private void stays(boolean said, String what) {
        if (!said) {
            notes.add("It does not give the " + what + ", which stays as it was");
        }
    }

    private void words(DayAir air, boolean blows, boolean warm, boolean pressed) {
        if (blows) {
            read.add(
                    air.windKt() == 0
                            ? "Calm"
                            : String.format(
                                    Locale.UK, "Wind from %03.0f° true at %.0f kt", air.windFromDeg(), air.windKt()));
        }
        if (warm) {
            read.add(String.format(Locale.UK, "%.0f °C", air.temperatureC()).replace('-', '−'));
        }
        if (pressed) {
            read.add(String.format(Locale.UK, "QNH %.0f hPa", air.qnhHpa()));
        }
        if (cloud.told()) {
            Double base = cloud.baseFt();
            read.add(base == null ? "No cloud base" : String.format(Locale.UK, "Cloud base %,.0f ft", base));
        }
    }

    /** As much of a text as a sentence can bear. */
    private static String shown(String text) {
        String plain = text.replaceAll("\\p{Cntrl}", "?");
        return Written.brief(plain, 60);
    }
}
