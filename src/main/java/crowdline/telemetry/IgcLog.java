package crowdline.telemetry;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Flight recorder files after the IGC's technical specification for GNSS flight recorders, appendix A: the records B
 * (a fix), I (what is added to B) and the header of the date; of the others nothing is needed here.
 */
final class IgcLog {
    private static final Pattern LINE = Pattern.compile("\\r\\n|\\r|\\n");
    private static final Pattern DATE = Pattern.compile("H[FOP]DTE(?:DATE)?:? *(\\d\\d)(\\d\\d)(\\d\\d)\\b.*");
    /** Newer recorders say what their GNSS heights are above: the geoid or the ellipsoid. */
    private static final Pattern GNSS_DATUM = Pattern.compile("H[FOP]ALG(?:ALTGPS)?: *(GEO|ELL).*");
    /** Two-digit years from here on are of the 1900s: there were no such files before. */
    private static final int FIRST_YEAR = 80;
    /** No record is longer; the specification allows 76 characters for most. */
    private static final int LONGEST_LINE = 1000;

    private final String name;
    private final IgcHeight choice;
    private final LogNotes notes = new LogNotes();
    private final ReceiverScale scale = new ReceiverScale();
    private final List<Fix> fixes = new ArrayList<>();

    private IgcExtensions extensions = IgcExtensions.NONE;
    private @Nullable LocalDate date;
    private boolean dated;
    private boolean anyHeight;
    private boolean aboveSea;
    private int positions;

    IgcLog(String name, IgcHeight choice) {
        this.name = name;
        this.choice = choice;
    }

    FlightLog read(byte[] bytes) throws FlightLogException {
        String[] lines = LINE.split(new String(bytes, StandardCharsets.ISO_8859_1), -1);
        for (int i = 0; i < lines.length; i++) {
            accept(i + 1, lines[i]);
        }
        if (positions == 0) {
            throw new FlightLogException(name + " is an IGC file without any position (B record) that can be read;"
                    + " export the flight again");
        }
        if (!anyHeight) {
            throw new FlightLogException(name + " has no " + (choice == IgcHeight.GNSS ? "GNSS" : "pressure")
                    + " heights, they are all 00000; read it with its "
                    + (choice == IgcHeight.GNSS ? "pressure" : "GNSS") + " heights");
        }
        if (!dated) {
            notes.aboutAll("no date (HFDTE) that can be read; the times of day are kept");
        }
        HeightKind kind = kind();
        // The word on what the heights are above may come after the first fix.
        List<Fix> same = fixes.stream().map(fix -> withKind(fix, kind)).toList();
        Jumps.sentence(same).ifPresent(notes::aboutAll);
        return new FlightLog(LogFormat.IGC, same, kind, notes.all());
    }

    private void accept(int number, String line) {
        if (line.isEmpty()) {
            return;
        }
        if (line.length() > LONGEST_LINE) {
            notes.about(number, "the line has " + line.length() + " characters and was left out");
            return;
        }
        switch (line.charAt(0)) {
            case 'B' -> position(number, line);
            case 'I' -> extensions(number, line);
            case 'H' -> header(number, line);
            default -> {
                if (line.charAt(0) < 'A' || line.charAt(0) > 'Z') {
                    notes.about(number, "the line does not begin like an IGC record; left out");
                }
            }
        }
    }

    private void header(int number, String line) {
        Matcher datum = GNSS_DATUM.matcher(line);
        if (datum.matches()) {
            aboveSea = datum.group(1).equals("GEO");
        }
        if (line.startsWith("DTE", 2)) {
            Matcher day = DATE.matcher(line);
            LocalDate read = day.matches() ? calendarDay(day.group(1), day.group(2), day.group(3)) : null;
            if (read == null) {
                notes.about(number, "the date must be a real date as ddmmyy; left out");
            } else {
                date = read;
                dated = true;
            }
        }
    }

    private static @Nullable LocalDate calendarDay(String day, String month, String yearOfCentury) {
        int year = Integer.parseInt(yearOfCentury);
        try {
            return LocalDate.of(
                    year + (year >= FIRST_YEAR ? 1900 : 2000), Integer.parseInt(month), Integer.parseInt(day));
        } catch (DateTimeException e) {
            return null;
        }
    }

    private void extensions(int number, String line) {
        IgcExtensions read = IgcExtensions.read(line);
        if (read == null) {
            notes.about(number, "the list of additions to B records (I) makes no sense and was left out");
        } else {
            extensions = read;
        }
    }

    private void position(int number, String line) {
        IgcPosition position = IgcPosition.read(line, extensions);
        if (position == null) {
            notes.about(number, "the position (B record) cannot be read and was left out");
            return;
        }
        positions++;
        if (!position.valid()) {
            notes.about(number, "the recorder had no full fix (validity V); left out");
            return;
        }
        int heightM = choice == IgcHeight.GNSS ? position.gnssM() : position.pressureM();
        anyHeight |= heightM != 0;
        if (choice == IgcHeight.GNSS && heightM == 0) {
            notes.about(number, "no GNSS height (00000); left out");
            return;
        }
        LocalTime time = position.time();
        ReceiverScale.Moment at = scale.next(time, date);
        // From here on midnight turns the date, until the file names another.
        date = null;
        if (at == null) {
            notes.about(number, LogNotes.NOT_AFTER);
            return;
        }
        fixes.add(new Fix(
                at.tS(),
                at.utc(),
                position.latDeg(),
                position.lonDeg(),
                heightM,
                HeightKind.UNSTATED,
                null,
                null,
                FixQuality.UNSTATED));
    }

    private HeightKind kind() {
        if (choice == IgcHeight.PRESSURE) {
            return HeightKind.PRESSURE;
        }
        return aboveSea ? HeightKind.SEA_LEVEL : HeightKind.ELLIPSOID;
    }

    private static Fix withKind(Fix fix, HeightKind kind) {
        return new Fix(fix.tS(), fix.utc(), fix.latDeg(), fix.lonDeg(), fix.heightM(), kind, null, null, fix.quality());
    }
}
