package crowdline.list.split;

import crowdline.list.word.Text;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Tells which lines of a text were broken by the program that sent it, so that the next goes on with them. */
final class Broken {
    /** A line as long as this was broken by the program that sent it, if the next goes on in small letters. */
    private static final int WRAPPED = 58;
    /** What goes on behind a broken line is seldom so short, if lines begin in small letters anyway. */
    private static final int SHORT = 40;
    /** As many lines show that they do. */
    private static final int LEAST_SMALL = 3;
    /** A program breaks lines about where they are longest, and several of them. */
    private static final int UNEVEN = 14;

    private static final int LEAST_BROKEN = 3;
    /** As many lines that end in the middle of a phrase show that all of a paragraph was broken, however short they are. */
    private static final int LEAST_CUT = 2;

    /** A row of a table begins with a time, or has a tab, a bar or several semicolons in it. */
    private static final Pattern ROW = Pattern.compile("\\d{1,2}:\\d{2}\\b|[^\\n]*(?:\\t|\\||;[^\\n]*;|\\S {3,}\\S)");

    /** "Bout 5 mins" stands for itself. */
    private static final Pattern LENGTH = Pattern.compile(
            "(?:about |'?bout |abt |approx\\w*\\.? |roughly |ca\\.? ?|c\\. ?|~ ?)?\\d{1,2}(?:[.,]5)? ?min(?:ute)?s?\\W*(?:$|\\n|in all|altogether|total|all in)");

    /** No phrase ends so. */
    private static final Pattern CUT =
            Pattern.compile("(?s).*(?:^|\\W)(?:a|an|the|from|of|with|and|into|my|our|his|her|your|at|to|half|or) *");

    /** Nor does a list say so by the line. */
    private static final Pattern OPEN = Pattern.compile("(?s).*[^\\w-](?:an|the|my|our|his|her|your) *");

    private static final String ENDS = ".!?:;";

    private final Text text;
    private final Chat chat;
    private final List<Line> lines;
    private final boolean beginsSmall;
    private final boolean[] isOfABroken;

    Broken(Text text, Chat chat, List<Line> lines) {
        this.text = text;
        this.chat = chat;
        this.lines = lines;
        this.beginsSmall = beginsSmall();
        this.isOfABroken = new boolean[lines.size()];
        paragraphs();
    }

    /** Whether the next line goes on with this one. */
    boolean goesOn(int at) {
        if (at + 1 >= lines.size()) {
            return false;
        }
        Line line = lines.get(at);
        Line next = lines.get(at + 1);
        boolean isRemark = written(line).endsWith("]") && !written(next).startsWith("[");
        boolean isMessage = chat.words(next.start(), next.end()) > next.start();
        if (isMessage || isRemark || line.isBlank() || next.isBlank() || next.numbered()) {
            return false;
        }
        boolean beginsSmallNext = Character.isLowerCase(text.written().charAt(next.words()));
        if (beginsSmallNext
                && OPEN.matcher(text.folded()).region(line.words(), line.end()).matches()) {
            return true;
        }
        if (isOfABroken[at]) {
            return !endsASentence(line);
        }
        boolean isLength =
                LENGTH.matcher(text.folded()).region(next.words(), next.end()).lookingAt();
        if (line.end() - line.start() < WRAPPED
                || isLength
                || isRow(next)
                || written(line).endsWith(";")) {
            return false;
        }
        boolean isShort = next.end() - next.start() < SHORT;
        return !(beginsSmall && (isShort || !isAtTheWidth(line)))
                && (Character.isLowerCase(text.written().charAt(next.words()))
                        || Character.isDigit(text.written().charAt(next.words())));
    }

    /** Whether a line is about as long as the longest, as several are that a program broke. */
    private boolean isAtTheWidth(Line line) {
        int width = lines.stream().mapToInt(l -> l.end() - l.start()).max().orElse(0) - UNEVEN;
        return line.end() - line.start() >= width
                && lines.stream().filter(l -> l.end() - l.start() >= width).count() >= LEAST_BROKEN;
    }

    /** Marks the lines of paragraphs that were broken in the middle of their phrases. */
    private void paragraphs() {
        int from = 0;
        while (from < lines.size()) {
            int to = from;
            int cut = 0;
            int small = 0;
            while (to < lines.size()
                    && !lines.get(to).isBlank()
                    && (to == from || !lines.get(to).numbered())) {
                boolean isLast = to + 1 >= lines.size() || lines.get(to + 1).isBlank();
                cut += !isLast && !isRow(lines.get(to)) && isCut(lines.get(to)) ? 1 : 0;
                small += to > from
                                && Character.isLowerCase(
                                        text.written().charAt(lines.get(to).words()))
                        ? 1
                        : 0;
                to++;
            }
            if (cut >= LEAST_CUT && small * 2 >= to - from - 1) {
                Arrays.fill(isOfABroken, from, to, true);
            }
            from = Math.max(to, from + 1);
        }
    }

    private boolean isCut(Line line) {
        return CUT.matcher(text.folded()).region(line.words(), line.end()).matches();
    }

    private boolean endsASentence(Line line) {
        String written = written(line);
        return !written.isEmpty() && ENDS.indexOf(written.charAt(written.length() - 1)) >= 0;
    }

    private boolean isRow(Line line) {
        return ROW.matcher(text.folded()).region(line.words(), line.end()).lookingAt();
    }

    private String written(Line line) {
        return text.written().substring(line.start(), line.end()).stripTrailing();
    }

    /** Whether lines begin in small letters that no line before them was broken for. */
    private boolean beginsSmall() {
        int small = 0;
        for (int i = 1; i < lines.size(); i++) {
            Line before = lines.get(i - 1);
            Line line = lines.get(i);
            boolean isOwn = !line.isBlank() && !line.numbered() && before.end() - before.start() < WRAPPED;
            small += isOwn
                            && line.end() - line.start() < SHORT
                            && Character.isLowerCase(text.written().charAt(line.words()))
                    ? 1
                    : 0;
        }
        return small >= LEAST_SMALL;
    }
}
