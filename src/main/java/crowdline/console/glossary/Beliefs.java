package crowdline.console.glossary;

import crowdline.show.catalogue.CatalogueEntry;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What the aircraft's position says it may be.
 *
 * @param all figures of the plan by their names in the glossary, the likeliest first; none without a receiver
 */
record Beliefs(List<GlossaryHost.Belief> all) {
    private static final int MOST_SAID = 2;
    private static final double ALMOST = 0.95;

    Beliefs {
        all = List.copyOf(all);
    }

    /** Those it may be by its position first, the likeliest before the others; the rest as they are. */
    List<CatalogueEntry> inOrder(List<CatalogueEntry> figures) {
        return figures.stream()
                .sorted(Comparator.comparingDouble(f -> -chance(f.name())))
                .toList();
    }

    private double chance(String name) {
        return all.stream()
                .filter(b -> b.figure().equals(name))
                .mapToDouble(GlossaryHost.Belief::chance)
                .sum();
    }

    /** How likely a figure is, to stand before what else is said of it; empty if the position says nothing of it. */
    String of(String name) {
        double chance = chance(name);
        return chance > 0 ? "By its position " + inWords(chance) + ". " : "";
    }

    /** What the position says, in words; empty if it says nothing. */
    String said() {
        return all.isEmpty()
                ? ""
                : "By its position: "
                        + all.stream()
                                .limit(MOST_SAID)
                                .map(b -> b.figure() + ", " + inWords(b.chance()))
                                .collect(Collectors.joining("; "));
    }

    private static String inWords(double chance) {
        return chance >= ALMOST
                ? "almost certainly"
                : "about " + Math.min(9, Math.max(1, Math.round(10 * chance))) + " in 10";
    }
}
