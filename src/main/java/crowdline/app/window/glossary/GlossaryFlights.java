package crowdline.app.window.glossary;

import crowdline.console.glossary.GlossaryHost;
import crowdline.glossary.drill.Memory;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.clue.WhatIsThat;
import crowdline.sight.picture.Flown;
import crowdline.storage.show.KindsFile;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Flies figures of the glossary with any kind of aircraft that flies, on a thread of its own. */
public final class GlossaryFlights implements GlossaryHost {
    /** Flies figures as differently from a strong aeroplane as any. */
    private static final String WEAK = "old trainer";

    private final Supplier<Catalogue> catalogue;
    private final Executor flying;
    private final DrillKeeper drill;
    private final Supplier<List<Belief>> believed;
    /** On the thread that flies only. */
    private @Nullable WhatIsThat asked;

    /**
     * Flies nothing yet.
     *
     * @param believed what the aircraft's position says it may be, at once
     */
    public GlossaryFlights(
            Supplier<Catalogue> catalogue, Executor flying, DrillKeeper drill, Supplier<List<Belief>> believed) {
        this.believed = believed;
        this.catalogue = catalogue;
        this.flying = flying;
        this.drill = drill;
    }

    @Override
    public List<Kind> kinds() {
        return KindsFile.shipped().all().stream().filter(Kind::flies).toList();
    }

    @Override
    public List<Belief> believed() {
        return believed.get();
    }

    @Override
    public Map<String, Memory> remembered() {
        return drill.remembered();
    }

    @Override
    public void remember(String figure, Memory memory) {
        drill.remember(figure, memory);
    }

    @Override
    public long today() {
        return drill.today();
    }

    @Override
    public void fly(CatalogueEntry figure, Kind kind, Consumer<FigureAlone.Outcome> done) {
        flying.execute(() -> {
            FigureAlone.Outcome outcome = flown(figure, kind);
            SwingUtilities.invokeLater(() -> done.accept(outcome));
        });
    }

    @Override
    public void ask(Consumer<WhatIsThat> done) {
        flying.execute(() -> {
            WhatIsThat known = asked;
            if (known == null) {
                List<Kind> kinds = List.of(kinds().get(0), KindsFile.shipped().named(WEAK));
                known = WhatIsThat.of(
                        catalogue.get().entries(),
                        entry -> kinds.stream()
                                .map(kind -> flown(entry, kind).flown())
                                .toList());
                asked = known;
            }
            WhatIsThat first = known;
            SwingUtilities.invokeLater(() -> done.accept(first));
        });
    }

    private FigureAlone.Outcome flown(CatalogueEntry figure, Kind kind) {
        if (!figure.elements().stream().allMatch(kind::shows)) {
            return new FigureAlone.Outcome(Flown.NONE, "Displays of a " + kind.name() + " never show it.");
        }
        return new FigureAlone(catalogue.get().with(List.of(figure)), kind.airframe("m", kind.name(), Sliders.TYPICAL))
                .fly(figure);
    }
}
