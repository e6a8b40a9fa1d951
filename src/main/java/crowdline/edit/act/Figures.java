package crowdline.edit.act;

import crowdline.arrange.FreshId;
import crowdline.edit.Change;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Edits of the figures of an act. After each the act is laid out again if it was laid out at all; an edit after which
 * something could not be had that could be had before is refused with the layout's own sentence.
 */
public final class Figures {
    private final Catalogue shipped;
    private final Relaying relaying;

    public Figures(Catalogue shipped) {
        this.shipped = shipped;
        relaying = new Relaying(shipped);
    }

    /** The act an edit makes of another. */
    private interface ActEdit {
        Act of(Show show, Act act) throws CannotBe;
    }

    /**
     * Adds a figure to a variant, and to the act.
     *
     * @param before id of the figure it comes before, or null for the end
     * @param name of the catalogue, or an alias; anything where the aircraft is only timed
     * @param seconds how long it takes where it is only timed, or null if nobody said
     */
    public Edit add(String actId, String variant, @Nullable String before, String name, @Nullable Double seconds) {
        return edit(actId, "Add " + Found.brief(name), "", (show, act) -> {
            Variant into = Found.variant(act, variant);
            Set<String> ids = act.figures().stream().map(Figure::id).collect(Collectors.toCollection(HashSet::new));
            Figure added = fresh(show, act, FreshId.of(name, ids), name, seconds);
            List<Figure> figures = new ArrayList<>(act.figures());
            figures.add(added);
            List<String> order = new ArrayList<>(into.order());
            int at = before == null ? -1 : order.indexOf(before);
            order.add(at < 0 ? end(act, order) : at, added.id());
            return Variants.with(act.withFigures(figures, act.remarks()), into.inOrder(order));
        });
    }

    /** The end of an act is before its landing. */
    private static int end(Act act, List<String> order) {
        int last = order.size() - 1;
        boolean lands = last >= 0
                && act.figure(order.get(last)).filter(OnTheGround::isLanding).isPresent();
        return lands ? last : order.size();
    }

    private Figure fresh(Show show, Act act, String id, String name, @Nullable Double seconds) throws CannotBe {
        if (!(show.aircraft(act.airframe()).orElse(null) instanceof Airframe)) {
            return asked(id, name.strip(), Asked.plainly(name.strip()).withSeconds(seconds));
        }
        String called = known(show, name).name();
        boolean typed = act.entry() != null && act.figures().stream().noneMatch(Figure::isLaidOut);
        return typed ? Figure.of(id, called) : asked(id, called, Asked.plainly(name.strip()));
    }

    private CatalogueEntry known(Show show, String name) throws CannotBe {
        return shipped.with(show.figures())
                .find(name)
                .orElseThrow(() -> new CannotBe("No figure of the catalogue is called " + Found.quoted(name)
                        + "; type part of a name and choose from the list"));
    }

    private static Figure asked(String id, String figure, Asked asked) {
        return new Figure(
                id, figure, null, null, null, asked.seconds(), null, null, asked, false, List.of(), List.of());
    }

    /** Takes a figure out of a variant; what is said about it goes only with the last variant that flies it. */
    public Edit remove(String actId, String variant, String figureId) {
        return edit(actId, "Remove {figure}", figureId, (show, act) -> {
            Variant from = Found.variant(act, variant);
            List<String> order = new ArrayList<>(from.order());
            order.remove(figureId);
            boolean nothing = order.stream()
                    .allMatch(id -> act.figure(id).map(Figure::transit).orElse(true));
            if (nothing) {
                throw new CannotBe("An act needs at least one figure; add another first, or remove the whole act");
            }
            Act without = Variants.with(act, from.inOrder(order));
            boolean used = without.variants().stream().anyMatch(v -> v.order().contains(figureId));
            return used
                    ? without
                    : without.withFigures(
                            without.figures().stream()
                                    .filter(f -> !f.id().equals(figureId))
                                    .toList(),
                            without.remarks());
        });
    }

    /**
     * Moves a figure in a variant.
     *
     * @param by figures towards the end, negative towards the beginning, as far as there are any; transits do not count
     */
    public Edit move(String actId, String variant, String figureId, int by) {
        return edit(actId, "Move {figure}", figureId, (show, act) -> {
            Variant in = Found.variant(act, variant);
            List<String> order = new ArrayList<>(in.order());
            order.removeIf(id -> act.figure(id).map(Figure::transit).orElse(true));
            int from = order.indexOf(figureId);
            if (from < 0) {
                throw new CannotBe("What is flown between two figures moves with them; move one of them");
            }
            order.remove(from);
            order.add(Math.max(0, Math.min(order.size(), from + by)), figureId);
            return Variants.with(act, in.inOrder(order));
        });
    }

    /** Flies another figure in its place. What a person wrote about it stays; the program's drafts go. */
    public Edit replace(String actId, String figureId, String name) {
        return edit(actId, "Replace {figure}", figureId, (show, act) -> {
            Figure old = Found.figure(act, figureId);
            Figure fresh = fresh(show, act, figureId, name, old.durationS());
            Asked was = old.asked();
            if (was != null && fresh.asked() != null) {
                fresh = asked(
                        figureId,
                        fresh.figure(),
                        was.confirmed().withOwnShape(false).withText(name.strip()));
            }
            List<Remark> kept = old.remarks().stream().filter(r -> !r.draft()).toList();
            return with(act, fresh.withQuiets(old.quiets()).withRemarks(kept));
        });
    }

    /** Takes one of the names that a line of the list may have meant. */
    public Edit choose(String actId, String figureId, String name) {
        return replace(actId, figureId, name);
    }

    /** Tells something about a figure, or takes it back. */
    public Edit pin(String actId, String figureId, Pin pin) {
        String words = (pin.isFree() ? "Free the " : "Pin the ") + pin.word() + " of {figure}";
        return edit(actId, words, figureId, (show, act) -> {
            Figure figure = Found.figure(act, figureId);
            Asked was = figure.asked();
            if (figure.transit()) {
                throw new CannotBe(
                        "What is flown between two figures follows from them; pin the figure before it or after it");
            }
            if (was == null) {
                throw new CannotBe("This act was drawn by hand, figure by figure, so nothing is moved for "
                        + Found.quoted(figure.shownName()) + "; lay the act out first");
            }
            if (was.ownShape() && pin.isOfCatalogue()) {
                throw new CannotBe(Found.quoted(figure.shownName()) + " has a shape of its own, and its " + pin.word()
                        + " follows from that; change its elements, or fly it as in the catalogue");
            }
            return with(act, figure.asking(pin.on(was)));
        });
    }

    /** Flies a figure as the catalogue has it again; what was told of it otherwise is still told. */
    public Edit asInCatalogue(String actId, String figureId) {
        return edit(actId, "Fly {figure} as in the catalogue", figureId, (show, act) -> {
            Figure old = Found.figure(act, figureId);
            // With nothing else in the act there is nothing that somebody placed by hand either.
            boolean laidOut =
                    act.figures().size() == 1 || act.figures().stream().anyMatch(Figure::isLaidOut);
            Asked was = old.asked();
            Asked asked = was != null ? was.withOwnShape(false) : laidOut ? Asked.plainly(old.figure()) : null;
            return with(act, shaped(old, null, asked));
        });
    }

    /**
     * Flies a figure with elements of one's own.
     *
     * @param name of the change, with "{figure}" for what the figure is called
     * @param own in the order flown, at least one
     */
    public Edit shape(String actId, String figureId, String name, List<Element> own) {
        return edit(actId, name, figureId, (show, act) -> {
            Figure old = Found.figure(act, figureId);
            if (old.transit()) {
                throw new CannotBe("What is flown between two figures follows from them, so its shape does too");
            }
            if (!(show.aircraft(act.airframe()).orElse(null) instanceof Airframe)) {
                throw new CannotBe("What flies this act is only timed, so its figures have no shape");
            }
            if (own.isEmpty()) {
                throw new CannotBe(
                        "A shape needs at least one element; add another first, or fly it as in the catalogue");
            }
            Asked asked = old.asked();
            return with(act, shaped(old, own, asked == null ? null : asked.withOwnShape(true)));
        });
    }

    private static Figure shaped(Figure old, @Nullable List<Element> elements, @Nullable Asked asked) {
        return new Figure(
                old.id(),
                old.figure(),
                old.title(),
                old.look(),
                elements,
                elements == null && asked != null ? asked.seconds() : null,
                null,
                null,
                asked,
                false,
                old.quiets(),
                old.remarks());
    }

    /** Lays out an act that was drawn by hand: every figure is free to be placed, and transits are made between them. */
    public Edit layOut(String actId) {
        return edit(actId, "Lay the act out", "", (show, act) -> {
            List<Figure> figures = act.figures().stream()
                    .map(f -> f.transit() ? f : f.asking(f.asked() == null ? plainly(f) : f.asked()))
                    .toList();
            return act.withFigures(figures, act.remarks());
        });
    }

    private static Asked plainly(Figure figure) {
        return Asked.plainly(figure.figure()).withSeconds(figure.durationS());
    }

    private static Act with(Act act, Figure figure) {
        return act.withFigures(
                act.figures().stream()
                        .map(f -> f.id().equals(figure.id()) ? figure : f)
                        .toList(),
                act.remarks());
    }

    /** @param figureId whose name stands in the name of the change, or empty */
    private Edit edit(String actId, String name, String figureId, ActEdit edit) {
        Edit whole = show -> {
            Act act = Found.act(show, actId);
            String figure = act.figure(figureId)
                    .map(shipped.with(show.figures())::nameOf)
                    .map(Found::brief)
                    .orElse("the figure");
            Act edited = edit.of(show, act);
            if (edited.figures().stream().anyMatch(Figure::isLaidOut)) {
                OnTheGround.check(act, edited);
            }
            return Change.of(
                    name.replace("{figure}", figure), show.withAct(relaying.checked(show, act, edited, figureId)));
        };
        return whole.refusing();
    }
}
