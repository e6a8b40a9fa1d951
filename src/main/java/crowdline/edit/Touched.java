package crowdline.edit;

import crowdline.show.Act;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/** What a change was about, found by comparing the show before it with the show after it. */
public final class Touched {
    private Touched() {}

    /**
     * The figure that was changed, added or moved, or the one in the place of a figure taken out; the act alone if it is about none
     * of its figures, and the one before an act that is gone, such as the act a copy was made of; empty if it is about no act.
     * What the layout made of it follows and is no change of its own.
     */
    public static Optional<RemarkPlace> figure(Show before, Show after) {
        Optional<RemarkPlace> ahead = aheadOfGone(before.acts(), after);
        if (ahead.isPresent()) {
            return ahead;
        }
        for (Act act : after.acts()) {
            Optional<Act> was = before.act(act.id());
            if (was.isEmpty()) {
                return Optional.of(new RemarkPlace(act.id(), null));
            }
            if (!was.get().equals(act)) {
                return Optional.of(
                        new RemarkPlace(act.id(), figureId(was.get(), act).orElse(null)));
            }
        }
        return Optional.empty();
    }

    private static Optional<RemarkPlace> aheadOfGone(List<Act> before, Show after) {
        return IntStream.range(1, before.size())
                .filter(i -> after.act(before.get(i).id()).isEmpty())
                .mapToObj(i -> before.get(i - 1).id())
                .filter(id -> after.act(id).isPresent())
                .map(id -> new RemarkPlace(id, null))
                .findFirst();
    }

    /** The first place whose remarks are others; empty if all are the same. */
    public static Optional<RemarkPlace> remarks(Show before, Show after) {
        return RemarkPlace.all(after).stream()
                .filter(place -> !place.in(before).equals(place.in(after)))
                .findFirst();
    }

    /** The number of the first remark that is another; that of the last one where one behind it was taken away. */
    public static int first(List<Remark> before, List<Remark> after) {
        return IntStream.range(0, after.size())
                .filter(i -> i >= before.size() || !after.get(i).equals(before.get(i)))
                .findFirst()
                .orElse(Math.max(0, after.size() - 1));
    }

    private static Optional<String> figureId(Act before, Act after) {
        for (Variant variant : after.variants()) {
            Optional<Variant> was = before.variant(variant.name());
            if (was.isPresent()) {
                List<String> order = flown(after, variant);
                Optional<String> other = otherInOrder(flown(before, was.get()), order);
                if (other.isPresent() || order.isEmpty()) {
                    return other;
                }
            }
        }
        return first(before, after, Touched::isAskedAlike)
                .or(() -> first(before, after, (a, b) -> a.remarks().equals(b.remarks())));
    }

    private static List<String> flown(Act act, Variant variant) {
        return act.inOrder(variant).stream()
                .filter(f -> !f.transit())
                .map(Figure::id)
                .toList();
    }

    /** What was put in, else what stands where something was taken out, else what was moved. */
    private static Optional<String> otherInOrder(List<String> before, List<String> after) {
        if (before.equals(after) || after.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> added =
                after.stream().filter(id -> !before.contains(id)).findFirst();
        if (added.isPresent()) {
            return added;
        }
        int at = Math.max(0, Arrays.mismatch(before.toArray(), after.toArray()));
        if (after.size() < before.size()) {
            return Optional.of(after.get(Math.min(at, after.size() - 1)));
        }
        // One that was moved on stands behind those it was moved past, and one that was moved back before them.
        String here = after.get(at);
        String gone = before.get(at);
        return Optional.of(without(before, gone).equals(without(after, gone)) ? gone : here);
    }

    private static List<String> without(List<String> all, String one) {
        List<String> left = new ArrayList<>(all);
        left.remove(one);
        return left;
    }

    private static Optional<String> first(Act before, Act after, BiPredicate<Figure, Figure> alike) {
        return after.figures().stream()
                .filter(f ->
                        before.figure(f.id()).filter(was -> !alike.test(was, f)).isPresent())
                .map(Figure::id)
                .findFirst();
    }

    /** Whether the same was told of both, whatever the layout made of it. */
    private static boolean isAskedAlike(Figure a, Figure b) {
        return (a.transit() && b.transit())
                || (a.figure().equals(b.figure())
                        && Objects.equals(a.title(), b.title())
                        && Objects.equals(a.look(), b.look())
                        && Objects.equals(a.asked(), b.asked())
                        && a.quiets().equals(b.quiets())
                        && a.hasOwnShape() == b.hasOwnShape()
                        && (!a.hasOwnShape() || Objects.equals(a.elements(), b.elements())));
    }
}
