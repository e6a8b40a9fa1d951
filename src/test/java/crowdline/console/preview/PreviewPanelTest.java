package crowdline.console.preview;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.paper.SheetKind;
import crowdline.sheet.page.Page;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.show.Show;
import crowdline.storage.show.ShowFile;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What keys do in the preview, and what becomes of answers; without a screen. */
class PreviewPanelTest implements PaperHost {
    private static final Page PAGE = new Page(PaperSize.A4, List.of(), List.of());

    private final List<Asked> asked = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();
    private final List<String> done = new ArrayList<>();
    private PreviewPanel panel = make(SheetKind.CARDS);

    @Override
    public void make(Show show, Asked wish, Answer answer) {
        asked.add(wish);
        answers.add(answer);
    }

    @Override
    public void save(Pages pages, Path file, Answer answer) {
        done.add("saved " + pages.title() + " as " + file);
        answers.add(answer);
    }

    @Override
    public void print(Pages pages, Answer answer) {
        done.add("printed " + pages.title());
        answers.add(answer);
    }

    @Override
    public void stop() {
        done.add("stopped");
    }

    private PreviewPanel make(SheetKind first) {
        try {
            Show show = Objects.requireNonNull(new ShowFile()
                    .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                    .show());
            return new PreviewPanel(
                    new Appearance(Themes.DAY, Zoom.NONE),
                    this,
                    show,
                    first,
                    name -> Optional.of(Path.of(name)),
                    () -> done.add("closed"));
        } catch (crowdline.storage.file.ShowFileException e) {
            throw new IllegalStateException(e);
        }
    }

    @BeforeEach
    void begin() {
        asked.clear();
        answers.clear();
        panel = make(SheetKind.CARDS);
    }

    private void press(String key) {
        Object name =
                panel.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).get(KeyStroke.getKeyStroke(key));
        panel.getActionMap().get(name).actionPerformed(new ActionEvent(panel, 0, key));
    }

    private static Pages pages(int number) {
        return new Pages("some cards", Collections.nCopies(number, PAGE), List.of());
    }

    private static Stream<Component> all(Container in) {
        return Stream.of(in.getComponents())
                .flatMap(c -> Stream.concat(Stream.of(c), c instanceof Container more ? all(more) : Stream.empty()));
    }

    private PageCanvas canvas() {
        return all(panel)
                .filter(PageCanvas.class::isInstance)
                .map(PageCanvas.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private String said() {
        return all(panel)
                .filter(JTextComponent.class::isInstance)
                .map(c -> ((JTextComponent) c).getText())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void pagesTurnByKeysAndStayWithinTheirNumber() {
        answers.get(0).made(pages(3));
        assertThat(canvas().where()).isEqualTo("Page 1 of 3");
        press("PAGE_DOWN");
        press("PAGE_DOWN");
        press("PAGE_DOWN");
        assertThat(canvas().where()).isEqualTo("Page 3 of 3");
        press("PAGE_UP");
        assertThat(canvas().where()).isEqualTo("Page 2 of 3");
        press("ctrl HOME");
        assertThat(canvas().where()).isEqualTo("Page 1 of 3");
        press("ctrl END");
        assertThat(canvas().where()).isEqualTo("Page 3 of 3");
    }

    @Test
    void nothingInTheWindowTakesTheKeysThatTurnPages() {
        for (Component each : all(panel).toList()) {
            if (each instanceof JComponent part) {
                for (int when : new int[] {JComponent.WHEN_FOCUSED, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT}) {
                    Object name = part.getInputMap(when).get(KeyStroke.getKeyStroke("PAGE_DOWN"));
                    boolean taken = name != null && part.getActionMap().get(name) != null;
                    assertThat(taken
                                    && (part.isFocusable() || part instanceof javax.swing.JScrollPane)
                                    && !(part instanceof JTextComponent)
                                    && !(part instanceof javax.swing.JScrollBar))
                            .as("%s takes Page Down", part)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void anotherKindIsMadeAnewAndOldAnswersAreNotHeard() {
        JList<?> kinds = all(panel)
                .filter(JList.class::isInstance)
                .map(c -> (JList<?>) c)
                .findFirst()
                .orElseThrow();
        kinds.setSelectedValue(SheetKind.INCIDENT, true);
        assertThat(asked).extracting(Asked::kind).containsExactly(SheetKind.CARDS, SheetKind.INCIDENT);
        answers.get(0).made(pages(9));
        assertThat(canvas().where()).isEmpty();
        answers.get(1).made(pages(1));
        assertThat(canvas().where()).isEqualTo("Page 1 of 1");
    }

    @Test
    void printingAndSavingWaitForPages() {
        press("ctrl P");
        press("ctrl S");
        assertThat(done).isEmpty();
        answers.get(0).made(pages(2));
        press("ctrl P");
        press("ctrl S");
        assertThat(done).containsExactly("printed some cards", "saved some cards as cards.pdf");
        answers.get(2).said("Saved as cards.pdf.");
        assertThat(said()).isEqualTo("Saved as cards.pdf.");
    }

    @Test
    void whatCannotBeMadeIsSaidInPlaceOfPages() {
        answers.get(0).said("This show has no acts yet; add one in Prepare.");
        assertThat(said()).isEqualTo("This show has no acts yet; add one in Prepare.");
        press("ctrl P");
        assertThat(done).isEmpty();
    }
}
