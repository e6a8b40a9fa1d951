package crowdline.console.prepare.figure;

import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.PlaceNow;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.prepare.page.Tools;
import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.act.Figures;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What is done to the figures of one variant of an act, from where the choice stands. On the event thread. */
public final class FigureCommands {
    private final Tools tools;
    private final ActView act;
    private final VariantView variant;
    private final int index;

    /**
     * The commands from where the choice stands.
     *
     * @param index of the chosen figure, below 0 for none
     */
    public FigureCommands(Tools tools, ActView act, VariantView variant, int index) {
        this.tools = tools;
        this.act = act;
        this.variant = variant;
        this.index = index;
    }

    private Figures figures() {
        return tools.host().get().figures();
    }

    @Nullable
    public FigureView chosen() {
        return index < 0 || index >= variant.figures().size()
                ? null
                : variant.figures().get(index);
    }

    /** Whether the act is only timed, so that any words are a figure. */
    boolean isTimed() {
        Show show = tools.editor().now();
        return show.act(act.id())
                .flatMap(a -> show.aircraft(a.airframe()))
                .filter(TimedAircraft.class::isInstance)
                .isPresent();
    }

    /** Asks which figure is to come behind the chosen one; the id of the new one is told once it is there. */
    public void askToAdd(FinderPanel finder, Runnable close, Consumer<String> added) {
        FigureView chosen = chosen();
        String question = chosen == null ? "Add the first figure" : "Add a figure after " + chosen.name();
        ask(finder, question, name -> {
            close.run();
            Edit edit = figures().add(act.id(), variant.name(), following(), name, null);
            tools.editor().make(edit, show -> newest(show, added));
        });
    }

    /** Asks which figure is to be flown in place of the chosen one. */
    public void askToReplace(FinderPanel finder, Runnable close) {
        FigureView chosen = chosen();
        if (chosen == null) {
            return;
        }
        ask(finder, "Replace " + chosen.name() + " with", name -> {
            close.run();
            tools.editor().make(figures().replace(act.id(), chosen.edit().id(), name));
        });
    }

    private void ask(FinderPanel finder, String question, Consumer<String> answer) {
        finder.ask(question, isTimed(), tools.editor().now().figures(), answer);
    }

    /** The figure after the chosen one; null if it is the last. */
    private @Nullable String following() {
        List<FigureView> all = variant.figures();
        for (int i = index + 1; i < all.size(); i++) {
            if (!all.get(i).edit().isTransit()) {
                return all.get(i).edit().id();
            }
        }
        return null;
    }

    private void newest(Show show, Consumer<String> added) {
        List<String> before = variant.figures().stream().map(f -> f.edit().id()).toList();
        show.act(act.id()).map(Act::figures).orElse(List.of()).stream()
                .filter(f -> !f.transit())
                .map(Figure::id)
                .filter(id -> !before.contains(id))
                .findFirst()
                .ifPresent(added);
    }

    public void remove() {
        FigureView chosen = chosen();
        if (chosen != null && isFigure(chosen)) {
            tools.editor()
                    .make(figures()
                            .remove(act.id(), variant.name(), chosen.edit().id()));
        }
    }

    /**
     * Moves the chosen figure in the act.
     *
     * @param by places later, negative for earlier
     */
    public void move(int by) {
        FigureView chosen = chosen();
        if (chosen != null) {
            tools.editor()
                    .make(figures().move(act.id(), variant.name(), chosen.edit().id(), by), this::sayWays);
        }
    }

    /** Says which ways between figures the act has now and had not before. */
    private void sayWays(Show after) {
        String said = NewWays.of(ways(), after, act.id(), variant.name());
        if (!said.isEmpty()) {
            tools.editor().tell(said);
        }
    }

    private List<String> ways() {
        return variant.figures().stream()
                .filter(f -> f.edit().isTransit())
                .map(f -> f.edit().id())
                .toList();
    }

    /** Moves the chosen figure to where another row stands. */
    public void moveTo(int row) {
        int by = 0;
        for (int i = Math.min(row, index) + (row > index ? 1 : 0);
                i < Math.max(row, index) + (row > index ? 1 : 0);
                i++) {
            by += variant.figures().get(i).edit().isTransit() ? 0 : 1;
        }
        if (by != 0) {
            move(row > index ? by : -by);
        }
    }

    /** What is flown between two figures goes with them. */
    private boolean isFigure(FigureView chosen) {
        if (chosen.edit().isTransit()) {
            tools.editor().refuse("What is flown between two figures goes with them; choose one of them");
        }
        return !chosen.edit().isTransit();
    }

    /**
     * Tells something of the chosen figure.
     *
     * @param done done once it is told
     * @param otherwise done where it cannot be
     */
    public void pin(PinField field, String typed, Runnable done, Runnable otherwise) {
        FigureView chosen = chosen();
        if (chosen == null) {
            return;
        }
        try {
            Edit edit = figures().pin(act.id(), chosen.edit().id(), field.pin(typed));
            tools.editor().make(edit, show -> done.run(), otherwise);
        } catch (CannotBe e) {
            tools.editor().refuse(e.why());
            otherwise.run();
        }
    }

    /** Moves the chosen figure as far as it was dragged. */
    public void drag(Drag drag) {
        if (drag.upM() == 0) {
            nudge(Nudge.ALONG, Math.rint(drag.alongM() / 10) * 10);
        } else {
            nudge(Nudge.HEIGHT, Math.rint(Units.ftFromM(drag.upM()) / 10) * 10);
        }
    }

    /** Moves the chosen figure along the line or up, or makes it longer; presses that follow each other are one step. */
    public void nudge(Nudge what, double by) {
        FigureView chosen = chosen();
        PlaceNow now = chosen == null ? null : chosen.edit().place();
        if (chosen == null) {
            return;
        }
        if (chosen.edit().isTransit() || now == null) {
            tools.editor()
                    .refuse(
                            chosen.edit().isTransit()
                                    ? "What is flown between two figures follows from them; move one of them"
                                    : "Where this figure is flown is not known, so it cannot be moved");
            return;
        }
        String id = chosen.edit().id();
        tools.editor()
                .make(
                        show -> {
                            Asked asked = show.act(act.id())
                                    .flatMap(a -> a.figure(id))
                                    .map(Figure::asked)
                                    .orElse(null);
                            Change change = figures()
                                    .pin(act.id(), id, what.pin(asked, now, by))
                                    .of(show);
                            return new Change(change.name(), change.show(), what + " of " + id);
                        },
                        this::sayWays);
    }

    /** Drafts the words of the chosen figure. */
    public void draft() {
        FigureView chosen = chosen();
        if (chosen != null) {
            tools.editor()
                    .make(tools.host()
                            .get()
                            .drafting()
                            .figure(act.id(), chosen.edit().id()));
        }
    }

    /** Drafts words in every figure that has none. */
    public void draftAct() {
        tools.editor().make(tools.host().get().drafting().act(act.id()));
    }

    public void layOut() {
        tools.editor().make(figures().layOut(act.id()));
    }
}
