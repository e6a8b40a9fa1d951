package crowdline.loaded;

import crowdline.flight.air.Air;
import crowdline.flight.air.StandardAtmosphere;
import crowdline.measure.Units;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Fix;
import crowdline.telemetry.FlightLog;
import crowdline.telemetry.FlightLogException;
import crowdline.telemetry.HeightKind;
import crowdline.telemetry.IgcHeight;
import crowdline.telemetry.LocalFrame;
import crowdline.telemetry.LogNote;
import crowdline.telemetry.Reading;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A flight log as the readings of a display.
 *
 * @param readings with seconds counted from the first
 * @param begunAt when the first was taken, or null where the log has no date
 * @param notes first what the heights are measured from, then what was left out
 */
public record LogReadings(List<Reading> readings, @Nullable Instant begunAt, List<String> notes) {
    public LogReadings {
        readings = List.copyOf(readings);
        notes = List.copyOf(notes);
    }

    /** What was left out and is odd, as {@code line 12: the sentence is cut short}. */
    public List<String> leftOut() {
        return notes.stream().skip(1).toList();
    }

    /**
     * Reads a flight log into the display frame of a show.
     *
     * @param waiting told where reading may take long
     * @throws ShowFileException if it cannot be read, with what to do
     */
    public static LogReadings read(Path file, Show show, IgcHeight igcHeight, Consumer<String> waiting)
            throws ShowFileException {
        Optional<String> missing = show.venue().notPlaced();
        if (missing.isPresent()) {
            throw new ShowFileException(missing.get());
        }
        byte[] bytes = LogFile.bytes(file, waiting);
        try {
            return of(FlightLog.read(bytes, String.valueOf(file.getFileName()), igcHeight), show);
        } catch (FlightLogException e) {
            throw new ShowFileException(String.valueOf(e.getMessage()));
        }
    }

    /**
     * Reads a flight log where nothing is known of the place: in a frame about its first position, along the parallel.
     *
     * @param waiting told where reading may take long
     * @throws ShowFileException if it cannot be read, with what to do
     */
    public static LogReadings readAnywhere(Path file, IgcHeight igcHeight, Consumer<String> waiting)
            throws ShowFileException {
        byte[] bytes = LogFile.bytes(file, waiting);
        try {
            FlightLog log = FlightLog.read(bytes, String.valueOf(file.getFileName()), igcHeight);
            Fix first = log.fixes().get(0);
            Venue here = new Venue(
                    "where it was flown",
                    first.latDeg(),
                    first.lonDeg(),
                    0.0,
                    90.0,
                    null,
                    ZoneOffset.UTC,
                    Venue.Limits.NONE);
            return of(log, new LocalFrame(here));
        } catch (FlightLogException e) {
            throw new ShowFileException(String.valueOf(e.getMessage()));
        }
    }

    static LogReadings of(FlightLog log, Show show) {
        return of(log, new LocalFrame(show.venue(), shiftM(log.heightKind(), show)));
    }

    private static LogReadings of(FlightLog log, LocalFrame frame) {
        double firstS = log.fixes().get(0).tS();
        List<Reading> readings = new ArrayList<>();
        for (Fix fix : log.fixes()) {
            Reading r = frame.reading(fix);
            readings.add(new Reading(r.tS() - firstS, r.alongM(), r.awayM(), r.heightM(), r.alongMps(), r.awayMps()));
        }
        List<String> notes = new ArrayList<>();
        notes.add(log.format().words() + ", heights " + log.heightKind().words());
        log.notes().stream().map(LogNote::text).forEach(notes::add);
        return new LogReadings(readings, log.fixes().get(0).utc(), notes);
    }

    /** What makes heights of that kind heights above sea level, metres, as far as it is known. */
    private static double shiftM(HeightKind kind, Show show) {
        if (kind != HeightKind.PRESSURE) {
            // How far the ellipsoid lies from sea level here is not known; following allows for heights that are off.
            return 0;
        }
        StandardAtmosphere day =
                (StandardAtmosphere) Air.of(show.air(), show.venue()).atmosphere();
        Double elevationFt = show.venue().elevationFt();
        return (elevationFt == null ? 0 : Units.mFromFt(elevationFt)) - day.pressureHeightAtDatumM();
    }
}
