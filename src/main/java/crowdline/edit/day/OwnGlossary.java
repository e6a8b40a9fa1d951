package crowdline.edit.day;

import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Edits of what a show explains in words of its own, over what the program explains. */
public final class OwnGlossary {
    private OwnGlossary() {}

    /**
     * Explains a word, or explains it otherwise.
     *
     * @param before what it was called until now, or null for a new one
     */
    public static Edit term(@Nullable String before, Term term) {
        return ((Edit) show -> {
                    boolean renamed = before == null || !same(before, term.name());
                    if (renamed && named(show.terms(), term.name()).isPresent()) {
                        throw new CannotBe("The show explains " + Written.quoted(term.name())
                                + " already; open its page to change it");
                    }
                    List<Term> all = new ArrayList<>(show.terms());
                    int at = before == null ? -1 : index(all, before, Term::name);
                    if (at < 0) {
                        all.add(term);
                    } else {
                        all.set(at, term);
                    }
                    return Change.of("Explain " + People.brief(term.name()), show.withGlossary(show.figures(), all));
                })
                .refusing();
    }

    /** Explains a figure in the show's own words; how it is flown stays as it is in them. */
    public static Edit figure(CatalogueEntry own) {
        return ((Edit) show -> {
                    List<CatalogueEntry> all = new ArrayList<>(show.figures());
                    int at = index(all, own.name(), CatalogueEntry::name);
                    if (at < 0) {
                        all.add(own);
                    } else {
                        all.set(at, own);
                    }
                    return Change.of("Explain " + People.brief(own.name()), show.withGlossary(all, show.terms()));
                })
                .refusing();
    }

    /** Takes the show's own words for a word or a figure away, so that the program's count again if it has any. */
    public static Edit remove(String name) {
        return show -> {
            List<CatalogueEntry> figures = without(show.figures(), name, CatalogueEntry::name);
            List<Term> terms = without(show.terms(), name, Term::name);
            if (figures.size() == show.figures().size()
                    && terms.size() == show.terms().size()) {
                throw new CannotBe("The show has no words of its own for " + Written.quoted(name));
            }
            boolean flown = figures.size() < show.figures().size()
                    && show.acts().stream()
                            .flatMap(a -> a.figures().stream())
                            .anyMatch(f -> same(f.figure(), name) && f.elements() == null);
            if (flown) {
                throw new CannotBe("An act flies " + Written.quoted(name)
                        + " as the show's glossary says; give its figure elements of its own first");
            }
            return Change.of("Own words for " + People.brief(name) + " taken away", show.withGlossary(figures, terms));
        };
    }

    /**
     * What becomes of two glossaries.
     *
     * @param figures of the other that this show has not
     * @param terms of the other that this show has not
     * @param conflicts what both explain, and not alike
     * @param alike how many both explain alike
     */
    public record Merge(List<CatalogueEntry> figures, List<Term> terms, List<Conflict> conflicts, int alike) {
        public Merge {
            figures = List.copyOf(figures);
            terms = List.copyOf(terms);
            conflicts = List.copyOf(conflicts);
        }

        public int added() {
            return figures.size() + terms.size();
        }

        /** Takes what this show has not, and of what both explain the other's words if {@code theirs}. */
        public Edit take(boolean theirs) {
            return ((Edit) show -> {
                        List<CatalogueEntry> allFigures = new ArrayList<>(show.figures());
                        allFigures.addAll(figures);
                        List<Term> allTerms = new ArrayList<>(show.terms());
                        allTerms.addAll(terms);
                        for (Conflict conflict : theirs ? conflicts : List.<Conflict>of()) {
                            CatalogueEntry figure = conflict.theirFigure();
                            Term term = conflict.theirTerm();
                            if (figure != null) {
                                allFigures.set(index(allFigures, figure.name(), CatalogueEntry::name), figure);
                            } else if (term != null) {
                                allTerms.set(index(allTerms, term.name(), Term::name), term);
                            }
                        }
                        int number = added() + (theirs ? conflicts.size() : 0);
                        if (number == 0) {
                            throw new CannotBe("The other glossary has nothing that this show lacks");
                        }
                        return Change.of(
                                "Take " + (number == 1 ? "1 explanation" : number + " explanations"),
                                show.withGlossary(allFigures, allTerms));
                    })
                    .refusing();
        }
    }

    /**
     * What both explain, and not alike.
     *
     * @param mine this show's words
     * @param theirs the other's words
     * @param theirFigure the other's entry, if it is a figure
     * @param theirTerm the other's entry, if it is a word
     */
    public record Conflict(
            String name,
            String mine,
            String theirs,
            @Nullable CatalogueEntry theirFigure,
            @Nullable Term theirTerm) {}

    /** Compares a show's own words with others, such as those of another show. */
    public static Merge compare(Show show, List<CatalogueEntry> otherFigures, List<Term> otherTerms) {
        List<CatalogueEntry> figures = new ArrayList<>();
        List<Term> terms = new ArrayList<>();
        List<Conflict> conflicts = new ArrayList<>();
        int alike = 0;
        for (CatalogueEntry theirs : otherFigures) {
            int at = index(show.figures(), theirs.name(), CatalogueEntry::name);
            if (at < 0) {
                figures.add(theirs);
            } else if (show.figures().get(at).equals(theirs)) {
                alike++;
            } else {
                CatalogueEntry mine = show.figures().get(at);
                conflicts.add(new Conflict(theirs.name(), mine.whatItIs(), theirs.whatItIs(), theirs, null));
            }
        }
        for (Term theirs : otherTerms) {
            Optional<Term> mine = named(show.terms(), theirs.name());
            if (mine.isEmpty()) {
                terms.add(theirs);
            } else if (mine.get().equals(theirs)) {
                alike++;
            } else {
                conflicts.add(new Conflict(theirs.name(), mine.get().whatItIs(), theirs.whatItIs(), null, theirs));
            }
        }
        return new Merge(figures, terms, conflicts, alike);
    }

    private static Optional<Term> named(List<Term> terms, String name) {
        return terms.stream().filter(t -> same(t.name(), name)).findFirst();
    }

    private static <T> int index(List<T> all, String name, Function<T, String> named) {
        for (int i = 0; i < all.size(); i++) {
            if (same(named.apply(all.get(i)), name)) {
                return i;
            }
        }
        return -1;
    }

    private static <T> List<T> without(List<T> all, String name, Function<T, String> named) {
        Stream<T> others = all.stream().filter(one -> !same(named.apply(one), name));
        return others.toList();
    }

    private static boolean same(String a, String b) {
        return Written.key(a).equals(Written.key(b));
    }
}
