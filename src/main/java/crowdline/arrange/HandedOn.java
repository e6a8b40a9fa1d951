package crowdline.arrange;

import crowdline.layout.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is told of a run-in, which is only timed, is how high and how fast the figure it leads to begins. */
final class RunIn {
    /** As the catalogue calls it. */
    static final String NAME = "run-in";

    private RunIn() {}

    /**
     * The wishes, the first that is flown with the height and the speed of a run-in just before it where it has none of its own.
     *
     * @param runIns ids of what is a run-in
     */
    static List<Wish> handedOn(List<Wish> wishes, Set<String> runIns) {
        List<Wish> all = new ArrayList<>(wishes);
        for (int i = 0; i + 1 < all.size() && !all.get(i).isFlown(); i++) {
            Wish first = all.get(i);
            Wish next = all.get(i + 1);
            if (runIns.contains(first.id()) && next.isFlown() && next.role() == Wish.Role.FIGURE) {
                all.set(i + 1, begun(next, first.heightFt(), first.kt()));
            }
        }
        return all;
    }

    private static Wish begun(Wish wish, @Nullable Double heightFt, @Nullable Double kt) {
        return new Wish(
                wish.id(),
                wish.name(),
                wish.elements(),
                wish.own(),
                wish.enters(),
                wish.end(),
                wish.alongM(),
                wish.toRight(),
                wish.heightFt() == null ? heightFt : wish.heightFt(),
                wish.kt() == null ? kt : wish.kt(),
                wish.seconds(),
                wish.role());
    }
}
