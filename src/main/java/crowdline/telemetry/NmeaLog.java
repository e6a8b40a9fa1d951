package crowdline.telemetry;

import java.util.ArrayList;
import java.util.List;

/** Flight logs as a receiver sent them, kept as they came. */
final class NmeaLog {
    private NmeaLog() {}

    static FlightLog read(byte[] bytes, String name) throws FlightLogException {
        LogNotes notes = new LogNotes();
        ReceiverFeed feed = new ReceiverFeed(notes::about);
        List<Fix> fixes = new ArrayList<>(feed.accept(bytes, bytes.length));
        fixes.addAll(feed.finish());
        ReceiverFeed.Counts counts = feed.counts();
        note(notes, counts.withoutFix(), "without a position");
        note(notes, counts.withoutHeight(), "with a position but no height, because there was no GGA sentence");
        note(notes, counts.guessed(), "with a position the receiver guessed");
        note(notes, counts.notForward(), "not after the one before");
        if (fixes.isEmpty()) {
            throw new FlightLogException(name + " holds " + counts.good() + " good NMEA sentences and " + counts.bad()
                    + " damaged ones, but no position with a time and a height; set the receiver to send GGA and RMC");
        }
        Jumps.sentence(fixes).ifPresent(notes::aboutAll);
        return new FlightLog(LogFormat.NMEA, fixes, HeightKind.SEA_LEVEL, notes.all());
    }

    private static void note(LogNotes notes, long count, String what) {
        if (count > 0) {
            notes.aboutAll(count + (count == 1 ? " instant " : " instants ") + what + " left out");
        }
    }
}
