package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.WordsOnSurface.Written;
import crowdline.console.foot.FootBar;
import crowdline.console.incident.IncidentPanel;
import crowdline.console.incident.IncidentView;
import crowdline.console.incident.IncidentView.ContactView;
import crowdline.console.live.LivePanel;
import crowdline.console.live.LiveView;
import crowdline.console.live.LongAndShort;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.pictures.Pictures;
import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Theme;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.console.window.Snapshot;
import crowdline.storage.show.IncidentTemplate;
import java.awt.Component;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JPanel;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sizes of the words of the incident page as they are painted, over windows, zooms and words of every length. */
class IncidentSizesTest {
    private static final int[] ZOOMS = {100, 150, 200};
    private static final String SENTENCE =
            "Ladies and gentlemen, please stay where you are and follow the instructions of the stewards. ";
    private static final String ONE_WORD = "W" + "undernehmungslust".repeat(12).substring(0, 199);
    /** An ordinary remark in Live at zoom 100, pixels. */
    private static final double LEAST_PX = 34;

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    private static String sentences(int letters) {
        return SENTENCE.repeat(letters / SENTENCE.length() + 1)
                .substring(0, letters)
                .strip();
    }

    private static IncidentView page(List<String> words, int steps, int stepLetters, List<ContactView> contacts) {
        return new IncidentView(
                "Agreed with the organiser on 3 May",
                "Noted 14:32:05",
                "2 min 10 s ago",
                IntStream.range(0, steps).mapToObj(i -> sentences(stepLetters)).toList(),
                words,
                contacts);
    }

    private static List<ContactView> contacts(int count, String role) {
        return Collections.nCopies(count, new ContactView(role, "channel 3, then 01632 960123"));
    }

    private static Map<String, IncidentView> pages() {
        Map<String, IncidentView> pages = new LinkedHashMap<>();
        List<ContactView> two = contacts(2, "Display director");
        List<String> usual = List.of(sentences(130), sentences(90), sentences(160));
        pages.put("short", page(List.of("Please stay where you are."), 2, 20, two));
        pages.put("as usual", page(usual, 4, 50, two));
        pages.put("twenty paragraphs", page(Collections.nCopies(20, sentences(150)), 4, 50, two));
        pages.put("one of 800 letters", page(List.of(sentences(800)), 4, 50, two));
        pages.put("one word of 200 letters", page(List.of(ONE_WORD, "And so on."), 4, 50, two));
        pages.put(
                "many contacts with long names",
                page(usual, 4, 50, contacts(8, "Deputy assistant to the flying display director on the far side")));
        pages.put("one long word to reach", page(usual, 4, 50, contacts(2, ONE_WORD)));
        pages.put("twelve first steps", page(usual, 12, 70, two));
        pages.put("nothing to do first", page(usual, 0, 0, List.of()));
        pages.put("no words", page(List.of(), 3, 50, two));
        return pages;
    }

    private static JPanel window(int wide, int tall, int zoom, LiveView live) {
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(zoom));
        LookAndFeel.wear(appearance);
        JPanel window = Pictures.window(appearance, wide, tall, pane -> {
            pane.go(Place.LIVE);
            pane.showLive(live);
        });
        Snapshot.layOut(window, wide, tall);
        return window;
    }

    private static LiveView live(IncidentView page) {
        LiveView flying = usual();
        return new LiveView(flying.strip(), flying.now(), flying.say(), flying.next(), page, flying.handles());
    }

    private static LiveView usual() {
        return Objects.requireNonNull(LongAndShort.all().get("as usual"));
    }

    /** How large Live has an ordinary remark there. */
    private static double remarkPx(int wide, int tall, int zoom) {
        LivePanel panel = WordsOnSurface.find(window(wide, tall, zoom, usual()), LivePanel.class);
        String begins = usual().say().breaths().get(0);
        return WordsOnSurface.written(panel).stream()
                .filter(w -> begins.startsWith(w.text().strip()) && !w.text().isBlank())
                .mapToDouble(Written::sizePx)
                .findFirst()
                .orElseThrow();
    }

    private static String letters(String text) {
        return text.replaceAll("[\\s-]", "");
    }

    /** The words to say now stand between their caption and what tells of the next ones. */
    private static List<Written> said(List<Written> all) {
        int from = 0;
        int to = all.size();
        for (int i = 0; i < all.size(); i++) {
            String text = all.get(i).text();
            if (text.startsWith("Say slowly, once") || text.equals("Nothing to read out")) {
                from = i + 1;
            } else if (text.startsWith("Next: ") || text.startsWith("Those are all") || text.startsWith("When the")) {
                to = Math.min(to, i);
            }
        }
        return all.subList(from, to);
    }

    /** What follows may be cut where there is no room: it comes whole when it is its turn. */
    private static boolean isNext(Written one, List<Written> all) {
        int at = all.indexOf(one);
        return all.subList(0, at).stream().anyMatch(w -> w.text().startsWith("Next: "))
                && all.subList(0, at).stream().noneMatch(w -> w.text().startsWith("When the"));
    }

    /** Whoever reads it out needs no key within a sentence. */
    @Test
    void largerWordsBreakNoSentenceThatHasRoom() {
        IncidentView page = page(IncidentTemplate.shipped().incident().words(), 5, 70, contacts(2, "Event control"));
        Component window = window(1280, 800, 200, live(page));
        IncidentPanel panel = WordsOnSurface.find(window, IncidentPanel.class);
        panel.show(new IncidentPanel.Shown(page, 0));
        panel.begin();
        for (int paragraph = 0; paragraph < page.words().size(); paragraph++) {
            List<Written> written = WordsOnSurface.written(panel);
            assertThat(written).extracting(Written::text).noneMatch(text -> text.contains("part 1 of"));
            panel.move(1);
        }
    }

    @Tag("slow")
    @ParameterizedTest
    @CsvSource({"800, 500", "1280, 800", "1920, 1080", "2560, 1440"})
    void wordsAreAtLeastAsLargeAsARemarkInLiveAndGrow(int wide, int tall) {
        List<String> wrong = new ArrayList<>();
        Map<String, Double> before = new HashMap<>();
        for (int zoom : ZOOMS) {
            double remarkPx = remarkPx(wide, tall, zoom);
            Component window = window(wide, tall, zoom, live(Objects.requireNonNull(pages().get("as usual"))));
            IncidentPanel panel = WordsOnSurface.find(window, IncidentPanel.class);
            pages().forEach((name, page) -> {
                panel.show(new IncidentPanel.Shown(page, 2));
                panel.begin();
                WordsOnSurface.written(panel);
                panel.move(0);
                String where = name + " at " + zoom + " %: ";
                StringBuilder read = new StringBuilder();
                String last = "";
                String now = panel.getAccessibleContext().getAccessibleDescription();
                double leastPx = Double.MAX_VALUE;
                for (int moves = 0; moves < 1000 && !now.equals(last); moves++) {
                    List<Written> written = WordsOnSurface.written(panel);
                    WordsOnSurface.notApart(written).forEach(w -> wrong.add(where + w));
                    List<Written> said = said(written);
                    leastPx = Math.min(
                            leastPx,
                            said.stream().mapToDouble(Written::sizePx).min().orElse(0));
                    said.forEach(w -> read.append(w.text()));
                    written.stream()
                            .filter(w -> w.text().endsWith("…") && !isNext(w, written))
                            .forEach(w -> wrong.add(where + "\"" + w.text() + "\" is cut"));
                    last = now;
                    panel.move(1);
                    now = panel.getAccessibleContext().getAccessibleDescription();
                }
                if (!page.words().isEmpty()
                        && !letters(read.toString()).equals(letters(String.join("", page.words())))) {
                    wrong.add(where + "what can be read is " + read);
                }
                double unzoomedPx = before.getOrDefault(name, 0.0);
                before.putIfAbsent(name, leastPx);
                if (leastPx < remarkPx - 0.01 || leastPx < LEAST_PX) {
                    wrong.add(where + leastPx + " px, and a remark in Live has " + remarkPx);
                }
                // They grow no further than leaves sentences whole, which in a small window may be less than at a
                // smaller
                // zoom.
                if (leastPx < unzoomedPx * 0.98) {
                    wrong.add(where + "from " + unzoomedPx + " px to " + leastPx);
                }
            });
        }
        assertThat(wrong).isEmpty();
    }

    /** The way to the page and what there is to tell stand beside each other in the foot of the window. */
    @ParameterizedTest
    @CsvSource({"800, 500", "1280, 800", "1920, 1080", "2560, 1440"})
    void footHasRoomForTheButtonAndAMessage(int wide, int tall) {
        String message = "The disk is slow. What was done is written as soon as it can be.";
        for (Theme theme : Themes.all()) {
            for (int zoom : ZOOMS) {
                Appearance appearance = new Appearance(theme, new Zoom(zoom));
                LookAndFeel.wear(appearance);
                JPanel window = Pictures.window(appearance, wide, tall, pane -> {
                    pane.go(Place.LIVE);
                    pane.foot().stand(0, List.of(new Mark(Form.STOP, Tone.CAUTION, message)));
                });
                Snapshot.layOut(window, wide, tall);
                FootBar bar = WordsOnSurface.find(window, FootBar.class);
                List<Written> foot = WordsOnSurface.written(bar);
                String where = theme.id() + " at " + zoom + " %";
                assertThat(WordsOnSurface.notApart(foot)).as(where).isEmpty();
                assertThat(letters(foot.stream().map(Written::text).collect(Collectors.joining())))
                        .as(where)
                        .contains(letters(message));
                List<Written> button = WordsOnSurface.written(bar.getParent()).stream()
                        .filter(w -> w.text().equals("F12 Incident page"))
                        .toList();
                assertThat(button).as(where).hasSize(1);
                assertThat(WordsOnSurface.notApart(button)).as(where).isEmpty();
            }
        }
    }
}
