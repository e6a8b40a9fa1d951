package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Puts into the order of flight what was told from its end: "I finish with the spin, and before that comes a loop". */
final class Order {
    private static final Pattern EARLIER = Pattern.compile(
            "(?s).*\\b(?:(?:before|ahead of|prior to) (?:that|this|it|them|those|which)|preceded by)\\b(?! (?:was|were)\\b).*");

    private static final Pattern FIRST = Pattern.compile(
            "(?s).*\\b(?:open|start|begin|kick off)(?:s|es|ing)?\\b(?: (?:off|it|things|everything|all|the show|my act|up))* (?:with|by)\\b.*"
                    + "|(?s).*\\b(?:first of all|right at the (?:start|beginning)|at the very (?:start|beginning)|the (?:opener|opening|first (?:one|figure|thing)) is)\\b.*");

    private static final Pattern LAST = Pattern.compile(
            "(?s).*\\b(?:finish|end|close|conclude)(?:s|es|ing)?\\b(?: (?:off|it|things|everything|all|the show|my act|up))* (?:with|by|on)\\b.*"
                    + "|(?s).*\\b(?:last of all|at the (?:very )?end|the (?:finale|last (?:one|figure|thing)) is)\\b.*");

    /** Of more figures "that" is the last. */
    private static final int MOST_MEANT = 3;

    private static final int FURTHEST = 80;

    private Order() {}

    /** The drafts as they are flown; they come as they were told. */
    static List<Draft> flown(List<Draft> told, Text text) {
        List<Draft> flown = new ArrayList<>();
        boolean isBackwards = false;
        int begun = 0;
        int next = 0;
        for (int i = 0; i < told.size(); i++) {
            String ahead = ahead(told, i, text);
            if (i > 0 && EARLIER.matcher(ahead).matches()) {
                isBackwards = true;
                begun = next - begun > MOST_MEANT ? next - 1 : begun;
                next = begun;
            } else if (isBackwards && FIRST.matcher(ahead).matches()) {
                begun = 0;
                next = 0;
            } else if (i > 0 && isBackwards && LAST.matcher(ahead).matches()) {
                begun = flown.size();
                next = begun;
            }
            isBackwards |= i == 0 && LAST.matcher(ahead).matches();
            flown.add(next++, told.get(i));
        }
        return flown;
    }

    /** What stands ahead of the name of a draft, behind that of the one before it. */
    private static String ahead(List<Draft> told, int at, Text text) {
        List<Word> name = told.get(at).name();
        int end = name.isEmpty() ? told.get(at).start() : name.get(0).start();
        int from = Math.max(0, end - FURTHEST);
        if (at > 0) {
            List<Word> before = told.get(at - 1).name();
            int behind = before.isEmpty()
                    ? told.get(at - 1).start()
                    : before.get(before.size() - 1).end();
            from = behind <= end ? Math.max(from, behind) : from;
        }
        return text.folded().substring(Math.min(from, end), end);
    }
}
