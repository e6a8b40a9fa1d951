package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Figures of a list that others take the place of, by their names: "swap the spin for a tail slide", "the loop is now a bunt". */
final class Exchanges {
    private static final String OLD =
            "(?:the|my|that|his|her|our) (?:(?<which>first|1st|second|2nd|third|3rd|last) )?(?<old>[^.,;:\\n]{3,40}?)";
    /** From 0. */
    private static final Map<String, Integer> RANKS =
            Map.of("first", 0, "1st", 0, "second", 1, "2nd", 1, "third", 2, "3rd", 2);

    private static final String NEW =
            "(?:an? |the |my )?(?<new>(?:(?! and (?:there|no|the|i|we|then)\\b)[^.,;:\\n]){3,40})";

    private static final List<Pattern> CHANGES = List.of(
            Text.across(
                    "\\b(?:swap|replace|exchange|change|switch|swapped|replaced|exchanged|changed|switched|swapping|replacing) "
                            + OLD + " (?:for|with|by|to|into) " + NEW),
            Text.across("\\binstead of " + OLD
                    + "(?:,|(?= (?:i|we|she|he|they|it|there|comes|a|an)\\b)) (?:(?:i|we|she|he|they|it|there|i'll|we'll|will|shall|do|does|fly|flies|is|be|now|comes|put|have)"
                    + " )*" + NEW),
            Text.across(
                    "(?:^|(?<=[.,;:\\n])) ?(?:(?:i|we|now|do|fly|there|is|will|be|put|make|it|a|an|and|but|so|then) )*(?<new>[^.,;:\\n]{3,40}) (?:instead of|in place of|rather than|replaces) "
                            + OLD + "(?=[.,;:\\n!]|$)"),
            Text.across("\\b(?:scrap|drop|delete|forget|ditch|bin|lose) " + OLD
                    + "(?: \\([^)\\n]{1,8}\\))?,? (?:and |but )?(?:(?:i|we)(?:'m|'re|'ll| am| are| will)? )?(?:do|doing|fly|flying|it's|there's) "
                    + NEW),
            Text.across("\\b(?:put|fly|have|with|doing) (?:an? |the |my )?(?<new>[^.,;:\\n]{3,40}?)(?: in)? where "
                    + OLD + " (?:was|is|stood|used to be)\\b"),
            Text.across("\\b" + OLD + " (?:becomes|is now|has become|turns into|will now be|is replaced (?:by|with)) "
                    + NEW));

    private static final String BOTH = "(?:the|my|that) (?<old>[^.,;:\\n]{3,30}?) (?:and|with|&) (?:the|my|that) ";

    private static final List<Pattern> SWAPS = List.of(
            Text.across(
                    "\\b(?:swap|exchange|switch|change|swapped|exchanged|switched) (?:over |round |around |the order of )?"
                            + BOTH
                            + "(?<new>[^.,;:\\n!]{3,30})(?=[.,;:\\n!]|$| (?:over|round|around|please|about|so)\\b)"),
            Text.across(
                    "\\b(?:has|have|we|i|i've|we've) (?:now |just )?(?:swapped|exchanged|switched) (?<old>[^.,;:\\n]{3,30}?) (?:and|with|&) (?<new>[^.,;:\\n!(]{3,30}?)(?=\\s*(?:[.,;:\\n!(]|$))"),
            Text.across(
                    "\\b" + BOTH
                            + "(?<new>[^.,;:\\n]{3,30}?) (?:are |have |should be |need to be |must be |now |go |come ){0,3}(?:swapped|exchanged|switched|reversed|changed (?:over|round|places)|(?:the )?other way (?:round|around)|change places|in the (?:wrong|other) order)"));

    /** "The square loop is out, it's a round loop": whatever else is flown. */
    private static final Pattern OUT_AND_IN = Text.across("\\b" + OLD
            + " (?:is|has|goes) (?:now )?(?:out|off|gone|dropped)[,;:.]? (?:and |but )?(?:instead (?:of (?:it|that) )?)?(?:it's|there's|it is|there is|i do|i fly|comes) (?:now )?"
            + NEW);

    /** Ahead of a list: "the spin is upright, three turns". */
    private static final Pattern AHEAD = Text.across(
            "(?:\\W|\\d|(?:and|also|note|nb|please|re|ps)\\b)*(?:the|my|our) [^.,;:\\n]{3,30}? (?:is|are|has|starts?|begins?|goes|will be)\\b");

    /** Behind one exchange, another. */
    private static final Pattern AND = Text.across(",? ?(?:and|,|also) " + OLD + " (?:for|with|by|to|into) " + NEW);

    /** Of several figures the last is meant, which is not sure where the sentence names others that are flown. */
    private static final Pattern OUT = Text.across(
            "\\b(?:there's|there is|there will be|with|but|and|except|i do|we do|i have|this time|today|now) no (?<old>[^.,;:\\n]{3,30}?)(?=[.,;:\\n!]|$| (?:today|this|any ?more|now|and|but|in it)\\b)"
                    + "|\\b(?:without|minus|leaving out|leave out|except for|apart from|not doing|(?:i|we|i've|we've|have|has) (?:now |also |just )?(?:dropped|scrapped|removed|deleted|cut out|left out|taken out|cut)) (?:the|my|any) (?<gone>[^.,;:\\n]{3,30}?)(?=[.,;:\\n!]|$| (?:today|this|any ?more|now|and|but|altogether|completely|because)\\b)");

    /** "Each 12 seconds, apart from the spin", "base 500 ft except for the knife edge": nothing is left out. */
    private static final Pattern TIMES = Text.across(
            "\\b(?:secs?|seconds?|base|smoke|(?:height|speed)s?|apart from the \\w+ which)\\b|\\d ?(?:ft|feet|m|metres|kts?|knots|km/h|mph)\\b");

    private final Text text;
    private final String said;

    private final List<Sentence> sentences;
    private final FlownIn flown;
    private final Reading reading;
    private final List<Consumer<Assembly>> changes = new ArrayList<>();

    Exchanges(Text text, List<Sentence> sentences, FlownIn flown, Reading reading) {
        this.text = text;
        this.said = text.joined();
        this.sentences = sentences;
        this.flown = flown;
        this.reading = reading;
    }

    /** Whether a sentence lets one figure take another's place; then it is remembered. */
    boolean takes(int at) {
        Sentence sentence = sentences.get(at);
        if (sentence.numbered()) {
            return false;
        }
        int before = changes.size();
        Matcher out = OUT.matcher(said).region(sentence.start(), sentence.end());
        boolean isOfTimes =
                TIMES.matcher(said).region(sentence.start(), sentence.end()).find();
        while (!isOfTimes && out.find()) {
            String group = out.group("old") == null ? "gone" : "old";
            Draft old = only(reading.read(out.start(group), out.end(group)));
            if (old != null && flown.isElsewhere(old, at) && !Revisions.isPerhaps(text, sentence)) {
                changes.add(assembly -> assembly.exchange(meant(assembly.lines(), old), List.of()));
            }
        }
        int swapped = changes.size();
        for (Pattern swap : SWAPS) {
            Matcher found = swap.matcher(said).region(sentence.start(), sentence.end());
            while (changes.size() == swapped && found.find()) {
                swap(found, at);
            }
        }
        Matcher other = OUT_AND_IN.matcher(said).region(sentence.start(), sentence.end());
        if (changes.size() == swapped && other.find()) {
            Draft old = only(reading.read(other.start("old"), other.end("old")));
            List<Draft> now = figures(reading.read(other.start("new"), other.end("new")));
            if (old != null && !now.isEmpty() && flown.isElsewhere(old, at) && !Revisions.isPerhaps(text, sentence)) {
                changes.add(assembly -> assembly.exchange(meant(assembly.lines(), old), now));
            }
        }
        for (Pattern change : CHANGES) {
            Matcher found = change.matcher(said).region(sentence.start(), sentence.end());
            if (changes.size() == swapped && found.find() && exchange(found, at)) {
                Matcher more = AND.matcher(said).region(found.end(), sentence.end());
                while (more.lookingAt() && exchange(more, at)) {
                    more.region(more.end(), sentence.end());
                }
            }
        }
        return changes.size() > before;
    }

    /** "The spin is upright": it says something of a figure, and lists none. */
    static boolean says(Text text, Sentence sentence) {
        return AHEAD.matcher(text.folded())
                .region(sentence.start(), sentence.end())
                .lookingAt();
    }

    /** Whether a sentence ahead of a list says something of a figure in it; then it is remembered. */
    boolean saysAhead(int at, List<Heard> pieces) {
        Sentence sentence = sentences.get(at);
        List<Draft> figures = pieces.stream()
                .filter(Heard::isFigure)
                .flatMap(piece -> piece.drafts().stream())
                .toList();
        boolean isSaid = figures.size() == 1
                && flown.isElsewhere(figures.get(0), at)
                && says(text, sentence)
                && !Revisions.isPerhaps(text, sentence);
        if (isSaid) {
            Draft by = figures.get(0);
            pieces.stream()
                    .filter(piece -> !piece.isFigure() && piece.drafts().get(0).saysAnything())
                    .forEach(piece -> by.take(piece.drafts().get(0)));
            changes.add(assembly -> {
                if (by.saysAnything()) {
                    correct(assembly.lines(), by);
                }
            });
        }
        return isSaid;
    }

    /** "Swap the spin for a tail slide"; false if these are no figures of which one takes the other's place. */
    private boolean exchange(Matcher found, int at) {
        Draft old = only(reading.read(found.start("old"), found.end("old")));
        List<Draft> now = figures(reading.read(found.start("new"), found.end("new")));
        boolean isOne = old != null
                && !now.isEmpty()
                && flown.isElsewhere(old, at)
                && !flown.isElsewhere(now.get(0), at)
                && !Revisions.isPerhaps(text, sentences.get(at));
        if (isOne) {
            Draft out = Objects.requireNonNull(old);
            String which = found.group("which");
            changes.add(assembly -> assembly.exchange(meant(assembly.lines(), out, which), now));
        }
        return isOne;
    }

    /** "Swap the spin and the tail slide": both are flown. */
    private void swap(Matcher found, int at) {
        Draft one = only(reading.read(found.start("old"), found.end("old")));
        Draft other = only(reading.read(found.start("new"), found.end("new")));
        if (one != null
                && other != null
                && !isSame(one, other)
                && flown.isElsewhere(one, at)
                && flown.isElsewhere(other, at)
                && !Revisions.isPerhaps(text, sentences.get(at))) {
            changes.add(assembly -> assembly.swap(one, other));
        }
    }

    /** Whether two drafts are the same figure of the catalogue. */
    static boolean isSame(Draft draft, Draft other) {
        Names.Sense sense = draft.sense();
        Names.Sense meant = other.sense();
        return sense != null && meant != null && sense.figure().equals(meant.figure());
    }

    /** Which of several is meant where one is exchanged: the one that was named last ahead of the change, else the first. */
    static @Nullable Draft meant(List<Draft> drafts, Draft old) {
        List<Draft> same = drafts.stream().filter(draft -> isSame(draft, old)).toList();
        return same.stream()
                .filter(draft -> draft.start() < old.start())
                .reduce((first, second) -> second)
                .orElse(same.isEmpty() ? null : same.get(0));
    }

    /** Which of several it is if that is said: "the second loop". */
    static @Nullable Draft meant(List<Draft> drafts, Draft old, @Nullable String which) {
        List<Draft> same = drafts.stream().filter(draft -> isSame(draft, old)).toList();
        Integer rank =
                which == null ? null : "last".equals(which) ? Integer.valueOf(same.size() - 1) : RANKS.get(which);
        return rank != null && rank >= 0 && rank < same.size() ? same.get(rank) : meant(drafts, old);
    }

    /** Lets the figure that is meant say what another draft of it says. */
    static void correct(List<Draft> drafts, Draft by) {
        Draft meant = meant(drafts, by);
        if (meant != null) {
            by.forgetNotes();
            meant.correct(by);
        }
    }

    /** Lets two figures change places, the first of each. */
    static void swap(List<Draft> drafts, Draft one, Draft other) {
        int first = first(drafts, one);
        int second = first(drafts, other);
        if (first >= 0 && second >= 0) {
            Collections.swap(drafts, first, second);
        }
    }

    /** Lets the figures of two lines change places. */
    static void swap(List<Draft> drafts, List<Draft> first, List<Draft> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return;
        }
        List<Draft> swapped = new ArrayList<>();
        for (Draft draft : drafts) {
            if (draft == first.get(0)) {
                swapped.addAll(second);
            } else if (draft == second.get(0)) {
                swapped.addAll(first);
            } else if (!first.contains(draft) && !second.contains(draft)) {
                swapped.add(draft);
            }
        }
        drafts.clear();
        drafts.addAll(swapped);
    }

    private static int first(List<Draft> drafts, Draft figure) {
        return IntStream.range(0, drafts.size())
                .filter(i -> isSame(drafts.get(i), figure))
                .findFirst()
                .orElse(-1);
    }

    /** The figure that is all of what was read; null if there is none, or another. */
    static @Nullable Draft only(List<Draft> drafts) {
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
