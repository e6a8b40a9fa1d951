package crowdline.list.piece;

import crowdline.list.draft.Measured;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Tells from the words between two figures' names whether they are one line, and if not, where the second begins. */
final class Between {
    /** What makes of the figures after it an addition to the one before. */
    private static final Set<String> ADDING = Set.of(
            "with",
            "during",
            "while",
            "whilst",
            "including",
            "incl",
            "having",
            "featuring",
            "or",
            "instead",
            "without",
            "no",
            "not");

    /** "Take off and come back with a wing-over" are two figures. */
    private static final Set<String> COMING_BACK = Set.of("back", "return", "returning", "returns", "again");

    /** "A stall turn while I do a slow roll" are two figures. */
    private static final Set<String> WHILE = Set.of("while", "whilst");

    private static final Set<String> DOES = Set.of("do", "doe", "doing", "fly", "flying", "perform", "performing");

    /** No figure is flown as often. */
    private static final double LEAST_ANGLE = 90;

    /** Stands between two names of one figure. */
    static final Set<String> NAMING_AGAIN = Set.of("/", "aka", "the", "in", "through", "yeah", "yes", "yep");

    /** Where on a figure an addition is flown. */
    private static final Set<String> ON_A_FIGURE =
            Set.of("line", "downline", "upline", "way", "top", "bottom", "midway", "halfway");

    /** "Along the line", "on the crowd line" is on none. */
    private static final Set<String> GROUND = Set.of("crowd", "display", "show", "runway", "flight", "centre");

    private static final Set<String> ENDING = Set.of("exit", "finish", "entry", "start", "out");

    /** "Looping with flick in the summit (the avalanche)", "roll over and down (a split S)": the bracket says what it is. */
    static boolean isExplainedBy(Text text, List<Word> words, Found main, Found other) {
        int open = text.folded().lastIndexOf('(', words.get(other.from()).start());
        int behind = words.get(other.to() - 1).end();
        boolean isAlone = open > words.get(main.from()).start()
                && EXPLAINING
                        .matcher(text.folded()
                                .substring(open, words.get(other.from()).start()))
                        .matches()
                && !other.sense().weak()
                && words.subList(other.from(), other.to()).stream().noneMatch(word -> word.number() != null)
                && !PieceReader.MODIFYING.contains(words.get(other.to() - 1).plain())
                && other.sense().choices().isEmpty();
        boolean isWhole = isAlone
                && behind < text.folded().length()
                && "),".indexOf(text.folded().charAt(behind)) >= 0;
        return isWhole || (isAlone && !main.sense().choices().isEmpty());
    }

    private static final Pattern EXPLAINING = Pattern.compile(
            "\\(\\s*(?:=\\s*|(?:it|that|which)(?: i|')s\\s+|i\\.?e\\.?\\s+|aka\\s+|called\\s+)?(?:an?\\s+|the\\s+)?[\"']?");

    /** Right ahead of a name. */
    private static final Pattern CALLED = Pattern.compile(
            "(?:=|\\b(?:what's it|whats it|is|it's|also|so) called|\\bcalls? (?:it|that|this)|\\bknown as)\\s*(?:(?:a|an|the)\\s+)?[\"']?$");

    private Between() {}

    /** In "loop, inverted exit" a word of a name only says how the figure before it ends. */
    static int beforeHowItEnds(List<Word> words, int from) {
        for (int i = from + 1; i + 1 < words.size(); i++) {
            if (words.get(i).plain().equals("inverted")
                    && ENDING.contains(words.get(i + 1).plain())) {
                return i;
            }
        }
        return words.size();
    }

    /** "Immelmann (roll off the top)": what a bracket after a figure names belongs to it. */
    static boolean isInBrackets(Text text, Word main, Word other) {
        int depth = 0;
        for (int i = main.start(); i < other.start(); i++) {
            char c = text.folded().charAt(i);
            depth += c == '(' || c == '[' ? 1 : c == ')' || c == ']' ? -1 : 0;
        }
        return depth > 0;
    }

    /** "Loop with half roll = Immelmann", "what's it called": what stands behind is what it is called. */
    static boolean isCalled(Text text, Word main, Word other) {
        return CALLED.matcher(text.folded().substring(main.end(), Math.max(main.end(), other.start())))
                .find();
    }

    /** "Off the bottom of the loop straight into a half Cuban": the loop was flown before. */
    static boolean isCameFrom(List<Word> words, int name) {
        int at = name - 1;
        while (at >= 0
                && Set.of("a", "the", "that", "my").contains(words.get(at).plain())) {
            at--;
        }
        boolean isOf = at > 0 && words.get(at).plain().equals("of");
        boolean isOutOfTheTop = isOf
                && words.get(at - 1).plain().equals("top")
                && words.subList(Math.max(0, at - 4), at).stream()
                        .anyMatch(word -> word.plain().equals("out"));
        return isOutOfTheTop
                || (isOf
                        && Set.of("out", "bottom", "back", "end")
                                .contains(words.get(at - 1).plain()));
    }

    /** Whether a figure is only an addition to those before it. */
    static boolean isAddition(List<Word> words, int first, List<Found> own, Found next) {
        int after = own.get(own.size() - 1).to();
        boolean isAtTheEnd = next.sense().figure().equals("landing")
                && words.subList(after, next.from()).stream()
                        .anyMatch(word -> word.plain().equals("and"));
        boolean isAStop = next.sense().figure().equals("quick stop")
                && words.subList(after, next.from()).stream()
                        .anyMatch(word -> word.plain().equals("with"));
        if (isAtTheEnd || isAStop) {
            return false;
        }
        for (int i = after; i < next.from(); i++) {
            boolean isFrom = words.get(i).plain().equals("from")
                    && words.subList(i + 1, next.from()).stream().allMatch(LeftOver::isJoining);
            boolean isHow = i > after
                    && Set.of("with", "for").contains(words.get(i).plain())
                    && words.subList(own.get(own.size() - 1).from(), i).stream()
                            .anyMatch(word -> COMING_BACK.contains(word.plain()));
            boolean isAnothers = WHILE.contains(words.get(i).plain())
                    && words.subList(i, next.from()).stream().anyMatch(word -> DOES.contains(word.plain()));
            if (isFrom || (!isHow && !isAnothers && ADDING.contains(words.get(i).plain()))) {
                return true;
            }
        }
        boolean isOnASlope = next.sense().figure().startsWith("45 degree")
                && words.subList(after, next.from()).stream()
                        .anyMatch(word -> word.plain().equals("on"));
        if (isOnASlope) {
            return true;
        }
        Double angle = words.get(next.from()).number();
        boolean isOf = words.subList(after, next.from()).stream()
                .allMatch(word -> Set.of("of", "through").contains(word.plain()));
        if (isOf
                && angle != null
                && angle >= LEAST_ANGLE
                && own.get(0).sense().figure().equals(next.sense().figure())) {
            return true;
        }
        boolean isAnotherName = !own.get(own.size() - 1).plain(words).equals(next.plain(words));
        boolean isNamedTwice = next.from() > after
                && own.get(0).sense().figure().equals(next.sense().figure())
                && words.subList(after, next.from()).stream()
                        .allMatch(word -> NAMING_AGAIN.contains(word.plain())
                                && (isAnotherName
                                        || !Set.of("/", "aka", "through").contains(word.plain())));
        if (isNamedTwice) {
            return true;
        }
        boolean isPurpose = next.from() > after
                && next.sense().figure().equals("reposition")
                && Set.of("to", "for").contains(words.get(next.from() - 1).plain());
        if (isPurpose) {
            return true;
        }
        for (int i = next.to(); i < Math.min(words.size(), next.to() + 5); i++) {
            String plain = words.get(i).plain();
            boolean isOnTopOfIt = plain.equals("top")
                    && i + 2 < words.size()
                    && words.get(i + 1).plain().equals("of")
                    && Set.of("it", "that").contains(words.get(i + 2).plain());
            boolean isAllTheWay = plain.equals("way")
                    && words.get(i - 1).plain().equals("the")
                    && words.get(Math.max(0, i - 2)).plain().equals("all");
            boolean isOnTheGround = isAllTheWay
                    || GROUND.contains(words.get(i - 1).plain())
                    || words.subList(next.to(), i).stream()
                            .anyMatch(word -> word.plain().equals("along"));
            if (ON_A_FIGURE.contains(plain) && !isOnTopOfIt && !isOnTheGround) {
                return true;
            }
            if (plain.equals("and")) {
                return false;
            }
        }
        return first > after;
    }

    /** Where the next figure's own words begin: after an "and", else with the number or the side before its name. */
    static int cut(List<Word> words, int after, int name) {
        for (int i = name - 1; i >= after; i--) {
            if (words.get(i).plain().equals("and") || words.get(i).plain().equals("plus")) {
                return i;
            }
        }
        int cut = name;
        while (cut > after
                && (isCount(words.get(cut - 1))
                        || words.get(cut - 1).plain().equals("x")
                        || words.get(cut - 1).plain().equals("a")
                        || Manner.DESCRIBING.has(words.get(cut - 1)))) {
            cut--;
        }
        return cut;
    }

    private static boolean isCount(Word word) {
        Double number = word.number();
        return number != null && number < Measured.LEAST_BARE_KT;
    }

    /** Where what is said of an addition begins. */
    static int additionsFrom(List<Word> words, int after, int next) {
        for (int i = after; i < next; i++) {
            if (ADDING.contains(words.get(i).plain()) || words.get(i).plain().equals("from")) {
                return i;
            }
        }
        return next;
    }
}
