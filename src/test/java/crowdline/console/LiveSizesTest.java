package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.WordsOnSurface.Written;
import crowdline.console.live.LivePanel;
import crowdline.console.live.LiveView;
import crowdline.console.live.LongAndShort;
import crowdline.console.live.next.NextView;
import crowdline.console.live.say.SayView.What;
import crowdline.console.pictures.Pictures;
import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.window.Snapshot;
import java.awt.Component;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sizes of all words of Live as they are painted, over windows, zooms and words of every length. */
class LiveSizesTest {
    private static final int[] ZOOMS = {100, 140, 200};
    /** What may leave for more important words where there is no room. */
    private static final Set<String> MAY_LEAVE =
            Set.of("look", "call", "fact 1", "fact 2", "fact 3", "then 1", "then 2");

    private static final Set<String> NEVER_CUT =
            Set.of("name", "countdown", "words", "seconds", "next", "next in", "when");

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    /** Live in a window, with its menus above and its foot below. */
    private static LivePanel live(int wide, int tall, int zoom) {
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(zoom));
        LookAndFeel.wear(appearance);
        Component window = Pictures.window(appearance, wide, tall, pane -> {
            pane.go(Place.LIVE);
            pane.showLive(LongAndShort.all().values().iterator().next());
        });
        Snapshot.layOut(window, wide, tall);
        return WordsOnSurface.find(window, LivePanel.class);
    }

    /** With the sky of a practice above them, the rows have 461 pixels in a window of 1280 by 800. */
    @Test
    void underAPracticesSkyTheStripIsStillReadAtArmsLength() {
        LivePanel panel = new LivePanel(new Appearance(Themes.DAY, new Zoom(100)));
        panel.setSize(1280, 461);
        panel.doLayout();
        assertThat(written(panel, LongAndShort.all().values().iterator().next()))
                .filteredOn(w -> w.text().equals("Against the plan"))
                .singleElement()
                .satisfies(w -> assertThat(w.sizePx()).isGreaterThan(10));
    }

    private static List<Written> written(LivePanel panel, LiveView view) {
        panel.show(view);
        return WordsOnSurface.written(panel);
    }

    /** The texts of a view, each under its name. */
    private static Map<String, String> texts(LiveView view) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("name", view.now().name());
        texts.put("countdown", view.now().left());
        texts.put("look", view.now().look());
        texts.put("caption", view.now().caption());
        texts.put("words", String.join(" ", view.say().breaths()));
        var bars = view.say().bars();
        if (bars != null) {
            texts.put("seconds", view.say().what() == What.WAITING ? bars.takes() : bars.thereIs());
        }
        texts.put("when", view.say().caption());
        texts.put("next", view.next().name());
        texts.put("next in", view.next().in());
        texts.put("call", view.next().call());
        for (NextView.FactView fact : view.next().facts()) {
            // Shown in the one form or the other, which begin alike.
            texts.put("fact " + fact.key(), fact.full().text().substring(0, 12));
        }
        for (int i = 0; i < view.next().later().size(); i++) {
            texts.put("then " + (i + 1), view.next().later().get(i).name());
        }
        texts.put("time in the act", view.strip().timeInAct());
        texts.put("against the plan", view.strip().drift().word());
        return texts;
    }

    /** The words written of a text: its lines begin with its first and go on as it goes on. */
    private static List<Written> of(String text, List<Written> all) {
        List<Written> own = new ArrayList<>();
        String rest = text;
        for (Written written : all) {
            String line = written.text().replace("…", "").strip();
            boolean begins = !line.isEmpty()
                    && (own.isEmpty()
                            ? !text.isEmpty() && (text.startsWith(line) || line.startsWith(text))
                            : rest.startsWith(line));
            if (begins && !rest.isEmpty()) {
                own.add(written);
                rest = rest.substring(Math.min(rest.length(), line.length())).strip();
            }
        }
        return own;
    }

    @Tag("slow")
    @ParameterizedTest
    @CsvSource({"1280, 800", "1366, 768", "1920, 1080", "3840, 2160"})
    void largerIsLargerUntilThereIsNoRoom(int wide, int tall) {
        List<String> wrong = new ArrayList<>();
        Map<String, Double> before = new HashMap<>();
        for (int zoom : ZOOMS) {
            LivePanel panel = live(wide, tall, zoom);
            LongAndShort.all().forEach((name, view) -> {
                List<Written> all = written(panel, view);
                String where = name + " at " + zoom + " %: ";
                WordsOnSurface.notApart(all).forEach(w -> wrong.add(where + w));
                texts(view).forEach((what, text) -> {
                    double sizePx = sizePx(text, all);
                    double lastPx = before.getOrDefault(name + what, sizePx);
                    before.put(name + what, sizePx);
                    boolean gone = sizePx == 0 && MAY_LEAVE.contains(what);
                    boolean smaller = sizePx < lastPx - 0.01;
                    boolean back = sizePx > 0 && lastPx == 0;
                    if (back || (!gone && (smaller || sizePx == 0))) {
                        wrong.add(where + what + " went from " + lastPx + " px to " + sizePx);
                    }
                    if (NEVER_CUT.contains(what)
                            && of(text, all).stream().anyMatch(w -> w.text().endsWith("…"))) {
                        wrong.add(where + what + " is cut");
                    }
                    if (what.equals("words") && view.say().what() == What.WORDS && sizePx < 34) {
                        wrong.add(where + "the words to say have " + sizePx + " px");
                    }
                });
            });
        }
        assertThat(wrong).isEmpty();
        assertThat(before).hasSizeGreaterThan(100);
    }

    /** The size of a text, or 0 if it is nowhere. */
    private static double sizePx(String text, List<Written> all) {
        List<Written> own = of(text, all);
        return own.isEmpty() ? 0 : own.get(0).sizePx();
    }

    @ParameterizedTest
    @CsvSource({"1280, 800", "1920, 1080"})
    void atTheLargestZoomTheWordsAreLargerThanAtTheSmallest(int wide, int tall) {
        LiveView view = Objects.requireNonNull(LongAndShort.all().get("all short"));
        List<Written> small = written(live(wide, tall, 100), view);
        List<Written> large = written(live(wide, tall, 200), view);
        for (String what : List.of("name", "countdown", "words", "next", "next in", "fact 1", "seconds")) {
            String text = texts(view).getOrDefault(what, "");
            assertThat(sizePx(text, large) / sizePx(text, small)).as(what).isGreaterThan(1.1);
        }
    }

    @ParameterizedTest
    @CsvSource({"1280, 800", "1366, 768", "1920, 1080"})
    void aFigureFurtherOnSaysWhichItIsEvenWhereItsNameTakesTwoLines(int wide, int tall) {
        LiveView usual = Objects.requireNonNull(LongAndShort.all().get("as usual"));
        NextView before = usual.next();
        NextView next = new NextView(
                before.caption(),
                before.in(),
                before.swapped(),
                before.where(),
                before.name(),
                before.call(),
                List.of(
                        new NextView.Later("turning back, right, second", "in 21 s"),
                        new NextView.Later("torque roll", "in 50 s")),
                before.facts());
        List<Written> all = written(
                live(wide, tall, 100),
                new LiveView(
                        usual.strip(),
                        usual.now(),
                        usual.say(),
                        next,
                        usual.incident(),
                        usual.warnings(),
                        usual.handles(),
                        usual.told()));
        List<String> wrong = new ArrayList<>();
        wrong.addAll(WordsOnSurface.notApart(all));
        assertThat(wrong).isEmpty();
        assertThat(all).extracting(Written::text).contains("second", "in 21 s", "torque roll", "in 50 s");
    }
}
