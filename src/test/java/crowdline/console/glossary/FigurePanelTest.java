package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.aircraft.Kind;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class FigurePanelTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final GlossaryHost HOST = new GlossaryHost() {
        @Override
        public List<Kind> kinds() {
            return KindsFile.shipped().all().stream().filter(Kind::flies).toList();
        }
    };

    private static boolean hasKinds(String figure) throws Exception {
        LookAndFeel.loadType();
        CatalogueEntry entry = CATALOGUE.find(figure).orElseThrow();
        AtomicBoolean has = new AtomicBoolean();
        SwingUtilities.invokeAndWait(() -> {
            FigurePanel panel = new FigurePanel(new Appearance(Themes.DAY, Zoom.NONE), HOST, () -> 0);
            panel.show(entry, new FigureAlone(CATALOGUE).fly(entry).flown());
            has.set(panel.hasKinds());
        });
        return has.get();
    }

    @Test
    void anyAeroplaneFliesALoopAndNoneHovers() throws Exception {
        assertThat(hasKinds("loop")).isTrue();
        assertThat(hasKinds("formation loop")).isTrue();
        assertThat(hasKinds("hover")).isFalse();
        assertThat(hasKinds("canopy landing")).isFalse();
    }
}
