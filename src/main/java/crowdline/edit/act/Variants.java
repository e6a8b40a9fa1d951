package crowdline.edit.act;

import crowdline.edit.Change;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Edits of the ways an act can be flown, chosen by the cloud base. The highest base stands first, as the cloud base chooses
 * the first that fits; a variant without a base serves any and stands last.
 */
public final class Variants {
    private static final int MOST_NAMED = 40;

    private final Relaying relaying;

    public Variants(Catalogue shipped) {
        relaying = new Relaying(shipped);
    }

    /** The act with this variant in place of the one of its name. */
    static Act with(Act act, Variant variant) {
        List<Variant> variants = act.variants().stream()
                .map(v -> v.name().equals(variant.name()) ? variant : v)
                .toList();
        return act.flown(act.entry(), act.figures(), variants);
    }

    /**
     * Adds a variant that flies what another does.
     *
     * @param like name of the other
     * @param baseFt the lowest cloud base it was agreed for, feet, or null if it serves any
     */
    public Edit add(String actId, String like, String name, @Nullable Double baseFt) {
        return edit(actId, "Add variant " + Found.quoted(name), act -> {
            Variant other = Found.variant(act, like);
            free(act, name);
            List<Variant> variants = new ArrayList<>(act.variants());
            variants.add(other.agreed(name.strip(), baseFt));
            return variants;
        });
    }

    /** Takes a variant out; its figures stay where another flies them. */
    public Edit remove(String actId, String name) {
        return edit(actId, "Remove variant " + Found.quoted(name), act -> {
            Found.variant(act, name);
            if (act.variants().size() == 1) {
                throw new CannotBe("An act needs a variant; remove the whole act instead");
            }
            return act.variants().stream().filter(v -> !v.name().equals(name)).toList();
        });
    }

    /** Calls a variant otherwise, or has it agreed for another cloud base in feet, null for any. */
    public Edit agree(String actId, String name, String newName, @Nullable Double baseFt) {
        return edit(actId, "Variant " + Found.quoted(name), act -> {
            Found.variant(act, name);
            if (!name.equals(newName.strip())) {
                free(act, newName);
            }
            return act.variants().stream()
                    .map(v -> v.name().equals(name) ? v.agreed(newName.strip(), baseFt) : v)
                    .toList();
        });
    }

    private static void free(Act act, String name) throws CannotBe {
        if (act.variant(name.strip()).isPresent()) {
            throw new CannotBe(
                    "The act has a variant " + Found.quoted(name) + " already; call this one something else");
        }
        if (name.strip().length() > MOST_NAMED) {
            throw new CannotBe("The name of a variant has to fit on a button; " + MOST_NAMED + " letters are the most");
        }
    }

    private interface Changing {
        List<Variant> of(Act act) throws CannotBe;
    }

    private Edit edit(String actId, String name, Changing changing) {
        return ((Edit) show -> {
                    Act act = Found.act(show, actId);
                    List<Variant> variants = new ArrayList<>(changing.of(act));
                    variants.sort(Comparator.comparingDouble(
                            (Variant v) -> v.minCloudBaseFt() == null ? 1 : -v.minCloudBaseFt()));
                    return Change.of(name, with(show, act, act.flown(act.entry(), act.figures(), variants)));
                })
                .refusing();
    }

    /** What no variant flies any more goes with it, unless a person wrote something about it. */
    private Show with(Show show, Act before, Act after) {
        Act laid = relaying.of(show, before, after).act();
        return show.withAct(laid.withFigures(
                laid.figures().stream()
                        .filter(f ->
                                laid.variants().stream().anyMatch(v -> v.order().contains(f.id()))
                                        || f.remarks().stream().anyMatch(r -> !r.draft())
                                        || before.variants().stream()
                                                .noneMatch(v -> v.order().contains(f.id())))
                        .toList(),
                laid.remarks()));
    }
}
