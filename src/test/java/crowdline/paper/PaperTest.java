package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.live.debrief.Debrief;
import crowdline.loaded.ActPlans;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Measures;
import crowdline.patter.Placed;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Lettering;
import crowdline.sheet.page.Area;
import crowdline.sheet.page.Block;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Page;
import crowdline.sheet.page.Pages;
import crowdline.show.Act;
import crowdline.show.Announcement;
import crowdline.show.Show;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What stands on which page, by the pages as data. */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PaperTest {
    /** What no printer prints on, points. */
    private static final double EDGE_PT = 14;

    private static final List<SheetKind> KINDS =
            List.of(SheetKind.CARDS, SheetKind.RUNNING, SheetKind.PILOT, SheetKind.GLOSSARY, SheetKind.INCIDENT);

    static Pages pages(SheetKind kind, Wanted wanted) throws NothingOnPaper {
        return Paper.of(kind, wanted, Counting.UNHEARD);
    }

    /** A show on paper of every kind. */
    private record Sheets(String name, Wanted wanted, Map<SheetKind, Pages> pages) {
        static Sheets of(String name, Show show, boolean large) {
            Wanted wanted = PaperShows.wanted(show, large);
            Map<SheetKind, Pages> pages = new EnumMap<>(SheetKind.class);
            for (SheetKind kind : KINDS) {
                try {
                    pages.put(kind, PaperTest.pages(kind, wanted));
                } catch (NothingOnPaper e) {
                    throw new IllegalStateException(e);
                }
            }
            return new Sheets(name, wanted, pages);
        }

        Pages pages(SheetKind kind) {
            return Objects.requireNonNull(pages.get(kind));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private final List<Sheets> sheets = new ArrayList<>();

    @BeforeAll
    void makeThem() {
        sheets.add(Sheets.of("the demo", PaperShows.demo(), false));
        sheets.add(Sheets.of("the demo, large", PaperShows.demo(), true));
        sheets.add(Sheets.of("long names", PaperShows.named(PaperShows.LONG_NAME), true));
        sheets.add(Sheets.of("one long word", PaperShows.named(PaperShows.LONG_WORD), false));
        sheets.add(Sheets.of("names from the right", PaperShows.named(PaperShows.HEBREW), false));
        sheets.add(Sheets.of("joined names", PaperShows.named(PaperShows.ARABIC), false));
        sheets.add(Sheets.of("one figure", PaperShows.of(1), false));
        sheets.add(Sheets.of("150 figures", PaperShows.of(150), true));
    }

    List<Sheets> everySheet() {
        return List.copyOf(sheets);
    }

    @ParameterizedTest
    @MethodSource("everySheet")
    void nothingCoversAnythingOrRunsOutOfItsPlace(Sheets made) {
        for (SheetKind kind : KINDS) {
            assertThat(made.pages(kind).pages()).isNotEmpty();
            assertThat(wrongOn(kind, made.pages(kind))).isEmpty();
        }
    }

    static List<String> wrongOn(SheetKind kind, Pages pages) {
        List<String> wrong = new ArrayList<>();
        for (Page page : pages.pages()) {
            Area printable = page.size().area().inset(EDGE_PT);
            for (int i = 0; i < page.blocks().size(); i++) {
                Block block = page.blocks().get(i);
                if (!printable.holds(block.area())) {
                    wrong.add(kind + " out of the page: " + block);
                }
                for (Block other : page.blocks().subList(i + 1, page.blocks().size())) {
                    if (block.area().overlaps(other.area())) {
                        wrong.add(kind + ": " + block + " over " + other);
                    }
                }
                // The numbers in the picture of an act are placed by the picture.
                if (!block.name().equals("act")) {
                    words(block).stream()
                            .filter(w -> !block.area().holds(seen(w)))
                            .forEach(w -> wrong.add(kind + ": " + w + " out of " + block.area()));
                }
            }
        }
        return wrong;
    }

    private static Area seen(Ink.Words words) {
        double wide = Lettering.widthPx(words.text(), words.sizePx(), words.strong());
        return new Area(words.leftX(), words.y() - 0.8 * words.sizePx(), wide, words.sizePx());
    }

    private static List<Ink.Words> words(Block block) {
        return block.inks().stream()
                .filter(Ink.Words.class::isInstance)
                .map(Ink.Words.class::cast)
                .toList();
    }

    static List<Block> blocks(Pages pages) {
        return pages.pages().stream().flatMap(p -> p.blocks().stream()).toList();
    }

    /** All that is said in the blocks of a name, without white space, which is lost where a line ends. */
    static String said(List<Block> blocks, String name) {
        return blocks.stream()
                .filter(b -> b.name().equals(name))
                .flatMap(b -> words(b).stream())
                .map(Ink.Words::text)
                .collect(Collectors.joining())
                .replaceAll("\\s", "");
    }

    @ParameterizedTest
    @MethodSource("everySheet")
    void everyRemarkOfThePlanIsOnceAndWholeOnTheCardsAndOnTheSheet(Sheets made) {
        Wanted wanted = made.wanted();
        ShowLookup lookup = wanted.loaded().words();
        for (SheetKind kind : List.of(SheetKind.CARDS, SheetKind.RUNNING)) {
            List<Block> blocks = blocks(made.pages(kind));
            Map<String, String> wished = new TreeMap<>();
            for (ActPlans.Planned act : ActPlans.of(wanted.loaded(), wanted.acts(), wanted.chosen())) {
                for (Placed placed : act.plan().placed()) {
                    Remark remark = lookup.remark(placed.remarkId()).orElseThrow();
                    wish(wished, placed.remarkId(), remark.words(placed.form() == RemarkForm.SHORT));
                }
                act.plan()
                        .unplaced()
                        .forEach(u -> wish(
                                wished,
                                u.remarkId(),
                                lookup.remark(u.remarkId()).orElseThrow().text()));
            }
            Map<String, String> there = new TreeMap<>();
            blocks.stream()
                    .map(Block::name)
                    .filter(n -> n.startsWith("remark "))
                    .distinct()
                    .forEach(n -> there.put(n, said(blocks, n)));
            assertThat(wished).isNotEmpty();
            assertThat(there).as(kind.word()).isEqualTo(wished);
        }
    }

    /** A remark that two acts have no room for is on the paper of both. */
    private static void wish(Map<String, String> wished, String remarkId, String words) {
        wished.merge("remark " + remarkId, words.replaceAll("\\s", ""), String::concat);
    }

    /** A debrief with every fate there is, and names of any length. */
    @Test
    void aDebriefAndQuestionsAreLaidOutAsWell() throws NothingOnPaper {
        Debrief debrief = PaperShows.debrief();
        Show show = PaperShows.withATransit();
        Wanted wanted = new Wanted(
                PaperShows.loaded(show),
                show.acts(),
                act -> act.variants().get(0),
                false,
                true,
                new Wanted.Flown(debrief, second -> LocalTime.NOON, null),
                Measures.USUAL);
        Pages told = pages(SheetKind.DEBRIEF, wanted);
        Pages asked = pages(SheetKind.QUESTIONS, wanted);
        assertThat(wrongOn(SheetKind.DEBRIEF, told)).isEmpty();
        assertThat(wrongOn(SheetKind.QUESTIONS, asked)).isEmpty();
        assertThat(said(blocks(told), "figure SWAPPED")).contains("(swapped)", "byclockheld77s");
        assertThat(blocks(told).stream()
                        .filter(b -> b.name().equals("head"))
                        .filter(b -> said(List.of(b), "head").equals("differs")))
                .as("every page of the table has its head")
                .hasSizeGreaterThan(1);
        assertThat(said(blocks(told), "change")).startsWith("Changethis.").endsWith("Looptook3slongerSpinwasdropped");
        assertThat(said(blocks(told), "act"))
                .as("an act is named once for all that is to change in it")
                .isEqualTo(PaperShows.LONG_WORD);
        assertThat(said(blocks(told), "announcement")).contains("shown12:00:00,readout12:00:00");
        assertThat(said(blocks(asked), "question")).contains("betweenthefigures");
    }

    @Test
    void remarksOfThePlanStandOnTheCardOfTheFigureTheyAreSaidIn() throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(PaperShows.demo(), false);
        for (PaperAct act : PaperAct.of(wanted, Counting.UNHEARD)) {
            List<Card> cards = CueCards.of(act, wanted.type(), Counting.UNHEARD);
            for (int i = 0; i < act.times().size(); i++) {
                Card card = cards.get(i + 1);
                assertThat(card.name()).isEqualTo(act.name(i));
                List<Block> own = blocks(card.flow().pages("", (page, of, ground, blocks) -> {}));
                assertThat(own.stream()
                                .map(Block::name)
                                .filter(n -> n.startsWith("remark "))
                                .distinct())
                        .containsExactlyElementsOf(act.said(i).stream()
                                .map(p -> "remark " + p.remarkId())
                                .toList());
            }
        }
    }

    @Test
    void aDroppedPackCanBeSorted() throws NothingOnPaper {
        Pages pages = pages(SheetKind.CARDS, PaperShows.wanted(PaperShows.demo(), false));
        List<String> numbers = blocks(pages).stream()
                .filter(b -> b.name().equals("number"))
                .map(b -> words(b).get(0).text())
                .toList();
        assertThat(numbers).doesNotHaveDuplicates().contains("Act 1 · card 1 of 28", "Act 1 · card 2a of 28");
        assertThat(numbers.stream().filter(n -> n.startsWith("Act 2")).findFirst())
                .hasValueSatisfying(n -> assertThat(n).startsWith("Act 2 · card 1"));
        assertThat(pages.pages())
                .allSatisfy(p -> assertThat(
                                p.blocks().stream().filter(b -> b.name().equals("number")))
                        .hasSizeLessThanOrEqualTo(4));
    }

    @Test
    void aLongNameIsWholeOnItsCards() throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(PaperShows.named(PaperShows.LONG_WORD), false);
        PaperAct act = PaperAct.of(wanted, Counting.UNHEARD).get(0);
        Card card = CueCards.of(act, wanted.type(), Counting.UNHEARD).get(1);
        List<Block> blocks = blocks(card.flow().pages("", (page, of, ground, around) -> {}));
        assertThat(said(blocks, "name")).isEqualTo(act.name(0).replaceAll("\\s", ""));
    }

    @ParameterizedTest
    @MethodSource("everySheet")
    void typeIsNeverTooSmall(Sheets made) {
        double factor = made.wanted().large() ? Type.LARGE : 1;
        List<String> wrong = new ArrayList<>();
        for (SheetKind kind : KINDS) {
            for (Block block : blocks(made.pages(kind))) {
                boolean said = block.name().startsWith("remark ");
                double least = said ? factor * (kind == SheetKind.CARDS ? 14 : 11) : 8.5;
                words(block).stream().filter(w -> w.sizePx() < least).forEach(w -> wrong.add(kind + ": " + w));
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void theIncidentPageIsOnePageWithARedEdge() throws NothingOnPaper {
        Pages pages = pages(SheetKind.INCIDENT, PaperShows.wanted(PaperShows.demo(), false));
        assertThat(pages.pages()).hasSize(1);
        assertThat(pages.pages().get(0).ground())
                .hasSize(4)
                .allSatisfy(ink -> assertThat(ink)
                        .isInstanceOfSatisfying(
                                Ink.Fill.class, f -> assertThat(f.rgb()).isEqualTo(Type.RED)));
    }

    @Test
    void announcementsFollowTheIncidentPageWithoutItsRedEdge() throws NothingOnPaper {
        Show demo = PaperShows.demo();
        Announcement lost = new Announcement("lost", "Lost child", List.of("A child is at [where]."), null);
        Announcement fog = new Announcement("fog", "Fog", List.of("word ".repeat(900)), "Ada, 2 May");
        Pages pages = pages(SheetKind.INCIDENT, PaperShows.wanted(demo.withAnnouncements(List.of(lost, fog)), false));
        assertThat(pages.pages()).hasSizeGreaterThan(2);
        assertThat(pages.pages().get(1).ground())
                .noneMatch(ink -> ink instanceof Ink.Fill fill && fill.rgb() == Type.RED);
        List<Block> blocks = blocks(pages);
        assertThat(said(blocks, "announced")).startsWith("Achildisat[where].word");
        assertThat(said(blocks, "blanks")).isEqualTo("Fillinfirst:where");
        assertThat(pages.bookmarks()).extracting(b -> b.words()).containsExactly("Incident", "Lost child", "Fog");
    }

    @Test
    void theGlossaryHasEveryFigureWithItsDrawing() throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(PaperShows.demo(), false);
        Pages pages = pages(SheetKind.GLOSSARY, wanted);
        List<CatalogueEntry> entries = wanted.loaded()
                .catalogue()
                .with(wanted.loaded().show().figures())
                .entries();
        assertThat(pages.bookmarks()).hasSameSizeAs(entries);
        assertThat(blocks(pages).stream().filter(b -> b.name().equals("drawing")))
                .hasSameSizeAs(entries);
    }

    @Test
    void thePilotReadsEveryWordOfTheActAndEveryFactWithItsSource() throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(PaperShows.demo(), false);
        List<Block> blocks = blocks(pages(SheetKind.PILOT, wanted));
        for (Act act : wanted.acts()) {
            wanted.loaded()
                    .show()
                    .everyRemarkOf(act.id())
                    .filter(r -> act.remarks().contains(r)
                            || act.inOrder(act.variants().get(0)).stream()
                                    .anyMatch(f -> f.remarks().contains(r)))
                    .forEach(r -> assertThat(said(blocks, "remark " + r.id()))
                            .isEqualTo(r.text().replaceAll("\\s", "")));
        }
        assertThat(said(blocks, "source")).contains("Source:pilot'sownform,3May");
        assertThat(blocks).anySatisfy(b -> assertThat(b.name()).isEqualTo("signatures"));
    }

    /** What follows from what the pilot said, the pilot did not say. */
    @Test
    void whatIsToldStandsOnThePilotsSheetAsItWasTold() throws NothingOnPaper {
        Show demo = PaperShows.demo();
        Act act = demo.acts().get(0);
        List<Figure> figures = new ArrayList<>(act.figures());
        figures.set(
                1,
                figures.get(1)
                        .asking(Asked.plainly("as I like it")
                                .withHeightFt(1234.0)
                                .withKt(123.0)
                                .withAlongM(-321.0)));
        figures.set(2, figures.get(2).asking(Asked.plainly("over there").withPlace(Asked.Place.RIGHT_END)));
        Show told = demo.withAct(act.withFigures(figures, act.remarks()));
        String values = said(blocks(pages(SheetKind.PILOT, PaperShows.wanted(told, false))), "value");
        assertThat(values)
                .contains("beginsat123kt,told")
                .contains("beginsat1,234ft,told")
                .contains("itsmiddle321mleft,told")
                .contains("attherightend,told")
                .doesNotContainPattern("lowest[\\d,]+ft,told")
                .doesNotContainPattern("ends[\\d,]+m(left|right),told");
    }

    @Test
    void whatCannotBeOnPaperIsSaid() {
        Show demo = PaperShows.demo();
        assertThatThrownBy(() -> pages(SheetKind.INCIDENT, PaperShows.wanted(demo.withIncident(null), false)))
                .isInstanceOf(NothingOnPaper.class)
                .hasMessageContaining("no incident page")
                .hasMessageContaining("incident-template");
        assertThatThrownBy(() -> pages(SheetKind.DEBRIEF, PaperShows.wanted(demo, false)))
                .isInstanceOf(NothingOnPaper.class)
                .hasMessageContaining("run it in Live");
        assertThatThrownBy(() -> pages(SheetKind.CARDS, PaperShows.wanted(PaperShows.of(0), false)))
                .isInstanceOf(NothingOnPaper.class)
                .hasMessageContaining("has no figures");
        assertThatThrownBy(() -> pages(SheetKind.CARDS, PaperShows.wanted(demo.withActs(List.of(), List.of()), false)))
                .isInstanceOf(NothingOnPaper.class)
                .hasMessageContaining("no acts yet");
        assertThatThrownBy(() -> pages(SheetKind.QUESTIONS, PaperShows.wanted(demo, false)))
                .isInstanceOf(NothingOnPaper.class)
                .hasMessageContaining("nothing is assumed");
    }

    @Test
    void longWorkCanBeStopped() {
        Wanted wanted = PaperShows.wanted(PaperShows.demo(), false);
        for (SheetKind kind : List.of(SheetKind.CARDS, SheetKind.RUNNING, SheetKind.PILOT, SheetKind.GLOSSARY)) {
            assertThatThrownBy(() -> Paper.of(kind, wanted, (number, all) -> {
                        throw new CancellationException();
                    }))
                    .isInstanceOf(CancellationException.class);
        }
    }
}
