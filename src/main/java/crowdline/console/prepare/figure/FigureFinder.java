package crowdline.console.prepare.figure;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** Finds figures of the catalogue by part of a name, of an alias, or of what they are. */
final class FigureFinder {
    private static final int NAME = 0;
    private static final int NAME_WORD = 1;
    private static final int ALIAS = 2;
    private static final int ALIAS_WORD = 3;
    private static final int FAMILY = 4;
    private static final int TOLD = 5;
    private static final int NOT = 6;

    /** Words in which people say the same: whoever types one means figures with the other in their name. */
    private static final List<Set<String>> SAME = List.of(
            Set.of("upside down", "inverted", "on its back"), Set.of("snap", "flick"), Set.of("corkscrew", "barrel"));

    private final List<CatalogueEntry> entries;

    FigureFinder(Catalogue catalogue) {
        entries = catalogue.entries();
    }

    /** A figure and how well it goes with what was typed; 0 is best. */
    private record Hit(CatalogueEntry entry, int rank) {}

    /** The figures that go with what was typed, the likeliest first; all of them if nothing was. */
    List<CatalogueEntry> find(String typed) {
        String wanted = plain(typed);
        if (wanted.isEmpty()) {
            return entries;
        }
        List<String> said = new ArrayList<>(List.of(wanted));
        for (Set<String> words : SAME) {
            words.stream()
                    .filter(w -> (" " + wanted + " ").contains(" " + w + " "))
                    .forEach(w -> words.stream()
                            .filter(other -> !other.equals(w))
                            .forEach(other -> said.add(wanted.replace(w, other))));
        }
        return entries.stream()
                .map(e ->
                        new Hit(e, said.stream().mapToInt(s -> rank(e, s)).min().orElse(NOT)))
                .filter(hit -> hit.rank() < NOT)
                .sorted(Comparator.comparingInt(Hit::rank)
                        .thenComparingInt(hit -> hit.entry().name().length()))
                .map(Hit::entry)
                .toList();
    }

    private static int rank(CatalogueEntry entry, String wanted) {
        String name = plain(entry.name());
        if (name.startsWith(wanted)) {
            return NAME;
        }
        if (hasAll(name, wanted)) {
            return NAME_WORD;
        }
        List<String> aliases = entry.aliases().stream().map(FigureFinder::plain).toList();
        if (aliases.stream().anyMatch(a -> a.startsWith(wanted))) {
            return ALIAS;
        }
        if (aliases.stream().anyMatch(a -> hasAll(a, wanted))) {
            return ALIAS_WORD;
        }
        if (hasAll(plain(entry.family()), wanted)) {
            return FAMILY;
        }
        return Stream.of(entry.whatItIs(), entry.lookFor()).anyMatch(text -> hasAll(plain(text), wanted)) ? TOLD : NOT;
    }

    /** Whether every word wanted begins one of these. */
    private static boolean hasAll(String words, String wanted) {
        String padded = " " + words;
        return Stream.of(wanted.split(" ", -1)).filter(Objects::nonNull).allMatch(w -> padded.contains(" " + w));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}
