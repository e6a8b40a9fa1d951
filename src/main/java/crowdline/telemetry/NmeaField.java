package crowdline.telemetry;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** Single fields of NMEA 0183. Empty is null; anything that is not what it should be is unfit. */
final class NmeaField {
    /** Two-digit years from here on are of the 1900s: no receiver told a date before. */
    private static final int FIRST_YEAR = 80;
    /** Characters; no number of a receiver comes near. */
    private static final int LONGEST_NUMBER = 20;

    private NmeaField() {}

    /** A field that is not what it should be. */
    static final class Unfit extends Exception {
        private static final long serialVersionUID = 1L;
        private final String reason;

        Unfit(String reason) {
            super(reason, null, false, false);
            this.reason = reason;
        }

        Unfit(String what, String field, String allowed) {
            this(what + " is \"" + field + "\"; it must be " + allowed);
        }

        String reason() {
            return reason;
        }
    }

    static void count(String[] fields, int least, int greatest) throws Unfit {
        int count = fields.length - 1;
        if (count < least || count > greatest) {
            String allowed = least == greatest ? "it has " + least : "it has " + least + " to " + greatest;
            throw new Unfit(count + " fields; " + allowed);
        }
    }

    static void letter(String what, String field, String allowed) throws Unfit {
        if (!field.isEmpty() && (field.length() > 1 || allowed.indexOf(field.charAt(0)) < 0)) {
            throw new Unfit(what, field, "empty or one letter of " + allowed);
        }
    }

    static @Nullable Double number(String what, String field, double least, double greatest) throws Unfit {
        if (field.isEmpty()) {
            return null;
        }
        double value = isDecimal(field) ? Double.parseDouble(field) : Double.NaN;
        if (!(value >= least && value <= greatest)) {
            throw new Unfit(what, field, "a number from " + least + " to " + greatest);
        }
        return value;
    }

    /** {@code hhmmss} with decimals. */
    static @Nullable LocalTime time(String field) throws Unfit {
        if (field.isEmpty()) {
            return null;
        }
        if (isDecimal(field) && wholeDigits(field) == 6) {
            int whole = Integer.parseInt(field.substring(0, 6));
            long nanos = Math.round((Double.parseDouble(field) - whole) * 1e9);
            try {
                LocalTime time = LocalTime.of(whole / 10_000, whole / 100 % 100, whole % 100);
                return time.plusNanos(Math.min(nanos, 999_999_999L));
            } catch (DateTimeException e) {
                throw new Unfit("time", field, "hhmmss from 000000 to 235959");
            }
        }
        throw new Unfit("time", field, "hhmmss from 000000 to 235959");
    }

    /** {@code ddmmyy}. */
    static @Nullable LocalDate date(String field) throws Unfit {
        if (field.isEmpty()) {
            return null;
        }
        if (field.length() == 6 && wholeDigits(field) == 6) {
            int year = Integer.parseInt(field.substring(4));
            try {
                return LocalDate.of(
                        year + (year >= FIRST_YEAR ? 1900 : 2000),
                        Integer.parseInt(field.substring(2, 4)),
                        Integer.parseInt(field.substring(0, 2)));
            } catch (DateTimeException e) {
                throw new Unfit("date", field, "a date as ddmmyy");
            }
        }
        throw new Unfit("date", field, "a date as ddmmyy");
    }

    /** Four fields from {@code at}: {@code ddmm.mmm}, N or S, {@code dddmm.mmm}, E or W. */
    static Sentence.@Nullable Place place(String[] f, int at) throws Unfit {
        if (f[at].isEmpty() && f[at + 2].isEmpty()) {
            return null;
        }
        double lat = angle("latitude", f[at], 2, 90);
        double lon = angle("longitude", f[at + 2], 3, 180);
        return new Sentence.Place(side("N or S", f[at + 1], 'N', 'S') * lat, side("E or W", f[at + 3], 'E', 'W') * lon);
    }

    private static int side(String what, String field, char positive, char negative) throws Unfit {
        if (field.length() == 1 && field.charAt(0) == positive) {
            return 1;
        }
        if (field.length() == 1 && field.charAt(0) == negative) {
            return -1;
        }
        throw new Unfit("side", field, what);
    }

    private static double angle(String what, String field, int degreeDigits, double greatestDeg) throws Unfit {
        String allowed = degreeDigits + " digits of degrees, then minutes below 60, up to " + (int) greatestDeg + "°";
        if (!isDecimal(field) || wholeDigits(field) != degreeDigits + 2) {
            throw new Unfit(what, field, allowed);
        }
        double minutes = Double.parseDouble(field.substring(degreeDigits));
        double deg = Integer.parseInt(field.substring(0, degreeDigits)) + minutes / 60;
        if (minutes >= 60 || deg > greatestDeg) {
            throw new Unfit(what, field, allowed);
        }
        return deg;
    }

    private static int wholeDigits(String field) {
        int n = 0;
        while (n < field.length() && isDigit(field.charAt(n))) {
            n++;
        }
        return n;
    }

    /** Digits, at most one point, a minus before them; nothing else that Java would take for a number. */
    private static boolean isDecimal(String field) {
        int from = field.startsWith("-") ? 1 : 0;
        int digits = 0;
        int points = 0;
        for (int i = from; i < field.length(); i++) {
            char c = field.charAt(i);
            if (c == '.') {
                points++;
            } else if (isDigit(c)) {
                digits++;
            } else {
                return false;
            }
        }
        return digits > 0 && points <= 1 && field.length() <= LONGEST_NUMBER;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
