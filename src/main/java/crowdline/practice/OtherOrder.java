package crowdline.practice;

import crowdline.practice.Change.Kind;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/**
 * What is flown in place of the plan: its figures with some dropped, swapped or put in, and the places where a hold and the end
 * are to come.
 */
final class OtherOrder {
    static final String UNPLANNED_ID = "unplanned";
    static final String HOLD_ID = "hold";
    static final String TURN_BACK = "reposition";
    /** The family of figures that one aircraft alone does not fly. */
    private static final String OF_SEVERAL = "formation";

    /** Two changes are so many figures apart, so that each can be seen for itself. */
    private static final int APART = 2;

    private final List<Figure> figures;
    private final List<Kind> kinds;
    private final List<Change> changes = new ArrayList<>();
    private boolean ways;
    private Optional<String> holdAfter = Optional.empty();
    private Optional<String> breaksIn = Optional.empty();

    private OtherOrder(List<Figure> figures, List<Kind> kinds) {
        this.figures = figures;
        this.kinds = kinds;
    }

    /** Draws where each of these changes comes; empty if the act has too few figures for them. */
    static Optional<OtherOrder> drawn(
            Act act, Variant variant, Catalogue catalogue, List<Kind> kinds, SplittableRandom random) {
        List<Figure> planned =
                act.inOrder(variant).stream().filter(f -> !f.transit()).toList();
        OtherOrder order = new OtherOrder(new ArrayList<>(planned), kinds);
        return order.draw(planned, catalogue, random) ? Optional.of(order) : Optional.empty();
    }

    private boolean draw(List<Figure> planned, Catalogue catalogue, SplittableRandom random) {
        boolean ends = kinds.stream().anyMatch(k -> k == Kind.BREAK_OFF || k == Kind.INCIDENT);
        // The end comes after all the rest, and the first and the last figure are as planned.
        int last = ends ? planned.size() * 2 / 3 : planned.size() - 1;
        List<Integer> free = new ArrayList<>();
        for (int i = 1; i < last; i++) {
            if (isFlown(planned.get(i), catalogue)) {
                free.add(i);
            }
        }
        shuffle(free, random);
        int latest = 0;
        for (Kind kind : kinds) {
            if (kind == Kind.BREAK_OFF || kind == Kind.INCIDENT) {
                continue;
            }
            Integer at = free.stream()
                    .filter(i -> kind != Kind.SWAPPED || free.contains(i + 1))
                    .findFirst()
                    .orElse(null);
            if (at == null || !change(kind, planned, at, catalogue, random)) {
                return false;
            }
            latest = Math.max(latest, at + 1);
            free.removeIf(i -> Math.abs(i - at) <= APART);
        }
        return !ends || drawEnd(planned, latest + 1, catalogue, random);
    }

    /** Neither only timed nor only a way back: something that the crowd is told of. */
    private static boolean isFlown(Figure figure, Catalogue catalogue) {
        return figure.durationS() == null
                && catalogue
                        .find(figure.figure())
                        .filter(e -> e.name().equals(TURN_BACK))
                        .isEmpty();
    }

    private boolean drawEnd(List<Figure> planned, int from, Catalogue catalogue, SplittableRandom random) {
        List<Figure> late = new ArrayList<>();
        for (int i = Math.max(from, planned.size() / 2); i < planned.size(); i++) {
            if (isFlown(planned.get(i), catalogue)) {
                late.add(planned.get(i));
            }
        }
        if (late.isEmpty()) {
            return false;
        }
        breaksIn = Optional.of(late.get(random.nextInt(late.size())).id());
        return true;
    }

    private boolean change(Kind kind, List<Figure> planned, int at, Catalogue catalogue, SplittableRandom random) {
        Figure figure = planned.get(at);
        int place = figures.indexOf(figure);
        switch (kind) {
            case DROPPED -> {
                figures.remove(figure);
                ways = true;
                changes.add(new Change(kind, List.of(figure.id()), "", 0));
            }
            case SWAPPED -> {
                Collections.swap(figures, place, place + 1);
                ways = true;
                changes.add(new Change(kind, List.of(planned.get(at + 1).id(), figure.id()), "", 0));
            }
            case UNPLANNED -> {
                List<CatalogueEntry> others = others(planned, catalogue);
                if (others.isEmpty()) {
                    return false;
                }
                String name = others.get(random.nextInt(others.size())).name();
                figures.add(place + 1, Figure.of(UNPLANNED_ID, name).asking(Asked.plainly(name)));
                ways = true;
                changes.add(new Change(kind, List.of(), name, 0));
            }
            case HOLD -> {
                holdAfter = Optional.of(figure.id());
                changes.add(new Change(kind, List.of(), "", 0));
            }
            default -> throw new IllegalArgumentException(kind + " changes no order");
        }
        return true;
    }

    private static List<CatalogueEntry> others(List<Figure> planned, Catalogue catalogue) {
        Set<String> names = planned.stream()
                .flatMap(f -> catalogue.find(f.figure()).stream())
                .map(CatalogueEntry::name)
                .collect(Collectors.toCollection(HashSet::new));
        names.add(TURN_BACK);
        return catalogue.entries().stream()
                .filter(e -> !e.elements().isEmpty() && !e.family().equals(OF_SEVERAL) && !names.contains(e.name()))
                .toList();
    }

    /** Without the list's own shuffle, which takes another kind of random numbers. */
    private static void shuffle(List<Integer> list, SplittableRandom random) {
        for (int i = list.size() - 1; i > 0; i--) {
            Collections.swap(list, i, random.nextInt(i + 1));
        }
    }

    /** What is flown for the crowd, in its order, without the ways between. */
    List<Figure> figures() {
        return List.copyOf(figures);
    }

    /** What is changed in the order, without names and times. */
    List<Change> changes() {
        return List.copyOf(changes);
    }

    /** Whether the ways between the figures have to be found anew. */
    boolean needsOtherWays() {
        return ways;
    }

    /** Whether this is one of the changes. */
    boolean has(Kind kind) {
        return kinds.contains(kind);
    }

    /** The figure after which the aircraft holds. */
    Optional<String> holdAfter() {
        return holdAfter;
    }

    /** The figure that is left in its middle. */
    Optional<String> breaksIn() {
        return breaksIn;
    }
}
