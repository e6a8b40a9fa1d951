package crowdline.edit.act;

import crowdline.show.Act;
import crowdline.show.Variant;
import java.util.List;

/** Edits of the ways an act can be flown, chosen by the cloud base. */
public final class Variants {
    private Variants() {}

    /** The act with this variant in place of the one of its name. */
    static Act with(Act act, Variant variant) {
        List<Variant> variants = act.variants().stream()
                .map(v -> v.name().equals(variant.name()) ? variant : v)
                .toList();
        return act.flown(act.entry(), act.figures(), variants);
    }
}
