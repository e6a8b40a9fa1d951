package crowdline.telemetry;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLEventWriter;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.Attribute;
import javax.xml.stream.events.StartElement;
import javax.xml.stream.events.XMLEvent;
import org.jspecify.annotations.Nullable;

/**
 * What XML must pass before the GPX library sees it: no document type, so no entities and nothing fetched from anywhere;
 * no nesting deep enough to fill the stack; GPX as its outermost element. Extensions stay behind: nothing here reads them,
 * and the library takes over a millisecond for each. On the way the gate notes the line of each track point, which the
 * library does not tell.
 */
final class GpxGate {
    /** Elements inside each other; GPX needs 5, extensions a few more. */
    private static final int DEEPEST = 50;

    private static final String EXTENSIONS = "extensions";

    private final String name;
    private final List<Point> points = new ArrayList<>();
    private final ByteArrayOutputStream clean = new ByteArrayOutputStream();
    private @Nullable String breaksOff;
    private boolean oneZero;

    /** A track point as written, whether or not it makes sense. */
    record Point(int line, @Nullable String lat, @Nullable String lon) {
        boolean isAt(double latDeg, double lonDeg) {
            return is(lat, latDeg) && is(lon, lonDeg);
        }

        private static boolean is(@Nullable String written, double value) {
            try {
                return written != null && Double.parseDouble(written.strip()) == value;
            } catch (NumberFormatException e) {
                return false;
            }
        }
    }

    private GpxGate(String name) {
        this.name = name;
    }

    /**
     * Lets a document through.
     *
     * @throws FlightLogException where this must not be read at all
     */
    static GpxGate pass(String xml, String name) throws FlightLogException {
        GpxGate gate = new GpxGate(name);
        try {
            gate.copy(xml);
        } catch (XMLStreamException e) {
            int line = e.getLocation() == null ? -1 : e.getLocation().getLineNumber();
            gate.breaksOff = line > 0 ? "at line " + line : "somewhere";
        }
        return gate;
    }

    /** All track points in the order of the file. */
    List<Point> points() {
        return List.copyOf(points);
    }

    /** Where the XML is broken, such as "at line 7", or null where it is whole. */
    @Nullable
    String breaksOff() {
        return breaksOff;
    }

    /** Whether it is written as version 1.0, whose points may tell course and speed. */
    boolean isOneZero() {
        return oneZero;
    }

    /** What passed. */
    byte[] clean() {
        return clean.toByteArray();
    }

    private void copy(String xml) throws XMLStreamException, FlightLogException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLEventReader reader = factory.createXMLEventReader(new StringReader(xml));
        XMLEventWriter writer =
                XMLOutputFactory.newDefaultFactory().createXMLEventWriter(clean, StandardCharsets.UTF_8.name());
        int depth = 0;
        int extensions = 0;
        while (reader.hasNext()) {
            XMLEvent event = reader.nextEvent();
            if (event.getEventType() == XMLStreamConstants.DTD) {
                throw new FlightLogException(
                        name + " has a document type (DOCTYPE), which no GPX file needs and which is"
                                + " never read; remove it");
            }
            if (event instanceof StartElement start) {
                depth++;
                check(start, depth);
                extensions += isExtensions(start.getName()) ? 1 : 0;
            }
            if (extensions == 0 && (event.isStartElement() || event.isEndElement() || event.isCharacters())) {
                writer.add(event);
            }
            if (event.isEndElement()) {
                depth--;
                extensions -= isExtensions(event.asEndElement().getName()) ? 1 : 0;
            }
        }
        writer.close();
    }

    private static boolean isExtensions(QName element) {
        return element.getLocalPart().equals(EXTENSIONS);
    }

    private void check(StartElement start, int depth) throws FlightLogException {
        String element = start.getName().getLocalPart();
        if (depth == 1 && !element.equals("gpx")) {
            String brief = element.length() <= 30 ? element : element.substring(0, 30) + "…";
            throw new FlightLogException(
                    name + " is XML but not GPX: it begins with <" + brief + ">; export it as GPX 1.1");
        }
        if (depth == 1) {
            oneZero = "1.0".equals(attribute(start, "version"));
        }
        if (depth > DEEPEST) {
            throw new FlightLogException(name + " has more than " + DEEPEST
                    + " elements inside each other, which no GPX file needs; export it again");
        }
        if (element.equals("trkpt")) {
            int line = Math.max(1, start.getLocation().getLineNumber());
            points.add(new Point(line, attribute(start, "lat"), attribute(start, "lon")));
        }
    }

    private static @Nullable String attribute(StartElement start, String attribute) {
        Attribute found = start.getAttributeByName(new QName(attribute));
        return found == null ? null : found.getValue();
    }
}
