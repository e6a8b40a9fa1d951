package crowdline.telemetry;

import crowdline.measure.Units;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * Decodes NMEA 0183 sentences of any talker: GGA, RMC and VTG; others are known to be good, and that is all.
 *
 * <p>Fields as in {@code www/NMEA.adoc} of gpsd. The checksum cannot see an even number of dropped commas, so fields are
 * counted as well. A sentence without checksum is refused: nothing else guards the radio link.
 */
final class NmeaDecoder {

    private NmeaDecoder() {}

    static Sentence decode(Frame frame) {
        return switch (frame.end()) {
            case CUT -> new Sentence.Refused("the sentence is cut short");
            case TOO_LONG -> new Sentence.Refused("the sentence has more than " + Framer.LONGEST + " characters");
            case LINE_END -> new Sentence.Refused("the sentence has no checksum");
            case CHECKSUM -> decode(frame.text());
        };
    }

    private static Sentence decode(String text) {
        int star = text.length() - 3;
        String given = text.substring(star + 1);
        String sum = checksum(text, star);
        if (!given.equalsIgnoreCase(sum)) {
            return new Sentence.Refused("the checksum is " + given + ", but the text gives " + sum);
        }
        return decode(text.substring(1, star).split(",", -1));
    }

    private static Sentence decode(String[] fields) {
        String address = fields[0];
        if (address.length() != 5) {
            return new Sentence.Other(address);
        }
        try {
            return switch (address.substring(2)) {
                case "GGA" -> gga(fields);
                case "RMC" -> rmc(fields);
                case "VTG" -> vtg(fields);
                default -> new Sentence.Other(address);
            };
        } catch (NmeaField.Unfit e) {
            return new Sentence.Refused(address + ": " + e.reason());
        }
    }

    /** Exclusive or of all characters between the dollar and the star, as two digits. */
    private static String checksum(String text, int star) {
        int sum = 0;
        for (int i = 1; i < star; i++) {
            sum ^= text.charAt(i);
        }
        return HexFormat.of().withUpperCase().toHexDigits((byte) sum);
    }

    private static Sentence gga(String[] f) throws NmeaField.Unfit {
        NmeaField.count(f, 14, 14);
        LocalTime utc = NmeaField.time(f[1]);
        Sentence.@Nullable Place place = NmeaField.place(f, 2);
        FixQuality quality = quality(f[6]);
        NmeaField.letter("unit of the height", f[10], "M");
        NmeaField.letter("unit of the geoid", f[12], "M");
        Double heightM = NmeaField.number("height", f[9], -1000, 100_000);
        Double geoidM = NmeaField.number("geoid", f[11], -200, 200);
        return new Sentence.Gga(utc, quality == null ? null : place, heightM, geoidM, place == null ? null : quality);
    }

    private static @Nullable FixQuality quality(String field) throws NmeaField.Unfit {
        return switch (field) {
            case "", "0" -> null;
            case "1" -> FixQuality.SATELLITE;
            case "2" -> FixQuality.DIFFERENTIAL;
            case "3" -> FixQuality.PRECISE;
            case "4" -> FixQuality.RTK_FIXED;
            case "5" -> FixQuality.RTK_FLOAT;
            case "6" -> FixQuality.ESTIMATED;
            case "7" -> FixQuality.MANUAL;
            case "8" -> FixQuality.SIMULATED;
            default -> throw new NmeaField.Unfit("quality", field, "a digit from 0 to 8");
        };
    }

    /** 11 fields before version 2.3 of the standard, then 12 with the mode, from 4.1 on 13 with the status. */
    private static Sentence rmc(String[] f) throws NmeaField.Unfit {
        NmeaField.count(f, 11, 13);
        LocalTime utc = NmeaField.time(f[1]);
        NmeaField.letter("status", f[2], "AV");
        Sentence.@Nullable Place place = NmeaField.place(f, 3);
        Double speedKt = NmeaField.number("speed", f[7], 0, 3000);
        Double trackDeg = NmeaField.number("track", f[8], 0, 360);
        LocalDate date = NmeaField.date(f[9]);
        NmeaField.number("magnetic variation", f[10], 0, 180);
        NmeaField.letter("side of the variation", f[11], "EW");
        String mode = f.length > 12 ? f[12] : "";
        NmeaField.letter("mode", mode, "ADEFMNPRS");
        boolean valid = f[2].equals("A") && !mode.equals("N") && place != null;
        boolean guessed = mode.equals("E") || mode.equals("M");
        return new Sentence.Rmc(utc, date, valid, guessed, place, mps(speedKt), trackDeg);
    }

    /** 8 fields before version 2.3 of the standard, then 9 with the mode. */
    private static Sentence vtg(String[] f) throws NmeaField.Unfit {
        NmeaField.count(f, 8, 9);
        NmeaField.letter("sign of the true track", f[2], "T");
        NmeaField.letter("sign of the magnetic track", f[4], "M");
        NmeaField.letter("sign of knots", f[6], "N");
        NmeaField.letter("sign of km/h", f[8], "K");
        if (f.length > 9 && (f[9].equals("N") || f[9].equals("E"))) {
            return new Sentence.Vtg(null, null);
        }
        Double speedKt = NmeaField.number("speed", f[5], 0, 3000);
        Double kmh = NmeaField.number("speed", f[7], 0, 6000);
        Double speedMps = speedKt == null && kmh != null ? (Double) Units.mpsFromKmh(kmh) : mps(speedKt);
        return new Sentence.Vtg(speedMps, NmeaField.number("track", f[1], 0, 360));
    }

    private static @Nullable Double mps(@Nullable Double knots) {
        return knots == null ? null : (Double) Units.mpsFromKt(knots);
    }
}
