package crowdline.speech.plain;

import crowdline.show.Act;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * What listeners might not follow in a show's remarks, each judged where it stands: after the remarks of its act that come
 * before it, and by a figure's explanation. Hints only.
 */
public final class RemarkHints {
    /** Texts that were edited away are kept too; beyond these all are forgotten. Tuned. */
    private static final int MOST_KEPT = 4000;

    private final PlainLanguage plain;
    private final Function<Figure, Set<String>> called;
    private final Map<String, Set<String>> said = new HashMap<>();

    /**
     * @param tradeWords words that need explaining, with plain words for each
     * @param called every name of a figure
     */
    public RemarkHints(Map<String, String> tradeWords, Function<Figure, Set<String>> called) {
        this.plain = new PlainLanguage(tradeWords);
        this.called = called;
    }

    /** Flying's words, and the names of figures that say not by themselves what they are, with what each is. */
    public static Map<String, String> tradeWords(List<CatalogueEntry> entries) {
        Map<String, String> words = new HashMap<>(TradeTerms.PLAIN);
        for (CatalogueEntry entry : entries) {
            List<String> names = new ArrayList<>(entry.aliases());
            names.add(entry.name());
            names.removeIf(name -> TradeTerms.EVERYDAY.contains(name.toLowerCase(Locale.UK)));
            names.forEach(name -> words.put(name.toLowerCase(Locale.UK), inOneClause(entry.whatItIs())));
        }
        return words;
    }

    /** Every name a figure goes by. */
    public static Set<String> namesOf(Figure figure, Catalogue known) {
        Set<String> names = new HashSet<>();
        names.add(figure.figure());
        names.add(figure.shownName());
        known.find(figure.figure()).ifPresent(entry -> {
            names.add(entry.name());
            names.addAll(entry.aliases());
        });
        return names;
    }

    /** "The wing stops." as it goes on after "that is". */
    private static String inOneClause(String sentence) {
        String clause = sentence.strip().replaceFirst("(?s)(?<=[^.!?]{3})[.!?](?:\\s.*)?$", "");
        boolean startsName = clause.length() > 1 && Character.isUpperCase(clause.charAt(1));
        return clause.isEmpty() || startsName
                ? clause
                : clause.substring(0, 1).toLowerCase(Locale.UK) + clause.substring(1);
    }

    /** What was found in one text that stands where this remark stands. */
    public List<SpeechFinding> of(Show show, RemarkPlace place, Remark remark, String text) {
        List<String> before = new ArrayList<>();
        Set<String> explained = new HashSet<>();
        String actId = place.actId();
        if (actId != null) {
            Act act = show.act(actId).orElseThrow();
            if (place.figureId() != null) {
                act.remarks().forEach(r -> before.add(r.text()));
            }
            for (Figure figure : act.figures()) {
                if (figure.id().equals(place.figureId())) {
                    explained.addAll(namesIfExplained(figure, remark));
                    break;
                }
                if (place.figureId() != null) {
                    figure.remarks().forEach(r -> before.add(r.text()));
                }
            }
        }
        for (Remark other : place.in(show)) {
            if (other.id().equals(remark.id())) {
                break;
            }
            before.add(other.text());
        }
        before.forEach(earlier -> explained.addAll(said.computeIfAbsent(earlier, plain::said)));
        if (said.size() > MOST_KEPT) {
            said.clear();
        }
        return plain.check(text, explained);
    }

    /** A figure that has its explanation needs none in its call; the explanation may name it. */
    private Set<String> namesIfExplained(Figure figure, Remark remark) {
        boolean explained = remark.kind() == RemarkKind.EXPLANATION
                || figure.remarks().stream().anyMatch(r -> r.kind() == RemarkKind.EXPLANATION);
        return explained ? called.apply(figure) : Set.of();
    }
}
