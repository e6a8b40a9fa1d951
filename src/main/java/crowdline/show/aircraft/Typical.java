package crowdline.show.aircraft;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Where the numbers of an airframe come from that nobody told.
 *
 * @param kind what they are typical of
 * @param sliders which way this one differs from what is typical
 * @param assumed the keys, as in the show file, of the numbers taken from the kind
 */
public record Typical(Kind kind, Sliders sliders, SortedSet<String> assumed) {
    public Typical {
        assumed = Collections.unmodifiableSortedSet(new TreeSet<>(assumed));
    }
}
