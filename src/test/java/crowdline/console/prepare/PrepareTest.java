package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.console.prepare.act.ActPanel;
import crowdline.console.prepare.glance.CloudBase;
import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.prepare.glance.PreparePresenter.Predictions;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.RemarkView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class PrepareTest {
    private static LocatedFinding at(int line, Severity severity, String message) {
        return new LocatedFinding(severity, "code", message, "day.json", line, 1, "");
    }

    private static PrepareView view(LocatedFinding... found) {
        Predictions predictions = new Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return Optional.empty();
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return Optional.of(new ActTimes("a1", "full", List.of(new FigureTime("f1", 65, 3, 2, 5))));
            }
        };
        return new PreparePresenter(new Catalogue(List.of()), text -> new SpokenTime(4, 3.5, 4.5), predictions)
                .view(SmallShow.show(), List.of(found));
    }

    @Test
    void theDayStandsBeforeAPlaceThatMayBeTooLongForTheLine() {
        assertThat(view().where())
                .matches("[A-Z][a-z]+day \\d{1,2} [A-Z][a-z]+ \\d{4}, .*")
                .endsWith(", " + SmallShow.show().venue().name());
    }

    @Test
    void aVariantIsChosenByTheCloudBase() {
        ActView act = view().acts().get(0);
        assertThat(act.under(2500).orElseThrow().name()).isEqualTo("full");
        assertThat(act.under(1500).orElseThrow().name()).isEqualTo("flat");
    }

    @Test
    void aCloudBaseSaysWhatItMeansForLive() {
        // The air of the day has no cloud base, so Live begins with the first.
        ActView act = view().acts().get(0);
        assertThat(CloudBase.meaning(act, 2500)).isEqualTo("\"full\" fits, and Live begins with it");
        assertThat(CloudBase.meaning(act, 1500)).isEqualTo("\"flat\" fits. Live begins with \"full\": press V there");
        ActView onlyFull = new ActView(
                act.id(),
                act.title(),
                act.performer(),
                act.airframe(),
                act.slot(),
                act.variants().subList(0, 1),
                "full");
        assertThat(CloudBase.meaning(onlyFull, 1500))
                .isEqualTo("No variant fits: ask the pilot. Live begins with \"full\"");
    }

    @Test
    void everyLetterOfACloudBaseSaysWhatItMeansForLive() {
        ActPanel panel = new ActPanel(new Appearance(Themes.DAY, new Zoom(100)), SampleTools.idle());
        panel.show(view().acts().get(0));
        JTextField base = ListPageTest.find(panel, JTextField.class, "Cloud base");
        List<String> said = new ArrayList<>();
        for (String typed : List.of("1", "15x", "1500", "2500", "")) {
            base.setText(typed);
            said.add(found(panel, JLabel.class).stream()
                    .map(JLabel::getText)
                    .filter(text -> text.contains("fits") || text.equals(CloudBase.HOW))
                    .findFirst()
                    .orElse("nothing"));
        }
        assertThat(said)
                .containsExactly(
                        "\"flat\" fits. Live begins with \"full\": press V there",
                        CloudBase.HOW,
                        "\"flat\" fits. Live begins with \"full\": press V there",
                        "\"full\" fits, and Live begins with it",
                        "nothing");
    }

    private static <T extends Component> List<T> found(Container parent, Class<T> type) {
        List<T> found = new ArrayList<>();
        for (Component child : parent.getComponents()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Container inner) {
                found.addAll(found(inner, type));
            }
        }
        return found;
    }

    @Test
    void whatNobodyPredictedIsADash() {
        FigureView loop = view().acts().get(0).variants().get(0).figures().get(0);
        assertThat(loop.entry()).isEqualTo("–");
        assertThat(loop.start()).isEqualTo("1:05");
        assertThat(loop.band()).isEqualTo("2–5 s");
    }

    @Test
    void aRemarkLongerThanItsFigureSaysSo() {
        List<RemarkView> remarks =
                view().acts().get(0).variants().get(0).figures().get(0).remarks();
        assertThat(remarks.get(0).verdict().word()).isEqualTo("Fits: 4.0 s of 7.0 s");
        assertThat(remarks.get(1).verdict().word()).isEqualTo("Runs over: 4.0 s of 3.0 s");
    }

    @Test
    void theWorstFindingComesFirst() {
        PrepareView view = view(at(3, Severity.NOTE, "small"), at(9, Severity.ERROR, "large"));
        assertThat(view.findings().get(0).message()).isEqualTo("Large");
    }

    @Test
    void aLoadOfNothingHasNoMinus() {
        assertThat(PreparePresenter.signed(-0.04)).isEqualTo("+0.0");
        assertThat(PreparePresenter.signed(-0.06)).isEqualTo("−0.1");
    }

    @Test
    void nothingIsCutOffAtTheRightAtTwiceTheSize() {
        Appearance large = new Appearance(Themes.DAY, new Zoom(200));
        PreparePanel panel = new PreparePanel(large, SampleTools.idle());
        panel.show(withVariants("full", "rolling", "flat"));
        panel.setSize(1280, 640);
        // Wrapped words know their height only once they have their width.
        layOut(panel);
        layOut(panel);
        layOut(panel);
        assertThat(beyond(panel)).isEmpty();
    }

    @Test
    void aTitleOfAnyLengthLeavesRoomForTheActs() {
        PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), SampleTools.idle());
        PrepareView view = view();
        String title = "Wrenfordshire ".repeat(357);
        panel.show(new PrepareView(title, title, view.air(), view.acts(), view.findings()));
        panel.setSize(1280, 640);
        layOut(panel);
        layOut(panel);
        layOut(panel);
        JList<?> acts = ListPageTest.find(panel, JList.class, "Acts in running order");
        assertThat(acts.getParent().getHeight()).isGreaterThan(100);
        JTextArea shown = ListPageTest.find(panel, JTextArea.class, "Show");
        assertThat(shown.getText())
                .startsWith("Wrenfordshire Wren")
                .endsWith("…")
                .hasSizeLessThan(100);
        assertThat(shown.getToolTipText()).contains(title);
    }

    /** The show with so many variants, each of which takes its room. */
    private static PrepareView withVariants(String... names) {
        PrepareView view = view();
        ActView act = view.acts().get(0);
        VariantView first = act.variants().get(0);
        List<VariantView> variants = Stream.of(names)
                .map(name -> new VariantView(
                        name,
                        1200.0,
                        "from 1,200 ft",
                        "26 figures, 10:44 min",
                        first.figures(),
                        first.path(),
                        first.passes()))
                .toList();
        ActView wide =
                new ActView(act.id(), act.title(), act.performer(), act.airframe(), act.slot(), variants, act.inLive());
        return new PrepareView(view.title(), view.where(), view.air(), List.of(wide), view.findings());
    }

    private static void layOut(Container parent) {
        parent.doLayout();
        for (Component child : parent.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    /** What lies beyond the right or lower edge of the panel it is in; what scrolls may. */
    private static List<String> beyond(Container parent) {
        List<String> found = new ArrayList<>();
        for (Component child : parent.getComponents()) {
            if (child instanceof JScrollPane || !child.isVisible()) {
                continue;
            }
            if (child.getX() + child.getWidth() > parent.getWidth()
                    || child.getY() + child.getHeight() > parent.getHeight()) {
                found.add(child.getClass().getSimpleName() + " " + child.getBounds() + " in " + parent.getSize());
            }
            if (child instanceof JPanel inner) {
                found.addAll(beyond(inner));
            }
        }
        return found;
    }

    @Test
    void cloudBasesAreReadAsTyped() {
        assertThat(CloudBase.read("1,500 ft")).hasValue(1500);
        assertThat(CloudBase.read(" 800 ")).hasValue(800);
        assertThat(CloudBase.read("low")).isEmpty();
        assertThat(CloudBase.read("")).isEmpty();
    }
}
