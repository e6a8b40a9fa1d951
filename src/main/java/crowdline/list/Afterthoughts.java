package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a postscript, a sentence below the list, or one that tells what was forgotten says of the figures in it: one comes in
 * beside another, one is not flown, another is flown in its place, or something is only told of it. Wordings are many; so
 * the figures are taken out of the sentence first, and what is left is compared: "leave X out", "Y instead of X".
 */
final class Afterthoughts {
    private static final Pattern POSTSCRIPT = Pattern.compile("[\\s>*_(-]*p\\.? ?(?:p\\.? ?)?s\\b");
    private static final Pattern FORGOTTEN =
            Text.across("\\b(?:forgot|forgotten|(?:left|missed) (?:out|off)|(?:left|missed) (?:the|a|an)|omitted)\\b");

    /** What is flown in other weather, on another day, or perhaps, is another list; what is to be said is none. */
    private static final Pattern OTHER = Text.across(
            "[\"“”]|\\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)days?|(?:flat|low|rolling|wet|short|bad|bad weather) (?:show|display|version|day|programme|card)|if|unless|in case|whether|should (?:it|the)|when|otherwise|wind\\w*|weather|wx|clouds?|rain|base|below|under \\d|last year|yesterday|next)\\b");

    private static final Pattern SEGMENT =
            Pattern.compile("[.,;:!?()\\n]+|\\b(?:and|but|then|so|into|an?)\\b|[&=]| - ");

    /** More of what is flown already. */
    private static final Pattern MORE = Text.across(
            "\\b(?:an?|another|one more|again|extra|also|too|add\\w*|plus|finish\\w*|end\\w*|then|put|insert\\w*)\\b");

    private static final String THE =
            "(?:(?:the|my|our|that|this|any|an?|one|both|all|all the|first|1st|second|2nd|third|3rd|last|other|whole|planned|old) )*";
    private static final String X = THE + "X(?: and " + THE + "X)*";
    private static final String Y = THE + "Y";
    private static final String GONE =
            "(?:off|out|gone|cancelled|canceled|scrapped|scrubbed|dropped|cut|deleted|removed|binned|history|no more|not on|not in|not happening|not flown)"
                    + "(?! (?:of|it|the|that|this|to|from|at|on|over|top|a)\\b)";

    private static final List<Pattern> CANCELLED = List.of(
            of(
                    "(?:^|[.,;:(] ?|\\b(?:so|now|there's|there is|there will be|with|do|fly|be|and|but|have|sorry|means|ps) )(?:no|not|minus|without|less) "
                            + X + "(?!.*\\bstays?\\b)"),
            of(
                    "\\b(?:scrap|drop|skip|cut|delete|remove|cancel|ditch|bin|omit|scratch|lose|ignore|disregard|strike|dump|forget)(?:p?p?ing|t?ing|ed|d|ped)? (?:(?:out|about|off|what i (?:said|wrote) about) )*"
                            + X),
            of(
                    "\\b(?:leave|leaving|left|take|taking|taken|took|cut|cutting|keep|keeping|cross|crossed|strike|struck) (?:out|off) "
                            + X),
            of("\\b(?:leave|leaving|left|take|taking|taken|took|cut|cutting|keep|keeping|cross|crossed|strike|struck) "
                    + X + " (?:right |well )?(?:out|off|away)\\b"),
            of("\\b(?:leave|leaving|save|saving|keep|keeping) " + X + " for (?:another|next|some|a better|a later)\\b"),
            of("\\bagainst " + X),
            of(X + " (?:(?:is|are|has|have|was|will|be|been|now|also|just|sadly|gone) )*" + GONE + "\\b"),
            of(X + " ?[:=-]+ ?(?:" + GONE + "|delete|cancel|drop|skip|no|none)\\b"),
            of(
                    "\\b(?:won't|wont|will not|shan't|shall not|can't|cant|cannot|not going to|am not|i'm not|we're not|aren't|not|never|no longer)"
                            + " (?:be )?(?:do|doing|fly|flying|perform|performing|show|showing|attempt|attempting|include|including) (?:either )?"
                            + X),
            of(
                    X
                            + " (?:won't|wont|will not|isn't|is not|shan't|doesn't|does not|can't|cannot) (?:be )?(?:happen|happening|flown|included|done|possible|in it|on|part of|go ahead)\\b"),
            of(X + "[^.;]{0,30}[, ](?:so |and |but )?(?:that|it)(?:'s| is) " + GONE + "\\b"));

    private static final List<Pattern> EXCHANGED = List.of(
            of("\\b(?:instead of|in place of|rather than|replac\\w+|takes? the place of|where) " + X),
            of(X + "[^.]*\\b" + Y + "[^.]*\\b(?:instead|in its place|in their place|in place of (?:it|that))\\b"),
            of(X + "[^.]*\\b(?:instead|in its place)\\b[^.]*" + Y),
            of("\\b(?:swap|replac|exchang|chang|switch|turn|mak|put)\\w* " + X
                    + " (?:(?:for|with|by|to|into|be|down|up) )*" + Y),
            of(X
                    + " (?:is now|becomes?|has become|turns into|will (?:now )?be|should be|is replaced (?:by|with)|[-=]*>) "
                    + Y),
            of(X + " (?:is|has|are) (?:now )?" + GONE + "\\b[^.]*" + Y),
            of("\\bnot " + X + "[ ,]*(?:but|it's) " + Y));

    private static final Pattern NOT_FLOWN = of("\\b(?:no|not|without|never|instead of) " + Y);

    private final String said;
    private final List<Sentence> sentences;
    private final FlownIn flown;
    private final Reading reading;
    private final int listed;
    private final int postscript;
    private final List<Consumer<Assembly>> changes = new ArrayList<>();

    /** A pattern over a sentence without its figures: X is one of the list, Y is not. */
    private static Pattern of(String regex) {
        return Pattern.compile(regex);
    }

    /** @param listed the sentence behind which the list is over */
    Afterthoughts(Text text, List<Sentence> sentences, FlownIn flown, Reading reading, int listed) {
        this.said = text.joined();
        this.sentences = sentences;
        this.flown = flown;
        this.reading = reading;
        this.listed = listed;
        this.postscript = postscript();
    }

    /** Whether a sentence is said of the figures of the list; then what it says is remembered. */
    boolean takes(int at) {
        return isAfterthought(at) && (changes(at) || putsBeside(at));
    }

    private boolean isAfterthought(int at) {
        Sentence sentence = sentences.get(at);
        return !sentence.numbered()
                && (at > listed
                        || at >= postscript
                        || FORGOTTEN
                                .matcher(said)
                                .region(sentence.start(), sentence.end())
                                .find());
    }

    /** The first sentence of a postscript; as many as there are if there is none. */
    private int postscript() {
        int at = 0;
        while (at < sentences.size()
                && !POSTSCRIPT
                        .matcher(said)
                        .region(sentences.get(at).start(), sentences.get(at).end())
                        .lookingAt()) {
            at++;
        }
        return at;
    }

    private boolean changes(int at) {
        Sentence sentence = sentences.get(at);
        if (OTHER.matcher(said).region(sentence.start(), sentence.end()).find()) {
            return false;
        }
        List<Mention> all = mentions(at);
        List<Mention> old = all.stream().filter(Mention::isListed).toList();
        List<Mention> fresh =
                all.stream().filter(mention -> !mention.isListed()).toList();
        String left = left(sentence, all);
        if (!old.isEmpty() && fresh.size() == 1 && isOneOf(EXCHANGED, left)) {
            Mention out = old.get(0);
            Draft now = fresh.get(0).figure();
            now.forgetNotes();
            changes.add(assembly -> assembly.exchange(out.meant(assembly.lines()), List.of(now)));
            return true;
        }
        List<Mention> out = fresh.isEmpty() ? cancelled(old, left) : List.of();
        if (!out.isEmpty()) {
            out.forEach(each -> changes.add(assembly -> assembly.exchange(each.meant(assembly.lines()), List.of())));
            return true;
        }
        if (!fresh.isEmpty() && NOT_FLOWN.matcher(left).find()) {
            return true;
        }
        return at >= postscript && old.size() == 1 && fresh.isEmpty() && tells(old.get(0), left);
    }

    /** Those that a sentence takes out, of the figures that it names; each is an X in what is left of it. */
    private static List<Mention> cancelled(List<Mention> named, String left) {
        for (Pattern way : CANCELLED) {
            Matcher found = way.matcher(left);
            if (found.find()) {
                int before = (int) left.substring(0, found.start())
                        .chars()
                        .filter(c -> c == 'X')
                        .count();
                int within = (int) found.group().chars().filter(c -> c == 'X').count();
                return named.subList(before, before + within);
            }
        }
        return List.of();
    }

    /** Something is told of a figure of the list: how high, how fast, where, or nothing that it can take over. */
    private boolean tells(Mention of, String left) {
        if (MORE.matcher(left.substring(0, left.indexOf('X'))).find()) {
            return false;
        }
        Draft by = of.figure();
        changes.add(assembly -> {
            if (by.saysAnything()) {
                Exchanges.correct(assembly.lines(), by);
            }
        });
        return true;
    }

    private boolean putsBeside(int at) {
        Sentence sentence = sentences.get(at);
        PutBeside found = PutBeside.in(said, sentence, reading, figure -> flown.isElsewhere(figure, at));
        if (found == null) {
            return false;
        }
        Draft put = found.put();
        if (put != null) {
            changes.add(assembly -> Insertions.put(assembly.lines(), put, found.old(), found.other(), found.isAfter()));
        }
        return true;
    }

    private static boolean isOneOf(List<Pattern> ways, String left) {
        return ways.stream().anyMatch(way -> way.matcher(left).find());
    }

    /** The sentence with a letter for each figure in it. */
    private String left(Sentence sentence, List<Mention> all) {
        StringBuilder left = new StringBuilder();
        int from = sentence.start();
        for (Mention mention : all) {
            left.append(said, from, Math.max(from, mention.from())).append(mention.isListed() ? "X" : "Y");
            from = Math.max(from, mention.to());
        }
        return left.append(said, from, Math.max(from, sentence.end()))
                .toString()
                .replaceAll("\\s+", " ")
                .strip();
    }

    private List<Mention> mentions(int at) {
        Sentence sentence = sentences.get(at);
        return reading.readParts(said, sentence.start(), sentence.end(), SEGMENT).stream()
                .filter(draft -> draft.isFigure() && !draft.name().isEmpty())
                .map(draft -> Mention.of(draft, flown.isElsewhere(draft, at), said))
                .sorted(Comparator.comparing(Mention::from))
                .toList();
    }

    /**
     * A figure that a sentence names.
     *
     * @param isListed whether another sentence flies it
     * @param from where its name begins
     * @param to where its name ends, exclusive
     * @param which which of several it is, as the sentence says it; null if it does not
     */
    private record Mention(
            Draft figure,
            boolean isListed,
            int from,
            int to,
            @Nullable String which) {
        private static final Pattern RANK = Pattern.compile("\\b(first|1st|second|2nd|third|3rd|last)\\s+$");
        private static final int FURTHEST = 12;

        static Mention of(Draft figure, boolean isListed, String said) {
            int from = figure.name().stream().mapToInt(Word::start).min().orElseThrow();
            int to = figure.name().stream().mapToInt(Word::end).max().orElseThrow();
            Matcher rank = RANK.matcher(said).region(Math.max(0, from - FURTHEST), from);
            return new Mention(figure, isListed, from, to, rank.find() ? rank.group(1) : null);
        }

        @Nullable
        Draft meant(List<Draft> lines) {
            return Exchanges.meant(lines, figure, which);
        }
    }

    /** Makes the changes, in the order in which they were written. */
    void make(Assembly assembly) {
        changes.forEach(change -> change.accept(assembly));
    }
}
