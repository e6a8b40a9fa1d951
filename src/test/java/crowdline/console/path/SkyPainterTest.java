package crowdline.console.path;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextFit;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Theme;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.flight.body.Vec;
import crowdline.sheet.still.Tones;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Facet.Tone;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What can be told from the picture alone, in every theme. */
class SkyPainterTest {
    private static final int WIDE = 600;
    private static final int TALL = 400;
    /** Edges are mixed of two colours, and may be any. */
    private static final long BY_CHANCE = 20;

    /** Straight to the right, rolled by this much all the way, right wing down positive. */
    private static Flown straight(double bankDeg, double fromM, double toM) {
        double bank = Math.toRadians(bankDeg);
        List<Pose> poses = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            poses.add(new Pose(
                    i / 10.0,
                    new Vec(fromM + (toM - fromM) * i / 40, 0, 120),
                    new Vec(1, 0, 0),
                    new Vec(0, -Math.sin(bank), Math.cos(bank)),
                    1));
        }
        return new Flown(poses, List.of());
    }

    private static BufferedImage painted(SkyView view, Theme theme) {
        BufferedImage image = new BufferedImage(WIDE, TALL, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Pen pen = new Pen(g, new Appearance(theme, Zoom.NONE), 1, new TextFit());
        Box box = new Box(0, 0, WIDE, TALL);
        pen.fill(box, theme.palette().stage());
        SkyPainter.paint(pen, view, box);
        g.dispose();
        return image;
    }

    private static long count(BufferedImage image, Color colour) {
        return count(image, colour.getRGB());
    }

    private static long count(BufferedImage image, int rgb) {
        long count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                count += (image.getRGB(x, y) & 0xffffff) == (rgb & 0xffffff) ? 1 : 0;
            }
        }
        return count;
    }

    @Test
    void topsAndUndersidesAreToldApartInEveryTheme() {
        for (Theme theme : Themes.all()) {
            Tones tones = PaletteTones.of(theme.palette());
            BufferedImage wheels = painted(SkyView.whole(straight(-90, -200, 200), Outline.MONOPLANE), theme);
            BufferedImage canopy = painted(SkyView.whole(straight(90, -200, 200), Outline.MONOPLANE), theme);
            assertThat(count(wheels, tones.sweptUnder())).as(theme.id()).isGreaterThan(1000);
            assertThat(count(wheels, tones.sweptTop())).as(theme.id()).isLessThan(BY_CHANCE);
            assertThat(count(canopy, tones.sweptTop())).as(theme.id()).isGreaterThan(1000);
            assertThat(count(canopy, tones.sweptUnder())).as(theme.id()).isLessThan(BY_CHANCE);
            assertThat(count(canopy, tones.of(Tone.TOP))).as(theme.id()).isGreaterThan(200);
            assertThat(lightness(tones.sweptTop()) - lightness(tones.sweptUnder()))
                    .isGreaterThan(60);
            assertThat(lightness(tones.of(Tone.TOP)) - lightness(tones.of(Tone.UNDERSIDE)))
                    .as("paler above in %s", theme.id())
                    .isGreaterThan(100);
        }
    }

    private static int lightness(int rgb) {
        return ((rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff)) / 3;
    }

    @Test
    void atOneMomentSmokeIsBehindTheAircraftAndNotBeforeIt() {
        SkyView view = SkyView.whole(straight(0, -200, 200), Outline.MONOPLANE).at(2);
        BufferedImage image = painted(view, Themes.DAY);
        long behind = 0;
        long before = 0;
        Color stage = Themes.DAY.palette().stage();
        for (int x = 0; x < WIDE; x++) {
            for (int y = 0; y < TALL / 2 + 60; y++) {
                if ((image.getRGB(x, y) & 0xffffff) != (stage.getRGB() & 0xffffff)) {
                    behind += x < WIDE / 2 - 60 ? 1 : 0;
                    before += x > WIDE / 2 + 60 ? 1 : 0;
                }
            }
        }
        assertThat(behind).isGreaterThan(3 * before);
    }

    @Test
    void aircraftIsNotCutAtTheSides() {
        for (Outline outline : Outline.values()) {
            // Nobody hangs sideways under a canopy.
            for (double bank : outline == Outline.CANOPY ? new double[] {0} : new double[] {0, 90, 180}) {
                Flown flown = straight(bank, -40, 900);
                for (SkyView view : List.of(
                        SkyView.whole(flown, outline),
                        SkyView.whole(flown, outline).at(0),
                        SkyView.whole(flown, outline).at(4))) {
                    BufferedImage image = painted(view, Themes.DAY);
                    for (int y = 0; y < TALL; y++) {
                        assertThat(image.getRGB(0, y))
                                .as("%s banked %s", outline, bank)
                                .isEqualTo(image.getRGB(WIDE - 1, y));
                    }
                }
            }
        }
    }

    @Test
    void nothingIsPaintedOfNothing() {
        BufferedImage image = painted(SkyView.NONE, Themes.NIGHT);
        assertThat(count(image, Themes.NIGHT.palette().stage())).isEqualTo((long) WIDE * TALL);
    }
}
