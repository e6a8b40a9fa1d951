package crowdline.show;

import crowdline.show.bounds.Most;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who speaks at a show.
 *
 * @param all of them, whoever usually sits at the console first
 */
public record Speakers(List<Speaker> all) {
    /** Where the show says nothing of it: one speaker without a name. */
    public static final Speakers NONE = new Speakers(List.of());

    public Speakers {
        Most.SPEAKERS.must(all);
        all = List.copyOf(all);
    }

    /** The speaker of that name. */
    public Optional<Speaker> find(@Nullable String name) {
        return name == null
                ? Optional.empty()
                : all.stream().filter(speaker -> speaker.isCalled(name)).findFirst();
    }

    /**
     * Who says what names a speaker, if it is not whoever sits at the console: nobody is asked who is away or unknown.
     *
     * @param speaker the name, or null if none is named
     * @param atTheConsole the name of whose pace the console goes by; if it is none of these, the first sits there
     */
    public Optional<Speaker> other(@Nullable String speaker, String atTheConsole) {
        Speaker console = find(atTheConsole).orElse(all.isEmpty() ? null : all.get(0));
        return find(speaker).filter(named -> !named.away() && !named.equals(console));
    }
}
