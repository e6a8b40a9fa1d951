package crowdline.console.glossary;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceScreen;
import crowdline.console.theme.Appearance;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import javax.swing.JComponent;

/** The Glossary, and the drill in it. */
public final class GlossaryPlace implements PlaceScreen {
    private final LazyCard<GlossaryView, GlossaryPanel> card;
    private final CommandTable commands = CommandTable.of(Command.Scope.GLOSSARY)
            .on(Command.DRILL, this::drill)
            .on(Command.DRILL_1, this::drilling, () -> ifMade(g -> g.answer(0)))
            .on(Command.DRILL_2, this::drilling, () -> ifMade(g -> g.answer(1)))
            .on(Command.DRILL_3, this::drilling, () -> ifMade(g -> g.answer(2)))
            .on(Command.DRILL_4, this::drilling, () -> ifMade(g -> g.answer(3)))
            .on(Command.DRILL_ON, this::drilling, () -> ifMade(GlossaryPanel::nextQuestion))
            .filled();
    private final Runnable keysBack;
    private LongSupplier seed = () -> 0;
    private boolean drilling;

    /** @param keysBack gives the keys to the window again */
    public GlossaryPlace(Appearance appearance, Runnable keysBack) {
        this.keysBack = keysBack;
        card = new LazyCard<>(appearance, GlossaryPanel::new, GlossaryPanel::show, GlossaryPanel::wear);
    }

    /** What a drill begins with: any whole number, another each time. */
    public void serve(LongSupplier next) {
        seed = next;
    }

    @Override
    public JComponent component() {
        return card;
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    /** Shows the glossary. */
    public void show(GlossaryView view) {
        card.show(view);
    }

    /** Asks the glossary itself, if it has been made. */
    public void ifMade(Consumer<GlossaryPanel> told) {
        card.ifMade(told);
    }

    private void drill() {
        drill(seed.getAsLong());
    }

    /** Begins the drill with this seed, or ends it. */
    public void drill(long from) {
        ifMade(g -> {
            g.drill(from);
            drilling = g.drilling();
        });
        keysBack.run();
    }

    private boolean drilling() {
        return drilling;
    }

    @Override
    public void wear(Appearance appearance) {
        card.wear(appearance);
    }
}
