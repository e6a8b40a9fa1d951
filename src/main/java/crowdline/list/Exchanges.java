package crowdline.list;

import crowdline.list.Revisions.Reading;
import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Figures of a list that others take the place of, by their names: "swap the spin for a tail slide", "the loop is now a bunt". */
final class Exchanges {
    private static final String OLD = "(?:the|my|that|his|her|our) (?<old>[^.,;:\\n]{3,40}?)";
    private static final String NEW = "(?:an? |the |my )?(?<new>[^.,;:\\n]{3,40})";

    private static final List<Pattern> CHANGES = List.of(
            Pattern.compile(
                    "\\b(?:swap|replace|exchange|change|switch|swapped|replaced|exchanged|changed|switched|swapping|replacing) "
                            + OLD + " (?:for|with|by|to|into) " + NEW),
            Pattern.compile("\\binstead of " + OLD
                    + "(?:,|(?= (?:i|we|she|he|they|it|there|comes|a|an)\\b)) (?:(?:i|we|she|he|they|it|there|i'll|we'll|will|shall|do|does|fly|flies|is|be|now|comes|put|have)"
                    + " )*" + NEW),
            Pattern.compile(
                    "(?:^|(?<=[.,;:\\n])) ?(?:(?:i|we|now|do|fly|there|is|will|be|put|make|it|a|an|and|but|so|then) )*(?<new>[^.,;:\\n]{3,40}) (?:instead of|in place of|rather than|replaces) "
                            + OLD + "(?=[.,;:\\n!]|$)"),
            Pattern.compile("\\b" + OLD
                    + " (?:becomes|is now|has become|turns into|will now be|is replaced (?:by|with)) " + NEW));

    private final Text text;
    private final List<Sentence> sentences;
    private final List<List<Heard>> heard;
    private final Reading reading;
    private final List<Consumer<Assembly>> changes = new ArrayList<>();

    Exchanges(Text text, List<Sentence> sentences, List<List<Heard>> heard, Reading reading) {
        this.text = text;
        this.sentences = sentences;
        this.heard = heard;
        this.reading = reading;
    }

    /** Whether a sentence lets one figure take another's place; then it is remembered. */
    boolean takes(int at) {
        Sentence sentence = sentences.get(at);
        if (sentence.numbered() || Revisions.isPerhaps(text, sentence)) {
            return false;
        }
        for (Pattern change : CHANGES) {
            Matcher found = change.matcher(text.folded()).region(sentence.start(), sentence.end());
            if (found.find()) {
                Draft old = only(reading.read(found.start("old"), found.end("old")));
                List<Draft> now = figures(reading.read(found.start("new"), found.end("new")));
                if (old != null && !now.isEmpty() && isFlown(old, at)) {
                    changes.add(assembly -> assembly.exchange(old, now));
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isFlown(Draft old, int but) {
        for (int i = 0; i < heard.size(); i++) {
            if (i != but
                    && heard.get(i).stream()
                            .flatMap(piece -> piece.drafts().stream())
                            .anyMatch(draft -> isSame(draft, old))) {
                return true;
            }
        }
        return false;
    }

    /** Whether two drafts are the same figure of the catalogue. */
    static boolean isSame(Draft draft, Draft other) {
        Names.Sense sense = draft.sense();
        Names.Sense meant = other.sense();
        return sense != null && meant != null && sense.figure().equals(meant.figure());
    }

    private static @Nullable Draft only(List<Draft> drafts) {
        return drafts.size() == 1 && drafts.get(0).isFigure() ? drafts.get(0) : null;
    }

    private static List<Draft> figures(List<Draft> drafts) {
        return drafts.stream().filter(Draft::isFigure).toList();
    }

    /** Makes the changes, in the order in which they were written. */
    void make(Assembly assembly) {
        changes.forEach(change -> change.accept(assembly));
    }
}
