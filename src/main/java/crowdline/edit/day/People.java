package crowdline.edit.day;

import crowdline.arrange.FreshId;
import crowdline.draft.RenamedWords;
import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.show.Interpreting;
import crowdline.show.Performer;
import crowdline.show.Performer.SourcedFact;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.bounds.Written;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Edits of who flies, how names are said, and what is known of people. */
public final class People {
    private People() {}

    /** Adds somebody. */
    public static Edit add(String name) {
        return ((Edit) show -> {
                    if (show.performers().stream().anyMatch(p -> p.name().equals(name.strip()))) {
                        throw new CannotBe(name.strip() + " is in the show already");
                    }
                    Set<String> ids = show.performers().stream()
                            .map(Performer::id)
                            .collect(Collectors.toCollection(HashSet::new));
                    List<Performer> all = new ArrayList<>(show.performers());
                    all.add(new Performer(FreshId.of(name, ids), name.strip(), null, List.of()));
                    return Change.of("Add " + brief(name), show.withPerformers(all));
                })
                .refusing();
    }

    /** Takes somebody out who flies in no act. */
    public static Edit remove(String id) {
        return show -> {
            Performer gone = find(show, id);
            boolean flies = show.acts().stream().anyMatch(a -> a.performer().equals(id));
            if (flies) {
                throw new CannotBe(gone.name() + " flies in an act; give the act to somebody else first");
            }
            return Change.of(
                    "Remove " + brief(gone.name()),
                    show.withPerformers(show.performers().stream()
                            .filter(p -> !p.id().equals(id))
                            .toList()));
        };
    }

    /** Calls somebody otherwise, in first drafts too. */
    public static Edit rename(String id, String name) {
        String about = "name of " + id;
        Edit typed = person(id, "Rename ", about, p -> new Performer(p.id(), name.strip(), p.sayAs(), p.facts()));
        return ((Edit) show -> {
                    Change change = typed.of(show);
                    return new Change(change.name(), RenamedWords.of(show, change.show()), about);
                })
                .refusing();
    }

    /** Tells how a name is said; as it is written if that is blank. */
    public static Edit sayAs(String id, String said) {
        return person(
                id,
                "How to say ",
                "said " + id,
                p -> new Performer(p.id(), p.name(), said.isBlank() ? null : said.strip(), p.facts()));
    }

    /**
     * Tells what is known of somebody, each with who vouches for it. In acts that have words already it becomes a draft among
     * them.
     */
    public static Edit facts(String id, List<SourcedFact> facts) {
        Edit typed = person(id, "Facts about ", "", p -> new Performer(p.id(), p.name(), p.sayAs(), facts));
        return ((Edit) show -> {
                    Change change = typed.of(show);
                    return Change.of(change.name(), FactDrafts.of(show, change.show(), id));
                })
                .refusing();
    }

    /** Tells how names and words are said: as written, as spoken. */
    public static Edit words(Map<String, String> sayAs) {
        return ((Edit) show -> Change.of("How words are said", show.withSayAs(sayAs))).refusing();
    }

    /** Tells who speaks to the crowd, whoever usually sits at the console first. */
    public static Edit speakers(List<Speaker> all) {
        return ((Edit) show -> Change.of(
                        "Who speaks", show.withSpeakers(show.speakers().with(all))))
                .refusing();
    }

    /** Tells when a remark is said in its other language. */
    public static Edit interpreting(Interpreting when) {
        return show ->
                Change.of("When to interpret", show.withSpeakers(show.speakers().with(when)));
    }

    private static Edit person(String id, String name, String about, UnaryOperator<Performer> changing) {
        return ((Edit) show -> {
                    Performer before = find(show, id);
                    Performer after = changing.apply(before);
                    return new Change(
                            name + brief(before.name()),
                            show.withPerformers(show.performers().stream()
                                    .map(p -> p.id().equals(id) ? after : p)
                                    .toList()),
                            about);
                })
                .refusing();
    }

    private static Performer find(Show show, String id) throws CannotBe {
        return show.performer(id).orElseThrow(() -> new CannotBe("Nobody of that name is in the show any more"));
    }

    /** A name as short as it is told in the name of a change. */
    static String brief(String name) {
        return Written.brief(name, 40);
    }
}
