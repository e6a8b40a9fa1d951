package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.WordsOnSurface.Written;
import crowdline.console.keys.Command;
import crowdline.console.keys.KeysOverlay;
import crowdline.console.keys.KeysOverlay.Entry;
import crowdline.console.keys.KeysOverlay.Sheet;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every row of the sheet of keys is set like its neighbours, and none of its keys and names is left out or cut. */
class KeysSheetSizesTest {
    private static final int FOOT_AND_MENU_PX = 80;
    /** Down to here are the titles. */
    private static final double HEAD_PX = 68;

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    @ParameterizedTest
    @CsvSource({"1280, 800, 100", "1280, 800, 200", "1920, 1080, 100", "1920, 1080, 160", "1920, 1080, 200"})
    void allRowsHaveTheSameSizes(int wide, int tall, int zoom) {
        for (Sheet sheet : sheets(zoom)) {
            rows(sheet.entries(), written(sheet, wide, tall - FOOT_AND_MENU_PX, zoom));
        }
    }

    /** Letters of less than a forty-fifth of the height of a screen are hard to read at two metres. Tuned. */
    @ParameterizedTest
    @CsvSource({"1280, 800", "1920, 1080"})
    void whereLettersAreLargeTheSheetIsReadAtTwoMetres(int wide, int tall) {
        for (Sheet sheet : sheets(200)) {
            List<Written> written = written(sheet, wide, tall - FOOT_AND_MENU_PX, 200);
            List<String> labels = sheet.entries().stream().map(Entry::label).toList();
            assertThat(sizes(labels, written)).allSatisfy(px -> assertThat(px).isGreaterThan(tall / 45.0));
        }
    }

    private static List<Sheet> sheets(int zoom) {
        List<Sheet> sheets = new ArrayList<>();
        for (Command.Scope place : List.of(
                Command.Scope.PREPARE,
                Command.Scope.WORDS,
                Command.Scope.WALK,
                Command.Scope.LIVE,
                Command.Scope.DEBRIEF,
                Command.Scope.GLOSSARY)) {
            sheets.add(KeysOverlay.sheet(place, Map.of(), ""));
            sheets.add(KeysOverlay.everywhere(place, Map.of()));
        }
        return sheets.stream()
                .flatMap(sheet -> sheet.pages(new Zoom(zoom)).stream())
                .toList();
    }

    @Test
    void noKeyIsLostBetweenTwoPages() {
        for (Sheet sheet : sheets(100)) {
            assertThat(sheet.pages(new Zoom(140))).containsExactly(sheet);
            assertThat(sheet.pages(new Zoom(200)).stream().flatMap(page -> page.entries().stream()))
                    .containsExactlyElementsOf(sheet.entries());
        }
    }

    private static void rows(List<Entry> rows, List<Written> written) {
        assertThat(sizes(rows.stream().flatMap(e -> e.keys().stream()).toList(), written))
                .hasSize(1);
        assertThat(sizes(rows.stream().map(Entry::label).toList(), written)).hasSize(1);
    }

    private static List<Written> written(Sheet sheet, int wide, int tall, int zoom) {
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(zoom));
        KeysOverlay overlay = new KeysOverlay(appearance);
        overlay.wear(appearance, wide / 1280.0);
        overlay.show(sheet);
        overlay.setSize(wide, tall);
        List<Written> written = new ArrayList<>();
        Graphics2D g = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_RGB).createGraphics();
        overlay.paint(new WordsOnSurface(g, written));
        g.dispose();
        double head = HEAD_PX * wide / 1280;
        return written.stream().filter(w -> w.ink().getMinY() > head).toList();
    }

    /** The sizes of words, each of which must be written in one piece; what it does may be told in the same, smaller. */
    private static Set<Double> sizes(Collection<String> words, List<Written> written) {
        assertThat(written).extracting(Written::text).containsAll(words);
        return words.stream()
                .map(word -> written.stream()
                        .filter(w -> w.text().equals(word))
                        .mapToDouble(Written::sizePx)
                        .max()
                        .orElseThrow())
                .collect(Collectors.toSet());
    }
}
