package crowdline.practice;

import crowdline.sight.picture.Flown;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A flight to practise on: what is flown when, and in what it does not keep to the plan. Times are seconds since the practice
 * began.
 *
 * @param actId the act whose plan it does not keep to
 * @param variant the variant
 * @param level how little it keeps to it
 * @param seed the same act, variant, level and seed give the same flight
 * @param slotS when the slot begins
 * @param pieces what is flown, in its order
 * @param names how each figure of the plan is called, by its id
 * @param changes in what it does not keep to the plan, in the order in which it is seen
 * @param flown what there is to see, from the beginning of the practice to its end
 */
public record PracticeFlight(
        String actId,
        String variant,
        Level level,
        long seed,
        double slotS,
        List<Piece> pieces,
        Map<String, String> names,
        List<Change> changes,
        Flown flown) {
    public PracticeFlight {
        pieces = List.copyOf(pieces);
        names = Map.copyOf(names);
        changes = List.copyOf(changes);
    }

    /** How a figure of the plan is called, flown or not. */
    String plannedName(String figureId) {
        return names.getOrDefault(figureId, figureId);
    }

    /** When the first figure begins. */
    public double startS() {
        return pieces.get(0).fromS();
    }

    /** When the last of what is flown for the crowd ends. */
    public double endS() {
        return pieces.stream()
                .filter(p -> p.kind() != Piece.Kind.AWAY)
                .mapToDouble(Piece::toS)
                .max()
                .orElseThrow();
    }

    /** When there is nothing more to see. */
    public double overS() {
        return flown.toS();
    }

    /** The change of a kind, if there is one. */
    public Optional<Change> change(Change.Kind kind) {
        return changes.stream().filter(c -> c.kind() == kind).findFirst();
    }

    /** Where a figure of the plan is flown; empty if it is not. */
    public Optional<Piece> figure(String figureId) {
        return pieces.stream()
                .filter(p -> p.kind() == Piece.Kind.FIGURE && p.figureId().equals(figureId))
                .findFirst();
    }
}
