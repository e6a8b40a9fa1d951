package crowdline.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.measure.Measures;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Lettering;
import crowdline.sheet.ink.Scene;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.sight.PathExtent;
import crowdline.sight.PathView;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

@Tag("slow")
class ActPictureTest {
    private static final Show SHOW = demo();
    private static final List<Flight> FLIGHTS = SHOW.acts().stream()
            .map(act -> new Predictor(
                            SHOW, CatalogueFile.shipped(), act, act.variants().get(0))
                    .predict())
            .toList();

    private static Show demo() {
        try {
            return Objects.requireNonNull(new ShowFile()
                    .read(Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json"))
                    .show());
        } catch (ShowFileException e) {
            throw new AssertionError(e);
        }
    }

    private Scene scene(int act) {
        return ActPicture.scene(SHOW, SHOW.acts().get(act), FLIGHTS.get(act), Measures.USUAL);
    }

    private static List<String> words(Scene scene) {
        return scene.inks().stream()
                .filter(Ink.Words.class::isInstance)
                .map(ink -> ((Ink.Words) ink).text())
                .toList();
    }

    @Test
    void numbersOfBothDemoActsOverlapNeitherEachOtherNorTheLabels() {
        for (int act = 0; act < FLIGHTS.size(); act++) {
            List<Ink.Disc> discs = new ArrayList<>();
            List<Ink.Words> labels = new ArrayList<>();
            for (Ink ink : scene(act).inks()) {
                if (ink instanceof Ink.Disc disc) {
                    discs.add(disc);
                } else if (ink instanceof Ink.Words words
                        && Set.of("datum", "display line", "crowd line").contains(words.text())) {
                    labels.add(words);
                }
            }
            long flown = FLIGHTS.get(act).figures().stream()
                    .filter(FigureFlight::simulated)
                    .count();
            assertThat(discs).hasSize((int) (2 * flown));
            assertThat(labels).hasSize(4);
            for (int i = 0; i < discs.size(); i++) {
                Ink.Disc disc = discs.get(i);
                for (Ink.Disc other : discs.subList(i + 1, discs.size())) {
                    assertThat(Math.hypot(disc.x() - other.x(), disc.y() - other.y()))
                            .isGreaterThanOrEqualTo(disc.radiusPx() + other.radiusPx());
                }
                for (Ink.Words label : labels) {
                    double wide = Lettering.widthPx(label.text(), label.sizePx(), label.strong());
                    double left = label.anchor() == Ink.Anchor.START ? label.x() : label.x() - wide;
                    double dx = Math.max(0, Math.max(left - disc.x(), disc.x() - left - wide));
                    double dy = Math.max(0, Math.max(label.y() - 9 - disc.y(), disc.y() - label.y()));
                    assertThat(Math.hypot(dx, dy)).isGreaterThan(disc.radiusPx());
                }
            }
        }
    }

    @Test
    void everyFigureIsNamedAndTheCautionStandsOnThePicture() {
        List<String> said = words(scene(1));
        for (FigureFlight figure : FLIGHTS.get(1).figures()) {
            assertThat(said).anyMatch(text -> text.startsWith(figure.name()));
        }
        assertThat(said).contains(ActPicture.CAUTION).anyMatch(t -> t.startsWith(RunningSheet.HEIGHTS));
        assertThat(String.join(" ", said)).doesNotContainIgnoringCase("safe");
    }

    @Test
    void limitsAndCloudAreDrawnOnlyIfGiven() {
        assertThat(words(scene(0))).contains("base given, 200 ft");
        Venue v = SHOW.venue();
        Venue none = new Venue(
                v.name(),
                v.latDeg(),
                v.lonDeg(),
                v.elevationFt(),
                v.axisBearingDeg(),
                v.crowdToLineM(),
                v.timeZone(),
                Venue.Limits.NONE);
        DayAir cloud = new DayAir(1013, 15, 0, 0, 1000.0);
        List<String> without =
                words(picture(with(none, DayAir.STANDARD, SHOW.acts().get(0)), 0));
        assertThat(without).noneMatch(t -> t.contains("given")).contains("calm");
        assertThat(words(picture(with(none, cloud, SHOW.acts().get(0)), 0))).contains("cloud base, 1,000 ft");
    }

    private Scene picture(Show other, int act) {
        return ActPicture.scene(other, other.acts().get(act), FLIGHTS.get(act), Measures.USUAL);
    }

    private Show with(Venue venue, DayAir air, Act act) {
        return SHOW.withVenue(venue).withAir(air).withActs(List.of(act), SHOW.remarks());
    }

    @Test
    void windArrowPointsWhereTheWindGoes() {
        // The A-axis points to axisBearing; wind from there blows to the left, wind from its right hand blows away.
        double axis = Objects.requireNonNull(SHOW.venue().axisBearingDeg());
        assertThat(windTip(axis)[0]).isNegative();
        assertThat(windTip(axis)[1]).isCloseTo(0, within(1e-6));
        assertThat(windTip((axis + 90) % 360)[1])
                .as("up on the picture is away from the crowd")
                .isNegative();
    }

    private double[] windTip(double fromDeg) {
        DayAir air = new DayAir(1013, 15, fromDeg, 10, null);
        List<Ink> inks = picture(with(SHOW.venue(), air, SHOW.acts().get(0)), 0).inks();
        int words = IntStream.range(0, inks.size())
                .filter(i -> inks.get(i) instanceof Ink.Words w && w.text().startsWith("wind from"))
                .findFirst()
                .orElseThrow();
        List<Ink.Point> shaft = ((Ink.Stroke) inks.get(words + 1)).points();
        return new double[] {
            shaft.get(1).x() - shaft.get(0).x(), shaft.get(1).y() - shaft.get(0).y()
        };
    }

    @Test
    void roundLoopIsRoundInEveryFrame() {
        PathExtent extent = new PathExtent(-300, 500, -10, 200);
        PathFrame frame = PathFrame.fit(extent, 10, 20, 333, 222);
        assertThat(frame.x(100) - frame.x(0)).isCloseTo(frame.y(0) - frame.y(100), within(1e-9));
        assertThat(frame.x(-300)).isGreaterThanOrEqualTo(10 - 1e-9);
        assertThat(frame.x(500)).isLessThanOrEqualTo(343 + 1e-9);
        assertThat(frame.y(200)).isGreaterThanOrEqualTo(20 - 1e-9);
        assertThat(frame.y(-10)).isLessThanOrEqualTo(242 + 1e-9);
    }

    @Test
    void textIsNeverMarkupInSvg() throws Exception {
        String evil = "<script>alert('x')</script> & \"]]>\" \u0007\uD800 <b>";
        Act act = SHOW.acts().get(1);
        Act named = new Act(
                act.id(),
                evil,
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                act.entry(),
                act.figures(),
                act.variants(),
                act.remarks());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ActPicture.writeSvg(SHOW, named, FLIGHTS.get(1), Measures.USUAL, out);
        Document svg = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(out.toByteArray()));
        Set<String> elements = new HashSet<>();
        NodeList all = svg.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            elements.add(all.item(i).getNodeName());
        }
        assertThat(elements).containsOnly("svg", "title", "rect", "polyline", "polygon", "circle", "text");
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                .startsWith("<script>alert('x')</script> & \"]]>\" \uFFFD");
    }

    @Test
    void pngShowsSomething() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ActPicture.writePng(SHOW, SHOW.acts().get(1), FLIGHTS.get(1), Measures.USUAL, out);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x += 7) {
            for (int y = 0; y < image.getHeight(); y += 7) {
                colours.add(image.getRGB(x, y));
            }
        }
        assertThat(image.getWidth()).isEqualTo(3000);
        assertThat(colours).hasSizeGreaterThan(20);
    }

    @Test
    void actWithoutAnyPathStillMakesAPicture() {
        Flight empty = new Flight("jackanapes-solo", "full", List.of(), List.<Sample>of(), List.of());
        assertThat(words(ActPicture.scene(SHOW, SHOW.acts().get(0), empty, Measures.USUAL)))
                .contains("datum");
        assertThat(PathView.PLAN.upM(new Vec(1, 2, 3))).isEqualTo(2);
    }
}
