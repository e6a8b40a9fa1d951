package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.Term;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.TermsFile;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.condition.DisabledIf;

/** The glossary in a window of 1280 by 800, looked for and leafed through. */
@Tag("window")
@DisabledIf(value = "java.awt.GraphicsEnvironment#isHeadless", disabledReason = "there is no screen")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GlossaryPanelTest {
    private static final GlossaryView VIEW = GlossaryView.of(CatalogueFile.shipped(), TermsFile.shipped());

    private final JFrame frame = new JFrame("glossary");
    private final GlossaryPanel panel = new GlossaryPanel(new Appearance(Themes.DAY, Zoom.NONE));

    @BeforeAll
    void open() throws Exception {
        LookAndFeel.loadType();
        EventQueue.invokeAndWait(() -> {
            panel.show(VIEW);
            frame.setContentPane(panel);
            frame.setSize(1280, 800);
            frame.setVisible(true);
        });
    }

    @AfterAll
    void close() throws Exception {
        EventQueue.invokeAndWait(frame::dispose);
    }

    /** Does it, and lets everything that it asked for later happen too. */
    private void happens(Runnable what) throws Exception {
        EventQueue.invokeAndWait(what);
        for (int i = 0; i < 2; i++) {
            EventQueue.invokeAndWait(() -> {});
        }
        EventQueue.invokeAndWait(() -> panel.paintImmediately(0, 0, panel.getWidth(), panel.getHeight()));
    }

    private <C extends Component> List<C> all(Class<C> kind) {
        List<C> found = new ArrayList<>();
        collect(panel, kind, found);
        return found;
    }

    private static <C extends Component> void collect(Container in, Class<C> kind, List<C> found) {
        for (Component each : in.getComponents()) {
            if (kind.isInstance(each)) {
                found.add(kind.cast(each));
            }
            if (each instanceof Container inner) {
                collect(inner, kind, found);
            }
        }
    }

    private JTextField search() {
        return all(JTextField.class).get(0);
    }

    private List<String> listed() {
        JList<?> list = all(JList.class).get(0);
        return Stream.iterate(0, i -> i < list.getModel().getSize(), i -> i + 1)
                .map(i -> ((GlossaryView.EntryView) list.getModel().getElementAt(i)).name())
                .toList();
    }

    private int scrolledPx() {
        return all(JScrollPane.class).stream()
                .filter(EntryPage.class::isInstance)
                .findFirst()
                .orElseThrow()
                .getViewport()
                .getViewPosition()
                .y;
    }

    private String title() {
        return all(JTextArea.class).stream()
                .filter(area -> List.of("Figure", "Word", "Nothing found")
                        .contains(area.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow()
                .getText();
    }

    private void type(String words) throws Exception {
        happens(() -> search().setText(""));
        for (int i = 1; i <= words.length(); i++) {
            String letters = words.substring(0, i);
            happens(() -> search().setText(letters));
        }
    }

    @Test
    void everyPageOpensAtItsTop() throws Exception {
        int typed = 0;
        for (CatalogueEntry entry : CatalogueFile.shipped().entries()) {
            // Letter by letter for some, which is what a hand does, and at once for the others, which is quicker.
            if (typed++ % 12 == 0) {
                type(entry.name());
            } else {
                happens(() -> search().setText(entry.name()));
            }
            assertThat(title()).isEqualTo(entry.name());
            assertThat(scrolledPx()).as(entry.name()).isZero();
        }
    }

    /** As a caret does by itself when its text is laid out late. */
    @Test
    void theCaretOfATextThatNobodyReadsDoesNotScroll() throws Exception {
        type("torque roll");
        happens(() -> all(JTextArea.class).stream()
                .filter(area -> area.getAccessibleContext().getAccessibleName().equals("Where this comes from"))
                .forEach(area -> area.setCaretPosition(area.getText().length())));
        assertThat(scrolledPx()).isZero();
    }

    @Test
    void whatIsTypedIsFoundInTheTextsAndForgiven() throws Exception {
        type("ruder");
        assertThat(listed()).first().isEqualTo("rudder");
        assertThat(title()).isEqualTo("rudder");
        type("sycamore");
        assertThat(title()).isEqualTo("spin");
    }

    @Test
    void nothingFoundSaysWhatToDo() throws Exception {
        type("qqqq");
        assertThat(listed()).isEmpty();
        assertThat(title()).isEqualTo("Nothing has “qqqq” in it.");
        assertThat(all(JTextArea.class)).anyMatch(area -> area.getText().contains("Try fewer letters"));
        type("");
        assertThat(listed()).hasSize(VIEW.entries().size());
    }

    @Test
    void figuresAndWordsAreSiftedByKey() throws Exception {
        type("");
        happens(panel::siftOn);
        assertThat(listed()).contains("loop").doesNotContain("rudder");
        happens(panel::siftOn);
        assertThat(listed()).contains("rudder").doesNotContain("loop");
        happens(panel::siftOn);
        assertThat(listed()).contains("loop", "rudder");
    }

    @Test
    void pagesNamedOnAPageOpenByKeyAndTheWayBackIsKept() throws Exception {
        type("");
        happens(() -> panel.choose("avalanche"));
        List<String> links = all(JButton.class).stream()
                .map(JButton::getText)
                .filter(text -> text.startsWith("Alt+"))
                .toList();
        assertThat(links).isNotEmpty().allMatch(text -> text.matches("Alt\\+\\d  .+"));
        String first = links.get(0).replaceFirst("Alt\\+1 +", "");
        happens(() -> panel.follow(0));
        assertThat(title()).isEqualTo(first);
        assertThat(scrolledPx()).isZero();
        happens(panel::back);
        assertThat(title()).isEqualTo("avalanche");
        assertThat(panel.canGoBack()).isFalse();
    }

    @Test
    void aPageThatTheSearchHidesIsOpenedAllTheSame() throws Exception {
        type("sycamore");
        happens(() -> panel.choose("datum"));
        assertThat(title()).isEqualTo("datum");
    }

    @Test
    void aLinkIsOnlyWhereThereIsAPage() {
        for (GlossaryView.EntryView entry : VIEW.entries()) {
            assertThat(entry.links()).hasSizeLessThanOrEqualTo(GlossaryView.MOST_LINKS);
            assertThat(VIEW.entries().stream().map(GlossaryView.EntryView::name))
                    .containsAll(entry.links());
        }
    }

    @Test
    void aShowsOwnWordTakesThePlaceOfTheProgramsAndGoesWithTheShow() {
        Term own = Term.own("datum", "The flagpole.");
        GlossaryView with = VIEW.with(Shows.withTerms(List.of(own, Term.own("the Elm", "A tree."))));
        assertThat(with.matching("flagpole", GlossaryView.Sift.WORDS))
                .extracting(GlossaryView.EntryView::name)
                .containsExactly("datum");
        assertThat(with.entries()).hasSize(VIEW.entries().size() + 1);
        assertThat(with.with(null).entries()).isEqualTo(VIEW.entries());
    }

    @Test
    void whatIsShownAfterTheLookChangedHasTheNewLook() throws Exception {
        happens(() -> LookAndFeel.wear(new Appearance(Themes.DAY, Zoom.NONE)));
        List<JTextField> fields = new ArrayList<>();
        collect(panel.drillPanel(), JTextField.class, fields);
        JTextField written = fields.get(0);
        Appearance night = new Appearance(Themes.NIGHT, Zoom.NONE);
        happens(() -> {
            LookAndFeel.wear(night);
            panel.wear(night);
            panel.drill(1);
        });
        assertThat(written.getBackground()).isEqualTo(night.palette().stage());
        assertThat(written.getForeground()).isEqualTo(night.palette().text());
        happens(() -> {
            panel.drill(1);
            LookAndFeel.wear(new Appearance(Themes.DAY, Zoom.NONE));
            panel.wear(new Appearance(Themes.DAY, Zoom.NONE));
        });
    }
}
