package crowdline.edit.day;

import crowdline.draft.FactWords;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Performer.SourcedFact;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Keeps the words of acts with what is known of those who fly them: a fact that is told becomes a draft in every act that has
 * words already, and one that is worded otherwise or withdrawn takes its untouched drafts with it. What a person wrote or
 * accepted stays as it is.
 */
final class FactDrafts {
    private FactDrafts() {}

    /**
     * A show in which somebody's facts have changed.
     *
     * @param before with the facts as they were
     * @param after with the facts as they are
     */
    static Show of(Show before, Show after, String performerId) {
        List<String> were = facts(before, performerId);
        List<String> are = facts(after, performerId);
        Show now = after;
        for (Act act : after.acts()) {
            if (act.performer().equals(performerId) && hasWords(act)) {
                now = told(reworded(before, now, act, were, are), act.id(), added(were, are));
            }
        }
        return now;
    }

    private static List<String> facts(Show show, String performerId) {
        return show.performer(performerId).map(Performer::facts).orElse(List.of()).stream()
                .map(SourcedFact::text)
                .toList();
    }

    /** Whether the fact at this place is the one that stood there, in other words. */
    private static boolean isReworded(List<String> were, List<String> are, int i) {
        return were.size() == are.size() && !are.contains(were.get(i)) && !were.contains(are.get(i));
    }

    /** What is new: what was known before is told already, perhaps in a person's own words, or was left out. */
    private static List<String> added(List<String> were, List<String> are) {
        return IntStream.range(0, are.size())
                .filter(i -> !were.contains(are.get(i)) && !isReworded(were, are, i))
                .mapToObj(are::get)
                .toList();
    }

    private static boolean hasWords(Act act) {
        return Stream.concat(act.remarks().stream(), act.figures().stream().flatMap(f -> f.remarks().stream()))
                .findAny()
                .isPresent();
    }

    /** With the drafts of facts that are gone left out, or worded as they are now. */
    private static Show reworded(Show before, Show now, Act act, List<String> were, List<String> are) {
        Map<String, String> instead = new HashMap<>();
        for (int i = 0; i < were.size(); i++) {
            if (!are.contains(were.get(i))) {
                boolean other = isReworded(were, are, i);
                instead.put(
                        FactWords.said(before, act, were.get(i)), other ? FactWords.said(now, act, are.get(i)) : "");
            }
        }
        if (instead.isEmpty()) {
            return now;
        }
        List<Figure> figures = act.figures().stream()
                .map(f -> f.withRemarks(reworded(f.remarks(), instead)))
                .toList();
        return now.withAct(act.withFigures(figures, reworded(act.remarks(), instead)));
    }

    private static List<Remark> reworded(List<Remark> remarks, Map<String, String> instead) {
        List<Remark> kept = new ArrayList<>();
        for (Remark remark : remarks) {
            String words = remark.draft() ? instead.get(remark.text()) : null;
            if (words == null) {
                kept.add(remark);
            } else if (!words.isEmpty()) {
                kept.add(remark.worded(words, null));
            }
        }
        return kept;
    }

    /** With these facts, as far as nothing in the show says them yet, as drafts of the act. */
    private static Show told(Show show, String actId, List<String> facts) {
        Act act = show.act(actId).orElseThrow();
        Set<String> ids = show.remarkIds().stream().collect(Collectors.toCollection(HashSet::new));
        List<Remark> remarks = new ArrayList<>(act.remarks());
        for (String fact : facts) {
            String said = FactWords.said(show, act, fact);
            if (!FactWords.isSaid(show, said)) {
                remarks.add(FactWords.floating(said, act, ids));
            }
        }
        return show.withAct(act.withFigures(act.figures(), remarks));
    }
}
