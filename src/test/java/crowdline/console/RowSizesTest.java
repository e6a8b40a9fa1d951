package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.WordsOnSurface.Written;
import crowdline.console.debrief.Charts;
import crowdline.console.debrief.DebriefPanel;
import crowdline.console.debrief.DebriefView;
import crowdline.console.debrief.DebriefView.Line;
import crowdline.console.debrief.DebriefView.RunView;
import crowdline.console.edit.Editing;
import crowdline.console.glossary.GlossaryPanel;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesHost;
import crowdline.console.passes.PassesPanel;
import crowdline.console.passes.PassesView;
import crowdline.console.passes.PassesView.PassLine;
import crowdline.console.place.Ways;
import crowdline.console.prepare.PreparePlace;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.prepare.glance.PrepareView.RemarkView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.console.window.NamedAction;
import crowdline.show.Term;
import crowdline.show.catalogue.Catalogue;
import crowdline.sight.SideView;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One very long row among short ones, in every list that is painted. */
class RowSizesTest {
    private static final String LONG =
            "A very long row with the <b>words</b> of three, as somebody wrote them late at night "
                    .repeat(8)
                    .strip();
    private static final PassesHost NOBODY = new PassesHost() {
        @Override
        public void count(String passId, boolean counts) {}

        @Override
        public void note(String passId, String note) {}
    };

    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    private static List<JPanel> places(Appearance appearance) {
        PassesPanel passes = new PassesPanel(appearance, () -> NOBODY);
        passes.show(new PassesView("Passes", List.of(), List.of(pass("short"), pass(LONG))));
        GlossaryPanel glossary = new GlossaryPanel(appearance);
        glossary.show(GlossaryView.of(new Catalogue(List.of()), List.of(term("A loop"), term(LONG))));
        Action nothing = new NamedAction("nothing", () -> {});
        PreparePlace prepare =
                new PreparePlace(appearance, new Ways(nothing, nothing, nothing), new Editing(), command -> nothing);
        prepare.show(new PrepareView(
                "Day", "Field", "calm", List.of(act("Act"), act(LONG)), List.of(finding("Odd"), finding(LONG))));
        DebriefPanel debrief = new DebriefPanel(appearance);
        debrief.show(new DebriefView(
                "Day",
                mark("Done"),
                List.of(run("Act"), run(LONG)),
                List.of(),
                List.of(line("Odd"), line(LONG)),
                "",
                Charts.NONE));
        return List.of(passes, glossary, (JPanel) prepare.component(), debrief);
    }

    private static Mark mark(String word) {
        return new Mark(Form.DISC, Tone.GOOD, word);
    }

    private static PassLine pass(String text) {
        return new PassLine(text, text, text, true, mark(text), List.of(text));
    }

    private static Term term(String text) {
        return new Term(text, List.of(), text, text, "", "", List.of(), null);
    }

    private static ActView act(String text) {
        RemarkView near = new RemarkView("Explanation", "Now.", 1, 1, 2, mark("On a good day: 13.6 s of 10.0 s"));
        RemarkView far = new RemarkView(LONG, LONG, 1, 1, 2, mark(LONG));
        FigureView figure = new FigureView("Loop", "", "0:00", "", "", "", "", "", List.of(near, far));
        VariantView variant = new VariantView("full", null, "any", "1 figure", List.of(figure), SideView.NONE);
        return new ActView("id of " + text, text, text, text, text, List.of(variant), "full");
    }

    private static FindingView finding(String text) {
        return new FindingView(mark(text), text, text);
    }

    private static RunView run(String text) {
        return new RunView(text, text, text, List.of(), text, List.of(line("Said"), line(LONG)));
    }

    private static Line line(String text) {
        return new Line(mark(text), text, text);
    }

    private static List<JList<Object>> lists(Component in) {
        List<JList<Object>> found = new ArrayList<>();
        if (in instanceof JList<?> list && list.getCellRenderer() instanceof CellPainter<?>) {
            @SuppressWarnings("unchecked")
            JList<Object> of = (JList<Object>) list;
            found.add(of);
        } else if (in instanceof Container container) {
            for (Component child : container.getComponents()) {
                found.addAll(lists(child));
            }
        }
        return found;
    }

    private static JComponent row(JList<Object> list, int index) {
        return (JComponent) list.getCellRenderer()
                .getListCellRendererComponent(list, list.getModel().getElementAt(index), index, false, false);
    }

    private static Set<Double> sizes(JList<Object> list, int index) {
        JComponent row = row(list, index);
        row.setSize(list.getWidth(), row.getPreferredSize().height);
        List<Written> written = new ArrayList<>();
        Graphics2D g = new BufferedImage(list.getWidth(), row.getHeight(), BufferedImage.TYPE_INT_RGB).createGraphics();
        row.paint(new WordsOnSurface(g, written));
        g.dispose();
        assertThat(written)
                .allSatisfy(w -> assertThat(w.ink().getMaxY()).as(w.text()).isLessThanOrEqualTo(row.getHeight()));
        Set<Double> sizes = new TreeSet<>();
        written.forEach(w -> sizes.add(w.sizePx()));
        return sizes;
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 140, 150, 200})
    void aLongRowIsCutAndHasTheSizesOfTheOthers(int zoom) throws Exception {
        // A list measures its rows in the thread of the window, and may do so at any time.
        AtomicInteger seen = new AtomicInteger();
        SwingUtilities.invokeAndWait(() -> seen.set(rowsSeen(zoom)));
        assertThat(seen).hasValue(8);
    }

    private static int rowsSeen(int zoom) {
        Appearance appearance = new Appearance(Themes.DAY, new Zoom(zoom));
        LookAndFeel.wear(appearance);
        int seen = 0;
        for (JPanel place : places(appearance)) {
            for (JList<Object> list : lists(place)) {
                list.setSize(appearance.px(360), 400);
                if (list.getModel().getSize() == 2) {
                    seen++;
                    String name = list.getAccessibleContext().getAccessibleName();
                    assertThat(sizes(list, 1)).as(name).isNotEmpty().isEqualTo(sizes(list, 0));
                    assertThat(row(list, 0).getToolTipText()).as(name).isNull();
                    assertThat(row(list, 1).getToolTipText())
                            .as(name)
                            .contains("&lt;b&gt;words")
                            .doesNotContain("<b>");
                }
            }
        }
        return seen;
    }
}
