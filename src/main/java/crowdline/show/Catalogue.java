package crowdline.show;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The figures that are known by name or alias, whatever the case of the letters. */
public final class Catalogue {
    private final List<CatalogueEntry> entries;
    private final Map<String, CatalogueEntry> byName = new LinkedHashMap<>();

    /**
     * @throws IllegalArgumentException if two entries claim the same name or alias
     */
    public Catalogue(List<CatalogueEntry> entries) {
        this.entries = List.copyOf(entries);
        for (CatalogueEntry entry : this.entries) {
            claim(entry.name(), entry);
            entry.aliases().forEach(alias -> claim(alias, entry));
        }
    }

    private void claim(String name, CatalogueEntry entry) {
        CatalogueEntry other = byName.putIfAbsent(key(name), entry);
        if (other != null && !other.equals(entry)) {
            throw new IllegalArgumentException(
                    "the catalogue name " + name + " is claimed by " + other.name() + " and by " + entry.name());
        }
    }

    /** This catalogue with a show's own entries; one with the name of an entry here replaces it. */
    public Catalogue with(List<CatalogueEntry> additions) {
        List<CatalogueEntry> merged = new ArrayList<>(additions);
        for (CatalogueEntry entry : entries) {
            boolean replaced = additions.stream().anyMatch(a -> key(a.name()).equals(key(entry.name())));
            if (!replaced) {
                merged.add(entry);
            }
        }
        return new Catalogue(merged);
    }

    public List<CatalogueEntry> entries() {
        return entries;
    }

    public Optional<CatalogueEntry> find(String name) {
        return Optional.ofNullable(byName.get(key(name)));
    }

    /** Every name and alias, as keys in lower case. */
    public List<String> names() {
        return Collections.unmodifiableList(new ArrayList<>(byName.keySet()));
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }
}
