package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Piece;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Second thoughts that name the lines of a list by their numbers: "No. 4 is out, no. 7 is now a two-point roll, swap 9 and 10". */
final class Revisions {
    /** With fewer numbers a text has none that somebody would refer to. */
    private static final int LEAST_NUMBERED = 4;

    private static final String NO =
            "(?:(?:no|nr|number|point|item|serial|ser|fig|figure|row|line|manoeuvre|maneuver)s?\\.?\\s?#?|#)";
    /** A number, or the letter of a line that is marked by letters; see {@link #line}. */
    private static final String N =
            "(\\d{1,3}|[a-z])(?:(?<=\\d)(?:st|nd|rd|th))?(?![\\p{L}'\\d]|[:.]\\d|\\s?(?:s|secs?|seconds?|m|ft|feet|kts?|mph|g|°)\\b)";

    private static final String MAY = "(?:(?:the )?" + NO + "\\s?|the (?=\\d))?";
    private static final String ENDS =
            "(?=\\s*(?:[.,;!)\\n]|$|-|please|altogether|completely|for|as|and|this|on|today|too|then|because)(?!\\p{L}))";

    private static final Pattern OUT = Pattern.compile("(?<![\\d:.])" + MAY + N + "(?:(?:,? (?:and|&) |, )" + MAY + N
            + ")?(?:, (?:the|my) [^.,;\\n]{3,30},)?\\s(?:(?:is|are|was|were|has been|have been|falls?|goes|go|comes?) (?:now )?){1,2}(?:out|off|cut|cancelled"
            + "|deleted|dropped|scrapped|scrubbed|gone|removed|not flown)\\b(?! (?:to|of|the|in|at|on)\\b)");

    private static final Pattern GOES = Pattern.compile(
            "(?<![\\d:.])(?:the )?" + NO + "\\s?" + N + " (?:goes|has gone|is gone)(?=\\s*(?:[.,;!)\\n]|$))");

    private static final Pattern WITHOUT = Pattern.compile(
            "\\b(?:scrap|scratch|drop|delete|cancel|skip|omit|forget|ignore|without|(?:leave|leaving|cut|take) out) "
                    + NO + "\\s?" + N + "(?:(?:,? (?:and|&) |, )" + MAY + N + ")?");

    private static final Pattern DROP = Pattern.compile(
            "\\b(?:scrap|scratch|drop|delete|cancel|skip|omit|forget|ignore|remove|lose|without|minus|(?:leave|leaving|cut|take|miss) out) "
                    + MAY + N + "(?:(?:,? (?:and|&) |, )" + MAY + N + ")?" + ENDS
                    + "|\\b(?:leave|take|cut|drop|miss) " + MAY + N + "(?: (?:and|&) " + MAY + N + ")? out\\b");

    private static final Pattern SWAPPED = Pattern.compile("(?<![\\d:.])" + MAY + N + " (?:and|&|with) " + MAY + N
            + "(?: \\w+){0,3}? (?:exchanged|swap|swapped|switched|reversed|(?:the )?(?:other|wrong) way (?:round|around)|changed"
            + " (?:over|round|places))\\b");

    private static final Pattern SWAP =
            Pattern.compile("\\b(?:swap|swapped|exchange|switch|switched|change) (?:over |round )?" + MAY + N
                    + " (?:and|with|for|&) " + MAY + N);

    private static final Pattern MOVED = Pattern.compile("\\b" + NO + "\\s?" + N
            + " (?:is |comes |goes |now |flown |moved |to |i |we |he |she |will |be |make |do |fly |flies ){0,5}(?<way>before|after) "
            + MAY + N);

    private static final Pattern NOW = Pattern.compile("(?<![\\d:.])(?:" + MAY + N
            + " (?:is now|becomes|is changed to|changes to)|" + NO + "\\s?" + N + " is)\\b");

    /** Ahead of what is flown now. */
    private static final List<Pattern> FOR = List.of(
            Pattern.compile("\\b(?:instead|in place) of " + MAY + N + ",? (?!(?:and|or)\\b)"),
            Pattern.compile("\\b(?:change|replace|make|swap|turn) " + MAY + N
                    + " (?:(?:to|into|with|by|for|be) )?(?:an? |the )?"),
            Pattern.compile(
                    "(?<![\\d:.])\\b" + MAY + N
                            + " (?:should (?:now )?(?:be|read)|will (?:now )?be|(?:is )?to be|(?:is )?replaced (?:by|with)|now)\\b"),
            Pattern.compile(
                    "(?:^|[.,;:\\n]|\\b(?:and|also|but|so)\\b)\\s*(?:and |also |but )?(?:for|at|in) " + MAY + N
                            + ",? (?:please |i'll |i |we'll |we |it's |he |she |now |will ){0,3}(?:do|does|fly|flies|make|put|read|say|take|come|comes|enter|go|start|turn|roll|use)\\b"));

    /** "6 is three turns now": of a bare number at the beginning. */
    private static final Pattern IS = Pattern.compile("^(?:\\W|(?:and|but|also|so|then|oh|the)\\b)*" + N
            + " (?:(?:is|are) (?:now |only |just )?|only (?=\\d))(?!(?:on|in|at|flown|wrong)\\b)");

    /** Behind it. */
    private static final Pattern INSTEAD =
            Pattern.compile("\\b(?:instead|in place) of " + MAY + N + "(?=\\s*(?:[.,;!)\\n]|$))");

    private static final Pattern BETWEEN = Pattern.compile("\\bbetween " + MAY + N + " (?:and|&) " + MAY + N);

    private static final Pattern BESIDE = Pattern.compile("\\b(?<way>after|before|behind) " + NO + "\\s?" + N);

    /** "After h put in a pass": of a bare number or letter only ahead of what is put there. */
    private static final Pattern PUT = Pattern.compile(
            "\\b(?<way>after|before|behind) (?:the )?" + N
                    + ",? (?=(?:please |i'll |i |we |you |then ){0,2}(?:add|put|insert|slip|squeeze|fit|there|comes?|do|fly|include)\\b)");

    /** "And number 9 from the right please". */
    private static final Pattern SAID_OF = Pattern.compile("\\b" + NO + "\\s?" + N + "\\s*[:,-]? ");

    /** "The spin is now only two turns", beside a change by number. */
    private static final Pattern NAMED = Pattern.compile(
            "(?:\\W|(?:and|but|also|so)\\b)*(?:the|my) [^.,;:\\n]{3,30}? (?:is|are) (?:now )?(?:only |just )?");

    /** "To the left, not the right". */
    private static final Pattern NOT = Pattern.compile(",? (?:not|instead of|rather than)\\b");

    /** Then it is another show. */
    private static final Pattern PERHAPS = Pattern.compile(
            "=|\\b(?:if|below|less than|more than|over \\d|under \\d|when|unless|should(?! (?:now )?(?:be|read|say|have|come|go)\\b)|in case|otherwise|weather|wx|clouds?|windy?|rain|density|(?:flat|low|rolling|wet|short|bad)"
                    + " (?:show|display|version|day|programme|card))\\b");

    /** At the beginning of a line: then all of it is. */
    private static final Pattern PERHAPS_ALL =
            Pattern.compile("\\W*(?:(?:and|but|so|also|ps|for|on|in|the|a|an) )*(?:" + PERHAPS.pattern() + ")");

    /** What stands further ahead in a line is not said of a sentence. */
    private static final int FURTHEST = 600;

    /** Ahead of what a line becomes, not of the line itself. */
    private static final Pattern SAYS = Pattern.compile(
            "\\W*" + NO + "?\\s?\\d{1,3}\\s(?:is|are|was|were|comes?|goes|falls?|now|becomes|changes|has|have)\\b");

    private static final Pattern MARK = Pattern.compile("(\\d{1,3})\\D*$");
    private static final Pattern SMALL = Pattern.compile("(?:^|[\\s(>*])[a-z]\\W*$");
    private static final Pattern LETTER = Pattern.compile("(?:^|[\\s(>*])([a-z])\\W*$");
    /** No list has as many numbers. */
    private static final int LETTERS = 1000;

    /** Letters that are words too. */
    private static final Set<String> WORDS = Set.of("a", "i");

    /** Where a line's number is found. */
    private final Map<Integer, Sentence> numbered;

    private final Text text;
    private final String said;
    private final boolean isInSmallLetters;
    private final Reading reading;
    private final List<Consumer<Assembly>> changes = new ArrayList<>();

    private Revisions(Text text, Map<Integer, Sentence> numbered, Reading reading) {
        this.text = text;
        this.said = text.joined();
        this.numbered = numbered;
        this.reading = reading;
        isInSmallLetters = numbered.values().stream()
                .anyMatch(line -> SMALL.matcher(text.written()
                                .substring(line.start(), line.pieces().get(0).from()))
                        .find());
    }

    static Revisions of(Text text, List<Sentence> sentences, List<List<Heard>> heard, Reading reading) {
        Map<Integer, Sentence> numbered = new HashMap<>();
        for (int i = 0; i < sentences.size(); i++) {
            Integer number = number(text, sentences.get(i));
            if (number != null
                    && heard.get(i).stream().anyMatch(Heard::isFigure)
                    && !SAYS.matcher(text.folded())
                            .region(sentences.get(i).start(), sentences.get(i).end())
                            .lookingAt()) {
                // Where two lists have the number, the newer stands first.
                numbered.putIfAbsent(number, sentences.get(i));
            }
        }
        return new Revisions(text, numbered.size() < LEAST_NUMBERED ? Map.of() : numbered, reading);
    }

    private static @Nullable Integer number(Text text, Sentence sentence) {
        if (!sentence.numbered()) {
            return null;
        }
        String ahead = text.folded()
                .substring(sentence.start(), sentence.pieces().get(0).from());
        Matcher mark = MARK.matcher(ahead);
        if (mark.find()) {
            return Integer.valueOf(mark.group(1));
        }
        Matcher letter = LETTER.matcher(ahead);
        return letter.find() ? Integer.valueOf(LETTERS + letter.group(1).charAt(0)) : null;
    }

    /** Whether a sentence changes lines by their numbers; then the change is remembered. */
    boolean takes(Sentence sentence) {
        if (numbered.isEmpty() || numbered.containsValue(sentence) || isPerhaps(text, sentence)) {
            return false;
        }
        int begin = sentence.start();
        int before = changes.size();
        Matcher all = OUT.matcher(said).region(begin, sentence.end());
        all.useTransparentBounds(true);
        List<MatchResult> done = new ArrayList<>(eachPair(all.usePattern(OUT), this::drop));
        done.addAll(eachPair(all.usePattern(GOES), this::drop));
        done.addAll(eachPair(all.usePattern(WITHOUT), this::drop));
        if (changes.size() == before) {
            done.addAll(eachPair(all.usePattern(DROP), this::drop));
        }
        done.addAll(eachPair(all.usePattern(SWAPPED), this::swap));
        done.addAll(eachPair(all.usePattern(SWAP), this::swap));
        all.reset().region(begin, sentence.end()).usePattern(MOVED);
        while (all.find()) {
            move(line(all, 1), line(all, 3), all.group("way").equals("after"));
            done.add(all.toMatchResult());
        }
        List<Piece> pieces = sentence.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            int from = i == 0 ? begin : pieces.get(i).from();
            int to = pieces.get(i).to();
            if (done.stream().noneMatch(change -> change.start() < to && change.end() > from)) {
                takeFigure(from, withDetails(pieces, i));
            }
        }
        return changes.size() > before;
    }

    /** Where a piece ends with those behind it that only say more of the same: "a pass, left to right". */
    private int withDetails(List<Piece> pieces, int at) {
        int last = at;
        while (last + 1 < pieces.size()) {
            List<Draft> next = reading.read(
                    pieces.get(last + 1).from(), pieces.get(last + 1).to());
            boolean isDetail = next.stream()
                    .allMatch(draft -> !draft.isFigure()
                            && draft.saysAnything()
                            && draft.notes().isEmpty());
            if (!isDetail) {
                break;
            }
            last++;
        }
        return pieces.get(last).to();
    }

    /**
     * Whether a sentence speaks of what may come, or stands in a line that begins so: "below 1,500 ft: leave out the spin. Number 4
     * is a loop".
     */
    static boolean isPerhaps(Text text, Sentence sentence) {
        int from = sentence.pieces().get(0).from();
        String ahead = text.folded().substring(Math.max(0, from - FURTHEST), from);
        int line = from - ahead.length() + ahead.lastIndexOf('\n') + 1;
        return PERHAPS.matcher(text.folded())
                        .region(Math.min(sentence.start(), from), sentence.end())
                        .find()
                || PERHAPS_ALL
                        .matcher(text.folded())
                        .region(line, sentence.end())
                        .lookingAt();
    }

    private interface Pair {
        void take(@Nullable Sentence one, @Nullable Sentence other);
    }

    /** Lets each match be taken; those of lines that the list has. */
    private List<MatchResult> eachPair(Matcher found, Pair pair) {
        List<MatchResult> taken = new ArrayList<>();
        int from = found.regionStart();
        int to = found.regionEnd();
        while (found.find()) {
            List<Sentence> lines = IntStream.rangeClosed(1, found.groupCount())
                    .mapToObj(group -> line(found, group))
                    .filter(Objects::nonNull)
                    .map(Objects::requireNonNull)
                    .toList();
            pair.take(lines.isEmpty() ? null : lines.get(0), lines.size() < 2 ? null : lines.get(1));
            if (!lines.isEmpty()) {
                taken.add(found.toMatchResult());
            }
        }
        found.region(from, to);
        return taken;
    }

    /** Of a number, or of a capital: a small letter may be any word. */
    private @Nullable Sentence line(Matcher found, int group) {
        String number = found.group(group);
        if (number == null) {
            return null;
        }
        boolean isLetter = Character.isLetter(number.charAt(0));
        boolean isSmall = isLetter && !Character.isUpperCase(text.written().charAt(found.start(group)));
        if (isSmall && (!isInSmallLetters || WORDS.contains(number))) {
            return null;
        }
        return numbered.get(isLetter ? Integer.valueOf(LETTERS + number.charAt(0)) : Integer.valueOf(number));
    }

    private void drop(@Nullable Sentence one, @Nullable Sentence other) {
        for (Sentence line : new Sentence[] {one, other}) {
            if (line != null) {
                changes.add(assembly -> assembly.leaveOut(line.start(), line.end()));
            }
        }
    }

    private void swap(@Nullable Sentence one, @Nullable Sentence other) {
        if (one != null && other != null) {
            changes.add(assembly -> assembly.swap(one, other));
        }
    }

    private void move(@Nullable Sentence line, @Nullable Sentence beside, boolean isAfter) {
        if (line != null && beside != null && !line.equals(beside)) {
            changes.add(assembly -> assembly.put(assembly.take(line.start(), line.end()), beside, isAfter));
        }
    }

    /** "No. 7 is now a two-point roll", "after no. 9 add a lazy eight". */
    private void takeFigure(int from, int to) {
        Matcher found = NOW.matcher(said).region(from, to);
        found.useTransparentBounds(true);
        if (found.find()) {
            become(line(found, found.group(1) == null ? 2 : 1), found.end(), to);
            return;
        }
        for (Pattern pattern : FOR) {
            found.usePattern(pattern).region(from, to);
            if (found.find() && become(line(found, 1), found.end(), to)) {
                return;
            }
        }
        found.usePattern(IS).region(from, to);
        if (found.find() && become(line(found, 1), found.end(), to)) {
            return;
        }
        found.usePattern(INSTEAD).region(from, to);
        if (found.find() && become(line(found, 1), from, found.start())) {
            return;
        }
        found.usePattern(BETWEEN).region(from, to);
        if (found.find()) {
            add(found, line(found, 1), true, from, to);
            return;
        }
        for (Pattern pattern : List.of(BESIDE, PUT)) {
            found.usePattern(pattern).region(from, to);
            if (found.find()) {
                add(found, line(found, 2), !found.group("way").equals("before"), from, to);
                return;
            }
        }
        found.usePattern(NAMED).region(from, to);
        List<Draft> named = found.lookingAt() ? reading.read(from, to) : List.of();
        if (named.size() == 1 && named.get(0).isFigure() && named.get(0).saysAnything()) {
            changes.add(assembly -> Exchanges.correct(assembly.lines(), named.get(0)));
            return;
        }
        found.usePattern(SAID_OF).region(from, to);
        if (found.find() && figures(found.end(), to).isEmpty()) {
            become(line(found, 1), found.end(), to);
        }
    }

    /** Lets a line become what a stretch says, or lets it say so; false if that is nothing. */
    private boolean become(@Nullable Sentence line, int from, int until) {
        Matcher not = NOT.matcher(said).region(Math.min(from, until), until);
        int to = not.find() ? not.start() : until;
        List<Draft> read = line == null || from >= to ? List.of() : reading.read(from, to);
        List<Draft> drafts = read.stream().filter(Draft::isFigure).toList();
        if (line == null || read.isEmpty() || (drafts.isEmpty() && !read.get(0).saysAnything())) {
            return false;
        }
        changes.add(assembly -> {
            if (drafts.isEmpty()) {
                assembly.correct(line, read.get(0));
            } else {
                assembly.put(drafts, line, true);
                assembly.leaveOut(line.start(), line.end());
            }
        });
        return true;
    }

    private void add(Matcher found, @Nullable Sentence line, boolean isAfter, int from, int to) {
        List<Draft> behind = figures(found.end(), to);
        List<Draft> drafts = behind.isEmpty() ? figures(from, found.start()) : behind;
        if (line != null && !drafts.isEmpty()) {
            changes.add(assembly -> assembly.put(drafts, line, isAfter));
        }
    }

    private List<Draft> figures(int from, int to) {
        return from >= to
                ? List.of()
                : reading.read(from, to).stream().filter(Draft::isFigure).toList();
    }

    /** Makes the changes, in the order in which they were written. */
    void make(Assembly assembly) {
        changes.forEach(change -> change.accept(assembly));
    }
}
