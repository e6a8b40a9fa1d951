package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A figure that a sentence below a list puts beside one of the list, in whatever words: "I left out the tail slide, it comes
 * after the loop", "between loop and slow roll: stall turn". Of all figures it names only one is new.
 *
 * @param put the new one; null if all that it names is flown already, so that it only tells of it
 * @param old the one it stands beside
 * @param other the one behind it, if it stands between two
 * @param isAfter whether it stands behind the old one
 */
record PutBeside(@Nullable Draft put, Draft old, @Nullable Draft other, boolean isAfter) {
    private static final int MOST_WORDS = 5;

    private static final Pattern SIDE = Text.across(
            "\\b(?:(?:straight|right|just|directly|immediately|in) )?(?<way>after|before|behind|following|ahead of|between|btween|betwen)"
                    + "(?: (?:the|my|our|that|a|an))? ");
    private static final Pattern AND = Text.across(" *(?:and|&|\\+) (?:(?:the|my|our|that|a|an) )?");
    private static final Pattern WORD = Pattern.compile("(?!(?:and|&|then|i|we|please)\\b)[^\\s.,;:!?()\\n]+\\s*");
    private static final String FORGOT =
            "(?:(?:i|we)(?:'ve| have)? )?(?:forgot|forgotten|(?:left|missed) (?:out|off)|missed|omitted)(?: (?:to (?:say|mention|write|add)|about|that))*";
    private static final Pattern MARK = Text.across("(?:[.,;:!?()\\n]|\\b" + FORGOT + "\\b|^[\\W_]*p\\.? ?s\\b)+");

    /** It is not sure that it is flown: "if the engine is behaving". */
    private static final Pattern IF = Text.across("[ ,(-]*\\bif \\b");

    /** It is told of, or not flown, or in the place of another. */
    private static final Pattern NOT = Text.across(
            "\\b(?:no|not|never|nothing|without|don't|dont|won't|wont|can't|cannot|isn't|instead|rather|replac\\w+|swap\\w*|chang\\w+|drop\\w*|skip\\w*|scrap\\w*|delet\\w+|remov\\w+|cancel\\w*|cut|mov\\w+|take out|unless|or|whether|maybe|perhaps|might|could|would (?:be|have)|was|were|had|did|used to|wind\\w*|weather|clouds?|base|below|under|above|last year|yesterday|question|wait|shorten|pause|long|seconds|minutes?)\\b");

    /** One more of a figure that is flown already. */
    private static final Pattern MORE =
            Text.across("\\b(?:an?|another|second|one more|again|extra|also|too)\\b[^.,;:]{0,20}$");

    /**
     * What a sentence puts beside what; null if it does not.
     *
     * @param flown whether a figure is flown in another sentence than this one
     */
    static @Nullable PutBeside in(String said, Sentence sentence, Reading reading, Predicate<Draft> flown) {
        Matcher condition = IF.matcher(said).region(sentence.start(), sentence.end());
        boolean isPerhaps = condition.find();
        int end = isPerhaps ? condition.start() : sentence.end();
        if (NOT.matcher(said).region(sentence.start(), sentence.end()).find()) {
            return null;
        }
        Matcher side = SIDE.matcher(said).region(sentence.start(), end);
        while (side.find()) {
            Named old = Named.at(said, side.end(), end, reading);
            if (old == null || !flown.test(old.figure())) {
                continue;
            }
            boolean isBetween = side.group("way").matches("betw?e+n|btween");
            Matcher and = AND.matcher(said).region(old.end(), end);
            Named other = isBetween && and.lookingAt() ? Named.at(said, and.end(), end, reading) : null;
            if (isBetween && (other == null || !flown.test(other.figure()))) {
                continue;
            }
            List<Draft> rest = new ArrayList<>(reading.readParts(said, sentence.start(), side.start(), MARK));
            rest.addAll(reading.readParts(said, other == null ? old.end() : other.end(), end, MARK));
            List<Draft> figures = rest.stream().filter(Draft::isFigure).toList();
            if (figures.size() != 1) {
                return null;
            }
            Draft put = figures.get(0);
            put.forgetNotes();
            rest.stream()
                    .filter(draft -> !draft.isFigure()
                            && draft.saysAnything()
                            && draft.notes().isEmpty())
                    .forEach(put::take);
            if (isPerhaps) {
                put.doubt();
            }
            boolean isNew = !flown.test(put)
                    || MORE.matcher(said)
                            .region(sentence.start(), put.name().get(0).start())
                            .find();
            boolean isAfter = isBetween
                    || !List.of("before", "ahead of").contains(side.group("way").replaceAll(" +", " "));
            return new PutBeside(isNew ? put : null, old.figure(), other == null ? null : other.figure(), isAfter);
        }
        return null;
    }

    /**
     * A figure that words name.
     *
     * @param end behind its last word
     */
    private record Named(Draft figure, int end) {
        /** The figure that the most words from a place on name, and nothing else; null if they name none. */
        static @Nullable Named at(String said, int from, int to, Reading reading) {
            Named longest = null;
            Matcher word = WORD.matcher(said).region(from, Math.max(from, to));
            for (int i = 0; i < MOST_WORDS && word.lookingAt(); i++) {
                int end =
                        from + said.substring(from, word.end()).stripTrailing().length();
                Draft figure = Exchanges.only(reading.read(from, end));
                if (figure != null && figure.notes().isEmpty()) {
                    longest = new Named(figure, end);
                }
                word.region(word.end(), to);
            }
            return longest;
        }
    }
}
