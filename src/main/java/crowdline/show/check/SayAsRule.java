package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Incident;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A word with a way to say it occurs somewhere in the show. */
final class SayAsRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        if (show.sayAs().isEmpty()) {
            return;
        }
        String said = said(show).collect(Collectors.joining("\n")).toLowerCase(Locale.ROOT);
        show.sayAs().keySet().stream().sorted().forEach(word -> {
            if (!said.contains(word.toLowerCase(Locale.ROOT))) {
                findings.accept(new Finding(
                        Severity.NOTE,
                        "unused-say-as",
                        Written.quoted(word) + " has a way to say it but occurs nowhere in the show",
                        "sayAs"));
            }
        });
    }

    private static Stream<String> said(Show show) {
        Stream<String> people = show.performers().stream()
                .flatMap(p ->
                        Stream.concat(Stream.of(p.name()), p.facts().stream().map(Performer.SourcedFact::text)));
        Stream<String> things = Stream.concat(
                Stream.of(show.title(), show.venue().name()),
                show.airframes().stream().map(Aircraft::name));
        Stream<String> acts = show.acts().stream().flatMap(SayAsRule::said);
        Stream<String> own = show.figures().stream().flatMap(e -> Stream.of(e.name(), e.whatItIs(), e.lookFor()));
        Incident incident = show.incident();
        Stream<String> incidentWords = incident == null ? Stream.of() : incident.words().stream();
        Stream<String> announced = show.announcements().stream().flatMap(a -> a.words().stream());
        return Stream.of(people, things, acts, remarks(show.remarks().stream()), own, incidentWords, announced)
                .flatMap(s -> s);
    }

    private static Stream<String> said(Act act) {
        Stream<String> figures = act.figures().stream()
                .flatMap(f -> Stream.concat(
                        Stream.of(f.shownName(), f.look() == null ? "" : f.look()), remarks(f.remarks().stream())));
        return Stream.concat(Stream.concat(Stream.of(act.title()), figures), remarks(act.remarks().stream()));
    }

    private static Stream<String> remarks(Stream<Remark> remarks) {
        return remarks.flatMap(r -> Stream.of(r.text(), r.shortText() == null ? "" : r.shortText()));
    }
}
