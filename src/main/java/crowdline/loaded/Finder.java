package crowdline.loaded;

import crowdline.glossary.Explained;
import crowdline.glossary.Glossary;
import crowdline.glossary.TextSearch;
import crowdline.glossary.TextSearch.Searched;
import crowdline.loaded.Found.Kind;
import crowdline.measure.Hour;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds anything of a day by a few letters, forgiving of spelling: names, acts, figures, words, facts. */
public final class Finder {
    /** Finds nothing, as long as no show was looked through. */
    public static final Finder NOTHING = new Finder(List.of());

    private final TextSearch<Found> search;

    private Finder(List<Searched<Found>> all) {
        search = new TextSearch<>(all);
    }

    /**
     * Looks through a show and what is explained; takes a moment.
     *
     * @param catalogue of the program
     * @param terms of the program
     */
    public static Finder of(Show show, Catalogue catalogue, List<Term> terms) {
        List<Searched<Found>> all = new ArrayList<>(names(show));
        show.acts().forEach(act -> all.add(act(show, act)));
        Catalogue own = catalogue.with(show.figures());
        Glossary.of(own, terms, show.terms()).items().forEach(item -> all.add(explained(item)));
        all.addAll(facts(show, own));
        Set<String> flown = flown(show, own);
        all.sort(Comparator.comparing((Searched<Found> one) -> one.item().kind())
                .thenComparing(one -> !flown.contains(Written.key(one.item().name()))));
        return new Finder(all);
    }

    /** The figures of the day are asked for before those nobody flies. */
    private static Set<String> flown(Show show, Catalogue catalogue) {
        return show.acts().stream()
                .flatMap(act -> act.figures().stream())
                .flatMap(figure -> catalogue.find(figure.figure()).stream())
                .map(entry -> Written.key(entry.name()))
                .collect(Collectors.toSet());
    }

    /** What has these words, the best first; nothing for no words. */
    public List<Found> find(String words) {
        return words.isBlank() ? List.of() : search.find(words);
    }

    private static List<Searched<Found>> names(Show show) {
        List<Searched<Found>> names = new ArrayList<>();
        Set<String> known = new HashSet<>();
        for (Performer performer : show.performers()) {
            String sayAs = performer.sayAs();
            String sayIt = sayAs == null ? show.sayAs().getOrDefault(performer.name(), "") : sayAs;
            known.add(Written.key(performer.name()));
            names.add(searched(
                    new Found(
                            Kind.NAME,
                            performer.name(),
                            sayIt,
                            performer.facts().stream()
                                    .map(fact -> fact.text() + " (" + fact.source() + ")")
                                    .toList()),
                    // Whoever has only heard the name writes it as it sounds.
                    sayIt.isEmpty() ? List.of() : List.of(sayIt)));
        }
        show.airframes().forEach(aircraft -> {
            if (known.add(Written.key(aircraft.name()))) {
                names.add(searched(
                        new Found(
                                Kind.NAME,
                                aircraft.name(),
                                show.sayAs().getOrDefault(aircraft.name(), ""),
                                List.of("An aircraft of this show.")),
                        List.of()));
            }
        });
        show.sayAs().forEach((word, sayIt) -> {
            if (known.add(Written.key(word))) {
                names.add(searched(new Found(Kind.NAME, word, sayIt, List.of()), List.of(sayIt)));
            }
        });
        return names;
    }

    private static Searched<Found> act(Show show, Act act) {
        String performer = show.performer(act.performer()).map(Performer::name).orElse(act.performer());
        String aircraft = show.aircraft(act.airframe()).map(a -> a.name()).orElse(act.airframe());
        return searched(
                new Found(
                        Kind.ACT,
                        act.title(),
                        "",
                        List.of(
                                "Slot " + Hour.toTheMinute(act.slotStart()) + ", " + Math.round(act.slotMinutes())
                                        + " min.",
                                performer + ", " + aircraft + ".")),
                List.of());
    }

    private static Searched<Found> explained(Explained item) {
        return searched(
                new Found(
                        item instanceof Explained.OfFigure ? Kind.FIGURE : Kind.WORD,
                        item.name(),
                        item.sayIt(),
                        item.texts()),
                item.aliases());
    }

    private static List<Searched<Found>> facts(Show show, Catalogue catalogue) {
        List<Searched<Found>> facts = new ArrayList<>();
        show.remarks().forEach(remark -> fact(facts, show.title(), remark));
        for (Act act : show.acts()) {
            act.remarks().forEach(remark -> fact(facts, act.title(), remark));
            for (Figure figure : act.figures()) {
                String name = Objects.requireNonNullElse(catalogue.nameOf(figure), act.title());
                figure.remarks().forEach(remark -> fact(facts, name + ", " + act.title(), remark));
            }
        }
        return facts;
    }

    private static void fact(List<Searched<Found>> facts, String about, Remark remark) {
        if (remark.kind() == RemarkKind.FACT) {
            facts.add(searched(new Found(Kind.FACT, about, "", List.of(remark.text())), List.of()));
        }
    }

    private static Searched<Found> searched(Found found, List<String> aliases) {
        return new Searched<>(found, found.name(), aliases, "", found.texts());
    }
}
