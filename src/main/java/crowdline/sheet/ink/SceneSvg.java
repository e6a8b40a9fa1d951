package crowdline.sheet.ink;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a scene as SVG 1.1. Texts are escaped, whatever is in them. */
public final class SceneSvg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private final XMLStreamWriter xml;

    private SceneSvg(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** Writes it, and leaves the stream open. */
    public static void write(Scene scene, OutputStream out) throws XMLStreamException {
        XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
        new SceneSvg(xml).scene(scene);
        xml.close();
    }

    private void scene(Scene scene) throws XMLStreamException {
        xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
        xml.writeCharacters("\n");
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeAttribute("width", Integer.toString(scene.widthPx()));
        xml.writeAttribute("height", Integer.toString(scene.heightPx()));
        xml.writeAttribute("viewBox", "0 0 " + scene.widthPx() + " " + scene.heightPx());
        xml.writeAttribute("role", "img");
        xml.writeAttribute("stroke", "none");
        xml.writeAttribute("font-family", "Open Sans, Helvetica, Arial, sans-serif");
        xml.writeCharacters("\n");
        xml.writeStartElement("title");
        xml.writeCharacters(plain(scene.title()));
        xml.writeEndElement();
        xml.writeCharacters("\n");
        empty(
                "rect",
                "width",
                Integer.toString(scene.widthPx()),
                "height",
                Integer.toString(scene.heightPx()),
                "fill",
                colour(scene.groundRgb()));
        for (Ink ink : scene.inks()) {
            ink(ink);
        }
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void ink(Ink ink) throws XMLStreamException {
        if (ink instanceof Ink.Stroke line) {
            empty(
                    "polyline",
                    "points",
                    points(line.points()),
                    "fill",
                    "none",
                    "stroke",
                    colour(line.rgb()),
                    "stroke-width",
                    number(line.widthPx()),
                    "stroke-linejoin",
                    "round",
                    "stroke-linecap",
                    line.dashPx() > 0 ? "butt" : "round",
                    "stroke-dasharray",
                    line.dashPx() > 0 ? number(line.dashPx()) + " " + number(line.dashPx() * 0.7) : "none");
        } else if (ink instanceof Ink.Fill area) {
            empty("polygon", "points", points(area.corners()), "fill", colour(area.rgb()));
        } else if (ink instanceof Ink.Disc disc) {
            empty(
                    "circle",
                    "cx",
                    number(disc.x()),
                    "cy",
                    number(disc.y()),
                    "r",
                    number(disc.radiusPx()),
                    "fill",
                    colour(disc.rgb()),
                    "stroke",
                    colour(disc.rimRgb()),
                    "stroke-width",
                    "1.5");
        } else if (ink instanceof Ink.Words words) {
            words(words);
        }
    }

    private void words(Ink.Words words) throws XMLStreamException {
        xml.writeStartElement("text");
        attributes(
                "x",
                number(words.x()),
                "y",
                number(words.y()),
                "font-size",
                number(words.sizePx()),
                "font-weight",
                words.strong() ? "bold" : "normal",
                "text-anchor",
                words.anchor().name().toLowerCase(Locale.ROOT),
                "fill",
                colour(words.rgb()));
        xml.writeCharacters(plain(words.text()));
        xml.writeEndElement();
        xml.writeCharacters("\n");
    }

    private void empty(String name, String... keysAndValues) throws XMLStreamException {
        xml.writeEmptyElement(name);
        attributes(keysAndValues);
        xml.writeCharacters("\n");
    }

    private void attributes(String... keysAndValues) throws XMLStreamException {
        for (int i = 0; i < keysAndValues.length; i += 2) {
            xml.writeAttribute(keysAndValues[i], keysAndValues[i + 1]);
        }
    }

    private static String points(List<Ink.Point> points) {
        return points.stream().map(p -> number(p.x()) + "," + number(p.y())).collect(Collectors.joining(" "));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String colour(int rgb) {
        return String.format(Locale.ROOT, "#%06x", rgb);
    }

    /** Characters that XML 1.0 has no form for become a mark that something was there. */
    private static String plain(String text) {
        return text.codePoints()
                .map(c -> isXml(c) ? c : 0xFFFD)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isXml(int c) {
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        return c == '\t' || (c >= 0x20 && !surrogate && c != 0xFFFE && c != 0xFFFF);
    }
}
