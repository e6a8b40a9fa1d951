package crowdline.show.catalogue;

import crowdline.show.bounds.Written;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The figures that are known by name or alias, whatever the case of the letters. */
public final class Catalogue {
    private final List<CatalogueEntry> entries;
    private final Map<String, CatalogueEntry> byName;

    /**
     * @throws IllegalArgumentException if two entries claim the same name or alias
     */
    public Catalogue(List<CatalogueEntry> entries) {
        this(List.copyOf(entries), new LinkedHashMap<>());
        for (CatalogueEntry entry : this.entries) {
            claim(entry.name(), entry);
            entry.aliases().forEach(alias -> claim(alias, entry));
        }
    }

    private Catalogue(List<CatalogueEntry> entries, Map<String, CatalogueEntry> byName) {
        this.entries = entries;
        this.byName = byName;
    }

    private void claim(String name, CatalogueEntry entry) {
        CatalogueEntry other = byName.putIfAbsent(Written.key(name), entry);
        if (other != null && !other.equals(entry)) {
            throw new IllegalArgumentException(
                    "the catalogue name " + name + " is claimed by " + other.name() + " and by " + entry.name());
        }
    }

    /**
     * This catalogue with a show's own entries. A name or alias of theirs wins over the same name or alias here; an
     * entry with the name of one here takes its place, and what was an alias of that one leads to the new one. Where two
     * of them claim the same name the first has it.
     */
    public Catalogue with(List<CatalogueEntry> additions) {
        if (additions.isEmpty()) {
            return this;
        }
        Map<String, CatalogueEntry> names = new LinkedHashMap<>();
        additions.forEach(entry -> names.putIfAbsent(Written.key(entry.name()), entry));
        Map<String, CatalogueEntry> newNames = Map.copyOf(names);
        additions.forEach(entry -> entry.aliases().forEach(alias -> names.putIfAbsent(Written.key(alias), entry)));
        List<CatalogueEntry> merged = new ArrayList<>(newNames.size() + entries.size());
        additions.stream()
                .filter(entry -> entry.equals(newNames.get(Written.key(entry.name()))))
                .forEach(merged::add);
        for (CatalogueEntry entry : entries) {
            CatalogueEntry replacement = newNames.get(Written.key(entry.name()));
            if (replacement == null) {
                merged.add(entry);
            }
            CatalogueEntry meant = replacement == null ? entry : replacement;
            names.putIfAbsent(Written.key(entry.name()), meant);
            entry.aliases().forEach(alias -> names.putIfAbsent(Written.key(alias), meant));
        }
        return new Catalogue(List.copyOf(merged), names);
    }

    public List<CatalogueEntry> entries() {
        return entries;
    }

    public Optional<CatalogueEntry> find(String name) {
        return Optional.ofNullable(byName.get(Written.key(name)));
    }

    /** How a figure is called: by its own title, else as the catalogue has it, else as the show file does. */
    public String nameOf(Figure figure) {
        String title = figure.title();
        return title != null
                ? title
                : find(figure.figure()).map(CatalogueEntry::name).orElse(figure.figure());
    }

    /** Every name and alias, as keys in lower case. */
    public List<String> names() {
        return Collections.unmodifiableList(new ArrayList<>(byName.keySet()));
    }
}
