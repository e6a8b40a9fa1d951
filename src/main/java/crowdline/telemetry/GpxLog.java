package crowdline.telemetry;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Track;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * GPX 1.0 and 1.1: the points of all tracks that have a time and a height, in the order of time. The XML passes the {@link
 * GpxGate} before the library sees it; points that break the rules of GPX are left out, each with a note.
 */
final class GpxLog {
    private static final Pattern ENCODING = Pattern.compile("<\\?xml[^>]*encoding=[\"']([A-Za-z0-9._-]+)[\"']");
    private static final String POINT_END = "</trkpt>";
    private static final String ENDS = "</trkseg></trk></gpx>";
    /** Satellite navigation has no earlier times; what lies outside is a clock that was never set. */
    private static final Instant EARLIEST = Instant.parse("1980-01-01T00:00:00Z");

    private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    private final String name;
    private final LogNotes notes = new LogNotes();
    private int untimed;

    GpxLog(String name) {
        this.name = name;
    }

    /** A point that can become a fix. */
    private record Point(int line, Instant time, double heightM, WayPoint wayPoint) {}

    /** @param head the beginning of the file, a character for each byte */
    static boolean looksLike(String head) {
        return head.stripLeading().startsWith("<");
    }

    FlightLog read(byte[] bytes) throws FlightLogException {
        String xml = text(bytes);
        GpxGate gate = GpxGate.pass(xml, name);
        String breaksOff = gate.breaksOff();
        if (breaksOff != null) {
            gate = GpxGate.pass(mended(xml, breaksOff), name);
            if (gate.breaksOff() != null) {
                throw broken(breaksOff);
            }
        }
        if (gate.points().isEmpty()) {
            throw new FlightLogException(
                    name + " is a GPX file without track points; export the track, not only routes or" + " waypoints");
        }
        List<List<Point>> segments = segments(parse(gate), gate.points());
        segments.sort(Comparator.comparing(segment -> segment.get(0).time()));
        List<Fix> fixes = fixes(segments);
        if (fixes.isEmpty()) {
            int count = gate.points().size();
            throw new FlightLogException(
                    untimed == count
                            ? name + " has " + count + " track points, none with a time, so nobody can tell when the"
                                    + " aircraft was where; export it with times"
                            : name + " has " + count
                                    + " track points, none with a place, a time and a height that can be"
                                    + " read; export it with times and heights");
        }
        Jumps.sentence(fixes).ifPresent(notes::aboutAll);
        return new FlightLog(LogFormat.GPX, fixes, HeightKind.UNSTATED, notes.all());
    }

    /** A recorder whose power was cut leaves a file without its end: what stands before is worth reading. */
    private String mended(String xml, String breaksOff) throws FlightLogException {
        int end = xml.lastIndexOf(POINT_END);
        if (end < 0) {
            throw broken(breaksOff);
        }
        notes.aboutAll("the file is broken " + breaksOff + " and was read up to its last whole track point");
        return xml.substring(0, end + POINT_END.length()) + ENDS;
    }

    private FlightLogException broken(String where) {
        return new FlightLogException(name + " is broken " + where + " as XML; export it again");
    }

    private GPX parse(GpxGate gate) throws FlightLogException {
        try {
            GPX.Version version = gate.isOneZero() ? GPX.Version.V10 : GPX.Version.V11;
            return GPX.Reader.of(version, GPX.Reader.Mode.LENIENT).read(new ByteArrayInputStream(gate.clean()));
        } catch (IOException | RuntimeException e) { // whatever the library makes of a stranger's file
            throw new FlightLogException(name + " is XML, but the GPX in it cannot be read; export it as GPX 1.1");
        }
    }

    private List<List<Point>> segments(GPX gpx, List<GpxGate.Point> written) {
        List<List<Point>> segments = new ArrayList<>();
        int next = 0;
        for (Track track : gpx.getTracks()) {
            for (TrackSegment segment : track.getSegments()) {
                List<Point> points = new ArrayList<>();
                for (WayPoint wayPoint : segment.getPoints()) {
                    double latDeg = wayPoint.getLatitude().doubleValue();
                    double lonDeg = wayPoint.getLongitude().doubleValue();
                    while (next < written.size() && !written.get(next).isAt(latDeg, lonDeg)) {
                        leaveOut(written.get(next++));
                    }
                    int line = written.get(Math.min(next++, written.size() - 1)).line();
                    point(line, wayPoint).ifPresent(points::add);
                }
                if (!points.isEmpty()) {
                    segments.add(points);
                }
            }
        }
        while (next < written.size()) {
            leaveOut(written.get(next++));
        }
        return segments;
    }

    private void leaveOut(GpxGate.Point point) {
        notes.about(point.line(), "the track point breaks the rules of GPX and was left out");
    }

    private Optional<Point> point(int line, WayPoint wayPoint) {
        Instant time = wayPoint.getTime().orElse(null);
        if (time == null) {
            untimed++;
            notes.about(line, "the track point has no time that can be read and was left out");
            return Optional.empty();
        }
        if (time.isBefore(EARLIEST) || time.isAfter(LATEST)) {
            notes.about(line, "the time of the track point is not in this century; left out");
            return Optional.empty();
        }
        double heightM =
                wayPoint.getElevation().map(length -> length.doubleValue()).orElse(Double.NaN);
        if (!Double.isFinite(heightM)) {
            notes.about(line, "the track point has no height (ele) that can be read and was left out");
            return Optional.empty();
        }
        return Optional.of(new Point(line, time, heightM, wayPoint));
    }

    private List<Fix> fixes(List<List<Point>> segments) {
        List<Fix> fixes = new ArrayList<>();
        Instant first = null;
        Instant last = Instant.MIN;
        for (List<Point> segment : segments) {
            for (Point point : segment) {
                if (!point.time().isAfter(last)) {
                    notes.about(point.line(), LogNotes.NOT_AFTER);
                    continue;
                }
                last = point.time();
                first = first == null ? last : first;
                fixes.add(fix(point, Duration.between(first, last)));
            }
        }
        return fixes;
    }

    private static Fix fix(Point point, Duration since) {
        WayPoint at = point.wayPoint();
        return new Fix(
                since.getSeconds() + since.getNano() / 1e9,
                point.time(),
                at.getLatitude().doubleValue(),
                at.getLongitude().doubleValue(),
                point.heightM(),
                HeightKind.UNSTATED,
                within(at.getSpeed().map(speed -> speed.doubleValue()).orElse(null), Double.MAX_VALUE),
                within(at.getCourse().map(course -> course.toDegrees()).orElse(null), 360),
                FixQuality.UNSTATED);
    }

    private static @Nullable Double within(@Nullable Double value, double greatest) {
        return value != null && value >= 0 && value <= greatest ? value : null;
    }

    /** Bytes that are no characters become question marks: one in a name must not cost the flight. */
    private static String text(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, 200), StandardCharsets.ISO_8859_1);
        Matcher encoding = ENCODING.matcher(head);
        return new String(bytes, encoding.lookingAt() ? charset(encoding.group(1)) : StandardCharsets.UTF_8);
    }

    private static Charset charset(String encoding) {
        try {
            return Charset.forName(encoding);
        } catch (IllegalArgumentException e) { // unknown here: the rest of the file is mostly ASCII
            return StandardCharsets.UTF_8;
        }
    }
}
