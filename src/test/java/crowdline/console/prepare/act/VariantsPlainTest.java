package crowdline.console.prepare.act;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.SampleTools;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.sight.SideView;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JToggleButton;
import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.api.Test;

/** A variant may be called anything in its file: it is shown as it stands, on its button and in the tip of it. */
class VariantsPlainTest {
    private static final String MARKUP = "<html><img src='http://127.0.0.1/x.png'><b>low</b>";

    private static VariantView called(String name) {
        return new VariantView(name, null, "any cloud base", "2 figures", List.of(), SideView.NONE);
    }

    @Test
    void aNameOfMarkupIsShownAsItStands() {
        Appearance day = new Appearance(Themes.DAY, Zoom.NONE);
        SampleTools tools =
                new SampleTools(ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null));
        List<VariantView> chosen = new ArrayList<>();
        VariantBar bar = new VariantBar(day, tools.tools, chosen::add, name -> {});
        bar.wear(day);
        VariantView full = called("full");
        VariantView marked = called(MARKUP);
        bar.show(new ActView("a", "An act", "Somebody", "A biplane", "14:00", List.of(full, marked), "full"));
        bar.choose(full);

        List<JToggleButton> buttons = Stream.of(bar.buttons().getComponents())
                .filter(JToggleButton.class::isInstance)
                .map(JToggleButton.class::cast)
                .toList();
        assertThat(buttons)
                .extracting(AbstractButton::getText)
                .containsExactly("full, any cloud base", MARKUP + ", any cloud base");
        assertThat(buttons).allSatisfy(button -> {
            assertThat(button.getClientProperty(BasicHTML.propertyKey)).isNull();
            assertThat(button.getToolTipText()).doesNotContain("<img").doesNotContain("<b>");
        });
        buttons.get(1).doClick();
        assertThat(chosen).containsExactly(marked);
    }
}
