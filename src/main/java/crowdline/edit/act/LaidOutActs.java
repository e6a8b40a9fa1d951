package crowdline.edit.act;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import java.util.List;
import java.util.function.Predicate;

/** Lays acts out again when what they are laid out for has changed: a limit, an aircraft. What cannot be had is then found by the check. */
public final class LaidOutActs {
    private final Relaying relaying;

    public LaidOutActs(Catalogue shipped) {
        relaying = new Relaying(shipped);
    }

    /** The show with every act that had been laid out before laid out again. */
    public Show again(Show show, Predicate<Act> which) {
        List<Act> acts = show.acts().stream()
                .map(act -> which.test(act) ? relaying.of(show, act, act).act() : act)
                .toList();
        return show.withActs(acts, show.remarks());
    }
}
