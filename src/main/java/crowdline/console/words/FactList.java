package crowdline.console.words;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.console.words.FactsView.FactRow;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.fact.CrowdFact;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The computed facts of every place, which of those of a place is chosen, and which are remarks already. */
final class FactList {
    private static final Mark NO_FACT = new Mark(Form.DIAMOND, Tone.CAUTION, "Check the numbers");

    private @Nullable Map<RemarkPlace, PlaceFacts> known;
    private int at;

    /** Facts computed meanwhile. */
    void take(Map<RemarkPlace, PlaceFacts> facts) {
        known = Map.copyOf(facts);
    }

    void choose(int number) {
        at = Math.max(0, number);
    }

    Optional<CrowdFact> chosen(RemarkPlace place) {
        List<CrowdFact> facts = of(place);
        int number = Math.min(at, rows(place) - 1);
        return number < 0 || number >= facts.size() ? Optional.empty() : Optional.of(facts.get(number));
    }

    /** @param verdict how long a remark takes against the time there is for it */
    FactsView view(Show show, RemarkPlace place, Function<Remark, Mark> verdict) {
        List<CrowdFact> facts = of(place);
        List<FactRow> rows = new ArrayList<>(facts.stream()
                .map(fact -> new FactRow(
                        number(fact.number()) + " " + fact.unit(),
                        fact.text(),
                        already(fact, show, place).orElseGet(() -> verdict.apply(remark(fact, show, place))),
                        true))
                .toList());
        without(place).forEach(why -> rows.add(new FactRow("No fact", why, NO_FACT, false)));
        return new FactsView(title(place), rows, Math.min(at, rows.size() - 1));
    }

    /** The fact as a remark of the place, with an id that tells what it came from. */
    static Remark remark(CrowdFact fact, Show show, RemarkPlace place) {
        String shorter = fact.shortText();
        return new Remark(
                place.freshId(show, what(fact)),
                RemarkKind.FACT,
                fact.text(),
                shorter.isBlank() || shorter.equals(fact.text()) ? null : shorter,
                null,
                null,
                1,
                false);
    }

    /** Where among the remarks of its place the fact is one already: by its words, or by the id it was given. */
    static Optional<Integer> whereAlready(CrowdFact fact, Show show, RemarkPlace place) {
        List<Remark> remarks = place.in(show);
        for (int i = 0; i < remarks.size(); i++) {
            if (saysIt(remarks.get(i), fact) || cameFromIt(remarks.get(i), fact, place)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static Optional<Mark> already(CrowdFact fact, Show show, RemarkPlace place) {
        return whereAlready(fact, show, place)
                .map(i -> new Mark(
                        Form.DISC,
                        Tone.GOOD,
                        saysIt(place.in(show).get(i), fact) ? "Already a remark" : "Already a remark, in other words"));
    }

    private static boolean saysIt(Remark remark, CrowdFact fact) {
        String said = remark.text().strip();
        return said.equalsIgnoreCase(fact.text()) || said.equalsIgnoreCase(fact.shortText());
    }

    private static boolean cameFromIt(Remark remark, CrowdFact fact, RemarkPlace place) {
        return remark.id().equals(place.ownerId() + "-" + what(fact));
    }

    private static String what(CrowdFact fact) {
        return "fact-" + fact.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String title(RemarkPlace place) {
        if (place.actId() == null) {
            return "Choose an act or a figure to see its facts";
        }
        if (known == null) {
            return "Facts are being computed";
        }
        PlaceFacts here = known.get(place);
        return here == null || (here.facts().isEmpty() && here.without().isEmpty())
                ? "No facts: nothing is predicted here but its time"
                : "Facts for variant \"" + here.variant() + "\"";
    }

    private List<CrowdFact> of(RemarkPlace place) {
        return found(place).map(PlaceFacts::facts).orElse(List.of());
    }

    private List<String> without(RemarkPlace place) {
        return found(place).map(PlaceFacts::without).orElse(List.of());
    }

    private int rows(RemarkPlace place) {
        return of(place).size() + without(place).size();
    }

    private Optional<PlaceFacts> found(RemarkPlace place) {
        Map<RemarkPlace, PlaceFacts> all = known;
        return all == null ? Optional.empty() : Optional.ofNullable(all.get(place));
    }

    /** Rounded: tenths below a hundred, else whole numbers. A prediction knows no more. */
    private static String number(double value) {
        return String.format(Locale.UK, Math.abs(value) < 100 ? "%.1f" : "%,.0f", value);
    }
}
