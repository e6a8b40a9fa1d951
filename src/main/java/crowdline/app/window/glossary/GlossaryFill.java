package crowdline.app.window.glossary;

import crowdline.app.window.work.PendingWindow;
import crowdline.console.glossary.GlossaryView;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.show.KindsFile;
import crowdline.storage.show.TermsFile;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/** Fills the glossary, once: first its words, then its drawings. On the io thread only. */
public final class GlossaryFill {
    private final Supplier<Catalogue> catalogue;
    private final PendingWindow window;
    private final Executor io;
    private boolean drawn;

    public GlossaryFill(Supplier<Catalogue> catalogue, PendingWindow window, Executor io) {
        this.catalogue = catalogue;
        this.window = window;
        this.io = io;
    }

    public void fill() {
        if (drawn) {
            return;
        }
        GlossaryView glossary = GlossaryView.of(catalogue.get(), TermsFile.shipped());
        window.send(w -> w.showGlossary(glossary));
        // Its drawings have to be flown; whatever else waits comes first.
        io.execute(() -> {
            if (!drawn) {
                drawn = true;
                GlossaryView flown = glossary.drawn(usual());
                window.send(w -> w.showGlossary(flown));
            }
        });
    }

    /** Whoever watches a figure first sees it flown by the first kind that flies. */
    private static Airframe usual() {
        Kind kind = KindsFile.shipped().all().stream()
                .filter(Kind::flies)
                .findFirst()
                .orElseThrow();
        return kind.airframe("m", kind.name(), Sliders.TYPICAL);
    }
}
