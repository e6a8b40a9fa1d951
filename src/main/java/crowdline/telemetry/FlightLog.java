package crowdline.telemetry;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A flight as it was recorded.
 *
 * @param format what it was written in
 * @param fixes at least one, in the order of time
 * @param heightKind of all of them
 * @param notes what was left out and what is odd
 */
public record FlightLog(LogFormat format, List<Fix> fixes, HeightKind heightKind, List<LogNote> notes) {
    /** Bytes. Hours at 25 fixes a second in the wordiest format stay below it. */
    public static final int LARGEST = 24 << 20;

    /** Five hours at ten a second, which are followed in a moment. */
    private static final int MOST_FIXES = 200_000;

    /** Where the kind of file shows at the latest, characters. */
    private static final int HEAD = 1 << 16;

    private static final Pattern IGC_RECORD =
            Pattern.compile("(?m)^(?:B\\d{6}\\d{7}[NS]\\d{8}[EW][AV]|H[FOP]DTE|A[A-Z0-9]{3}[^,\\r\\n]*[\\r\\n]+H)");
    private static final Pattern NMEA_SENTENCE = Pattern.compile("\\$[A-Z]{2}(?:GGA|RMC|VTG|GLL|GSA|GSV|ZDA|TXT),");

    public FlightLog {
        fixes = List.copyOf(fixes);
        notes = List.copyOf(notes);
        if (fixes.isEmpty()) {
            throw new IllegalArgumentException("a flight log has no fixes; it needs at least one");
        }
    }

    /**
     * Reads a whole file; the format shows in its bytes.
     *
     * @param name of the file, for messages only
     * @param igcHeight which height of an IGC file to take
     * @throws FlightLogException where there is no flight to be read in it
     */
    public static FlightLog read(byte[] bytes, String name, IgcHeight igcHeight) throws FlightLogException {
        if (bytes.length > LARGEST) {
            throw new FlightLogException(name + " has " + (bytes.length >> 20) + " MB; a flight log has at most "
                    + (LARGEST >> 20) + " MB, so cut it to the flight");
        }
        if (bytes.length == 0) {
            throw new FlightLogException(name + " is empty; export the flight again");
        }
        FlightLog log = readWhole(withoutMark(bytes), name, igcHeight);
        if (log.fixes().size() > MOST_FIXES) {
            throw new FlightLogException(String.format(
                    Locale.UK,
                    "%s holds %,d positions; a flight log has at most %,d, so cut it to the flight",
                    name,
                    log.fixes().size(),
                    MOST_FIXES));
        }
        return log;
    }

    /** Without the mark that some editors put ahead of a text in UTF-8. */
    private static byte[] withoutMark(byte[] bytes) {
        boolean isMarked =
                bytes.length > 3 && (bytes[0] & 0xFF) == 0xEF && (bytes[1] & 0xFF) == 0xBB && (bytes[2] & 0xFF) == 0xBF;
        return isMarked ? Arrays.copyOfRange(bytes, 3, bytes.length) : bytes;
    }

    private static FlightLog readWhole(byte[] bytes, String name, IgcHeight igcHeight) throws FlightLogException {
        String head = new String(bytes, 0, Math.min(bytes.length, HEAD), StandardCharsets.ISO_8859_1);
        if (GpxLog.looksLike(head)) {
            return new GpxLog(name).read(bytes);
        }
        if (IGC_RECORD.matcher(head).find()) {
            return new IgcLog(name, igcHeight).read(bytes);
        }
        if (NMEA_SENTENCE
                .matcher(new String(bytes, StandardCharsets.ISO_8859_1))
                .find()) {
            return NmeaLog.read(bytes, name);
        }
        throw new FlightLogException(
                name + " is not a flight log this program can read; export it as NMEA 0183, IGC or GPX");
    }
}
