package crowdline.console.glossary;

import crowdline.console.edit.Editing;
import crowdline.console.glossary.GlossaryView.EntryView;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceScreen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.day.OwnGlossary;
import crowdline.show.Act;
import crowdline.show.Term;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.swing.JComponent;

/** The Glossary, and the drill in it. */
public final class GlossaryPlace implements PlaceScreen {
    private final LazyCard<GlossaryView, GlossaryPanel> card;
    private boolean drilling;
    private final CommandTable commands = CommandTable.of(Command.Scope.GLOSSARY)
            .on(Command.FIND, this::reading, () -> ifMade(GlossaryPanel::find))
            .on(Command.SIFT, this::reading, () -> ifMade(GlossaryPanel::siftOn))
            .on(Command.PAGE_1, () -> hasLink(0), () -> follow(0))
            .on(Command.PAGE_2, () -> hasLink(1), () -> follow(1))
            .on(Command.PAGE_3, () -> hasLink(2), () -> follow(2))
            .on(Command.PAGE_4, () -> hasLink(3), () -> follow(3))
            .on(Command.PAGE_5, () -> hasLink(4), () -> follow(4))
            .on(Command.PAGE_6, () -> hasLink(5), () -> follow(5))
            .on(
                    Command.PAGE_BACK,
                    () -> reading() && asked(GlossaryPanel::canGoBack),
                    () -> ifMade(GlossaryPanel::back))
            .on(
                    Command.FLY,
                    () -> hasFlight() || (drilling && asked(g -> g.drillPanel().hasFlight())),
                    () -> ifMade(g -> {
                        if (g.drilling()) {
                            g.drillPanel().fly();
                        } else {
                            g.figure().toggle();
                        }
                    }))
            .on(
                    Command.NEXT_MOMENT,
                    this::hasFlight,
                    () -> ifMade(g -> g.figure().step(true)))
            .on(
                    Command.MOMENT_BEFORE,
                    this::hasFlight,
                    () -> ifMade(g -> g.figure().step(false)))
            .on(
                    Command.FLY_FASTER,
                    this::hasFlight,
                    () -> ifMade(g -> g.figure().change(1)))
            .on(
                    Command.FLY_SLOWER,
                    this::hasFlight,
                    () -> ifMade(g -> g.figure().change(-1)))
            .on(
                    Command.FLOWN_BY,
                    () -> reading() && asked(g -> g.figure().hasKinds()),
                    () -> ifMade(g -> g.figure().nextKind()))
            .on(Command.OWN_WORDS, this::hasPage, this::writeOwn)
            .on(Command.NEW_WORD, this::canWrite, () -> write("", () -> {}))
            .on(Command.KEEP_WORDS, this::writing, this::keep)
            .on(Command.NOT_OWN, this::hasOwn, this::notOwn)
            .on(Command.DRILL, () -> !writing() && !asking(), () -> drill(seed()))
            .on(Command.DRILL_ACT, this::canDrillShow, this::drillAct)
            .on(Command.DRILL_1, () -> hasAnswer(0), () -> answer(0))
            .on(Command.DRILL_2, () -> hasAnswer(1), () -> answer(1))
            .on(Command.DRILL_3, () -> hasAnswer(2), () -> answer(2))
            .on(Command.DRILL_4, () -> hasAnswer(3), () -> answer(3))
            .on(Command.ANSWER_5, () -> hasAnswer(4), () -> answer(4))
            .on(Command.ANSWER_6, () -> hasAnswer(5), () -> answer(5))
            .on(Command.NOT_SURE, this::asking, () -> ifMade(g -> g.asked().notSure()))
            .on(Command.ASK_BACK, this::asking, () -> ifMade(g -> g.asked().back()))
            .on(Command.ASK, () -> !writing() && !drilling, this::ask)
            .on(Command.DRILL_ON, () -> drilling, () -> ifMade(GlossaryPanel::nextQuestion))
            .filled();
    private final Runnable keysBack;
    private DoubleSupplier clockS = () -> 0;
    private GlossaryHost host = GlossaryHost.NONE;
    private Consumer<Mark> told = mark -> {};
    private Runnable changed = () -> {};
    private final Editing editing;
    private GlossaryView base = GlossaryView.EMPTY;
    private List<CatalogueEntry> ownFigures = List.of();
    private List<Term> ownTerms = List.of();
    /** What is drilled of the show: −1 for nothing of it, 0 for all of it, else one of its acts, from 1. */
    private int drilledOf = -1;

    /**
     * @param editing the show whose own figures and words are shown over those of the program
     * @param keysBack gives the keys to the window again
     */
    public GlossaryPlace(Appearance appearance, Editing editing, Runnable keysBack) {
        this.keysBack = keysBack;
        this.editing = editing;
        editing.onChange(this::own);
        card = new LazyCard<>(appearance, this::made, GlossaryPanel::show, GlossaryPanel::wear);
    }

    /**
     * Who serves it.
     *
     * @param say says something in the foot line
     * @param seconds on a clock that never goes back; the moment a drill is asked for is as good a seed as any
     * @param flying flies figures
     */
    public void serve(DoubleSupplier seconds, GlossaryHost flying, Consumer<Mark> say) {
        told = say;
        clockS = seconds;
        host = flying;
    }

    private GlossaryPanel made(Appearance worn) {
        GlossaryPanel panel = new GlossaryPanel(worn, host, () -> clockS.getAsDouble(), this::keep);
        panel.onChange(() -> changed.run());
        return panel;
    }

    /** Told whenever what can be done here may have changed. */
    public void onChange(Runnable listener) {
        changed = listener;
    }

    @Override
    public JComponent component() {
        return card;
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    /** Shows the glossary of the program, and over it what the show that is edited has of its own. */
    public void show(GlossaryView program) {
        base = program;
        card.show(editing.isOpen() ? program.with(editing.now()) : program);
    }

    private void own() {
        List<CatalogueEntry> figures = editing.isOpen() ? editing.now().figures() : List.of();
        List<Term> terms = editing.isOpen() ? editing.now().terms() : List.of();
        if (!figures.equals(ownFigures) || !terms.equals(ownTerms)) {
            ownFigures = figures;
            ownTerms = terms;
            show(base);
        }
    }

    /** Asks the glossary itself, if it has been made. */
    public void ifMade(Consumer<GlossaryPanel> told) {
        card.ifMade(told);
    }

    private boolean asked(Predicate<GlossaryPanel> question) {
        boolean[] answer = {false};
        ifMade(g -> answer[0] = question.test(g));
        return answer[0];
    }

    private boolean hasLink(int index) {
        return reading() && asked(g -> g.hasLink(index));
    }

    private void follow(int index) {
        ifMade(g -> g.follow(index));
    }

    private boolean hasFlight() {
        return reading() && asked(g -> g.figure().hasFlight());
    }

    private boolean reading() {
        return !drilling && !writing() && !asking();
    }

    private boolean asking() {
        return asked(GlossaryPanel::asking);
    }

    private boolean hasAnswer(int index) {
        return asked(g -> g.asking() ? index < g.asked().lines() : drilling && index < g.answers());
    }

    private void answer(int index) {
        ifMade(g -> {
            if (g.asking()) {
                g.asked().answer(index);
            } else {
                g.answer(index);
            }
        });
    }

    /** Begins to ask what was seen, or ends it. */
    private void ask() {
        if (asking()) {
            ifMade(g -> g.ask(null));
        } else {
            askAnew();
        }
    }

    /** Begins to ask what was seen, from the first question. */
    public void askAnew() {
        host.ask(first -> ifMade(g -> {
            if (!g.isWriting()) {
                drilling = false;
                g.ask(first);
                keysBack.run();
            }
        }));
    }

    private boolean writing() {
        return asked(GlossaryPanel::isWriting);
    }

    private boolean canWrite() {
        return reading() && editing.isOpen();
    }

    private boolean hasPage() {
        return canWrite() && asked(g -> g.shown() != null);
    }

    private boolean hasOwn() {
        return hasPage() && asked(g -> ownTerm(g).isPresent() || ownFigure(g).isPresent());
    }

    private Optional<Term> ownTerm(GlossaryPanel panel) {
        EntryView shown = panel.shown();
        return shown == null
                ? Optional.empty()
                : editing.now().terms().stream()
                        .filter(t -> t.name().equals(shown.name()))
                        .findFirst();
    }

    private Optional<CatalogueEntry> ownFigure(GlossaryPanel panel) {
        EntryView shown = panel.shown();
        return shown == null
                ? Optional.empty()
                : editing.now().figures().stream()
                        .filter(f -> f.name().equals(shown.name()))
                        .findFirst();
    }

    /** Begins to explain the page that is open in own words, with those that are there. */
    private void writeOwn() {
        ifMade(g -> {
            EntryView shown = g.shown();
            if (shown != null) {
                g.view()
                        .figure(shown.name())
                        .ifPresentOrElse(
                                g.form()::figure,
                                () -> g.form()
                                        .word(
                                                ownTerm(g)
                                                        .or(() -> g.view().term(shown.name()))
                                                        .orElse(null),
                                                shown.name()));
                g.openForm();
            }
        });
    }

    /**
     * Begins to explain a word that is not in the list; the page of one that is opens.
     *
     * @param called what it is called, as far as that is known
     * @param back to where whoever asked for it goes on, once it is kept or left
     */
    public void write(String called, Runnable back) {
        ifMade(g -> {
            Optional<String> page = g.view().page(called);
            if (page.isPresent()) {
                g.choose(page.get());
            } else if (editing.isOpen()) {
                g.form().newWord(called.strip(), back);
                g.openForm();
            }
        });
    }

    private void keep() {
        ifMade(g -> {
            try {
                CatalogueEntry figure = g.form().figure();
                String before = g.form().calledBefore();
                boolean own = before != null
                        && editing.now().terms().stream().anyMatch(t -> t.name().equals(before));
                String name = figure != null ? figure.name() : g.form().term().name();
                Edit edit = figure != null
                        ? OwnGlossary.figure(figure)
                        : OwnGlossary.term(own ? before : null, g.form().term());
                editing.change(edit.of(editing.now()));
                g.leaveForm();
                g.choose(name);
            } catch (CannotBe e) {
                g.form().refuse(e.why());
            } catch (IllegalArgumentException e) {
                g.form().refuse(String.valueOf(e.getMessage()));
            }
        });
    }

    private void notOwn() {
        ifMade(g -> {
            EntryView shown = g.shown();
            if (shown != null) {
                try {
                    editing.change(OwnGlossary.remove(shown.name()).of(editing.now()));
                } catch (CannotBe e) {
                    told.accept(new Mark(Form.DIAMOND, Tone.CAUTION, e.why()));
                }
            }
        });
    }

    /** Asks about the figures of the open show only; then of its first act, of its second, and of the whole show again. */
    private void drillAct() {
        List<Act> acts = acts();
        drilledOf = drilling ? (drilledOf + 1) % (acts.size() + 1) : 0;
        List<Act> of = drilledOf == 0 ? acts : List.of(acts.get(drilledOf - 1));
        String called = drilledOf == 0 ? "This show" : of.get(0).title();
        ifMade(g -> {
            g.drill(seed(), figuresOf(of), "Only " + called);
            drilling = true;
        });
        keysBack.run();
        var unused = takeFocus();
    }

    private long seed() {
        return Math.round(clockS.getAsDouble() * 1000);
    }

    private List<Act> acts() {
        return editing.isOpen()
                ? editing.now().acts().stream()
                        .filter(act -> !act.figures().isEmpty())
                        .toList()
                : List.of();
    }

    private boolean canDrillShow() {
        return !writing() && !asking() && !acts().isEmpty();
    }

    private Set<String> figuresOf(List<Act> acts) {
        return acts.stream()
                .flatMap(act -> act.figures().stream())
                .flatMap(figure -> base.figure(figure.figure()).stream())
                .map(CatalogueEntry::name)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Begins the drill with this seed, or ends it. */
    public void drill(long from) {
        drilledOf = -1;
        ifMade(g -> {
            g.drill(from);
            drilling = g.drilling();
        });
        keysBack.run();
        var unused = takeFocus();
    }

    /** Goes on with an answer that was left half written. */
    @Override
    public boolean takeFocus() {
        return drilling && asked(g -> g.drillPanel().takeFocus());
    }

    @Override
    public void wear(Appearance appearance) {
        card.wear(appearance);
    }
}
