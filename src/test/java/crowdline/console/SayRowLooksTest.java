package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.WordsOnSurface.Written;
import crowdline.console.live.LivePanel;
import crowdline.console.live.LiveView;
import crowdline.console.live.LongAndShort;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Contrast;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Palette;
import crowdline.console.theme.Theme;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Words that wait look unlike words to say now, and not by their colour alone. */
class SayRowLooksTest {
    private static final Map<String, LiveView> VIEWS = LongAndShort.all();

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    private static LiveView view(String name) {
        return Objects.requireNonNull(VIEWS.get(name));
    }

    private static BufferedImage painted(Theme theme, LiveView view, List<Written> written) {
        Appearance appearance = new Appearance(theme, Zoom.NONE);
        LivePanel panel = new LivePanel(appearance);
        panel.setSize(1280, 740);
        panel.wear(appearance);
        panel.show(view);
        Component row = Arrays.stream(panel.getComponents())
                .filter(c -> "Say now".equals(c.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
        BufferedImage image = new BufferedImage(row.getWidth(), row.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        row.print(new WordsOnSurface(g, written));
        g.dispose();
        return image;
    }

    private static double sizePx(List<Written> written, String begins) {
        return written.stream()
                .filter(w -> w.text().startsWith(begins))
                .findFirst()
                .orElseThrow()
                .sizePx();
    }

    @Test
    void wordsThatWaitAreSmallerThanWordsToSayNowUnderALargerWhen() {
        List<Written> now = new ArrayList<>();
        List<Written> waiting = new ArrayList<>();
        painted(Themes.SUNLIGHT, view("as usual"), now);
        painted(Themes.SUNLIGHT, view("waiting"), waiting);
        assertThat(sizePx(waiting, "Say some")).isLessThan(0.75 * sizePx(now, "Say some"));
        assertThat(sizePx(waiting, "Say in")).isGreaterThan(1.4 * sizePx(now, "Say now"));
        assertThat(sizePx(waiting, "Say in")).isGreaterThan(sizePx(waiting, "Say some"));
    }

    @Test
    void wordsToSayNowStandBehindASolidBarAndWordsThatWaitInAHollowCard() {
        for (Theme theme : Themes.all()) {
            BufferedImage now = painted(theme, view("as usual"), new ArrayList<>());
            BufferedImage waiting = painted(theme, view("waiting"), new ArrayList<>());
            int accent = theme.palette().accent().getRGB();
            for (int x = 1; x < 13; x++) {
                assertThat(now.getRGB(x, now.getHeight() / 2)).isEqualTo(accent);
                assertThat(waiting.getRGB(x, now.getHeight() / 2)).isNotEqualTo(accent);
            }
            int outline = 0;
            for (int x = 0; x < waiting.getWidth(); x++) {
                if (waiting.getRGB(x, waiting.getHeight() / 2)
                        == theme.palette().soft().getRGB()) {
                    outline++;
                }
            }
            assertThat(outline).as("the two sides of the card").isGreaterThanOrEqualTo(2);
        }
    }

    @Test
    void bothCanBeReadInEveryTheme() {
        for (Theme theme : Themes.all()) {
            Palette p = theme.palette();
            for (Color[] pair : new Color[][] {
                {p.text(), p.stage()},
                {p.text(), p.ground()},
                {p.soft(), p.ground()},
                {p.past(), p.stage()},
                {p.onChosen(), p.chosen()}
            }) {
                assertThat(Contrast.ratio(pair[0], pair[1])).as(theme.id()).isGreaterThan(4.5);
            }
        }
    }
}
