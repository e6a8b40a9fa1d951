package crowdline.edit.act;

import crowdline.arrange.FreshId;
import crowdline.show.Performer;
import crowdline.show.Show;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Who flies, by name. */
final class Performers {
    private Performers() {}

    /** The show with somebody of this name among its performers. */
    static Show with(Show show, String name) {
        if (show.performers().stream().anyMatch(p -> p.name().equals(name.strip()))) {
            return show;
        }
        Set<String> ids = show.performers().stream().map(Performer::id).collect(Collectors.toCollection(HashSet::new));
        List<Performer> performers = new ArrayList<>(show.performers());
        performers.add(new Performer(FreshId.of(name, ids), name.strip(), null, List.of()));
        return show.withPerformers(performers);
    }

    static Performer named(Show show, String name) {
        return show.performers().stream()
                .filter(p -> p.name().equals(name.strip()))
                .findFirst()
                .orElseThrow();
    }
}
