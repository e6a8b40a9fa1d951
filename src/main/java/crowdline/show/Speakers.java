package crowdline.show;

import crowdline.show.bounds.Most;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Who speaks at a show.
 *
 * @param all of them, whoever usually sits at the console first
 * @param interpreting when a remark is said in its other language
 */
public record Speakers(List<Speaker> all, Interpreting interpreting) {
    /** Where the show says nothing of it: one speaker without a name. */
    public static final Speakers NONE = new Speakers(List.of(), Interpreting.AFTER);

    public Speakers {
        Most.SPEAKERS.must(all);
        all = List.copyOf(all);
    }

    /** Speakers of whom one interprets, if any does, after the other. */
    public Speakers(List<Speaker> all) {
        this(all, Interpreting.AFTER);
    }

    /** The same interpreted at another time. */
    public Speakers with(Interpreting other) {
        return new Speakers(all, other);
    }

    /** The same with others who speak. */
    public Speakers with(List<Speaker> others) {
        return new Speakers(others, interpreting);
    }

    /** The speaker of that name. */
    public Optional<Speaker> find(@Nullable String name) {
        return name == null
                ? Optional.empty()
                : all.stream().filter(speaker -> speaker.isCalled(name)).findFirst();
    }

    /** True if a speaker of that name is there today. */
    public boolean isHere(String name) {
        return find(name).filter(speaker -> !speaker.away()).isPresent();
    }

    /**
     * Who says what names a speaker, if it is not whoever is at the console: nobody is asked who is away or unknown.
     *
     * @param speaker the name, or null if none is named
     * @param atTheConsole the name of whose pace the console goes by; if it is none of these, the first sits there
     */
    public Optional<Speaker> other(@Nullable String speaker, String atTheConsole) {
        Speaker console = find(atTheConsole).orElse(all.isEmpty() ? null : all.get(0));
        return find(speaker).filter(named -> !named.away() && !named.equals(console));
    }
}
