package crowdline.console.live.next;

import crowdline.console.paint.Mark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What comes.
 *
 * @param caption such as "Next in"
 * @param in such as "12 s"
 * @param swapped that it was swapped, if it was
 * @param where where the crowd looks as it begins; empty if nobody knows
 * @param name the next figure
 * @param call its call, ready to read; empty if it has none
 * @param later the figures after it
 * @param facts facts to take with the keys 1 to 3
 */
public record NextView(
        String caption,
        String in,
        @Nullable Mark swapped,
        String where,
        String name,
        String call,
        List<Later> later,
        List<FactView> facts) {

    /** A figure further on, and that it was swapped, if it was. */
    public record Later(String name, String in, @Nullable Mark swapped) {
        public Later(String name, String in) {
            this(name, in, null);
        }
    }

    /**
     * A fact within reach.
     *
     * @param key the number of its key
     * @param full its words
     * @param shorter fewer words for where these find no room; the same if there are none
     */
    public record FactView(int key, Wording full, Wording shorter) {
        /** With no other words than these. */
        public FactView(int key, Wording full) {
            this(key, full, full);
        }
    }

    /**
     * Words, and how long they take.
     *
     * @param takes such as "6 s"
     */
    public record Wording(String text, String takes) {}

    /** Neither swapped nor with a place to look. */
    public NextView(String caption, String in, String name, String call, List<Later> later, List<FactView> facts) {
        this(caption, in, null, "", name, call, later, facts);
    }

    public NextView {
        later = List.copyOf(later);
        facts = List.copyOf(facts);
    }
}
